package agro.notebook.page;

import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.TreatmentMean;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyCourse.CoursePoint;
import agro.trial.efficacy.TrialEfficacy;
import agro.trial.load.LoadMeasure;
import agro.trial.load.TrialLoad;
import agro.trial.load.TrialValue;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A line for each treatment, with what each part of a page says of it. */
final class SummaryTable {

  private final TrialParts parts;
  private final List<Column> columns = new ArrayList<>();
  private final List<List<Cell>> rows = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private SummaryTable(TrialParts parts) {
    this.parts = parts;
  }

  static ResultTable of(TrialParts parts) {
    return new SummaryTable(parts).table();
  }

  private ResultTable table() {
    var treatments = parts.trial().treatments();
    columns.add(Column.of("Treatment"));
    treatments.forEach(treatment -> rows.add(new ArrayList<>(List.of(Cell.text(treatment)))));
    parts.first().ifPresent(this::means);
    parts.course().ifPresent(this::efficacies);
    parts.load().ifPresent(this::loads);
    parts.value().ifPresent(this::values);
    return new ResultTable(
        "The trial in one table",
        columns,
        rows,
        notes.isEmpty() ? List.of() : List.of(String.join(" ", notes)));
  }

  /** What a column says of a treatment. */
  private interface Entry {
    Cell of(String treatment);
  }

  private void fill(Entry entry) {
    var treatments = parts.trial().treatments();
    for (int i = 0; i < treatments.size(); i++) {
      rows.get(i).add(entry.of(treatments.get(i)));
    }
  }

  private void means(AnalysedTrial analysed) {
    var means = analysed.treatmentMeans();
    double most =
        means.means().stream()
            .flatMapToDouble(mean -> mean.mean().stream())
            .map(Math::abs)
            .max()
            .orElse(1);
    int decimals = (int) Math.max(0, Math.min(4, 2 - Math.floor(Math.log10(Math.max(most, 1e-9)))));
    columns.add(Column.of(analysed.subject().title(), analysed.subject().unit()));
    fill(treatment -> known(mean(analysed, treatment), decimals));
    if (!means.method().isEmpty()) {
      columns.add(
          Column.of(means.means().stream().anyMatch(SummaryTable::starred) ? "Mark" : "Letters"));
      fill(
          treatment ->
              Cell.text(
                  means.means().stream()
                      .filter(one -> one.label().equals(treatment))
                      .map(TreatmentMean::mark)
                      .findFirst()
                      .orElse("")));
      notes.add(
          "Means compared by "
              + means.method()
              + " at "
              + Numbers.plain(100 * analysed.subject().level())
              + " %"
              + (analysed.subject().transformation().isNone()
                  ? "."
                  : " on the scale of the "
                      + analysed.subject().transformation().words()
                      + " and carried back."));
    }
  }

  private static boolean starred(TreatmentMean mean) {
    return mean.mark().contains("*");
  }

  private static OptionalDouble mean(AnalysedTrial analysed, String treatment) {
    return analysed.treatmentMeans().means().stream()
        .filter(one -> one.label().equals(treatment))
        .findFirst()
        .map(TreatmentMean::mean)
        .orElse(OptionalDouble.empty());
  }

  private void efficacies(EfficacyCourse course) {
    var first = course.dates().values().iterator().next();
    for (var date : course.dates().keySet()) {
      long day = ChronoUnit.DAYS.between(course.treated(), date);
      columns.add(Column.of("Efficacy, day " + day, "%"));
      fill(
          treatment ->
              efficacy(
                  first,
                  treatment,
                  course.points(treatment).stream()
                      .filter(point -> point.daysAfter() == day)
                      .findFirst()
                      .map(CoursePoint::percent)
                      .orElse(OptionalDouble.empty())));
    }
    notes.add("Efficacy: " + first.formula().title() + ", blocks together.");
  }

  /** Against the control nothing is held but the treatments. */
  private static Cell efficacy(TrialEfficacy any, String treatment, OptionalDouble percent) {
    return treatment.equals(any.control())
        ? Cell.text("")
        : Cell.text(percent.isPresent() ? Numbers.fixed(percent.getAsDouble(), 0) : Cell.NOT_KNOWN);
  }

  private void loads(TrialLoad load) {
    columns.add(Column.of("Load", load.unitWords()));
    int decimals = load.settings().measure() == LoadMeasure.AREA ? 0 : 2;
    fill(
        treatment -> {
          var mean = load.meansByTreatment().get(treatment);
          return mean == null ? Cell.notKnown() : Cell.number(mean, decimals);
        });
    load.notes().forEach(note -> notes.add("Load: " + note + "."));
  }

  private void values(TrialValue value) {
    var money = value.settings().prices().get(0).currency().getCurrencyCode() + "/ha";
    columns.add(Column.of("Net gain", money));
    columns.add(Column.of("Limits", Numbers.plain(100 * value.settings().level()) + " %"));
    fill(
        treatment ->
            Cell.text(
                treatment.equals(value.settings().control())
                    ? ""
                    : Numbers.fixed(value.treatment(treatment).netGain(), 0)));
    fill(
        treatment ->
            Cell.text(
                treatment.equals(value.settings().control())
                    ? ""
                    : value
                        .treatment(treatment)
                        .netLimits()
                        .map(
                            limits ->
                                Numbers.fixed(limits.low(), 0)
                                    + " to "
                                    + Numbers.fixed(limits.high(), 0))
                        .orElse("none")));
  }

  private static Cell known(OptionalDouble value, int decimals) {
    return value.isPresent() ? Cell.number(value.getAsDouble(), decimals) : Cell.notKnown();
  }
}
