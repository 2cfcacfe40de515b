package agro.stats.mixed;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import java.util.Arrays;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Mixed models against likelihoods that were maximised elsewhere. */
class MixedModelTest {

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  @Test
  void agreesWithDenseLikelihood() {
    var lines = ReferenceTable.read(MixedModelTest.class, "restricted-likelihood.csv");
    assertThat(lines).hasSize(7);
    for (var line : lines) {
      var fit =
          TrialData.model(line.getField("model")).fit(TrialData.of(line.getField("model")).y());
      double[] variances = numbers(line.getField("variances"));
      double[] errors = numbers(line.getField("standardErrors"));
      var message = line.toString();
      assertThat(fit.logLikelihood())
          .as(message)
          .isCloseTo(number(line, "logLikelihood"), within(1e-8));
      for (int k = 0; k < fit.variances().size(); k++) {
        var component = fit.variances().get(k);
        if (component.isAtZero()) {
          assertThat(variances[k]).as(message).isLessThan(1e-4);
        } else {
          assertThat(component.estimate())
              .as(message)
              .isCloseTo(variances[k], Percentage.withPercentage(0.01));
          assertThat(component.standardError().orElseThrow())
              .as(message)
              .isCloseTo(errors[k], Percentage.withPercentage(0.2));
        }
      }
      if (line.getField("model").equals("chicks")) {
        assertThat(fit.correlation().orElseThrow()).isCloseTo(variances[1], within(1e-5));
        assertThat(fit.correlationStandardError().orElseThrow()).isBetween(0.001, 0.1);
      } else {
        assertThat(fit.correlation()).isEmpty();
      }
    }
  }

  @Test
  void agreesWithGeneralLibrary() {
    var lines = ReferenceTable.read(MixedModelTest.class, "statsmodels.csv");
    assertThat(lines).hasSize(8);
    for (var line : lines) {
      var name = line.getField("model");
      var kind = LikelihoodKind.valueOf(line.getField("kind"));
      var fit = TrialData.model(name).with(kind).fit(TrialData.of(name).y());
      var message = line.toString();
      assertThat(fit.kind()).isEqualTo(kind);
      assertThat(fit.logLikelihood())
          .as(message)
          .isCloseTo(number(line, "logLikelihood"), within(1e-6));
      double[] variances = numbers(line.getField("variances"));
      for (int k = 0; k < variances.length; k++) {
        assertThat(fit.variances().get(k).estimate())
            .as(message)
            .isCloseTo(variances[k], within(1e-3 * variances[k] + 1e-5));
      }
    }
  }
}
