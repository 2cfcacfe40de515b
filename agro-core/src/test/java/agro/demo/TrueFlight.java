package agro.demo;

import agro.development.ThermalTimeScale;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a trap that is always in order, with a fresh lure, would see of one generation in one
 * season: nightly shares of the whole flight. Adults that did not emerge before the season's end,
 * and nights that they did not live to see, stay in the whole, so that a flight cut short by the
 * cold never reaches its later shares.
 */
public final class TrueFlight {
  private static final int DUSK_HOUR = 21;

  private final int generation;
  private final HourlyScale scale;
  private final double[] nightly;

  TrueFlight(int generation, HourlyScale scale, double[] nightlyShares) {
    this.generation = generation;
    this.scale = scale;
    nightly = nightlyShares.clone();
  }

  /** 1 for the overwintered adults, 2 for their offspring, and so on. */
  public int generation() {
    return generation;
  }

  /** Share of the flight in the night that begins on a day; 0 outside the season. */
  public double share(LocalDate day) {
    long night = day.toEpochDay() - scale.start().toEpochDay();
    return night < 0 || night >= nightly.length ? 0 : nightly[(int) night];
  }

  /** Share of the flight that the season lets happen, 0 to 1. */
  public double shareInSeason() {
    double sum = 0;
    for (double share : nightly) {
      sum += share;
    }
    return sum;
  }

  /** The day on whose evening the given share of the flight is passed; empty: not this season. */
  public Optional<LocalDate> dateOf(double share) {
    double hour = hourOf(share);
    return Double.isNaN(hour) ? Optional.empty() : Optional.of(scale.day((int) hour));
  }

  /** True hourly degree-days at which the given share is passed; NaN: not this season. */
  public double degreeDaysCOf(double share) {
    double hour = hourOf(share);
    return Double.isNaN(hour) ? Double.NaN : scale.at(hour);
  }

  /** Days, with their fraction, from the start of the season's first day; NaN: not this season. */
  public double daysOf(double share) {
    return hourOf(share) / 24;
  }

  /**
   * The same moment on another scale that counts from the same day, such as the one of a daily
   * sine; NaN when it is not reached this season or not on that scale.
   */
  public double degreeDaysCOf(double share, ThermalTimeScale other) {
    var day = dateOf(share);
    if (day.isEmpty() || day.get().isAfter(other.lastDay())) {
      return Double.NaN;
    }
    double part = daysOf(share) % 1;
    return (1 - part) * other.degreeDaysCAtStartOf(day.get())
        + part * other.degreeDaysCAtStartOf(day.get().plusDays(1));
  }

  private double hourOf(double share) {
    double sum = 0;
    for (int night = 0; night < nightly.length; night++) {
      if (sum + nightly[night] >= share && nightly[night] > 0) {
        double part = (share - sum) / nightly[night];
        return Math.max(0, (night - 1 + part) * 24.0 + DUSK_HOUR);
      }
      sum += nightly[night];
    }
    return Double.NaN;
  }
}
