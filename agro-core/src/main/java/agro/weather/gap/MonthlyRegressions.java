package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * Regressions of a place on a neighbour for each calendar month, on days observed at both. A month
 * with too few pairs takes those of the months beside it, then those of all the year.
 */
final class MonthlyRegressions {

  private enum Basis {
    MONTH,
    THREE_MONTHS,
    YEAR
  }

  private final DailyTemperatures series;
  private final DailyTemperatures neighbour;
  private final Extreme extreme;
  private final int leastPairs;
  private final LocalDate[] days;
  private final double[] x;
  private final double[] y;
  private final Map<Month, PairedRegression> lines = new EnumMap<>(Month.class);
  private final Map<Month, Basis> bases = new EnumMap<>(Month.class);
  private final double lag1;

  MonthlyRegressions(
      DailyTemperatures series, DailyTemperatures neighbour, Extreme extreme, int leastPairs) {
    this.series = series;
    this.neighbour = neighbour;
    this.extreme = extreme;
    this.leastPairs = leastPairs;
    days =
        series
            .firstDay()
            .datesUntil(series.lastDay().plusDays(1))
            .filter(this::isPair)
            .toArray(LocalDate[]::new);
    x = new double[days.length];
    y = new double[days.length];
    for (int i = 0; i < days.length; i++) {
      x[i] = extreme.of(neighbour, days[i]);
      y[i] = extreme.of(series, days[i]);
    }
    if (isUsable()) {
      for (var month : Month.values()) {
        fit(month);
      }
    }
    lag1 = isUsable() ? residualCorrelation(1, this) : 0;
  }

  private boolean isPair(LocalDate day) {
    return isObserved(series.origin(day)) && isObserved(neighbour.origin(day));
  }

  private static boolean isObserved(DayOrigin origin) {
    return origin == DayOrigin.OBSERVED || origin == DayOrigin.PARTLY_FILLED;
  }

  private void fit(Month month) {
    var chosen = new int[days.length];
    for (var basis : Basis.values()) {
      int count = 0;
      for (int i = 0; i < days.length; i++) {
        if (belongs(days[i].getMonth(), month, basis)) {
          chosen[count++] = i;
        }
      }
      if (count >= leastPairs) {
        lines.put(month, PairedRegression.of(x, y, chosen, count));
        bases.put(month, basis);
        return;
      }
    }
  }

  private static boolean belongs(Month day, Month wanted, Basis basis) {
    int apart = Math.floorMod(day.getValue() - wanted.getValue(), 12);
    return switch (basis) {
      case MONTH -> apart == 0;
      case THREE_MONTHS -> apart <= 1 || apart == 11;
      case YEAR -> true;
    };
  }

  Extreme extreme() {
    return extreme;
  }

  boolean isUsable() {
    return days.length >= leastPairs;
  }

  int pairs() {
    return days.length;
  }

  int leastPairs() {
    return leastPairs;
  }

  PairedRegression of(Month month) {
    return lines.get(month);
  }

  /** Which pairs the line of a month rests on. */
  String basis(Month month) {
    var name = month.name().charAt(0) + month.name().substring(1).toLowerCase(Locale.ROOT);
    return "regression on "
        + of(month).pairs()
        + " days of "
        + switch (bases.get(month)) {
          case MONTH -> name;
          case THREE_MONTHS -> name + " and the months beside it";
          case YEAR -> "all the year";
        };
  }

  /** Correlation of the residuals of neighbouring days. */
  double lag1() {
    return lag1;
  }

  /** How much the persistence of residuals enlarges the variance of the line. */
  double inflation() {
    double positive = Math.max(0, Math.min(0.9, lag1));
    return (1 + positive) / (1 - positive);
  }

  /** Residual of a day in standard deviations of its month; NaN without a pair. */
  double standardised(LocalDate day) {
    var line = lines.get(day.getMonth());
    if (line == null || !(line.deviation() > 0)) {
      return Double.NaN;
    }
    return (extreme.of(series, day) - line.value(extreme.of(neighbour, day))) / line.deviation();
  }

  /** Correlation of the residuals of one day with those of another extreme. */
  double correlationWith(MonthlyRegressions other) {
    return isUsable() ? residualCorrelation(0, other) : 0;
  }

  private double residualCorrelation(int lag, MonthlyRegressions other) {
    double products = 0;
    double squares = 0;
    double others = 0;
    for (var day : days) {
      double mine = standardised(day);
      double theirs = other.standardised(day.plusDays(lag));
      if (Double.isFinite(mine * theirs)) {
        products += mine * theirs;
        squares += mine * mine;
        others += theirs * theirs;
      }
    }
    double scale = Math.sqrt(squares * others);
    return scale > 0 ? products / scale : 0;
  }
}
