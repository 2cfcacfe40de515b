package agro.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.presence.EmpiricalPresence;
import agro.sampling.presence.PresenceRelation;
import agro.sampling.size.Precision;
import agro.sampling.size.PrecisionStopLine;
import agro.sampling.size.SampleSize;
import agro.sampling.size.TwoLevels;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SampleSizeTest {

  private static final VarianceModel POISSON = new VarianceModel.Random();
  private static final VarianceModel NEGATIVE = new VarianceModel.NegativeBinomial(1.5);
  private static final VarianceModel PRESENCE = new VarianceModel.Presence();
  private static final VarianceModel POWER = new VarianceModel.Power(2.5, 1.4);
  private static final VarianceModel CROWDING = new VarianceModel.Crowding(0.8, 1.3);
  private static final Precision ERROR = new Precision.RelativeStandardError(0.25);
  private static final Precision HALF = new Precision.RelativeHalfWidth(0.25, 0.95);
  private static final EmpiricalPresence LINE =
      EmpiricalPresence.fit(
          DoubleStream.of(0.25, 0.5, 1, 2, 4)
              .mapToObj(m -> new EmpiricalPresence.Field(m, m / (1 + m)))
              .toList());

  static List<NamedCsvRecord> reference() {
    return ReferenceTable.read(SampleSizeTest.class, "sample-size.csv");
  }

  /** Sources and tolerance: sample-size.csv. */
  @ParameterizedTest
  @MethodSource("reference")
  void agreesWithTheReference(NamedCsvRecord line) {
    double value = ReferenceTable.number(line, "value");
    assertThat(ours(line.getField("name"))).isCloseTo(value, within(1e-9 * Math.abs(value)));
  }

  private static double ours(String name) {
    int mark = name.lastIndexOf('_');
    var stem = mark < 0 ? name : name.substring(0, mark);
    var tail = mark < 0 ? "" : name.substring(mark + 1);
    if (!tail.isEmpty() && Character.isDigit(tail.charAt(0))) {
      return numbered(stem, Double.parseDouble(tail));
    }
    return name.startsWith("line_") ? line(name) : size(name);
  }

  private static double size(String name) {
    var five = new Precision.AbsoluteHalfWidth(0.5, 0.95);
    return switch (name) {
      case "known" ->
          exact(new VarianceModel.Known(10.24), 4, new Precision.RelativeStandardError(0.1));
      case "poisson" -> exact(POISSON, 2, ERROR);
      case "nb" -> exact(NEGATIVE, 2, ERROR);
      case "binomial" -> exact(PRESENCE, 0.2, ERROR);
      case "poisson_half" -> exact(POISSON, 2, HALF);
      case "nb_half" -> exact(NEGATIVE, 2, HALF);
      case "binomial_half" -> exact(PRESENCE, 0.2, HALF);
      case "poisson_abs" -> exact(POISSON, 2, five);
      case "nb_abs" -> exact(NEGATIVE, 2, five);
      case "binomial_abs" -> exact(PRESENCE, 0.2, new Precision.AbsoluteHalfWidth(0.05, 0.95));
      case "taylor" -> exact(POWER, 2, ERROR);
      case "taylor_half" -> exact(POWER, 2, HALF);
      case "taylor_student" -> SampleSize.of(POWER, 2, HALF).unitsByStudent();
      case "iwao" -> exact(CROWDING, 2, ERROR);
      case "iwao_half" -> exact(CROWDING, 2, HALF);
      case "finite" -> SampleSize.of(POWER, 2, ERROR).inPopulationOf(100).exact();
      case "two_levels" -> new TwoLevels(1.6, 6.4, 10, 2).subUnitsPerUnit();
      case "kuno_poisson" -> new PrecisionStopLine(POISSON, 0.25).stopAt(7);
      case "zero_share_mites" -> new PresenceRelation.ZeroTerm(1.02459238679).share(172 / 150.0);
      case "mean_poisson" -> new PresenceRelation.AtRandom().mean(0.4);
      case "var_poisson" -> new PresenceRelation.AtRandom().variance(0.4, 50);
      default -> throw new IllegalStateException(name);
    };
  }

  private static double exact(VarianceModel model, double mean, Precision precision) {
    return SampleSize.of(model, mean, precision).exact();
  }

  private static double numbered(String stem, double x) {
    return switch (stem) {
      case "green" -> new PrecisionStopLine(POWER, 0.25).stopAt((int) x);
      case "green_fine" -> new PrecisionStopLine(POWER, 0.1).stopAt((int) x);
      case "kuno" -> new PrecisionStopLine(CROWDING, 0.25).stopAt((int) x);
      case "kuno_nb" -> new PrecisionStopLine(NEGATIVE, 0.25).stopAt((int) x);
      case "zero_share_0.5" -> new PresenceRelation.ZeroTerm(0.5).share(x);
      case "zero_share_2" -> new PresenceRelation.ZeroTerm(2).share(x);
      case "mean_nb" -> new PresenceRelation.ZeroTerm(x).mean(0.4);
      case "var_nb" -> new PresenceRelation.ZeroTerm(x).variance(0.4, 50);
      case "units_nb" -> new PresenceRelation.ZeroTerm(x).unitsFor(0.4, 0.25);
      case "wilson_room" -> new PresenceRelation.FromPowerLaw(2.5, 1.4).share(x);
      case "tally_nb" ->
          PresenceRelation.shareAboveTally(new NegativeBinomialCounts(5, 1.5), (int) x);
      case "tally_poisson" ->
          PresenceRelation.shareAboveTally(NegativeBinomialCounts.poisson(5), (int) x);
      case "line" -> line("line_c" + (int) x);
      default -> throw new IllegalStateException(stem);
    };
  }

  private static double line(String name) {
    return switch (name) {
      case "line_intercept" -> LINE.line().intercept();
      case "line_slope" -> LINE.line().slope();
      case "line_r2" -> LINE.line().rSquared();
      case "line_mse" -> LINE.scatterPart();
      case "line_mean" -> LINE.mean(0.4);
      case "line_c1" -> LINE.samplingPart(0.4, 50);
      case "line_c2" -> LINE.linePart(0.4);
      case "line_c4" -> LINE.meanSamplingPart(0.4, 50, 2.5, 1.4);
      case "line_variance" -> LINE.variance(0.4, 50, 2.5, 1.4);
      case "line_cautious" -> LINE.cautiousVariance(0.4, 50, 2.5, 1.4);
      default -> throw new IllegalStateException(name);
    };
  }

  @Property(seed = "8", tries = 500)
  void onTheStopLineTheErrorIsExactlyTheOneAskedFor(
      @ForAll @DoubleRange(min = 0.5, max = 5) double a,
      @ForAll @DoubleRange(min = 0.8, max = 1.9) double b,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) double error,
      @ForAll @IntRange(min = 200, max = 2000) int units) {
    for (var model :
        List.of(
            new VarianceModel.Power(a, b),
            new VarianceModel.Crowding(a - 0.4, b),
            new VarianceModel.NegativeBinomial(a),
            POISSON)) {
      var line = new PrecisionStopLine(model, error);
      if (units <= line.limit()) {
        continue;
      }
      double mean = line.stopAt(units) / units;
      assertThat(Math.sqrt(model.variance(mean) / units) / mean)
          .as(model.words())
          .isCloseTo(error, within(1e-9 * error));
    }
  }

  @Property(seed = "8", tries = 300)
  void sharesAndMeansTurnEachOtherRound(
      @ForAll @DoubleRange(min = 0.02, max = 5) double mean,
      @ForAll @DoubleRange(min = 0.3, max = 5) double k) {
    for (var relation :
        List.of(
            new PresenceRelation.AtRandom(),
            new PresenceRelation.ZeroTerm(k),
            new PresenceRelation.FromPowerLaw(1 + k, 1.4))) {
      double share = relation.share(mean);
      assertThat(relation.mean(share))
          .as(relation.words())
          .isCloseTo(mean, within(1e-8 * (1 + mean)));
    }
    // At a variance equal to the mean the power law is chance.
    assertThat(new PresenceRelation.FromPowerLaw(1, 1).share(mean))
        .isCloseTo(new PresenceRelation.AtRandom().share(mean), within(1e-12));
  }

  @Test
  void sizesAreRoundedUpAndPriced() {
    var size = SampleSize.of(NEGATIVE, 2, ERROR).withMinutesPerUnit(1.5);

    assertThat(size.units()).isEqualTo(19);
    assertThat(size.minutes().getAsDouble()).isEqualTo(28.5);
    assertThat(SampleSize.of(POISSON, 2, ERROR).units()).isEqualTo(8);
    assertThat(size.presentation().toText()).contains("19 units", "29 min", "Karandinos");
    assertThat(SampleSize.of(POWER, 2, HALF).presentation().toText()).contains("104");
    var levels = new TwoLevels(1.6, 6.4, 10, 2);
    assertThat(levels.units(4, 0.1)).isEqualTo(32);
    assertThat(levels.cost(32, 4)).isEqualTo(576);
    assertThat(new PrecisionStopLine(CROWDING, 0.25).presentation().toText())
        .contains("Least units", "Kuno");
    assertThat(new PrecisionStopLine(CROWDING, 0.25).isReached(10, 56)).isTrue();
    assertThat(new PrecisionStopLine(CROWDING, 0.25).isReached(10, 55)).isFalse();
    assertThat(new PrecisionStopLine(CROWDING, 0.25).isReached(4, 5_000)).isFalse();
    assertThat(LINE.share(LINE.mean(0.4))).isCloseTo(0.4, within(1e-12));
  }

  @Test
  void badInputIsRefused() {
    refuses(() -> SampleSize.of(POISSON, 0, ERROR), "an expected mean of 0.0");
    refuses(() -> exact(PRESENCE, 1, ERROR), "a share of 1.0");
    refuses(() -> new Precision.RelativeStandardError(0), "standard error over the mean of 0.0");
    refuses(() -> new Precision.RelativeHalfWidth(0.2, 1), "a level of 1.0");
    refuses(() -> new VarianceModel.NegativeBinomial(-1), "exponent k of -1.0");
    refuses(() -> new VarianceModel.Power(0, 1.4), "factor a of 0.0");
    refuses(() -> new VarianceModel.Crowding(-1, 1.2), "α + 1 of 0.0");
    refuses(() -> SampleSize.of(POISSON, 2, ERROR).withMinutesPerUnit(0), "a time above 0");
    refuses(() -> new PrecisionStopLine(CROWDING, 0.25).stopAt(4), "more than 4.80 units");
    refuses(() -> new PrecisionStopLine(PRESENCE, 0.25), "a stop line for units with or without");
    refuses(() -> new PresenceRelation.ZeroTerm(1).mean(1), "a share of 1.0");
    refuses(() -> new EmpiricalPresence.Field(1, 0), "share 0.0");
    refuses(() -> EmpiricalPresence.fit(List.of()), "0 fields");
    refuses(() -> new TwoLevels(0, 1, 1, 1), "variance or a cost of 0.0");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
