package agro.weather;

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
    celsius[count++] = valueCelsius;
    if (valueCelsius >= LOWEST_CELSIUS && valueCelsius <= HIGHEST_CELSIUS) {
      return true;
    }
    dropped.add(place);
    return false;
  }

  /** Judges the log as a whole. */
  void judge(ReadReport.Collector collector) {
    if (count == 0) {
      return;
    }
    double median = median();
    boolean oftenImplausible = dropped.count() > LARGEST_IMPLAUSIBLE_SHARE * count;
    if (oftenImplausible || median > HIGHEST_MEDIAN_CELSIUS) {
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
          .mend("declare the unit in which the log is written");
    }
    dropped.tell(collector);
  }

  private double median() {
    var sorted = Arrays.copyOf(celsius, count);
    Arrays.sort(sorted);
    return sorted[count / 2];
  }

  private String suspicion(double median) {
    if (unit != TemperatureUnit.KELVIN && median > 220 && median < 330) {
      return "the values look like K";
    }
    if (unit == TemperatureUnit.CELSIUS && median > 20 && median < 120) {
      return "the values look like °F that are read as °C";
    }
    return "no weather has such temperatures, so the unit is likely another one";
  }
}
