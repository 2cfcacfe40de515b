package agro.weather;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The daily extremes of one place in one medium: an unbroken run of calendar days, each with its
 * origin. A day that is not known is in the run with origin {@link DayOrigin#MISSING} and NaN for
 * both temperatures. Immutable.
 */
public final class DailyTemperatures {

  private final String place;
  private final Medium medium;
  private final LocalDate firstDay;
  private final double[] minCelsius;
  private final double[] maxCelsius;
  private final double[] minErrorCelsius;
  private final double[] maxErrorCelsius;
  private final DayOrigin[] origins;

  private DailyTemperatures(
      String place,
      Medium medium,
      LocalDate firstDay,
      double[] minCelsius,
      double[] maxCelsius,
      double[] minErrorCelsius,
      double[] maxErrorCelsius,
      DayOrigin[] origins) {
    this.place = place;
    this.medium = medium;
    this.firstDay = firstDay;
    this.minCelsius = minCelsius;
    this.maxCelsius = maxCelsius;
    this.minErrorCelsius = minErrorCelsius;
    this.maxErrorCelsius = maxErrorCelsius;
    this.origins = origins;
  }

  /**
   * Days to be put one by one into an unbroken run.
   *
   * @param firstDay first day of the run
   * @param lastDay last day of the run, not before the first
   * @return a builder in which every day is missing as yet
   */
  public static Builder builder(LocalDate firstDay, LocalDate lastDay) {
    return new Builder(firstDay, lastDay);
  }

  /**
   * A series from days in ascending order. Days that are left out between the first and the last
   * one become {@link DayOrigin#MISSING}.
   *
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param days at least one day, in ascending order without repetition
   * @param origin origin of all the days given, not {@code MISSING}
   * @return the series
   * @throws InputProblem when there is no day, a day comes twice, or the order is broken
   */
  public static DailyTemperatures of(
      String place, Medium medium, List<DailyExtremes> days, DayOrigin origin) {
    if (days.isEmpty()) {
      throw InputProblem.of("a list of daily extremes for " + place + " without any day")
          .expected("at least one day")
          .because("a temperature series has a first and a last day")
          .mend("give the days, or look why nothing was left of the log");
    }
    DailyExtremes.requireAscending(place, days);
    var builder = new Builder(days.get(0).date(), days.get(days.size() - 1).date());
    days.forEach(day -> builder.put(day.date(), day.minCelsius(), day.maxCelsius(), origin));
    return builder.build(place, medium);
  }

  /** Collects days before they become immutable. Days that are never put are missing. */
  public static final class Builder {
    private final LocalDate firstDay;
    private double[] minCelsius;
    private final double[] maxCelsius;
    private final double[] minErrorCelsius;
    private final double[] maxErrorCelsius;
    private final DayOrigin[] origins;

    Builder(LocalDate firstDay, LocalDate lastDay) {
      int size = Math.toIntExact(ChronoUnit.DAYS.between(firstDay, lastDay) + 1);
      this.firstDay = firstDay;
      minCelsius = new double[size];
      maxCelsius = new double[size];
      minErrorCelsius = new double[size];
      maxErrorCelsius = new double[size];
      origins = new DayOrigin[size];
      Arrays.fill(minCelsius, Double.NaN);
      Arrays.fill(maxCelsius, Double.NaN);
      Arrays.fill(origins, DayOrigin.MISSING);
    }

    /**
     * Puts a day whose extremes are taken as exact.
     *
     * @param day a day of the run
     * @param min lowest temperature in °C, NaN for a missing day
     * @param max highest temperature in °C, not below the lowest, NaN for a missing day
     * @param origin where they come from
     */
    public void put(LocalDate day, double min, double max, DayOrigin origin) {
      putAt((int) ChronoUnit.DAYS.between(firstDay, day), min, max, origin);
    }

    /**
     * Puts a day with the standard errors of its extremes.
     *
     * @param day a day of the run
     * @param min lowest temperature in °C
     * @param max highest temperature in °C, not below the lowest
     * @param minError standard error of the lowest temperature in °C, 0 or more
     * @param maxError standard error of the highest temperature in °C, 0 or more
     * @param origin where they come from
     */
    public void put(
        LocalDate day, double min, double max, double minError, double maxError, DayOrigin origin) {
      int index = (int) ChronoUnit.DAYS.between(firstDay, day);
      putAt(index, min, max, origin);
      if (!(minError >= 0 && maxError >= 0)) {
        throw new IllegalArgumentException(
            "standard errors of 0 or more are needed, not " + minError + " and " + maxError);
      }
      minErrorCelsius[index] = minError;
      maxErrorCelsius[index] = maxError;
    }

    /**
     * Puts a day by its place in the run, with extremes taken as exact.
     *
     * @param index 0 for the first day
     * @param min lowest temperature in °C, NaN for a missing day
     * @param max highest temperature in °C, NaN for a missing day
     * @param origin where they come from
     */
    public void putAt(int index, double min, double max, DayOrigin origin) {
      minCelsius[index] = min;
      maxCelsius[index] = max;
      minErrorCelsius[index] = 0;
      maxErrorCelsius[index] = 0;
      origins[index] = Objects.requireNonNull(origin);
      if ((origin == DayOrigin.MISSING) != (Double.isNaN(min) || Double.isNaN(max))) {
        throw new IllegalArgumentException("a day is missing exactly when it has no temperatures");
      }
      if (min > max) {
        throw new IllegalArgumentException("a minimum of " + min + " above a maximum of " + max);
      }
    }

    private void copyAt(int index, DailyTemperatures source, int from) {
      putAt(index, source.minCelsius[from], source.maxCelsius[from], source.origins[from]);
      minErrorCelsius[index] = source.minErrorCelsius[from];
      maxErrorCelsius[index] = source.maxErrorCelsius[from];
    }

    /**
     * The run. It takes the arrays of this builder over, so that the builder cannot be used
     * afterwards.
     *
     * @param place name of the place
     * @param medium what the thermometer stood in
     * @return the series
     */
    public DailyTemperatures build(String place, Medium medium) {
      var minima = Objects.requireNonNull(minCelsius, "a builder builds once");
      minCelsius = null;
      return new DailyTemperatures(
          Objects.requireNonNull(place),
          Objects.requireNonNull(medium),
          firstDay,
          minima,
          maxCelsius,
          minErrorCelsius,
          maxErrorCelsius,
          origins);
    }
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
    return firstDay.plusDays(origins.length - 1L);
  }

  /**
   * Number of days of the run, missing ones included.
   *
   * @return at least 1
   */
  public int size() {
    return origins.length;
  }

  /**
   * The calendar day at a place in the run.
   *
   * @param index 0 to {@code size() - 1}
   * @return the day
   * @throws IndexOutOfBoundsException outside the run
   */
  public LocalDate day(int index) {
    return firstDay.plusDays(Objects.checkIndex(index, size()));
  }

  /**
   * Whether a day lies inside the run.
   *
   * @param day any day
   * @return true also for missing days between the first and the last one
   */
  public boolean covers(LocalDate day) {
    return !day.isBefore(firstDay) && !day.isAfter(lastDay());
  }

  /**
   * Lowest temperature of a day.
   *
   * @param day any day
   * @return °C; NaN when the day is missing or outside the run
   */
  public double minCelsius(LocalDate day) {
    int index = index(day);
    return index < 0 ? Double.NaN : minCelsius[index];
  }

  /**
   * Highest temperature of a day.
   *
   * @param day any day
   * @return °C; NaN when the day is missing or outside the run
   */
  public double maxCelsius(LocalDate day) {
    int index = index(day);
    return index < 0 ? Double.NaN : maxCelsius[index];
  }

  /**
   * Both extremes of a day.
   *
   * @param day any day
   * @return the extremes, or nothing when the day is missing or outside the run
   */
  public Optional<DailyExtremes> extremes(LocalDate day) {
    int index = index(day);
    return index < 0 || origins[index] == DayOrigin.MISSING
        ? Optional.empty()
        : Optional.of(new DailyExtremes(day, minCelsius[index], maxCelsius[index]));
  }

  /**
   * Where the temperatures of a day come from.
   *
   * @param day any day
   * @return the origin; {@link DayOrigin#MISSING} outside the run
   */
  public DayOrigin origin(LocalDate day) {
    int index = index(day);
    return index < 0 ? DayOrigin.MISSING : origins[index];
  }

  /**
   * The lowest temperatures of all days.
   *
   * @return a new array of {@link #size()} values in °C, NaN on missing days
   */
  public double[] minimaCelsius() {
    return minCelsius.clone();
  }

  /**
   * The highest temperatures of all days.
   *
   * @return a new array of {@link #size()} values in °C, NaN on missing days
   */
  public double[] maximaCelsius() {
    return maxCelsius.clone();
  }

  /**
   * Standard error of the lowest temperature of a day.
   *
   * @param day any day
   * @return °C; 0 for a day whose extremes are taken as exact, NaN when the day is missing or
   *     outside the run
   */
  public double minStandardErrorCelsius(LocalDate day) {
    return error(minErrorCelsius, day);
  }

  /**
   * Standard error of the highest temperature of a day.
   *
   * @param day any day
   * @return °C; 0 for a day whose extremes are taken as exact, NaN when the day is missing or
   *     outside the run
   */
  public double maxStandardErrorCelsius(LocalDate day) {
    return error(maxErrorCelsius, day);
  }

  private double error(double[] errors, LocalDate day) {
    int index = index(day);
    return index < 0 || origins[index] == DayOrigin.MISSING ? Double.NaN : errors[index];
  }

  /**
   * The days without temperatures.
   *
   * @return the missing days in ascending order
   */
  public List<LocalDate> missingDays() {
    return IntStream.range(0, size())
        .filter(index -> origins[index] == DayOrigin.MISSING)
        .mapToObj(this::day)
        .toList();
  }

  /**
   * A part of the run.
   *
   * @param from first day wanted, inside the run
   * @param to last day wanted, inside the run and not before {@code from}
   * @return the days from {@code from} to {@code to}, both included
   * @throws InputProblem when the part reaches outside the run or is empty
   */
  public DailyTemperatures between(LocalDate from, LocalDate to) {
    if (from.isAfter(to) || !covers(from) || !covers(to)) {
      throw InputProblem.of("the days " + from + " to " + to + " of " + place)
          .expected("days inside the run, which goes from " + firstDay + " to " + lastDay())
          .because("there are no temperatures outside it")
          .mend("choose days inside the run, or read a longer log");
    }
    int first = index(from);
    int end = index(to) + 1;
    return new DailyTemperatures(
        place,
        medium,
        from,
        Arrays.copyOfRange(minCelsius, first, end),
        Arrays.copyOfRange(maxCelsius, first, end),
        Arrays.copyOfRange(minErrorCelsius, first, end),
        Arrays.copyOfRange(maxErrorCelsius, first, end),
        Arrays.copyOfRange(origins, first, end));
  }

  /**
   * What was known at the end of a day: the run without everything after it.
   *
   * @param day last day to keep, not before the first day of the run
   * @return the run up to that day; the whole run when it ends earlier
   * @throws InputProblem when the day is before the first day of the run
   */
  public DailyTemperatures upTo(LocalDate day) {
    return day.isAfter(lastDay()) ? this : between(firstDay, day);
  }

  /**
   * This run, continued by another one after its last day. Days up to the last day of this run stay
   * as they are, missing ones too; days between the two runs are missing.
   *
   * @param later a run that reaches past the last day of this one, in the same kind of medium
   * @return the joined run under this place and medium; this run when {@code later} ends earlier
   * @throws InputProblem when one is of air and the other of soil
   */
  public DailyTemperatures followedBy(DailyTemperatures later) {
    later.medium.require(medium.kind(), "the run to be continued");
    if (!later.lastDay().isAfter(lastDay())) {
      return this;
    }
    var joined = new Builder(firstDay, later.lastDay());
    copyInto(joined, firstDay);
    later.copyInto(joined, lastDay().plusDays(1));
    return joined.build(place, medium);
  }

  /**
   * This run with its missing days taken from another one where that has them. The origin of a
   * filled day is the one that the other run gives.
   *
   * @param other a run in the same kind of medium
   * @return the filled run, of the same days as this one
   * @throws InputProblem when one is of air and the other of soil
   */
  public DailyTemperatures filledFrom(DailyTemperatures other) {
    other.medium.require(medium.kind(), "the run to be filled");
    var filled = new Builder(firstDay, lastDay());
    copyInto(filled, firstDay);
    for (int i = 0; i < size(); i++) {
      int theirs = other.index(day(i));
      if (origins[i] == DayOrigin.MISSING && theirs >= 0) {
        filled.copyAt(i, other, theirs);
      }
    }
    return filled.build(place, medium);
  }

  /**
   * Copies days with origin and error into a builder.
   *
   * @param target a builder that spans the days
   * @param from first day to copy; the days before it are left as they are in the builder
   */
  public void copyInto(Builder target, LocalDate from) {
    for (int i = Math.max(0, (int) ChronoUnit.DAYS.between(firstDay, from)); i < size(); i++) {
      target.copyAt((int) ChronoUnit.DAYS.between(target.firstDay, day(i)), this, i);
    }
  }

  /**
   * Origin of the day at an index, for loops over all days.
   *
   * @param index 0 to {@code size() - 1}
   * @return the origin
   */
  public DayOrigin originAt(int index) {
    return origins[index];
  }

  /** Index of a day, or -1 outside the run. */
  private int index(LocalDate day) {
    long index = ChronoUnit.DAYS.between(firstDay, day);
    return index >= 0 && index < origins.length ? (int) index : -1;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DailyTemperatures that
        && place.equals(that.place)
        && medium.equals(that.medium)
        && firstDay.equals(that.firstDay)
        && Arrays.equals(minCelsius, that.minCelsius)
        && Arrays.equals(maxCelsius, that.maxCelsius)
        && Arrays.equals(minErrorCelsius, that.minErrorCelsius)
        && Arrays.equals(maxErrorCelsius, that.maxErrorCelsius)
        && Arrays.equals(origins, that.origins);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        place, medium, firstDay, Arrays.hashCode(minCelsius), Arrays.hashCode(maxCelsius));
  }

  @Override
  public String toString() {
    int missing = missingDays().size();
    var run = place + ", " + medium.words() + ", " + firstDay + " to " + lastDay();
    return run + " (" + size() + " days, " + (missing == 0 ? "none" : missing) + " missing)";
  }
}
