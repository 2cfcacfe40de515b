package agro.generation;

import agro.development.ThermalTimeError;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import org.hipparchus.util.FastMath;

/**
 * Error of the known sum of degree-days that comes from days which the place did not measure: the
 * errors of single days with the stated correlation, and the error of the neighbour's mean offset,
 * which is the same on all bridged days.
 */
final class KnownSpread {

  private final double[] variance;
  private double reference;

  KnownSpread(SeasonUnderWay season) {
    var known = season.known().between(season.firstDay(), season.known().lastDay());
    variance = new double[known.size() + 1];
    var errors = season.errors();
    if (hasErrors(known)) {
      var single =
          ThermalTimeError.of(season.model(), known, season.firstDay(), errors.correlation())
              .standardErrorsC();
      for (var i = 0; i < variance.length; i++) {
        variance[i] = single[i] * single[i];
      }
    }
    addOffset(season, known, errors.offsetMinCelsius(), 0);
    addOffset(season, known, 0, errors.offsetMaxCelsius());
  }

  private static boolean hasErrors(DailyTemperatures days) {
    for (var i = 0; i < days.size(); i++) {
      if (days.minStandardErrorCelsius(days.day(i)) > 0
          || days.maxStandardErrorCelsius(days.day(i)) > 0) {
        return true;
      }
    }
    return false;
  }

  private void addOffset(SeasonUnderWay season, DailyTemperatures known, double min, double max) {
    if (min == 0 && max == 0) {
      return;
    }
    var warmer = SeasonUnderWay.sums(season.model(), shifted(known, min, max));
    var colder = SeasonUnderWay.sums(season.model(), shifted(known, -min, -max));
    for (var i = 0; i < variance.length; i++) {
      var half = (warmer[i] - colder[i]) / 2;
      variance[i] += half * half;
    }
  }

  private static DailyTemperatures shifted(DailyTemperatures known, double toMin, double toMax) {
    var builder = DailyTemperatures.builder(known.firstDay(), known.lastDay());
    for (var i = 0; i < known.size(); i++) {
      var day = known.day(i);
      var bridged = known.originAt(i) == DayOrigin.NEIGHBOUR;
      var min = known.minCelsius(day) + (bridged ? toMin : 0);
      var max = known.maxCelsius(day) + (bridged ? toMax : 0);
      builder.putAt(i, FastMath.min(min, max), FastMath.max(min, max), known.originAt(i));
    }
    return builder.build(known.place(), known.medium());
  }

  /** Errors of days before the flight was seen are in its place on the scale already. */
  void countFrom(double days) {
    reference = varianceAt(days);
  }

  /** Standard error in °C·d of the sum some days after the season's start. */
  double errorC(double days) {
    return FastMath.sqrt(FastMath.max(0, varianceAt(days) - reference));
  }

  /** Standard error of the whole known sum. */
  double errorC() {
    return errorC(variance.length - 1.0);
  }

  private double varianceAt(double days) {
    var whole = (int) FastMath.min(days, variance.length - 2.0);
    var part = FastMath.min(1, days - whole);
    return variance[whole] + part * (variance[whole + 1] - variance[whole]);
  }
}
