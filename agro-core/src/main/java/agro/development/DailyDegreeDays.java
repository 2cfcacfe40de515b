package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import agro.weather.Medium;
import agro.weather.curve.SineAndDecayCurve;
import agro.working.Block;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * The degree-days of an unbroken run of days at one place, each with what it rests on. A day
 * without temperatures is in the run with NaN. Immutable.
 */
public final class DailyDegreeDays implements Presentable {

  /** A year and its lead-in; a longer page is no help to a reader. */
  private static final int MOST_DAYS_SHOWN = 400;

  private static final int MOST_RUNS_SHOWN = 12;

  private final DegreeDayModel model;
  private final String place;
  private final Medium medium;
  private final LocalDate firstDay;
  private final double[] valuesC;
  private final DayBasis[] bases;

  DailyDegreeDays(
      DegreeDayModel model,
      String place,
      Medium medium,
      LocalDate firstDay,
      double[] valuesC,
      DayBasis[] bases) {
    this.model = model;
    this.place = place;
    this.medium = medium;
    this.firstDay = firstDay;
    this.valuesC = valuesC;
    this.bases = bases;
  }

  /**
   * Degree-days of daily extremes. A method that looks at tomorrow takes tomorrow's minimum; where
   * that is not known, as on the last day, {@link DegreeDayMethod#withoutTomorrow()} stands in and
   * the day is marked {@link DayBasis#WITHOUT_TOMORROW}.
   *
   * @param model rule for the degree-days of a day
   * @param temperatures daily extremes
   * @return one value for each day of the series
   * @throws InputProblem when the method works on readings
   */
  public static DailyDegreeDays of(DegreeDayModel model, DailyTemperatures temperatures) {
    if (model.method().needsReadings()) {
      throw InputProblem.of("daily extremes for the " + model.method().words())
          .expected("readings with their times")
          .because("this method adds up what was measured and draws no curve through extremes")
          .mend("give the readings to ReadingSum, or take another method for extremes");
    }
    var days =
        DayByDay.of(
            model,
            temperatures.minimaCelsius(),
            temperatures.maximaCelsius(),
            i -> model.dayLength().orElseThrow().hours(temperatures.day(i)));
    return new DailyDegreeDays(
        model,
        temperatures.place(),
        temperatures.medium(),
        temperatures.firstDay(),
        days.valuesC(),
        days.bases());
  }

  /**
   * The rule for the degree-days of a day.
   *
   * @return the model
   */
  public DegreeDayModel model() {
    return model;
  }

  /**
   * Name of the place.
   *
   * @return the name as given
   */
  public String place() {
    return place;
  }

  /**
   * What the thermometer stood in.
   *
   * @return the medium
   */
  public Medium medium() {
    return medium;
  }

  /**
   * First day of the run.
   *
   * @return a day that may itself be missing
   */
  public LocalDate firstDay() {
    return firstDay;
  }

  /**
   * Last day of the run.
   *
   * @return a day that may itself be missing
   */
  public LocalDate lastDay() {
    return firstDay.plusDays(valuesC.length - 1L);
  }

  /**
   * Number of days, missing ones included.
   *
   * @return at least 1
   */
  public int size() {
    return valuesC.length;
  }

  /**
   * Degree-days of a day.
   *
   * @param day any day
   * @return °C·d; NaN when the day is missing or outside the run
   */
  public double degreeDaysC(LocalDate day) {
    int index = index(day);
    return index < 0 ? Double.NaN : valuesC[index];
  }

  /**
   * Degree-days of all days.
   *
   * @return a new array of {@link #size()} values in °C·d, NaN on missing days
   */
  public double[] valuesC() {
    return valuesC.clone();
  }

  /**
   * What the degree-days of a day rest on.
   *
   * @param day any day
   * @return the basis; {@link DayBasis#MISSING} outside the run
   */
  public DayBasis basis(LocalDate day) {
    int index = index(day);
    return index < 0 ? DayBasis.MISSING : bases[index];
  }

  /**
   * The days of one basis.
   *
   * @param basis the basis
   * @return the days in ascending order
   */
  public List<LocalDate> daysWith(DayBasis basis) {
    Objects.requireNonNull(basis, "basis");
    return IntStream.range(0, bases.length)
        .filter(i -> bases[i] == basis)
        .mapToObj(firstDay::plusDays)
        .toList();
  }

  /**
   * Sum over all days that are known.
   *
   * @return °C·d, which is too low when days are missing
   */
  public double knownTotalC() {
    return Arrays.stream(valuesC).filter(value -> !Double.isNaN(value)).sum();
  }

