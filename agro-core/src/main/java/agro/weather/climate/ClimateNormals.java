package agro.weather.climate;

import agro.report.InputProblem;
import agro.source.Bibliography;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.weather.Medium;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What is usual at a place on each day of the year: smooth normals of the daily minimum and the
 * daily maximum, with the spread of single days about them and the persistence of that weather. A
 * day of the year without enough observed days around it has no normal. Immutable.
 */
public final class ClimateNormals implements Presentable {

  /** Days on each side of a day of the year in which its normal needs observed days. */
  public static final int NEARBY_DAYS = 15;

  /** Fewest observed days so near. */
  public static final int LEAST_NEARBY = 10;

  /** Years that climate normals usually rest on. */
  public static final int USUAL_YEARS = 30;

  private static final int LEAP_YEAR = 2000;
  private static final double DAYS_OF_YEAR = 365.25;

  private final NormalsFit settings;
  private final DailyTemperatures history;
  private final NormalCurve minimum;
  private final NormalCurve maximum;
  private final double minToMax;
  private final int days;
  private final List<Integer> years;
  private final List<Boolean> covered;

  ClimateNormals(
      NormalsFit settings,
      DailyTemperatures history,
      List<LocalDate> observed,
      NormalCurve minimum,
      NormalCurve maximum,
      double minToMax) {
    this.settings = settings;
    this.history = history;
    this.minimum = minimum;
    this.maximum = maximum;
    this.minToMax = minToMax;
    days = observed.size();
    years = observed.stream().map(LocalDate::getYear).distinct().toList();
    covered = YearCover.of(observed);
  }

  /**
   * Normals of a place with the usual settings.
   *
   * @param history daily extremes of one or more years; filled and forecast days do not count
   * @return the normals
   * @throws InputProblem when there are fewer than {@link NormalsFit#LEAST_DAYS} observed days
   */
  public static ClimateNormals of(DailyTemperatures history) {
    return NormalsFit.withDefaults().fit(history);
  }

  /**
   * The normals that were known at the end of a day: fitted again without everything after it.
   *
   * @param day last day whose temperatures may be used
   * @return the normals; these when their history ends on or before that day
   * @throws InputProblem when too few observed days are left
   */
  public ClimateNormals asOf(LocalDate day) {
    if (!history.lastDay().isAfter(day)) {
      return this;
    }
    if (history.firstDay().isAfter(day)) {
      throw InputProblem.of(history.place() + ": normals as of " + day)
          .expected("a day on or after " + history.firstDay() + ", the first of the history")
          .because("nothing was known before it")
          .mend("ask as of a later day, or read an older history");
    }
    return settings.fit(history.upTo(day));
  }

  /**
   * Name of the place.
   *
   * @return the name as given
   */
  public String place() {
    return history.place();
  }

  /**
   * What the thermometer stood in.
   *
   * @return the medium
   */
  public Medium medium() {
    return history.medium();
  }

  /**
   * The curve of one extreme.
   *
   * @param extreme minimum or maximum
   * @return coefficients, persistence and criteria
   */
  public NormalCurve curve(Extreme extreme) {
    return extreme == Extreme.MINIMUM ? minimum : maximum;
  }

  /**
   * Correlation of the departures of minimum and maximum on one day.
   *
   * @return -1 to 1
   */
  public double minToMaxCorrelation() {
    return minToMax;
  }

  /**
   * Calendar years with observed days.
   *
   * @return ascending
   */
  public List<Integer> years() {
    return years;
  }

  /**
   * Number of observed days that the normals rest on.
   *
   * @return at least {@link NormalsFit#LEAST_DAYS}
   */
  public int days() {
    return days;
  }

  /**
   * Whether there is a normal for a day.
   *
   * @param day any day
   * @return true when at least {@value #LEAST_NEARBY} observed days of all years lie within {@value
   *     #NEARBY_DAYS} days of that day of the year
   */
  public boolean knows(LocalDate day) {
    return covered.get(YearCover.index(day));
  }

  /**
   * The usual value of an extreme.
   *
   * @param extreme minimum or maximum
   * @param day any day of any year
   * @return °C; NaN where there is no normal
   */
  public double normalCelsius(Extreme extreme, LocalDate day) {
    return knows(day) ? curve(extreme).mean(YearPhase.of(day)) : Double.NaN;
  }

  /**
   * Standard deviation of single days about the normal.
   *
   * @param extreme minimum or maximum
   * @param day any day of any year
   * @return °C; NaN where there is no normal
   */
  public double spreadCelsius(Extreme extreme, LocalDate day) {
    return knows(day) ? curve(extreme).spread(YearPhase.of(day)) : Double.NaN;
  }

  /**
   * Standard error of the normal itself, with the persistence of the weather.
   *
   * @param extreme minimum or maximum
   * @param day any day of any year
   * @return °C; NaN where there is no normal
   */
  public double normalErrorCelsius(Extreme extreme, LocalDate day) {
    return knows(day) ? curve(extreme).meanError(YearPhase.of(day)) : Double.NaN;
  }

