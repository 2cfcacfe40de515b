package agro.weather.climate;

import agro.report.InputProblem;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.hipparchus.linear.RealMatrix;

/**
 * How normals are fitted: a least-squares harmonic curve through the observed days of each extreme.
 * The number of harmonics is the one with the smallest Schwarz criterion, in which successive days
 * count as n (1 - r) / (1 + r) independent ones for a lag-1 correlation r; otherwise persistent
 * weather would ask for more and more harmonics. The variance of a day about the curve is a
 * harmonic curve on a logarithmic scale. Immutable.
 */
public final class NormalsFit {

  /** Most harmonics that are tried. */
  public static final int MOST_HARMONICS = 4;

  /** Fewest observed days for normals. */
  public static final int LEAST_DAYS = 90;

  private static final int SPREAD_HARMONICS = 1;

  private final OptionalInt harmonics;

  private NormalsFit(OptionalInt harmonics) {
    this.harmonics = harmonics;
  }

  /**
   * The usual settings.
   *
   * @return harmonics by criterion
   */
  public static NormalsFit withDefaults() {
    return new NormalsFit(OptionalInt.empty());
  }

  /**
   * A stated number of harmonics for both extremes.
   *
   * @param number 0 to {@value #MOST_HARMONICS}
   * @return these settings with that number
   * @throws InputProblem outside this range
   */
  public NormalsFit harmonics(int number) {
    if (number < 0 || number > MOST_HARMONICS) {
      throw InputProblem.of(number + " harmonics")
          .expected("0 to " + MOST_HARMONICS)
          .because("more harmonics follow single years' weather and not the climate")
          .mend("give 2 or 3, or leave the number to the criterion");
    }
    return new NormalsFit(OptionalInt.of(number));
  }

  /**
   * Fits the normals of a place. Only observed days count, partly filled ones too.
   *
   * @param history daily extremes of one or more years
   * @return the normals
   * @throws InputProblem when there are fewer than {@value #LEAST_DAYS} observed days
   */
  public ClimateNormals fit(DailyTemperatures history) {
    var days = new ArrayList<LocalDate>();
    for (int i = 0; i < history.size(); i++) {
      if (isObserved(history.originAt(i))) {
        days.add(history.day(i));
      }
    }
    if (days.size() < LEAST_DAYS) {
      throw InputProblem.of(history.place() + ": normals from " + days.size() + " observed days")
          .expected("at least " + LEAST_DAYS + " observed days, better several years")
          .because("a few weeks do not tell what is usual")
          .mend("read a longer history, or fill gaps from a neighbour instead");
    }
    var phases = days.stream().mapToDouble(YearPhase::of).toArray();
    var minimum = new Fitted(history, days, phases, Extreme.MINIMUM);
    var maximum = new Fitted(history, days, phases, Extreme.MAXIMUM);
    double together = correlation(minimum.standardised, maximum.standardised, 0, days);
    return new ClimateNormals(this, history, days, minimum.curve, maximum.curve, together);
  }

  static boolean isObserved(DayOrigin origin) {
    return origin == DayOrigin.OBSERVED || origin == DayOrigin.PARTLY_FILLED;
  }

  /** One extreme after the fit. */
  private final class Fitted {
    private final NormalCurve curve;
    private final double[] standardised;

    Fitted(DailyTemperatures history, List<LocalDate> days, double[] phases, Extreme extreme) {
      var values = days.stream().mapToDouble(day -> extreme.of(history, day)).toArray();
      var richest = new HarmonicFit(phases, MOST_HARMONICS);
      var roughest = richest.residuals(values, richest.coefficients(values));
      double independent = days.size() * independentShare(correlation(roughest, roughest, 1, days));
      var criteria = new ArrayList<Double>();
      int best = 0;
      for (int h = 0; h <= MOST_HARMONICS; h++) {
        var fit = new HarmonicFit(phases, h);
        criteria.add(criterion(fit.residuals(values, fit.coefficients(values)), h, independent));
        best = criteria.get(h) < criteria.get(best) ? h : best;
      }
      int chosen = harmonics.orElse(best);
      var fit = new HarmonicFit(phases, chosen);
      var coefficients = fit.coefficients(values);
      var residuals = fit.residuals(values, coefficients);
      double freedom = days.size() - (2.0 * chosen + 1);
      var squares = new double[residuals.length];
      double variance = 0;
      for (int i = 0; i < squares.length; i++) {
        squares[i] = residuals[i] * residuals[i] * days.size() / freedom;
        variance += squares[i] / squares.length;
      }
      var logVariance = new HarmonicFit(phases, SPREAD_HARMONICS).logVariance(squares);
      standardised = standardised(residuals, logVariance, phases);
      double lag1 = correlation(standardised, standardised, 1, days);
      RealMatrix covariance =
          fit.unitCovariance().scalarMultiply(variance / independentShare(lag1));
      curve = new NormalCurve(coefficients, logVariance, covariance, lag1, criteria);
    }
  }

  private static double[] standardised(double[] residuals, double[] logVariance, double[] phases) {
    var scores = new double[residuals.length];
    for (int i = 0; i < scores.length; i++) {
      var basis = YearPhase.basis(phases[i], (logVariance.length - 1) / 2);
      double log = 0;
      for (int k = 0; k < basis.length; k++) {
        log += logVariance[k] == 0 ? 0 : logVariance[k] * basis[k];
      }
      scores[i] = Double.isInfinite(log) ? 0 : residuals[i] * Math.exp(-0.5 * log);
    }
    return scores;
  }

  /** Schwarz's criterion with the number of independent days in the place of all. */
  private static double criterion(double[] residuals, int harmonics, double independent) {
    double squares = 0;
    for (double residual : residuals) {
      squares += residual * residual;
    }
    double variance = Math.max(squares / residuals.length, Double.MIN_NORMAL);
    return independent * Math.log(variance) + (2 * harmonics + 1) * Math.log(independent);
  }

  /** Independent days for each day, of days whose neighbours are so correlated. */
  static double independentShare(double lag1) {
    double positive = Math.min(0.99, Math.max(0, lag1));
    return (1 - positive) / (1 + positive);
  }

  /** Correlation of a day's score with the one so many days later, about zero; 0 without pairs. */
  static double correlation(double[] first, double[] later, int lag, List<LocalDate> days) {
    double products = 0;
    double firsts = 0;
    double laters = 0;
    for (int i = 0; i + lag < first.length; i++) {
      if (days.get(i).plusDays(lag).equals(days.get(i + lag))) {
        products += first[i] * later[i + lag];
        firsts += first[i] * first[i];
        laters += later[i + lag] * later[i + lag];
      }
    }
    double scale = Math.sqrt(firsts * laters);
    return scale > 0 ? products / scale : 0;
  }
}
