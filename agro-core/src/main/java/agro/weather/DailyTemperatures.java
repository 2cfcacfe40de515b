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
  private final DayOrigin[] origins;

  private DailyTemperatures(
      String place,
      Medium medium,
      LocalDate firstDay,
      double[] minCelsius,
      double[] maxCelsius,
      DayOrigin[] origins) {
    this.place = place;
    this.medium = medium;
    this.firstDay = firstDay;
    this.minCelsius = minCelsius;
    this.maxCelsius = maxCelsius;
    this.origins = origins;
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
    requireAscending(place, days);
    var builder = new Builder(days.get(0).date(), days.get(days.size() - 1).date());
    days.forEach(day -> builder.put(day.date(), day.minCelsius(), day.maxCelsius(), origin));
    return builder.build(place, medium);
  }

  private static void requireAscending(String place, List<DailyExtremes> days) {
    for (int i = 1; i < days.size(); i++) {
      var before = days.get(i - 1).date();
      var day = days.get(i).date();
      if (!day.isAfter(before)) {
        var twice = day.equals(before);
        throw InputProblem.of(
                twice ? place + ": " + day + " twice" : place + ": " + day + " after " + before)
            .expected("every day once, in ascending order")
            .because(twice ? "two values for a day cannot both hold" : "the order shows mix-ups")
            .mend(twice ? "take one of the two out" : "sort the days and look for a wrong date");
      }
    }
  }

  /** Collects days before they become immutable. Days that are never put are missing. */
  static final class Builder {
    private final LocalDate firstDay;
    private final double[] minCelsius;
    private final double[] maxCelsius;
    private final DayOrigin[] origins;

    Builder(LocalDate firstDay, LocalDate lastDay) {
      int size = Math.toIntExact(ChronoUnit.DAYS.between(firstDay, lastDay) + 1);
      this.firstDay = firstDay;
      minCelsius = new double[size];
      maxCelsius = new double[size];
      origins = new DayOrigin[size];
      Arrays.fill(minCelsius, Double.NaN);
      Arrays.fill(maxCelsius, Double.NaN);
      Arrays.fill(origins, DayOrigin.MISSING);
    }

    void put(LocalDate day, double min, double max, DayOrigin origin) {
      putAt((int) ChronoUnit.DAYS.between(firstDay, day), min, max, origin);
    }

    void putAt(int index, double min, double max, DayOrigin origin) {
      minCelsius[index] = min;
      maxCelsius[index] = max;
      origins[index] = Objects.requireNonNull(origin);
      if ((origin == DayOrigin.MISSING) != (Double.isNaN(min) || Double.isNaN(max))) {
        throw new IllegalArgumentException("a day is missing exactly when it has no temperatures");
      }
    }

    /** Hands over the arrays, so that the builder must not be used afterwards. */
    DailyTemperatures build(String place, Medium medium) {
      return new DailyTemperatures(
          Objects.requireNonNull(place),
          Objects.requireNonNull(medium),
          firstDay,
          minCelsius,
          maxCelsius,
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
        filled.putAt(i, other.minCelsius[theirs], other.maxCelsius[theirs], other.origins[theirs]);
      }
    }
    return filled.build(place, medium);
  }

  /** Copies the days from a day on into a builder that spans them. */
  void copyInto(Builder target, LocalDate from) {
    for (int i = Math.max(0, (int) ChronoUnit.DAYS.between(firstDay, from)); i < size(); i++) {
      target.put(day(i), minCelsius[i], maxCelsius[i], origins[i]);
    }
  }

  /** Origin of the day at an index, for loops over all days. */
  DayOrigin originAt(int index) {
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
    return place
        + ", "
        + medium.words()
        + ", "
        + firstDay
        + " to "
        + lastDay()
        + " ("
        + size()
        + " days, "
        + (missing == 0 ? "none" : missing)
        + " missing)";
  }
}