  /**
   * What a single day may miss its normal by: spread and error of the normal together.
   *
   * @param extreme minimum or maximum
   * @param day any day of any year
   * @return standard error in °C; NaN where there is no normal
   */
  public double predictionErrorCelsius(Extreme extreme, LocalDate day) {
    return Math.hypot(spreadCelsius(extreme, day), normalErrorCelsius(extreme, day));
  }

  /**
   * The normals as a series of days.
   *
   * @param from first day
   * @param to last day, not before the first
   * @return days of origin {@link DayOrigin#CLIMATE_NORMAL} with the error of a single day; days
   *     without a normal are missing
   * @throws InputProblem when the days are out of order
   */
  public DailyTemperatures series(LocalDate from, LocalDate to) {
    if (to.isBefore(from)) {
      throw InputProblem.of("normals from " + from + " to " + to)
          .expected("a last day that is not before the first")
          .because("a series runs forward")
          .mend("swap the days");
    }
    var builder = DailyTemperatures.builder(from, to);
    from.datesUntil(to.plusDays(1)).filter(this::knows).forEach(day -> put(builder, day));
    return builder.build(place(), medium());
  }

  private void put(DailyTemperatures.Builder builder, LocalDate day) {
    double min = normalCelsius(Extreme.MINIMUM, day);
    double max = normalCelsius(Extreme.MAXIMUM, day);
    builder.put(
        day,
        Math.min(min, max),
        Math.max(min, max),
        predictionErrorCelsius(Extreme.MINIMUM, day),
        predictionErrorCelsius(Extreme.MAXIMUM, day),
        DayOrigin.CLIMATE_NORMAL);
  }

  /**
   * What the normals rest on and what is short.
   *
   * @return sentences
   */
  public List<String> notes() {
    var notes = new ArrayList<String>();
    double length = days / DAYS_OF_YEAR;
    notes.add(
        "From "
            + days
            + " observed days, "
            + Numbers.fixed(length, 1)
            + " years in all, of "
            + years.get(0)
            + " to "
            + years.get(years.size() - 1)
            + ".");
    if (length < USUAL_YEARS - 0.5) {
      notes.add(
          "Normals usually rest on "
              + USUAL_YEARS
              + " years. With fewer, warm and cold years of chance are in them, and the spread"
              + " between years is poorly known.");
    }
    var open = YearCover.openRuns(covered);
    if (!open.isEmpty()) {
      notes.add(
          "No normals "
              + String.join(", ", open)
              + ": fewer than "
              + LEAST_NEARBY
              + " observed days within "
              + NEARBY_DAYS
              + " days.");
    }
    return notes;
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (int month = 1; month <= 12; month++) {
      rows.add(row(Year.of(LEAP_YEAR).atMonth(month).atDay(15)));
    }
    var columns =
        List.of(
            Column.of("Middle of month"),
            Column.of("Usual minimum", "°C"),
            Column.of("Spread of minima (sd)", "°C"),
            Column.of("Usual maximum", "°C"),
            Column.of("Spread of maxima (sd)", "°C"));
    return Presentation.titled("What is usual at " + place())
        .fact("Harmonics of the minima", Integer.toString(minimum.harmonics()))
        .fact("Harmonics of the maxima", Integer.toString(maximum.harmonics()))
        .fact("Correlation with the day before, minima", Numbers.fixed(minimum.lag1(), 2))
        .fact("Correlation with the day before, maxima", Numbers.fixed(maximum.lag1(), 2))
        .fact("Correlation of a day's minimum and maximum", Numbers.fixed(minToMax, 2))
        .table(new ResultTable("Smooth daily normals", columns, rows, notes()))
        .sources(
            List.of(Bibliography.EPSTEIN_1991, Bibliography.SCHWARZ_1978, Bibliography.WMO_NORMALS))
        .build();
  }

  private List<Cell> row(LocalDate day) {
    return List.of(
        Cell.text(YearCover.words(day)),
        Cell.number(normalCelsius(Extreme.MINIMUM, day), 1),
        Cell.number(spreadCelsius(Extreme.MINIMUM, day), 1),
        Cell.number(normalCelsius(Extreme.MAXIMUM, day), 1),
        Cell.number(spreadCelsius(Extreme.MAXIMUM, day), 1));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ClimateNormals that
        && history.equals(that.history)
        && minimum.coefficients().equals(that.minimum.coefficients())
        && maximum.coefficients().equals(that.maximum.coefficients());
  }

  @Override
  public int hashCode() {
    return Objects.hash(history, minimum.coefficients(), maximum.coefficients());
  }

  @Override
  public String toString() {
    return "normals of "
        + place()
        + " from "
        + days
        + " observed days of "
        + years.get(0)
        + " to "
        + years.get(years.size() - 1);
  }
}
