package agro.trial.analysis;

import agro.stats.ConfidenceLimits;
import agro.stats.UpperTail;
import agro.stats.linear.Contrast;
import agro.stats.linear.ContrastEstimate;
import agro.stats.linear.MarginalMeans;
import agro.stats.mixed.MixedMeans;
import agro.stats.multiple.ComparedMeans;
import java.util.List;
import java.util.OptionalDouble;

/** Means of a normal model, whichever model they come from. */
interface MeanSource {

  List<String> labels();

  /** Empty where the plots do not tell it. */
  OptionalDouble estimate(int place);

  /** Limits of a mean; throws where there is no error. */
  ConfidenceLimits limits(int place, double confidence);

  ComparedMeans compared();

  ContrastEstimate contrast(Contrast contrast);

  /** Means of a linear or a stratified model. */
  record Marginal(MarginalMeans means) implements MeanSource {
    @Override
    public List<String> labels() {
      return means.labels();
    }

    @Override
    public OptionalDouble estimate(int place) {
      return means.isEstimable(place)
          ? OptionalDouble.of(means.estimate(place))
          : OptionalDouble.empty();
    }

    @Override
    public ConfidenceLimits limits(int place, double confidence) {
      var error = means.standardError(place);
      if (error.isPresent()) {
        double df = place == 0 ? means.degreesOfFreedom(1, 0) : means.degreesOfFreedom(place, 0);
        return around(place, error.getAsDouble(), df, confidence);
      }
      return withoutBlocks(place, confidence);
    }

    /** Half the variance of a difference is that of a mean when blocks are held as they are. */
    private ConfidenceLimits withoutBlocks(int place, double confidence) {
      double variance = 0;
      double df = 0;
      for (int other = 0; other < means.size(); other++) {
        if (other != place && means.isEstimable(other)) {
          double each = means.differenceVariance(place, other);
          if (each > variance) {
            variance = each;
            df = means.degreesOfFreedom(place, other);
          }
        }
      }
      return around(place, Math.sqrt(variance / 2), df, confidence);
    }

    private ConfidenceLimits around(int place, double error, double df, double confidence) {
      double reach = UpperTail.tExceededWith((1 - confidence) / 2, df) * error;
      return new ConfidenceLimits(means.estimate(place) - reach, means.estimate(place) + reach);
    }

    @Override
    public ComparedMeans compared() {
      return means.compared();
    }

    @Override
    public ContrastEstimate contrast(Contrast contrast) {
      return means.contrast(contrast);
    }
  }

  /** Means of a mixed model. */
  record Mixed(MixedMeans means) implements MeanSource {
    @Override
    public List<String> labels() {
      return means.labels();
    }

    @Override
    public OptionalDouble estimate(int place) {
      return OptionalDouble.of(means.mean(place).estimate());
    }

    @Override
    public ConfidenceLimits limits(int place, double confidence) {
      return means.mean(place).limits(confidence);
    }

    @Override
    public ComparedMeans compared() {
      return means.compared();
    }

    @Override
    public ContrastEstimate contrast(Contrast contrast) {
      return means.contrast(contrast);
    }
  }
}
