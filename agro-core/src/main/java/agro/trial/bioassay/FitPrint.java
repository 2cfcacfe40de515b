package agro.trial.bioassay;

import agro.source.Reference;
import agro.stats.ConfidenceLimits;
import agro.stats.glm.LinkFunction;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import agro.working.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** A fitted curve in print. */
final class FitPrint {

  static final String LABORATORY =
      "A bioassay compares animals and substances in the laboratory; it says nothing about a rate in"
          + " the field.";

  private FitPrint() {}

  static Presentation page(DoseResponseFit fit) {
    var data = fit.data();
    var page =
        Presentation.titled("Dose-response" + (data.title().isEmpty() ? "" : ": " + data.title()))
            .paragraph(fit.sentence());
    choices(page, fit.choices(), data);
    page.fact("Natural mortality", natural(fit));
    if (fit.choices().immunity()) {
      page.fact("Immune animals", withError(fit.immuneShare(), fit.immuneShareStandardError()));
    }
    page.fact("Curve", curve(fit))
        .fact("Goodness of fit", goodness(fit))
        .fact("Deviance", Numbers.fixed(fit.deviance(), 3))
        .fact("Log-likelihood", Numbers.fixed(fit.logLikelihood(), 3))
        .fact("AIC", Numbers.fixed(fit.aic(), 2))
        .fact("Factor in the limits", factor(fit))
        .table(lethalDoses(fit, fit.lethalDoses(10, 50, 90, 99)))
        .table(groups(fit));
    fit.remarks().forEach(page::paragraph);
    return page.paragraph(LABORATORY).cautions(Caution.all()).sources(sources(fit)).build();
  }

  static void choices(Presentation.Builder page, DoseResponse choices, BioassayData data) {
    page.fact(
            "Dose",
            data.axis().words() + (data.axis().unit().isEmpty() ? "" : ", " + data.axis().unit()))
        .fact("End point", data.endPoint().words())
        .fact("Model", link(choices.link()) + " on " + choices.scale().words())
        .fact("Information", choices.information().words())
        .fact(
            "Limits",
            Numbers.plain(100 * choices.confidence()) + " %, " + choices.limitMethod().words())
        .fact("Heterogeneity rule", choices.heterogeneity().words());
  }

  static String link(LinkFunction link) {
    return switch (link) {
      case PROBIT -> "probit";
      case LOGIT -> "logit";
      default -> "complementary log-log";
    };
  }

  private static String natural(DoseResponseFit fit) {
    var way = new NaturalMortality(fit.groups().way, fit.choices().natural().fixedShare());
    return switch (way.way()) {
      case IN_MODEL ->
          withError(fit.naturalMortality(), fit.naturalMortalityStandardError())
              + ", "
              + way.words();
      case ABBOTT -> Numbers.fixed(100 * fit.naturalMortality(), 1) + " %, " + way.words();
      default -> way.words();
    };
  }

  private static String withError(double share, double error) {
    return Numbers.fixed(100 * share, 1)
        + " % (SE "
        + (error == 0 ? "none, at the boundary" : Numbers.fixed(100 * error, 1) + " %")
        + ")";
  }

  private static String curve(DoseResponseFit fit) {
    return "intercept "
        + Numbers.fixed(fit.intercept(), 3)
        + " (SE "
        + Numbers.fixed(fit.interceptStandardError(), 3)
        + "), slope "
        + Numbers.fixed(fit.slope(), 3)
        + " (SE "
        + Numbers.fixed(fit.slopeStandardError(), 3)
        + ")";
  }

  static String goodness(DoseResponseFit fit) {
    return fit.degreesOfFreedom() == 0
        ? "X² = " + Numbers.fixed(fit.pearsonChiSquared(), 2) + "; df = 0"
        : "X² = "
            + Numbers.fixed(fit.pearsonChiSquared(), 2)
            + "; df = "
            + fit.degreesOfFreedom()
            + "; "
            + Deviates.words(fit.goodnessOfFitP());
  }

  private static String factor(DoseResponseFit fit) {
    return (fit.isHeterogeneityApplied()
            ? "X² / df = " + Numbers.fixed(fit.heterogeneityFactor(), 3) + ", Student's t "
            : "1, normal deviate ")
        + Numbers.fixed(fit.deviate(), 3);
  }

  static String sentence(DoseResponseFit fit) {
    var median = fit.lethalDose(50);
    var axis = fit.data().axis();
    return "LD50 = "
        + axis.inUnit(median.dose())
        + " ("
        + Numbers.plain(100 * fit.choices().confidence())
        + " % limits "
        + axis.limits(median.limits())
        + "); slope = "
        + Numbers.fixed(fit.slope(), 2)
        + " ± "
        + Numbers.fixed(fit.slopeStandardError(), 2)
        + " (SE); n = "
        + fit.data().groups().stream().mapToInt(DoseGroup::exposed).sum()
        + "; "
        + goodness(fit);
  }

