package agro.season;

import agro.generation.KnownDayErrors;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.climate.StationOffset;
import agro.weather.gap.ErrorCorrelation;
import java.util.Optional;

/**
 * How the errors of bridged days hang together, from the differences of place and neighbour on the
 * days that both measured: their correlation with those of the day before, and between minima and
 * maxima of a day.
 */
final class BridgedDayErrors {

  private final double[] minima;
  private final double[] maxima;

  private BridgedDayErrors(
      DailyTemperatures own, DailyTemperatures neighbour, StationOffset offset) {
    minima = new double[own.size()];
    maxima = new double[own.size()];
    for (int i = 0; i < own.size(); i++) {
      var day = own.day(i);
      boolean both =
          own.originAt(i) == DayOrigin.OBSERVED
              && neighbour.covers(day)
              && neighbour.origin(day) == DayOrigin.OBSERVED;
      minima[i] =
          both
              ? own.minCelsius(day) - neighbour.minCelsius(day) - offset.minimum().meanCelsius()
              : Double.NaN;
      maxima[i] =
          both
              ? own.maxCelsius(day) - neighbour.maxCelsius(day) - offset.maximum().meanCelsius()
              : Double.NaN;
    }
  }

  /** Without a neighbour nothing is known of the errors, and the widest case is taken. */
  static KnownDayErrors of(
      DailyTemperatures own,
      Optional<DailyTemperatures> neighbour,
      Optional<StationOffset> offset) {
    if (neighbour.isEmpty() || offset.isEmpty()) {
      return KnownDayErrors.WIDEST;
    }
    return new KnownDayErrors(
        new BridgedDayErrors(own, neighbour.get(), offset.get()).correlation(),
        offset.get().errorMinCelsius(),
        offset.get().errorMaxCelsius());
  }

  private ErrorCorrelation correlation() {
    var ofMinima = correlation(minima, minima, 1);
    var ofMaxima = correlation(maxima, maxima, 1);
    // Errors that seem to cancel from day to day are taken as independent, which is wider.
    return new ErrorCorrelation(
        Math.max(0, (ofMinima + ofMaxima) / 2), correlation(minima, maxima, 0));
  }

  /** Correlation of deviations with those of another extreme some days before. */
  private static double correlation(double[] a, double[] b, int lag) {
    double products = 0;
    double ofA = 0;
    double ofB = 0;
    for (int i = lag; i < a.length; i++) {
      if (!Double.isNaN(a[i]) && !Double.isNaN(b[i - lag])) {
        products += a[i] * b[i - lag];
        ofA += a[i] * a[i];
        ofB += b[i - lag] * b[i - lag];
      }
    }
    double scale = Math.sqrt(ofA * ofB);
    return scale > 0 ? Math.max(-1, Math.min(1, products / scale)) : 0;
  }
}
