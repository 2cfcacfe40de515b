package agro.development.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.development.rate.RateRemark.Kind;
import org.junit.jupiter.api.Test;

class RateFitTest {

  private static final double PART_IN_A_MILLION = 1e-6;
  private static final RearingData OLIGOTA = Rearings.named("oligota");

  @Test
  void reachesTheOptimaOfThePublishedRearing() {
    var lines = ReferenceTable.read(RateFitTest.class, "fitted-optima.csv");
    assertThat(lines).hasSizeGreaterThan(20);
    for (var line : lines) {
      var fitting =
          Rearings.fitting(
              line.getField("model"),
              line.getField("fixed"),
              line.getField("below_zero").equals("yes"));
      var fit = fitting.fit(Rearings.named(line.getField("set")));
      assertThat(fit.sumOfSquares())
          .as(line.toString())
          .isCloseTo(
              ReferenceTable.number(line, "sse"),
              within(PART_IN_A_MILLION * ReferenceTable.number(line, "sse")));
      assertThat(fit.isConverged()).as(line.toString()).isTrue();
      if (!line.getField("parameters").isEmpty()) {
        double[] wanted = Rearings.numbers(line.getField("parameters"));
        double tolerance = ReferenceTable.number(line, "tolerance");
        for (int j = 0; j < wanted.length; j++) {
          assertThat(fit.curve().parameters().get(j))
              .as(line + " parameter " + j)
              .isCloseTo(wanted[j], within(tolerance * Math.abs(wanted[j])));
        }
      }
    }
  }

  @Test
  void fittedCurvesRunWhereTheyShould() {
    for (var line : ReferenceTable.read(RateFitTest.class, "fitted-rates.csv")) {
      var curve =
          Rearings.fitting(line.getField("model"), line.getField("fixed"), false)
              .fit(OLIGOTA)
              .curve();
      for (var celsius : new String[] {"15", "20", "25", "28", "30", "32"}) {
        assertThat(curve.rate(Double.parseDouble(celsius)))
            .as(line + " at " + celsius)
            .isCloseTo(ReferenceTable.number(line, celsius), within(2e-6));
      }
      assertThat(curve.derived(DerivedPoint.OPTIMUM))
          .hasValueCloseTo(ReferenceTable.number(line, "optimum"), within(1e-4));
      assertThat(curve.derived(DerivedPoint.GREATEST_RATE))
          .hasValueCloseTo(ReferenceTable.number(line, "greatest"), within(2e-6));
    }
  }

  /**
   * Upper thresholds against the paper's: 34.86 for both, here 34.92 with the two empty cabinets.
   */
  @Test
  void comesNearThePublishedThresholdsAndSaysWhereNot() {
    var data = Rearings.named("oligota-zero");
    var logan = RateFitting.of(RateModel.LOGAN_6).withFormulaBelowZero().fit(data);
    var lactin = RateFitting.of(RateModel.LACTIN_1).withFormulaBelowZero().fit(data);
    assertThat(logan.curve().parameter("TM")).isCloseTo(34.9242, within(1e-4));
    assertThat(lactin.curve().parameter("TM")).isCloseTo(34.86, within(0.07));
    assertThat(lactin.curve().derived(DerivedPoint.OPTIMUM)).hasValueCloseTo(29.4012, within(1e-4));
    var briere = RateFitting.of(RateModel.BRIERE_2).fit(data).curve();
    assertThat(briere.derived(DerivedPoint.OPTIMUM)).hasValueCloseTo(29.59, within(0.15));
  }

  @Test
  void saysRidgesAndEdges() {
    var logan = RateFitting.of(RateModel.LOGAN_6).fit(OLIGOTA);
    assertThat(logan.hasRemark(Kind.RIDGE)).isTrue();
    assertThat(logan.hasRemark(Kind.DIGITS)).isTrue();
    assertThat(logan.remarks().toString()).contains("rho D is 0.99999").contains("psi, rho, D");
    assertThat(RateFitting.of(RateModel.LACTIN_1).fit(OLIGOTA).remarks().toString())
        .contains("rho D is 0.999789");
    var hilbert = RateFitting.of(RateModel.HILBERT_LOGAN).fit(OLIGOTA);
    assertThat(hilbert.hasRemark(Kind.BOUNDARY)).isTrue();
    assertThat(hilbert.remarks().toString()).contains("edge of the range").contains("for d;");
    var stinner = RateFitting.of(RateModel.STINNER).fit(OLIGOTA);
    assertThat(stinner.hasRemark(Kind.RIDGE)).isTrue();
    assertThat(stinner.remarks().toString()).contains("C, k1");
    var briere = RateFitting.of(RateModel.BRIERE_1).fit(OLIGOTA);
    assertThat(briere.hasRemark(Kind.RIDGE)).isFalse();
    assertThat(briere.hasRemark(Kind.BOUNDARY)).isFalse();
  }

