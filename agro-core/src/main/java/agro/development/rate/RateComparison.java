package agro.development.rate;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.stats.InformationCriteria;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Several rate models fitted to one rearing, side by side.
 *
 * @param data the rearing
 * @param entries a fit, or the reason why there is none, for each model in the order asked for
 */
public record RateComparison(RearingData data, List<Entry> entries) implements Presentable {

  /**
   * One model.
   *
   * @param fitting how it was fitted
   * @param fit the fit, if the data carry the model
   * @param refusal why there is none, else empty
   * @param weight Akaike weight among the models whose AICc is defined
   */
  public record Entry(
      RateFitting fitting, Optional<RateFit> fit, String refusal, OptionalDouble weight) {}

  /** Copies the list. */
  public RateComparison {
    entries = List.copyOf(entries);
  }

  /**
   * Fits all models but those that repeat another one in other parameters and the one for crops.
   *
   * @param data the rearing
   * @return the comparison
   */
  public static RateComparison of(RearingData data) {
    var fittings = new ArrayList<RateFitting>();
    for (var model : RateModel.values()) {
      boolean again =
          model == RateModel.INTRINSIC_OPTIMUM
              || model == RateModel.BETA_CARDINAL
              || model == RateModel.WANG_ENGEL;
      if (!again) {
        fittings.add(RateFitting.of(model));
      }
    }
    return of(data, fittings);
  }

  /**
   * Fits given models.
   *
   * @param data the rearing
   * @param fittings how each is fitted
   * @return the comparison
   */
  public static RateComparison of(RearingData data, List<RateFitting> fittings) {
    var progress = Progress.ofThread();
    var entries = new ArrayList<Entry>();
    for (var fitting : fittings) {
      progress.step("rate models", entries.size(), fittings.size());
      try {
        var fit = fitting.fit(data);
        entries.add(new Entry(fitting, Optional.of(fit), "", OptionalDouble.empty()));
      } catch (InputProblem problem) {
        entries.add(new Entry(fitting, Optional.empty(), problem.read(), OptionalDouble.empty()));
      }
    }
    progress.step("rate models", fittings.size(), fittings.size());
    return new RateComparison(data, weighed(entries));
  }

  /** Weights among the fits of the same rates by the same method as the first one. */
  private static List<Entry> weighed(List<Entry> entries) {
    var alike = entries.stream().filter(entry -> isComparable(entry, entries)).toList();
    var weights =
        InformationCriteria.weights(
            alike.stream().map(entry -> entry.fit().orElseThrow().criteria()).toList());
    var weighed = new ArrayList<Entry>();
    for (var entry : entries) {
      int at = alike.indexOf(entry);
      weighed.add(
          at < 0
              ? entry
              : new Entry(entry.fitting(), entry.fit(), entry.refusal(), weights.get(at)));
    }
    return weighed;
  }

  private static boolean isComparable(Entry entry, List<Entry> entries) {
    if (entry.fit().isEmpty()) {
      return false;
    }
    var most =
        entries.stream()
            .flatMap(other -> other.fit().stream())
            .mapToInt(fit -> fit.points().size())
            .max()
            .orElse(0);
    var first = entries.stream().flatMap(other -> other.fit().stream()).findFirst().orElseThrow();
    return entry.fit().get().points().size() == most
        && entry.fitting().weights() == first.fitting().weights()
        && entry.fitting().distribution().equals(first.fitting().distribution());
  }

  /**
   * The fit of a model.
   *
   * @param model the model
   * @return the first fit of it; empty when the data do not carry it or it was not asked for
   */
  public Optional<RateFit> fit(RateModel model) {
    return fits().stream().filter(fit -> fit.curve().model() == model).findFirst();
  }

  /**
   * All fits.
   *
   * @return the fits in order, possibly none
   */
  public List<RateFit> fits() {
    return entries.stream().flatMap(entry -> entry.fit().stream()).toList();
  }

  /**
   * The fits side by side.
   *
   * @return one row for each model
   */
  public ResultTable table() {
    var rows = entries.stream().map(RateComparison::row).toList();
    return ResultTable.of(
            "Rate models fitted to " + data.subject(),
            List.of(
                Column.of("Model"),
                Column.of("n"),
                Column.of("p"),
                Column.of("SSE"),
                Column.of("AICc"),
                Column.of("Weight"),
                Column.of("LT", "°C"),
                Column.of("Topt", "°C"),
                Column.of("rmax", "1/d"),
                Column.of("UT", "°C"),
                Column.of("Remarks")),
            rows)
        .withNote(
            "n: rates; p: parameters of the curve, to which AICc adds one for the scatter. Weights"
                + " share 1 among the models whose AICc is defined and which were fitted to the same"
                + " rates in the same way; they say nothing about models that are not here.");
  }

  private static List<Cell> row(Entry entry) {
    var model = entry.fitting().model().words();
    if (entry.fit().isEmpty()) {
      var none = Cell.text("");
      return List.of(
          Cell.text(model),
          none,
          none,
          none,
          none,
          none,
          none,
          none,
          none,
          none,
          Cell.text("not fitted: " + entry.refusal()));
    }
    var fit = entry.fit().get();
    var curve = fit.curve();
    return List.of(
        Cell.text(model + fixedWords(fit)),
        Cell.number(fit.points().size(), 0),
        Cell.number(fit.freeParameters(), 0),
        Cell.text(RatePages.significant(fit.sumOfSquares(), 7)),
        Cell.text(RatePages.corrected(fit.criteria().aicCorrected())),
        Cell.text(
            entry.weight().isPresent()
                ? Numbers.fixed(entry.weight().getAsDouble(), 3)
                : "not defined"),
        Cell.text(RatePages.orNone(curve.derived(DerivedPoint.LOWER_THRESHOLD))),
        Cell.text(RatePages.orNone(curve.derived(DerivedPoint.OPTIMUM))),
        Cell.text(RatePages.orNone(curve.derived(DerivedPoint.GREATEST_RATE))),
        Cell.text(RatePages.orNone(curve.derived(DerivedPoint.UPPER_THRESHOLD))),
        Cell.text(remarks(fit)));
  }

  private static String fixedWords(RateFit fit) {
    return fit.fitting().fixed().entrySet().stream()
        .map(
            one ->
                ", "
                    + fit.curve().model().parameters().get(one.getKey()).symbol()
                    + " = "
                    + Numbers.plain(one.getValue()))
        .collect(Collectors.joining());
  }

  private static String remarks(RateFit fit) {
    return fit.remarks().stream()
        .map(RateRemark::kind)
        .filter(kind -> kind != RateRemark.Kind.REPLICATION)
        .map(kind -> kind.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
        .distinct()
        .collect(Collectors.joining(", "));
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled("Rate models side by side").table(table());
    for (var fit : fits()) {
      fit.remarks().stream()
          .filter(remark -> remark.kind() != RateRemark.Kind.REPLICATION)
          .forEach(
              remark -> page.paragraph(fit.curve().model().words() + ": " + remark.text() + "."));
    }
    var sources = fits().stream().flatMap(fit -> fit.curve().model().sources().stream()).toList();
    return page.sources(sources).build();
  }
}
