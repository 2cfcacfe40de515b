package agro.programme.window;

import agro.development.cycle.AgeDistribution;
import agro.development.cycle.ErlangDelay;
import agro.development.cycle.NormalAge;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import java.util.Objects;
import java.util.Optional;

/**
 * A thermal time that differs from animal to animal.
 *
 * @param mean what it is on the mean, 0 or more
 * @param spread distribution of the time over its mean, so that 1 is the mean; nothing when all
 *     animals take the same time
 */
public record StageDelay(ThermalTime mean, Optional<AgeDistribution> spread) {

  private static final double NEARLY_ALL = 1 - 1e-7;

  /** No time at all. */
  public static final StageDelay NONE = exactly(ThermalTime.ZERO);

  /** Refuses negative times. */
  public StageDelay {
    Objects.requireNonNull(spread, "spread");
    double degreeDays = mean.degreeDaysC();
    if (!(degreeDays >= 0) || Double.isInfinite(degreeDays)) {
      throw InputProblem.of("a stage of " + Numbers.plain(degreeDays) + " °C·d")
          .expected("0 °C·d or more")
          .because("no animal leaves a stage before it enters it")
          .mend("look at the sign and at the unit");
    }
  }

  /**
   * The same time for all animals.
   *
   * @param mean the time
   * @return the delay
   */
  public static StageDelay exactly(ThermalTime mean) {
    return new StageDelay(mean, Optional.empty());
  }

  /**
   * A time that is spread normally; the few times below zero count as zero.
   *
   * @param mean its mean, above 0
   * @param standardDeviation its standard deviation, above 0
   * @return the delay
   */
  public static StageDelay normal(ThermalTime mean, ThermalTime standardDeviation) {
    double part = standardDeviation.degreeDaysC() / requireAboveZero(mean);
    return new StageDelay(mean, Optional.of(new NormalAge(1, part)));
  }

  /**
   * A time that is spread as a chain of equal parts of a stage spreads it, never below zero.
   *
   * @param mean its mean, above 0
   * @param standardDeviation its standard deviation, above 0
   * @return the delay
   */
  public static StageDelay erlang(ThermalTime mean, ThermalTime standardDeviation) {
    requireAboveZero(mean);
    return new StageDelay(
        mean, Optional.of(ErlangDelay.of(mean.degreeDaysC(), standardDeviation.degreeDaysC())));
  }

  private static double requireAboveZero(ThermalTime mean) {
    if (!(mean.degreeDaysC() > 0)) {
      throw InputProblem.of("a spread about a mean of " + mean)
          .expected("a mean above 0")
          .because("the spread is stated in parts of the mean")
          .mend("leave the spread out, or give the mean");
    }
    return mean.degreeDaysC();
  }

  /** Share of the animals that have taken no longer than a time. */
  double completedBy(double degreeDaysC) {
    if (degreeDaysC < 0) {
      return 0;
    }
    return spread.isEmpty()
        ? (degreeDaysC >= mean.degreeDaysC() ? 1 : 0)
        : spread.get().completedBy(degreeDaysC / mean.degreeDaysC());
  }

  /** A time that hardly any animal exceeds. */
  double longest() {
    return mean.degreeDaysC() * spread.map(each -> Math.max(1, each.ageAt(NEARLY_ALL))).orElse(1.0);
  }

  @Override
  public String toString() {
    return mean + spread.map(each -> " (" + each.words() + ", over the mean)").orElse("");
  }
}
