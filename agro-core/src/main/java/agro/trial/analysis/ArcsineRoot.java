package agro.trial.analysis;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Arcsine of the square root of a share, in degrees from 0 to 90.
 *
 * @param extremes what becomes of 0 and 100 %
 */
public record ArcsineRoot(ExtremeShares extremes) implements Transformation {

  private static final double RIGHT_ANGLE = 90;

  /** Refuses null. */
  public ArcsineRoot {
    Objects.requireNonNull(extremes, "extremes");
  }

  @Override
  public String words() {
    return "arcsine of the square root of the share, in degrees" + extremes.words();
  }

  @Override
  public Optional<String> refusal(double value, OptionalInt outOf) {
    if (!(value >= 0 && value <= 100)) {
      return Optional.of("a share lies between 0 and 100 %");
    }
    return value == 0 || value == 100 ? extremes.refusal(outOf) : Optional.empty();
  }

  @Override
  public String cure() {
    return "state what becomes of 0 and 100 %, for example"
        + " Transformation.arcsine(ExtremeShares.QUARTER), or take the binomial route, which needs"
        + " no such rule";
  }

  @Override
  public double apply(double value, OptionalInt outOf) {
    TransformationChecks.refuse(this, value, outOf);
    return Math.toDegrees(Math.asin(Math.sqrt(extremes.moved(value, outOf) / 100)));
  }

  @Override
  public double back(double transformed) {
    double angle = Math.max(0, Math.min(RIGHT_ANGLE, transformed));
    double sine = Math.sin(Math.toRadians(angle));
    return 100 * sine * sine;
  }
}
