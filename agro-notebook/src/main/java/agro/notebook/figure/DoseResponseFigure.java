package agro.notebook.figure;

import agro.report.InputProblem;
import agro.trial.bioassay.DoseResponseFit;
import agro.trial.bioassay.LethalDose;
import agro.trial.bioassay.NaturalMortality;
import agro.trial.bioassay.SeriesComparison;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Share of animals responding by dose: what was counted with exact binomial limits, upright; the
 * fitted curve with its band; lethal doses with their limits, level; natural mortality.
 */
public final class DoseResponseFigure {

  private static final double[] USUAL_LEVELS = {50, 90};

  private final List<DoseCurve> curves;
  private final DoseResponseFit one;

  private DoseResponseFigure(List<DoseCurve> curves) {
    this.curves = curves;
    this.one = curves.get(0).fit();
  }

  /**
   * Draws one curve with its doses for 50 and 90 %.
   *
   * @param fit the fit
   * @return the figure
   */
  public static DrawnFigure of(DoseResponseFit fit) {
    return of(fit, USUAL_LEVELS);
  }

  /**
   * Draws one curve with the doses for stated shares.
   *
   * @param fit the fit
   * @param percents levels of the lethal doses, each above 0 and below 100; none for the curve
   *     alone
   * @return the figure
   * @throws InputProblem when a level is out of range
   */
  public static DrawnFigure of(DoseResponseFit fit, double... percents) {
    return new DoseResponseFigure(List.of(DoseCurve.of("", fit, percents))).draw("");
  }

  /**
   * Draws the curves of all series, each fitted by itself, with their doses for 50 %.
   *
   * @param comparison the comparison
   * @return the figure
   */
  public static DrawnFigure of(SeriesComparison comparison) {
    return of(comparison, 50);
  }

  /**
   * Draws the curves of all series, each fitted by itself, with the doses for stated shares.
   *
   * @param comparison the comparison
   * @param percents levels of the lethal doses, each above 0 and below 100; none for the curves
   *     alone
   * @return the figure
   * @throws InputProblem when a level is out of range
   */
  public static DrawnFigure of(SeriesComparison comparison, double... percents) {
    var curves =
        comparison.series().stream()
            .map(name -> DoseCurve.of(name, comparison.fit(name), percents))
            .toList();
    return new DoseResponseFigure(curves).draw(comparison.data().title());
  }

  private DrawnFigure draw(String title) {
    var heading = title.isEmpty() ? one.data().title() : title;
    var sheet =
        new FigureSheet(
            "Dose-response" + (heading.isEmpty() ? "" : ": " + heading),
            subheading(),
            List.of(new DoseResponsePlot(curves).panel()));
    return new DrawnFigure(sheet, alternative(), caption(), data());
  }

  private String confidence() {
    return Numbers.plain(100 * one.choices().confidence()) + " %";
  }

  private boolean hasSingleGroups() {
    return curves.stream().anyMatch(each -> !each.singleGroups().isEmpty());
  }

  private String subheading() {
    return "Filled: all animals of a dose"
        + (hasSingleGroups() ? "; grey rings: single groups" : "")
        + ". Upright and level bars and shading: "
        + confidence()
        + " limits. Diamond: lethal dose.";
  }

  private String alternative() {
    var axis = one.data().axis();
    var text = new StringBuilder(400);
    text.append("Share of animals responding by ")
        .append(axis.words())
        .append(one.choices().scale().isLogarithm() ? ", on a log axis" : "")
        .append(", with ")
        .append(curves.size() == 1 ? "one fitted curve." : curves.size() + " fitted curves.");
    for (var curve : curves) {
      var counts = curve.counts();
      text.append(' ')
          .append(curve.name().isEmpty() ? "" : FigureWords.sentence(curve.name()) + ": ")
          .append(Numbers.significant(curve.lowestDose(), 4))
          .append(" to ")
          .append(axis.inUnit(curve.highestDose()))
          .append(", from ")
          .append(percent(counts.get(curve.lowestDose()).share()))
          .append(" to ")
          .append(percent(counts.get(curve.highestDose()).share()))
          .append(" responding");
      if (curve.fit().naturalMortality() > 0) {
        text.append("; natural mortality ").append(percent(curve.fit().naturalMortality()));
      }
      curve.doses().forEach(dose -> text.append("; ").append(words(dose)));
      text.append('.');
    }
    return text.toString();
  }

