package agro.weather;

import agro.report.InputProblem;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Objects;

/**
 * Temperatures of one place in one medium at moments in ascending order, at equal or unequal
 * distances. A moment without a value is left out. Days are cut at midnight of one offset from UTC
 * all year, so that each has 24 hours. Immutable.
 */
public final class TemperatureReadings {

  private static final long DAY_SECONDS = 86_400;

  private final String place;
  private final Medium medium;
  private final ZoneOffset dayOffset;
  private final long[] epochSeconds;
  private final double[] celsius;

  private TemperatureReadings(
      String place, Medium medium, ZoneOffset dayOffset, long[] epochSeconds, double[] celsius) {
    this.place = place;
    this.medium = medium;
    this.dayOffset = dayOffset;
    this.epochSeconds = epochSeconds;
    this.celsius = celsius;
  }

  /**
   * Readings at moments in ascending order.
   *
   * @param place name of the place
   * @param medium what the thermometer stood in
   * @param dayOffset offset from UTC at whose midnight days are cut
   * @param epochSeconds seconds since 1970-01-01T00:00Z, ascending without repetition; copied
   * @param celsius temperatures in °C, as many as there are moments, all finite; copied
   * @return the readings
   * @throws InputProblem when the arrays differ in length, a moment is not after the one before it,
   *     or a temperature is not finite
   */
  public static TemperatureReadings of(
      String place, Medium medium, ZoneOffset dayOffset, long[] epochSeconds, double[] celsius) {
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(dayOffset, "dayOffset");
    var moments = epochSeconds.clone();
    var values = celsius.clone();
    if (moments.length != values.length) {
      throw InputProblem.of(
              place + ": " + moments.length + " times and " + values.length + " readings")
          .expected("as many temperatures as times")
          .because("each reading needs both")
          .mend("give both arrays for the same readings");
    }
    for (int i = 0; i < moments.length; i++) {
      requireOrder(place, moments, i);
      if (!Double.isFinite(values[i])) {
        throw InputProblem.of(
                place + ": a reading of " + values[i] + " at " + Instant.ofEpochSecond(moments[i]))
            .expected("a finite temperature in °C")
            .because("a moment without a value is no reading")
            .mend("leave the moment out; the gap is seen all the same");
      }
    }
    return new TemperatureReadings(place, medium, dayOffset, moments, values);
  }

  private static void requireOrder(String place, long[] moments, int index) {
    if (index > 0 && moments[index] <= moments[index - 1]) {
      throw InputProblem.of(
              place
                  + ": a reading at "
                  + Instant.ofEpochSecond(moments[index])
                  + " after one at "
                  + Instant.ofEpochSecond(moments[index - 1]))
          .expected("times in ascending order, each once")
          .because("readings out of order may hold a wrong date")
          .mend("sort the readings and look for a wrong time");
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
   * Offset from UTC at whose midnight days are cut.
   *
   * @return the offset, the same all year
   */
  public ZoneOffset dayOffset() {
    return dayOffset;
  }

  /**
   * Number of readings.
   *
   * @return 0 or more
   */
  public int size() {
    return epochSeconds.length;
  }

  /**
   * Moment of a reading.
   *
   * @param index 0 to {@code size() - 1}
   * @return seconds since 1970-01-01T00:00Z
   */
  public long epochSecond(int index) {
    return epochSeconds[index];
  }

  /**
   * Temperature of a reading.
   *
   * @param index 0 to {@code size() - 1}
   * @return °C
   */
  public double celsius(int index) {
    return celsius[index];
  }

  /**
   * The day that a reading falls on.
   *
   * @param index 0 to {@code size() - 1}
   * @return the calendar day at {@link #dayOffset()}
   */
  public LocalDate day(int index) {
    return LocalDate.ofEpochDay(
        Math.floorDiv(epochSeconds[index] + dayOffset.getTotalSeconds(), DAY_SECONDS));
  }

  /**
   * The moments of all readings.
   *
   * @return a new array of {@link #size()} seconds since 1970-01-01T00:00Z
   */
  public long[] epochSeconds() {
    return epochSeconds.clone();
  }

  /**
   * The temperatures of all readings.
   *
   * @return a new array of {@link #size()} values in °C
   */
  public double[] celsius() {
    return celsius.clone();
  }

  /**
   * Median distance of neighbouring readings.
   *
   * @return seconds; 0 for fewer than two readings
   */
  public long medianStepSeconds() {
    if (size() < 2) {
      return 0;
    }
    var steps = new long[size() - 1];
    for (int i = 1; i < size(); i++) {
      steps[i - 1] = epochSeconds[i] - epochSeconds[i - 1];
    }
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TemperatureReadings that
        && place.equals(that.place)
        && medium.equals(that.medium)
        && dayOffset.equals(that.dayOffset)
        && Arrays.equals(epochSeconds, that.epochSeconds)
        && Arrays.equals(celsius, that.celsius);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        place, medium, dayOffset, Arrays.hashCode(epochSeconds), Arrays.hashCode(celsius));
  }

  @Override
  public String toString() {
    return place
        + ", "
        + medium.words()
        + ", "
        + size()
        + " readings"
        + (size() == 0 ? "" : ", " + day(0) + " to " + day(size() - 1));
  }
}
