package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.units.TemperatureUnit;
import java.util.Arrays;

/**
 * Looks whether temperatures can be what they are taken for. Single values beyond the limits are
 * left out and reported; a log that as a whole looks like another unit is refused.
 */
final class Plausibility {

  static final double LOWEST_CELSIUS = -60;
  static final double HIGHEST_CELSIUS = 60;

  /** A median above this, days and nights together, is no weather that crops grow in. */
  private static final double HIGHEST_MEDIAN_CELSIUS = 40;

  /** Above the highest temperature of air that was ever measured, 56.7 °C. */
  private static final double HIGHEST_FAHRENHEIT = 140;

  private static final double LOWEST_KELVIN = 220;
  private static final double HIGHEST_KELVIN = 330;
  private static final double LARGEST_IMPLAUSIBLE_SHARE = 0.05;

  private final String file;
  private final TemperatureUnit unit;
  private final Tally dropped;
  private final double[] celsius;
  private int count;

  Plausibility(String file, TemperatureUnit unit, int mostValues) {
    this.file = file;
    this.unit = unit;
    this.celsius = new double[mostValues];
    this.dropped =
        new Tally(
            Deed.DROPPED,
            "a temperature outside "
                + Numbers.plain(LOWEST_CELSIUS)
                + " to "
                + Numbers.plain(HIGHEST_CELSIUS)
                + " °C when read in "
                + unit.symbol()
                + "; look at the sensor, and at the unit if there are many");
  }

  /** Takes a value into account; false when it must be left out. */
  boolean accepts(double valueCelsius, SourceLocation place) {
    boolean plausible = isPlausible(valueCelsius);
    if (!plausible) {
      leaveOut(place);
    }
    return plausible;
  }

  /**
   * Takes a value into account; false when it must be left out, which has then to be told by {@link
   * #leaveOut}. NaN is no value and false.
   */
  boolean isPlausible(double valueCelsius) {
    if (Double.isNaN(valueCelsius)) {
      return false;
    }
    celsius[count++] = valueCelsius;
    return valueCelsius >= LOWEST_CELSIUS && valueCelsius <= HIGHEST_CELSIUS;
  }

  /** Counts a value that was not plausible. */
  void leaveOut(SourceLocation place) {
    dropped.add(place);
  }

  /** Judges the log as a whole. */
  void judge(ReadReport.Collector collector) {
    if (count == 0) {
      return;
    }
    boolean oftenImplausible = dropped.count() > LARGEST_IMPLAUSIBLE_SHARE * count;
    if (oftenImplausible || isMedianAbove(HIGHEST_MEDIAN_CELSIUS)) {
      double median = median();
      throw InputProblem.at(
              SourceLocation.file(file),
              "half of the temperatures are above "
                  + Numbers.plain(unit.fromCelsius(median))
                  + " "
                  + unit.symbol()
                  + ", and "
                  + dropped.count()
                  + " of "
                  + count
                  + " lie outside -60 to 60 °C")
          .expected("temperatures of weather in " + unit.symbol())
          .because(suspicion(unit.fromCelsius(median)))
          .mend(
              looksLikeTenths()
                  ? "divide them by ten first; an archive's own fixed-width or by-station file is read"
                      + " as it is"
                  : "declare the unit in which the log is written");
    }
    dropped.tell(collector);
  }

  /** Counting costs a fraction of the sorting that the median itself would need. */
  private boolean isMedianAbove(double limit) {
    int notAbove = 0;
    for (int i = 0; i < count; i++) {
      notAbove += celsius[i] <= limit ? 1 : 0;
    }
    return notAbove <= count / 2;
  }

  private double median() {
    var sorted = Arrays.copyOf(celsius, count);
    Arrays.sort(sorted);
    return sorted[count / 2];
  }

  /** Whole numbers that no unit of weather has, but a tenth of which is weather in °C. */
  private boolean looksLikeTenths() {
    double largest = 0;
    double smallest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      double value = unit.fromCelsius(celsius[i]);
      if (value != Math.rint(value)) {
        return false;
      }
      largest = Math.max(largest, value);
      smallest = Math.min(smallest, value);
    }
    boolean mayBeKelvin = smallest > LOWEST_KELVIN && largest < HIGHEST_KELVIN;
    return unit != TemperatureUnit.KELVIN
        && !mayBeKelvin
        && largest > HIGHEST_FAHRENHEIT
        && largest < 10 * HIGHEST_CELSIUS;
  }

  private String suspicion(double median) {
    if (looksLikeTenths()) {
      return "the values look like tenths of a degree";
    }
    if (unit != TemperatureUnit.KELVIN && median > LOWEST_KELVIN && median < HIGHEST_KELVIN) {
      return "the values look like K";
    }
    if (unit == TemperatureUnit.CELSIUS && median > 20 && median < 120) {
      return "the values look like °F that are read as °C";
    }
    if (unit == TemperatureUnit.KELVIN && median < 120) {
      return "the values look like °C or °F that are read as K";
    }
    return "no weather has such temperatures, so the unit is likely another one";
  }
}