  /**
   * A part of the run. The days keep what they rest on.
   *
   * @param from first day wanted, inside the run
   * @param to last day wanted, inside the run and not before {@code from}
   * @return the days from {@code from} to {@code to}, both included
   * @throws InputProblem when the part reaches outside the run or is empty
   */
  public DailyDegreeDays between(LocalDate from, LocalDate to) {
    if (from.isAfter(to) || index(from) < 0 || index(to) < 0) {
      throw InputProblem.of("the days " + from + " to " + to + " of " + place)
          .expected("days inside the run, which goes from " + firstDay + " to " + lastDay())
          .because("there are no degree-days outside it")
          .mend("choose days inside the run, or read a longer log");
    }
    int end = index(to) + 1;
    return new DailyDegreeDays(
        model,
        place,
        medium,
        from,
        Arrays.copyOfRange(valuesC, index(from), end),
        Arrays.copyOfRange(bases, index(from), end));
  }

  /** The same days with other values for them, each with the same basis. */
  DailyDegreeDays withValues(double[] otherC) {
    return new DailyDegreeDays(model, place, medium, firstDay, otherC, bases);
  }

  /** Index of a day, or -1 outside the run. */
  private int index(LocalDate day) {
    long index = ChronoUnit.DAYS.between(firstDay, day);
    return index >= 0 && index < valuesC.length ? (int) index : -1;
  }

  /**
   * The days as a table.
   *
   * @return a row for each day with its degree-days, the sum of the known days up to its end, and
   *     what it rests on
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    double sum = 0;
    for (int i = 0; i < valuesC.length; i++) {
      sum += Double.isNaN(valuesC[i]) ? 0 : valuesC[i];
      rows.add(
          List.of(
              Cell.day(firstDay.plusDays(i)),
              Cell.number(valuesC[i], 2),
              Cell.number(sum, 1),
              Cell.text(bases[i] == DayBasis.COMPLETE ? "" : bases[i].words())));
    }
    return ResultTable.of(
        "Degree-days at " + place,
        List.of(
            Column.of("Day"),
            Column.of("Degree-days", "°C·d"),
            Column.of("Sum of known days", "°C·d"),
            Column.of("Remark")),
        rows);
  }

  /** Days so short or so long that the sine with decay was not made for them. */
  private List<LocalDate> daysOfUnusualLength() {
    if (!model.method().needsDayLength()) {
      return List.of();
    }
    var rule = model.dayLength().orElseThrow();
    return IntStream.range(0, size())
        .mapToObj(firstDay::plusDays)
        .filter(
            day ->
                rule.hours(day) < SineAndDecayCurve.SHORTEST_DAY
                    || rule.hours(day) > SineAndDecayCurve.LONGEST_DAY)
        .toList();
  }

  private static String runs(List<LocalDate> days) {
    var runs = DayRuns.of(days);
    return String.join(", ", runs.stream().limit(MOST_RUNS_SHOWN).map(DayRuns.Run::words).toList())
        + (runs.size() > MOST_RUNS_SHOWN
            ? " and " + (runs.size() - MOST_RUNS_SHOWN) + " more"
            : "");
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Degree-days at " + place)
            .fact("Method", model.method().words())
            .fact("Thresholds", model.thresholds().toString())
            .fact("Above the upper threshold", model.cutoff().meaning())
            .fact("Medium", medium.words())
            .fact("Days", firstDay + " to " + lastDay() + " (" + size() + ")")
            .fact("Sum of the known days", Numbers.fixed(knownTotalC(), 1) + " °C·d");
    model.dayLength().ifPresent(rule -> page.fact("Day length", rule.toString()));
    var unusual = daysOfUnusualLength();
    if (!unusual.isEmpty()) {
      page.fact(
          "Days outside the "
              + Numbers.plain(SineAndDecayCurve.SHORTEST_DAY)
              + " to "
              + Numbers.plain(SineAndDecayCurve.LONGEST_DAY)
              + " h that the curve is made for",
          runs(unusual));
    }
    for (var basis : DayBasis.values()) {
      var days = daysWith(basis);
      if (basis != DayBasis.COMPLETE && !days.isEmpty()) {
        page.fact("Days " + basis.words(), runs(days));
      }
    }
    if (size() <= MOST_DAYS_SHOWN) {
      page.block(new Block.Folded("Day by day", List.of(new Block.TableBlock(table()))));
    } else {
      page.paragraph("The days one by one are in table().");
    }
    return page.sources(List.of(model.method().source(), model.cutoff().source())).build();
  }

  @Override
  public String toString() {
    return place
        + ", "
        + model
        + ", "
        + firstDay
        + " to "
        + lastDay()
        + ": "
        + Numbers.fixed(knownTotalC(), 1)
        + " °C·d on known days";
  }
}
