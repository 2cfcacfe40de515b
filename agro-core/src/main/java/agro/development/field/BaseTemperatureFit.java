package agro.development.field;

import agro.development.DegreeDayMethod;
import agro.source.Reference;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Base temperatures by all criteria, side by side.
 *
 * @param durations the seasons or sites
 * @param estimates one for each criterion, in the order of {@link BaseCriterion}
 * @param daily curve of the day when daily temperatures were used, or nothing for closed forms
 */
public record BaseTemperatureFit(
    List<FieldDuration> durations, List<BaseEstimate> estimates, Optional<DegreeDayMethod> daily)
    implements Presentable {

  /** Below this many seasons an interval is rough (common practice, no source). */
  private static final int FEW_SEASONS = 8;

  /** Makes the lists immutable. */
  public BaseTemperatureFit {
    durations = List.copyOf(durations);
    estimates = List.copyOf(estimates);
    Objects.requireNonNull(daily, "daily");
  }

  /**
   * The estimate by one criterion.
   *
   * @param criterion the criterion
   * @return its estimate
   */
  public BaseEstimate by(BaseCriterion criterion) {
    return estimates.stream()
        .filter(each -> each.criterion() == criterion)
        .findFirst()
        .orElseThrow();
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Base temperature from durations in the field")
            .fact("Seasons or sites", Integer.toString(durations.size()))
            .fact(
                "Days below the base",
                daily
                    .map(method -> "count as nothing, by the " + method.words())
                    .orElse("are taken not to occur: closed forms on mean temperatures"))
            .table(table());
    page.paragraph(
        "The standard deviation in degree-days falls as the base rises, because the degree-days"
            + " themselves shrink; compare bases by the scatter in days or by the coefficient of"
            + " variation.");
    if (durations.size() < FEW_SEASONS) {
      page.paragraph(
          "With "
              + durations.size()
              + " seasons the intervals are rough: take them as the least that is uncertain.");
    }
    var sources = new LinkedHashSet<Reference>();
    estimates.forEach(each -> sources.add(each.criterion().source()));
    return page.sources(List.copyOf(sources)).build();
  }

  private ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : estimates) {
      rows.add(
          List.of(
              Cell.text(each.criterion().words()),
              each.celsius().isPresent()
                  ? Cell.number(each.celsius().getAsDouble(), 2)
                  : Cell.notKnown(),
              each.interval().map(i -> Cell.number(i.low(), 2)).orElse(Cell.notKnown()),
              each.interval().map(i -> Cell.number(i.high(), 2)).orElse(Cell.notKnown()),
              Cell.number(each.meanDegreeDaysC(), 1),
              Cell.number(each.sdDegreeDaysC(), 2),
              Cell.number(each.sdDays(), 2),
              Cell.number(100 * each.variation(), 2),
              Cell.text(each.remark())));
    }
    var table =
        ResultTable.of(
            "Base temperatures",
            List.of(
                Column.of("Criterion"),
                Column.of("Base", "°C"),
                Column.of(level() + "from", "°C"),
                Column.of(level() + "to", "°C"),
                Column.of("Mean degree-days", "°C·d"),
                Column.of("SD", "°C·d"),
                Column.of("SD", "d"),
                Column.of("CV", "%"),
                Column.of("Remark")),
            rows);
    return lost().map(table::withNote).orElse(table);
  }

  private String level() {
    return estimates.stream()
        .flatMap(each -> each.interval().stream())
        .findFirst()
        .map(interval -> Numbers.plain(100 * interval.level()) + " % ")
        .orElse("interval ");
  }

  /** How many resamples gave no base, for the criterion that lost most. */
  private Optional<String> lost() {
    return estimates.stream()
        .flatMap(each -> each.interval().stream())
        .max(Comparator.comparingInt(BaseInterval::failed))
        .map(
            most ->
                "Intervals: whole seasons resampled "
                    + most.resamples()
                    + " times, studentised; up to "
                    + most.failed()
                    + " resamples gave no base and were left out.");
  }
}
