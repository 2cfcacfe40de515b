package agro.sampling.injury;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import agro.ReferenceTable;
import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.units.MassPerAreaUnit;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ProgressCurveTest {

  private static final SamplingUnit PLANT = SamplingUnit.of(SamplingUnit.Kind.PLANT);
  private static final double[] INSECT_DAYS = {0, 120, 350, 610, 980, 1400, 1850, 2400};
  private static final double[] YIELDS = {4.62, 4.55, 4.31, 4.20, 3.88, 3.61, 3.30, 2.79};

  static List<NamedCsvRecord> curves() {
    return ReferenceTable.read(ProgressCurveTest.class, "progress-curves.csv");
  }

  private static double[] numbers(NamedCsvRecord row, String column) {
    return Arrays.stream(row.getField(column).split(" "))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  /** Sources and tolerance: progress-curves.csv. */
  @ParameterizedTest
  @MethodSource("curves")
  void agreesWithTheReference(NamedCsvRecord row) {
    var curve =
        ProgressCurve.of(numbers(row, "days"), numbers(row, "values"))
            .with(ProgressCurve.Between.valueOf(row.getField("between")));
    double[] expected = numbers(row, "cumulative");
    for (int i = 0; i < expected.length; i++) {
      assertThat(curve.cumulative().get(i)).isCloseTo(expected[i], offset(1e-9));
    }
    assertThat(curve.area()).isCloseTo(expected[expected.length - 1], offset(1e-9));
    assertThat(curve.stairs()).isCloseTo(ReferenceTable.number(row, "stairs"), offset(1e-9));
    assertThat(curve.relativeArea(ReferenceTable.number(row, "greatest")))
        .isCloseTo(ReferenceTable.number(row, "relative"), offset(1e-12));
  }

  /** By base R 4.2.2; yield-loss.csv, yield-loss.R. */
  @Test
  void yieldLineAgreesWithR() {
    var loss = YieldLoss.fit(INSECT_DAYS, YIELDS, PestMeasure.pestDaysPer(PLANT));
    var line = loss.line();
    var computed =
        Map.ofEntries(
            Map.entry("intercept", line.intercept()),
            Map.entry("slope", line.slope()),
            Map.entry("slope_error", line.slopeStandardError()),
            Map.entry("intercept_error", line.interceptStandardError()),
            Map.entry("residual_deviation", line.residualDeviation()),
            Map.entry("r_squared", line.rSquared()),
            Map.entry("variance_ratio", loss.varianceRatio()),
            Map.entry("covariance", loss.covariance()),
            Map.entry("slope_low", -loss.lossLimits(0.95).high()),
            Map.entry("slope_high", -loss.lossLimits(0.95).low()),
            Map.entry("fit_1000", line.at(1000)),
            Map.entry("mean_low_1000", loss.meanLimits(1000, 0.95).low()),
            Map.entry("mean_high_1000", loss.meanLimits(1000, 0.95).high()),
            Map.entry("plot_low_1000", loss.plotLimits(1000, 0.95).low()),
            Map.entry("plot_high_1000", loss.plotLimits(1000, 0.95).high()),
            Map.entry("p", loss.pValue()));
    for (var row : ReferenceTable.read(ProgressCurveTest.class, "yield-loss.csv")) {
      var name = row.getField("quantity");
      assertThat(computed.get(name))
          .as(name)
          .isCloseTo(ReferenceTable.number(row, "value"), withinPercentage(1e-5));
    }
    assertThat(100 * loss.shareLostPerPest()).isCloseTo(0.01608097196, withinPercentage(1e-6));
  }

  @Test
  void yieldLineGivesAnInjuryLevelInInsectDays() {
    var loss = YieldLoss.fit(INSECT_DAYS, YIELDS, PestMeasure.pestDaysPer(PLANT));
    var crop = loss.at(MoneyPerMass.perTonne(210, "EUR"));
    var level = InjuryLevel.of(MoneyPerArea.perHectare(35, "EUR"), crop, 0.9, loss.measure());
    assertThat(level.level()).isCloseTo(249.0357855, withinPercentage(1e-6));
    assertThat(level.presentation().toText()).contains("249 pest-days per plant");
    assertThat(
            ((CropLoss.OfProduce) crop).produceLostPerPest().in(MassPerAreaUnit.TONNE_PER_HECTARE))
        .isCloseTo(0.0007436087341, withinPercentage(1e-6));
  }

  @Test
  void insectDaysFromDates() {
    var first = LocalDate.of(2026, 6, 1);
    var dates = List.of(first, first.plusDays(7), first.plusDays(14));
    var days = InsectDays.of(PLANT, dates, List.of(0.0, 12.0, 48.0));
    assertThat(days.total()).isCloseTo(252, offset(1e-9));
    assertThat(days.presentation().toText()).contains("252 pest-days per plant", "2026-06-08");
    assertThat(days.working().toText()).contains("7 d, from 12 to 48");
    var samples =
        Map.of(
            first.plusDays(10),
            CountSample.of("b", PLANT, 4, 6),
            first,
            CountSample.of("a", PLANT, 0, 2));
    assertThat(InsectDays.ofSamples(samples).total()).isCloseTo(30, offset(1e-9));
  }

  @Test
  void oneDateGivesNothing() {
    assertThat(ProgressCurve.of(new double[] {3}, new double[] {7}).area()).isZero();
  }

  @Property(seed = "8")
  void aPointOnTheLineChangesNothing(
      @ForAll @DoubleRange(min = 0, max = 100) double from,
      @ForAll @DoubleRange(min = 0, max = 100) double to,
      @ForAll @DoubleRange(min = 0.1, max = 9.9) double day) {
    double between = from + (to - from) * day / 10;
    var plain = ProgressCurve.of(new double[] {0, 10}, new double[] {from, to});
    var more = ProgressCurve.of(new double[] {0, day, 10}, new double[] {from, between, to});
    assertThat(more.area()).isCloseTo(plain.area(), offset(1e-9));
    double growth = plain.with(ProgressCurve.Between.EXPONENTIAL).area();
    assertThat(growth).isLessThanOrEqualTo(plain.area() + 1e-9);
    assertThat(growth).isGreaterThanOrEqualTo(10 * Math.min(from, to) - 1e-9);
  }

  @Test
  void badInputIsRefused() {
    refused(() -> ProgressCurve.of(new double[] {0, 7, 7}, new double[] {1, 2, 3}), "day 7 after");
    refused(() -> ProgressCurve.of(new double[] {7, 0}, new double[] {1, 2}), "days in order");
    refused(() -> ProgressCurve.of(new double[] {0, 7}, new double[] {1}), "2 days and 1 values");
    refused(() -> ProgressCurve.of(new double[] {0}, new double[] {-1}), "0 or more");
    refused(() -> ProgressCurve.of(new double[] {0}, new double[] {1}).stairs(), "at least two");
    refused(
        () ->
            YieldLoss.fit(
                new double[] {1, 1, 1}, new double[] {1, 2, 3}, PestMeasure.pestsPer(PLANT)),
        "different numbers of pests");
    refused(
        () ->
            YieldLoss.fit(
                    new double[] {1, 2, 3}, new double[] {1, 2, 3.5}, PestMeasure.pestsPer(PLANT))
                .at(MoneyPerMass.perTonne(1, "EUR")),
        "a yield that falls with pests");
  }

  private static void refused(
      org.assertj.core.api.ThrowableAssert.ThrowingCallable call, String words) {
    assertThatThrownBy(call).isInstanceOf(InputProblem.class).hasMessageContaining(words);
  }
}