  @Test
  void aFitWithHardlyAnyRatesLeftIsSaturated() {
    var fit = RateFitting.of(RateModel.SCHOOLFIELD_6).fit(OLIGOTA);
    assertThat(fit.isSaturated()).isTrue();
    assertThat(fit.hasRemark(Kind.SATURATED)).isTrue();
    assertThat(fit.standardError("HA")).isEmpty();
    assertThat(fit.residualDeviation()).isNaN();
    assertThat(fit.presentation().toText())
        .contains("7 rates for 6 parameters leave 1")
        .contains("AICc:")
        .contains("not defined");
  }

  @Test
  void theIntrinsicOptimumIsTheSameCurveInOtherParameters() {
    var six = RateFitting.of(RateModel.SCHOOLFIELD_6).fit(OLIGOTA);
    var phi = RateFitting.of(RateModel.INTRINSIC_OPTIMUM).fit(OLIGOTA);
    assertThat(phi.sumOfSquares()).isCloseTo(six.sumOfSquares(), within(1e-9 * six.sumOfSquares()));
    assertThat(phi.curve().rate(27)).isCloseTo(six.curve().rate(27), within(1e-6));
    assertThat(phi.curve().derived(DerivedPoint.INTRINSIC_OPTIMUM))
        .hasValueCloseTo(
            six.curve().derived(DerivedPoint.INTRINSIC_OPTIMUM).orElseThrow(), within(1e-3));
  }

  /** The reference temperature moves the rate parameter and leaves the curve where it is. */
  @Test
  void theReferenceTemperatureBelongsToTheParameters() {
    var usual = RateFitting.of(RateModel.SCHOOLFIELD_4).fit(OLIGOTA);
    var other =
        RateFitting.of(RateModel.SCHOOLFIELD_4)
            .withConstants(ArrheniusConstants.AT_298_KELVIN)
            .fit(OLIGOTA);
    assertThat(other.sumOfSquares())
        .isCloseTo(usual.sumOfSquares(), within(1e-9 * usual.sumOfSquares()));
    assertThat(other.curve().parameter("rho25"))
        .isNotCloseTo(usual.curve().parameter("rho25"), within(1e-4));
    assertThat(other.presentation().toText()).contains("298 K");
  }

  @Test
  void aLineIsFittedBetweenChosenTemperatures() {
    var bent = RateFitting.of(RateModel.LINEAR).fit(OLIGOTA);
    assertThat(bent.hasRemark(Kind.BEND)).isTrue();
    assertThat(bent.remarks().toString()).contains("fastest at 30 °C and slower at 32 °C");
    var fit = RateFitting.of(RateModel.LINEAR).betweenCelsius(12, 30).fit(OLIGOTA);
    assertThat(fit.hasRemark(Kind.BEND)).isFalse();
    assertThat(fit.hasRemark(Kind.LEFT_OUT)).isTrue();
    assertThat(fit.curve().derived(DerivedPoint.LOWER_THRESHOLD))
        .hasValueCloseTo(10.590, within(5e-4));
    assertThat(fit.standardError(DerivedPoint.THERMAL_CONSTANT))
        .hasValueCloseTo(fit.line().orElseThrow().degreeDaysStandardError(), within(1e-4));
    assertThat(fit.standardError(DerivedPoint.LOWER_THRESHOLD))
        .hasValueCloseTo(fit.line().orElseThrow().lowerStandardError(), within(1e-5));
    assertThat(fit.presentation().toText()).contains("SE(LT)");
  }

  /** Weights by 1/r² pull the curve to the slow rates. */
  @Test
  void weightsChangeWhatCounts() {
    var equal = RateFitting.of(RateModel.BRIERE_1).fit(OLIGOTA);
    var relative =
        RateFitting.of(RateModel.BRIERE_1).withWeights(RateWeights.CONSTANT_VARIATION).fit(OLIGOTA);
    double observed = 1 / 114.41;
    assertThat(Math.abs(relative.curve().rate(12) - observed))
        .isLessThan(Math.abs(equal.curve().rate(12) - observed));
    assertThat(relative.presentation().toText()).contains("weights 1/r²");
  }

  @Test
  void theSeedOfTheStartsDoesNotMatter() {
    for (long seed = 2; seed < 6; seed++) {
      for (var model : new RateModel[] {RateModel.LOGAN_10, RateModel.LACTIN_2}) {
        double usual = RateFitting.of(model).fit(OLIGOTA).sumOfSquares();
        assertThat(RateFitting.of(model).withSeed(seed).fit(OLIGOTA).sumOfSquares())
            .isCloseTo(usual, within(1e-6 * usual));
      }
    }
  }
}
