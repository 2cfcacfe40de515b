package agro.trial.analysis;

import agro.stats.ConfidenceLimits;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The mean of a treatment, on the scale of the analysis and on that of the values.
 *
 * @param label the treatment in words
 * @param plots number of plots with a value
 * @param analysed mean on the scale of the analysis; the mean rank for ranks; empty where the plots
 *     do not tell it
 * @param mean the same on the scale of the values: carried back where values were transformed; the
 *     median for ranks
 * @param limits limits of that mean, possibly infinite; empty where there is no error
 * @param arithmetic arithmetic mean of the plots' values
 * @param mark letters shared with means that are not declared different; after comparisons with a
 *     control a star where the mean differs from it; empty where nothing was compared
 */
public record TreatmentMean(
    String label,
    int plots,
    OptionalDouble analysed,
    OptionalDouble mean,
    Optional<ConfidenceLimits> limits,
    OptionalDouble arithmetic,
    String mark) {

  /** Refuses null. */
  public TreatmentMean {
    Objects.requireNonNull(label, "label");
    Objects.requireNonNull(analysed, "analysed");
    Objects.requireNonNull(mean, "mean");
    Objects.requireNonNull(limits, "limits");
    Objects.requireNonNull(arithmetic, "arithmetic");
    Objects.requireNonNull(mark, "mark");
  }

  TreatmentMean marked(String newMark) {
    return new TreatmentMean(label, plots, analysed, mean, limits, arithmetic, newMark);
  }

  @Override
  public String toString() {
    return label
        + ": "
        + (mean.isPresent() ? Double.toString(mean.getAsDouble()) : "not known")
        + (mark.isEmpty() ? "" : " " + mark);
  }
}
