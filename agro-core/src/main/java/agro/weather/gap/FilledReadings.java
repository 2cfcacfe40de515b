package agro.weather.gap;

import agro.source.Bibliography;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.TemperatureReadings;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.List;

/** A log of readings after filling; each filled reading is marked and has its standard error. */
public final class FilledReadings implements Presentable {

  private final TemperatureReadings observed;
  private final TemperatureReadings readings;
  private final double leastShare;
  private final List<Value> values;
  private final List<FilledStretch> stretches;
  private final List<ReadingGap> gaps;
  private final ReadingTrial trial;

  /** A reading, observed or filled. */
  record Value(long second, double celsius, double error, boolean isFilled) {}

  FilledReadings(
      TemperatureReadings observed,
      double leastShare,
      List<Value> values,
      List<FilledStretch> stretches,
      List<ReadingGap> gaps,
      ReadingTrial trial) {
    this.observed = observed;
    this.leastShare = leastShare;
    this.values = List.copyOf(values);
    this.stretches = List.copyOf(stretches);
    this.gaps = List.copyOf(gaps);
    this.trial = trial;
    readings =
        TemperatureReadings.of(
            observed.place(),
            observed.medium(),
            observed.dayOffset(),
            values.stream().mapToLong(Value::second).toArray(),
            values.stream().mapToDouble(Value::celsius).toArray());
  }

  /**
   * All readings, the filled ones among the observed.
   *
   * @return readings in order of time
   */
  public TemperatureReadings readings() {
    return readings;
  }

  /**
   * The readings before filling.
   *
   * @return what was observed, up to the day of issue if one was given
   */
  public TemperatureReadings observed() {
    return observed;
  }

  /**
   * Whether a reading was filled in.
   *
   * @param index place in {@link #readings()}
   * @return false for what was observed
   */
  public boolean isFilled(int index) {
    return values.get(index).isFilled();
  }

  /**
   * Standard error of a reading.
   *
   * @param index place in {@link #readings()}
   * @return °C; 0 for what was observed
   */
  public double standardErrorCelsius(int index) {
    return values.get(index).error();
  }

  /**
   * The gaps of the log.
   *
   * @return each with what was done, in order of time
   */
  public List<ReadingGap> gaps() {
    return gaps;
  }

  /**
   * The extremes of the days. A day is observed when no reading of it was filled and none is
   * missing; partly filled, with standard errors, when all that were missing have been filled and
   * at least the stated share of its readings is its own; and missing otherwise. The error of an
   * extreme comes from filling the same hours of other days, not from the errors of single
   * readings: a gap at noon spoils the maximum and leaves the minimum exact.
   *
   * @return the days from the first to the last that has a reading
   */
  public DailyTemperatures daily() {
    return new FilledDayAssembly(this, stretches, trial, leastShare).daily();
  }

  List<Value> values() {
    return values;
  }

  @Override
  public Presentation presentation() {
    var columns =
        List.of(
            Column.of("First missing"),
            Column.of("Length", "h"),
            Column.of("What was done"),
            Column.of("Standard error", "°C"),
            Column.of("Why so"));
    var rows =
        gaps.stream()
            .map(
                gap ->
                    List.of(
                        Cell.text(gap.first().toLocalDateTime().toString().replace('T', ' ')),
                        Cell.number(gap.length().toMinutes() / 60.0, 1),
                        Cell.text(gap.method().words()),
                        Cell.number(gap.errorCelsius(), 1),
                        Cell.text(gap.words())))
            .toList();
    var rule =
        "A day counts when every reading that it lacked could be filled and at least "
            + Numbers.plain(100 * leastShare)
            + " % of its readings are its own.";
    return Presentation.titled("Gaps between readings of " + readings.place())
        .fact("Readings observed", Integer.toString(observed.size()))
        .fact("Readings filled in", Integer.toString(readings.size() - observed.size()))
        .table(new ResultTable("Gaps and what was done about them", columns, rows, List.of(rule)))
        .sources(List.of(Bibliography.FILLING_OF_READINGS))
        .build();
  }

  @Override
  public String toString() {
    return readings + ", " + (readings.size() - observed.size()) + " filled in";
  }
}
