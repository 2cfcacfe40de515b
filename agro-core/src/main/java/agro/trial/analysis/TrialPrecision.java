package agro.trial.analysis;

import agro.stats.linear.BlockingEfficiency;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * How sharp a trial was.
 *
 * @param residualDegreesOfFreedom degrees of freedom of the error that treatments are tested
 *     against; the smallest where there are several; 0 where the route has no common error
 * @param coefficientOfVariationPercent residual standard deviation in per cent of the general mean;
 *     empty on transformed scales and for other routes than the analysis of variance
 * @param blocking what each kind of blocks gained, by its name; empty for trials with gaps
 */
public record TrialPrecision(
    double residualDegreesOfFreedom,
    OptionalDouble coefficientOfVariationPercent,
    Map<String, BlockingEfficiency> blocking) {

  private static final double ENOUGH = 12;

  /** Copies the map. */
  public TrialPrecision {
    Objects.requireNonNull(coefficientOfVariationPercent, "coefficientOfVariationPercent");
    blocking = Collections.unmodifiableMap(new LinkedHashMap<>(blocking));
  }

  /**
   * Whether the error has fewer degrees of freedom than the usual rule for efficacy trials asks
   * for: at least 12 (EPPO PP 1/152, from memory).
   *
   * @return true from 1 to below 12
   */
  public boolean hasFewDegreesOfFreedom() {
    return residualDegreesOfFreedom > 0 && residualDegreesOfFreedom < ENOUGH;
  }
}
