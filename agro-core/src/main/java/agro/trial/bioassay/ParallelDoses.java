package agro.trial.bioassay;

import java.util.Arrays;
import java.util.List;

/** Doses and potencies on lines with one slope. */
final class ParallelDoses {

  private final DoseResponse choices;
  private final List<DoseResponseFit> fits;
  private final SeriesLines lines;
  private final double factor;
  private final double deviate;

  ParallelDoses(DoseResponse choices, List<DoseResponseFit> fits, SeriesLines lines) {
    this.choices = choices;
    this.fits = fits;
    this.lines = lines;
    this.factor = lines.factor(choices.heterogeneity());
    this.deviate = lines.deviate(choices);
  }

  int count() {
    return fits.size();
  }

  DoseAxis axis() {
    return fits.get(0).data().axis();
  }

  /**
   * Place, standard error and limits of a difference or dose: (constant − weighted intercepts) / b.
   */
  record Place(double value, double standardError, DoseLimits limits, double g) {}

  LethalDose lethalDose(int j, double percent) {
    var weights = new double[fits.size()];
    weights[j] = -1;
    return dose(weights, percent);
  }

  /** Dose on the line of the mean intercept. */
  LethalDose meanDose(double percent) {
    var weights = new double[fits.size()];
    Arrays.fill(weights, -1.0 / fits.size());
    return dose(weights, percent);
  }

  private LethalDose dose(double[] weights, double percent) {
    var place = place(fits.get(0).predictor(percent), weights);
    var scale = choices.scale();
    return new LethalDose(
        percent,
        scale.dose(place.value()),
        place.value(),
        place.standardError(),
        place.limits().inDoses(scale),
        LimitMethod.FIELLER,
        choices.confidence(),
        place.g());
  }

  DoseRatio potency(int j, int k, String name, String reference) {
    var weights = new double[fits.size()];
    weights[j] += 1;
    weights[k] -= 1;
    var place = place(0, weights);
    var scale = choices.scale();
    return new DoseRatio(
        DoseRatio.Kind.RELATIVE_POTENCY,
        name,
        reference,
        50,
        scale.dose(place.value()),
        place.limits().inDoses(scale),
        choices.confidence());
  }

  private Place place(double constant, double[] weights) {
    int size = weights.length;
    var v = lines.covariance;
    int slope = lines.slope(0);
    double b = lines.slopes[0];
    double numerator = constant;
    double variance = 0;
    double covariance = 0;
    for (int i = 0; i < size; i++) {
      numerator += weights[i] * lines.intercepts[i];
      covariance += weights[i] * v[i][slope];
      for (int k = 0; k < size; k++) {
        variance += weights[i] * weights[k] * v[i][k];
      }
    }
    double value = numerator / b;
    double slopes = v[slope][slope];
    double about = factor * Math.max(0, variance - 2 * value * covariance + value * value * slopes);
    var limits =
        DoseLimits.fieller(
                0, b, about, factor * (covariance - value * slopes), factor * slopes, deviate)
            .movedBy(value);
    return new Place(
        value, Math.sqrt(about) / b, limits, deviate * deviate * factor * slopes / (b * b));
  }
}
