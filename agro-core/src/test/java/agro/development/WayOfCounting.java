package agro.development;

import agro.units.Temperature;
import agro.weather.Medium;
import agro.weather.TemperatureReadings;
import agro.weather.curve.CurveDay;
import agro.weather.sun.DayLength;
import agro.weather.sun.Latitude;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;

/** Every way in which the library counts the degree-days of one day, behind one call. */
enum WayOfCounting {
  AVERAGE_MEAN_LIMITED(DegreeDayMethod.AVERAGE_MEAN_LIMITED),
  AVERAGE_EXTREMES_LIMITED(DegreeDayMethod.AVERAGE_EXTREMES_LIMITED),
  SINGLE_TRIANGLE(DegreeDayMethod.SINGLE_TRIANGLE),
  DOUBLE_TRIANGLE(DegreeDayMethod.DOUBLE_TRIANGLE),
  SINGLE_SINE(DegreeDayMethod.SINGLE_SINE),
  DOUBLE_SINE(DegreeDayMethod.DOUBLE_SINE),
  SINE_AND_DECAY(DegreeDayMethod.SINE_AND_DECAY),
  READINGS_ON_LINES(ReadingRule.STRAIGHT_LINES),
  READINGS_HELD(ReadingRule.HELD),
  READINGS_WITH_MEAN_RATES(ReadingRule.MEAN_OF_RATES);

  /** Share of the way from the end of the half day to the maximum, every three hours. */
  private static final double[] HEIGHTS = {0, 0.2, 0.6, 0.9, 1, 0.7, 0.3, 0.1, 0};

  private static final long SECONDS = 10_800;

  private final DegreeDayMethod method;
  private final ReadingRule rule;

  WayOfCounting(DegreeDayMethod method) {
    this.method = method;
    this.rule = null;
  }

  WayOfCounting(ReadingRule rule) {
    this.method = DegreeDayMethod.SUM_OVER_READINGS;
    this.rule = rule;
  }

  DegreeDayMethod method() {
    return method;
  }

  boolean allows(UpperCutoff cutoff) {
    return method.allows(cutoff);
  }

  /** Degree-days of a day with all that any method may ask for. */
  double count(CurveDay day, double lower, double upper, UpperCutoff cutoff) {
    var thresholds = Thresholds.between(new Temperature(lower), new Temperature(upper));
    var model =
        new DegreeDayModel(
            method, thresholds, cutoff, Optional.of(DayLength.at(Latitude.north(46))));
    if (rule == null) {
      return model.degreeDaysC(day);
    }
    var first = LocalDate.of(2001, 5, 17);
    long midnight = first.toEpochDay() * 86_400;
    var moments = new long[HEIGHTS.length];
    var celsius = new double[HEIGHTS.length];
    for (int i = 0; i < HEIGHTS.length; i++) {
      moments[i] = midnight + i * SECONDS;
      double low = i <= 4 ? day.minCelsius() : day.endCelsius();
      celsius[i] = low + HEIGHTS[i] * (day.maxCelsius() - low);
    }
    var readings =
        TemperatureReadings.of("Sand Lane", Medium.shelterAir(), ZoneOffset.UTC, moments, celsius);
    return new ReadingSum(model, rule, Duration.ofHours(3), 1).daily(readings).degreeDaysC(first);
  }
}
