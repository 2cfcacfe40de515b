package agro.development.cycle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AgeDistributionTest {

  static List<NamedCsvRecord> reference() {
    return ReferenceTable.read(AgeDistributionTest.class, "distributions.csv");
  }

  /** Sources and tolerance: distributions.csv. */
  @ParameterizedTest
  @MethodSource("reference")
  void agreesWithTheReference(NamedCsvRecord line) {
    double a = ReferenceTable.number(line, "a");
    double value = ReferenceTable.number(line, "value");
    switch (line.getField("kind")) {
      case "ORDINAL" -> {
        var stages = new OrdinalStages(List.of(100.0, 200.0), ReferenceTable.number(line, "b"));
        assertThat(stages.upTo(ReferenceTable.whole(line, "c"), ReferenceTable.number(line, "at")))
            .isCloseTo(value, within(1e-8));
      }
      case "ERLANG_SURVIVAL" ->
          assertThat(
                  new ErlangDelay(a)
                      .survival(ReferenceTable.number(line, "b"), ReferenceTable.number(line, "c")))
              .isCloseTo(value, within(1e-8));
      default -> agrees(distribution(line, a), line, value);
    }
  }

  private static AgeDistribution distribution(NamedCsvRecord line, double a) {
    return switch (line.getField("kind")) {
      case "ERLANG" -> new ErlangDelay(a);
      case "WEIBULL" ->
          new WeibullAge(a, ReferenceTable.number(line, "b"), ReferenceTable.number(line, "c"));
      case "WEIBULL_MEDIAN_ONE" -> WeibullAge.withMedianOne(a, ReferenceTable.number(line, "b"));
      case "NORMAL_RATES" -> new NormalRates(a);
      case "LOGISTIC" -> new LogisticAge(a, ReferenceTable.number(line, "b"));
      case "NORMAL" -> new NormalAge(a, ReferenceTable.number(line, "b"));
      default -> throw new IllegalStateException(line.toString());
    };
  }

  private static void agrees(AgeDistribution distribution, NamedCsvRecord line, double value) {
    double at = ReferenceTable.number(line, "at");
    double ours =
        switch (line.getField("quantity")) {
          case "completed" -> distribution.completedBy(at);
          case "age_at" -> distribution.ageAt(at);
          default -> ((ErlangDelay) distribution).density(at);
        };
    double scale = Math.max(1, Math.abs(value));
    assertThat(ours).isCloseTo(value, within(1e-8 * scale));
  }

  /** Manetsch 1976: mean 12.1 and standard deviation 1.21 make 100 substages. */
  @Test
  void substagesFollowFromMeanAndSpread() {
    assertThat(ErlangDelay.of(12.1, 1.21).substages()).isCloseTo(100, within(1e-9));
    assertThat(new LogisticAge(443.9, 60).standardDeviation()).isCloseTo(108.8280, within(5e-5));
    assertThat(new OrdinalStages(List.of(100.0, 200.0), 1.5).shares(120)).hasSize(3);
  }

  @Provide
  Arbitrary<AgeDistribution> distributions() {
    var positive = Arbitraries.doubles().between(0.5, 50);
    return Arbitraries.oneOf(
        positive.map(ErlangDelay::new),
        Combinators.combine(positive, positive).as((e, b) -> new WeibullAge(0.3, e, b)),
        Arbitraries.doubles().between(0.02, 0.25).map(NormalRates::new),
        Combinators.combine(positive, positive).as(LogisticAge::new),
        Combinators.combine(positive, positive).as(NormalAge::new));
  }

  @Property(seed = "8", tries = 500)
  void sharesRiseAndAgesTurnThemRound(
      @ForAll("distributions") AgeDistribution distribution,
      @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    double age = distribution.ageAt(share);
    assertThat(distribution.completedBy(age)).isCloseTo(share, within(1e-6));
    assertThat(distribution.completedBy(age + 0.1 * Math.abs(age) + 0.1))
        .isGreaterThanOrEqualTo(share - 1e-9);
    assertThat(distribution.completedBy(1e6)).isCloseTo(1, within(1e-4));
    assertThat(distribution.words()).isNotBlank();
    assertThat(distribution.source().citation()).isNotBlank();
  }

  @Test
  void badParametersAreRefused() {
    refuses(() -> new ErlangDelay(0), "number of substages");
    refuses(() -> ErlangDelay.of(12, -1), "standard deviation");
    refuses(() -> new WeibullAge(0.7, 0, 2), "scale");
    refuses(() -> WeibullAge.withMedianOne(1, 5), "scale");
    refuses(() -> new NormalRates(Double.NaN), "coefficient of variation");
    refuses(() -> new LogisticAge(400, 0), "scale");
    refuses(() -> new NormalAge(Double.POSITIVE_INFINITY, 1), "mean");
    refuses(() -> new NormalAge(0, 1).ageAt(1), "share of 1.0");
    refuses(() -> new OrdinalStages(List.of(200.0, 100.0), 1), "ascending order");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