  static ResultTable lethalDoses(DoseResponseFit fit, List<LethalDose> doses) {
    var rows = new ArrayList<List<Cell>>();
    var axis = fit.data().axis();
    for (var each : doses) {
      rows.add(
          List.of(
              Cell.text("LD" + Numbers.plain(each.percent())),
              Cell.text(axis.print(each.dose())),
              Cell.text(axis.limits(each.limits())),
              Cell.number(each.place(), 4),
              Cell.number(each.placeStandardError(), 4)));
    }
    var table =
        ResultTable.of(
            "Doses for stated shares",
            List.of(
                Column.of("Level"),
                Column.of("Dose"),
                Column.of(Numbers.plain(100 * fit.choices().confidence()) + " % limits"),
                Column.of("On the scale of the line"),
                Column.of("SE there")),
            rows);
    double g = doses.isEmpty() ? 0 : doses.get(0).g();
    return table.withNote(
        "g = "
            + Numbers.significant(g, 3)
            + (g >= 1
                ? ": the slope is not significantly different from zero, so Fieller's limits are"
                    + " unbounded."
                : "."));
  }

  static String percents(ConfidenceLimits limits) {
    return Numbers.fixed(100 * limits.low(), 1) + " to " + Numbers.fixed(100 * limits.high(), 1);
  }

  /** All groups of a dose together, for an assay may have many vials. */
  private static ResultTable groups(DoseResponseFit fit) {
    var byDose = new TreeMap<Double, List<FittedGroup>>();
    for (var each : fit.fittedGroups()) {
      byDose.computeIfAbsent(each.group().dose() + 0.0, dose -> new ArrayList<>()).add(each);
    }
    var rows = new ArrayList<List<Cell>>();
    byDose.forEach((dose, groups) -> rows.add(row(fit, dose, groups)));
    return ResultTable.of(
        "Doses",
        List.of(
            Column.of("Dose"),
            Column.of("Groups"),
            Column.of("Animals"),
            Column.of("Responding"),
            Column.of("Share", "%"),
            Column.of("Exact limits", "%"),
            Column.of("Expected"),
            Column.of("Largest standardised residual")),
        rows);
  }

  private static List<Cell> row(DoseResponseFit fit, double dose, List<FittedGroup> groups) {
    var count = PointTable.together(groups.stream().map(FittedGroup::group).toList());
    var largest =
        groups.stream()
            .flatMapToDouble(each -> each.standardisedResidual().stream())
            .boxed()
            .max(Comparator.comparingDouble(Math::abs));
    boolean isInFit = groups.stream().anyMatch(FittedGroup::isInFit);
    return List.of(
        Cell.text(dose == 0 ? "control" : fit.data().axis().inUnit(dose)),
        Cell.number(groups.size(), 0),
        Cell.number(count.exposed(), 0),
        Cell.number(count.responded(), 0),
        Cell.number(100 * count.share(), 1),
        Cell.text(percents(count.limits(fit.choices().confidence()))),
        Cell.number(groups.stream().mapToDouble(FittedGroup::expected).sum(), 2),
        largest.isPresent() && isInFit
            ? Cell.number(largest.get(), 2)
            : Cell.text(isInFit ? "not defined" : "not in the fit"));
  }

  private static List<Reference> sources(DoseResponseFit fit) {
    var sources = new ArrayList<Reference>();
    sources.add(BioassaySources.FINNEY_1971);
    if (fit.choices().limitMethod() == LimitMethod.FIELLER) {
      sources.add(BioassaySources.FIELLER_1954);
    }
    if (fit.groups().way == NaturalMortality.Way.ABBOTT) {
      sources.add(BioassaySources.ABBOTT_1925);
    }
    if (fit.choices().heterogeneity().when() == HeterogeneityRule.When.BELOW_LEVEL) {
      sources.add(BioassaySources.LEI_SUN_2018);
    }
    sources.add(BioassaySources.CLOPPER_PEARSON_1934);
    if (!fit.data().controls().isEmpty()) {
      sources.add(BioassaySources.CONTROL_CEILING);
    }
    return sources;
  }

  static Working working(DoseResponseFit fit) {
    var median = fit.lethalDose(50);
    double eta = fit.predictor(50);
    var a = Numbers.significant(fit.intercept(), 6);
    var b = Numbers.significant(fit.slope(), 6);
    var working =
        Working.of("From counts to the median lethal dose")
            .step(
                "Line by maximum likelihood",
                "F⁻¹(P) = a + b x, x = " + fit.choices().scale().words(),
                "",
                "a = " + a + ", b = " + b + " after " + fit.estimate().steps + " steps",
                BioassaySources.FINNEY_1971)
            .step("Goodness of fit", "X² = Σ (r − n P)² / (n P (1 − P))", "", goodness(fit))
            .step("Factor and deviate", "h, t", "", factor(fit))
            .step(
                "Median dose on the scale of the line",
                "θ = (F⁻¹(0.5) − a) / b",
                "(" + Numbers.significant(eta, 6) + " − (" + a + ")) / " + b,
                Numbers.significant(median.place(), 6))
            .step(
                "Fieller's g",
                "g = t² h Var(b) / b²",
                Numbers.significant(fit.deviate(), 6)
                    + "² × "
                    + Numbers.significant(fit.heterogeneityFactor(), 6)
                    + " × "
                    + Numbers.significant(fit.slopeStandardError(), 6)
                    + "² / "
                    + b
                    + "²",
                Numbers.significant(median.g(), 6),
                BioassaySources.FIELLER_1954)
            .step(
                "Median dose",
                "",
                "",
                fit.data().axis().print(median.dose())
                    + ", limits "
                    + fit.data().axis().limits(median.limits()));
    return working.withCautions(Caution.all());
  }
}