  private static String percent(double share) {
    return Numbers.fixed(100 * share, 1) + " %";
  }

  private String words(LethalDose dose) {
    var axis = one.data().axis();
    return "LD"
        + Numbers.plain(dose.percent())
        + " "
        + axis.inUnit(dose.dose())
        + ", limits "
        + axis.limits(dose.limits());
  }

  private String caption() {
    var choices = one.choices();
    var factors =
        curves.stream()
            .filter(each -> each.fit().isHeterogeneityApplied())
            .map(
                each ->
                    Numbers.fixed(each.fit().heterogeneityFactor(), 2)
                        + (each.name().isEmpty() ? "" : " (" + each.name() + ")"))
            .collect(Collectors.joining(", "));
    return "End point: "
        + one.data().endPoint().words()
        + ". Curve: maximum likelihood, "
        + link()
        + " on "
        + choices.scale().words()
        + ". Upright limits are exact binomial ones of all animals of a dose together, as if each"
        + " animal had its own luck; level limits are those of the lethal dose ("
        + choices.limitMethod().words()
        + ", "
        + choices.information().words()
        + " information), "
        + (factors.isEmpty()
            ? "without a factor of heterogeneity"
            : "with the factor of heterogeneity " + factors)
        + "."
        + (isCorrected()
            ? " The curve was fitted to corrected numbers and is drawn with the natural mortality"
                + " put back; its band lacks the error of that share."
            : "")
        + " An arrow: no limit on that side, or one far outside the doses tested."
        + " A bioassay says nothing about a rate in the field.";
  }

  private String link() {
    return switch (one.choices().link()) {
      case PROBIT -> "probit";
      case LOGIT -> "logit";
      default -> "complementary log-log";
    };
  }

  private boolean isCorrected() {
    return one.choices().natural().way() == NaturalMortality.Way.ABBOTT;
  }

  private ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (var curve : curves) {
      curve
          .counts()
          .forEach(
              (dose, count) -> {
                var limits = count.limits(curve.fit().choices().confidence());
                var row = new ArrayList<Cell>();
                row.add(Cell.text(curve.name().isEmpty() ? "all" : curve.name()));
                row.add(Cell.text(Numbers.significant(dose, 6)));
                row.add(Cell.number(count.exposed(), 0));
                row.add(Cell.number(count.responded(), 0));
                row.add(Cell.number(100 * count.share(), 1));
                row.add(Cell.number(100 * limits.low(), 1));
                row.add(Cell.number(100 * limits.high(), 1));
                row.addAll(fitted(curve, dose));
                rows.add(row);
              });
    }
    var table = ResultTable.of("Counted and fitted shares", columns(), rows);
    for (var curve : curves) {
      for (var dose : curve.doses()) {
        table =
            table.withNote(
                (curve.name().isEmpty() ? "" : FigureWords.sentence(curve.name()) + ": ")
                    + words(dose)
                    + ".");
      }
    }
    return table;
  }

  private List<Column> columns() {
    return List.of(
        Column.of("Series"),
        Column.of("Dose", one.data().axis().unit()),
        Column.of("Animals"),
        Column.of("Responding"),
        Column.of("Share", "%"),
        Column.of("Lower limit", "%"),
        Column.of("Upper limit", "%"),
        Column.of("Curve", "%"),
        Column.of("Lower band", "%"),
        Column.of("Upper band", "%"));
  }

  private static List<Cell> fitted(DoseCurve curve, double dose) {
    if (dose == 0 && curve.isOnLogarithm()) {
      return List.of(
          Cell.number(100 * curve.fit().naturalMortality(), 1), Cell.text(""), Cell.text(""));
    }
    var point = curve.at(dose);
    return List.of(
        Cell.number(100 * point.share(), 1),
        Cell.number(100 * point.low(), 1),
        Cell.number(100 * point.high(), 1));
  }
}
