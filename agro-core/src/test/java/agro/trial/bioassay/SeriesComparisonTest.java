package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeriesComparisonTest {

  private static final DoseResponse PLAIN =
      DoseResponse.withDefaults().with(HeterogeneityRule.never());
  private static final SeriesComparison POISONS = PLAIN.compare(poisons());
  private static final SeriesComparison SCATTERED =
      PLAIN.with(HeterogeneityRule.always()).compare(poisons());
  private static final SeriesComparison CONTROLLED = PLAIN.compare(controlled());

  private static BioassayData poisons() {
    return Assays.of(
        ReferenceTable.read(Assays.class, "poisons.csv").stream()
            .map(
                line ->
                    DoseGroup.of(
                            ReferenceTable.number(line, "dose"),
                            ReferenceTable.whole(line, "n"),
                            ReferenceTable.whole(line, "responded"))
                        .inSeries(line.getField("series")))
            .toList());
  }

  private static BioassayData controlled() {
    var groups = new ArrayList<DoseGroup>();
    for (var set : List.of("pixley", "bugres")) {
      Assays.published(set).groups().forEach(group -> groups.add(group.inSeries(set)));
    }
    return Assays.of(groups);
  }

  static List<NamedCsvRecord> rows() {
    return ReferenceTable.read(Assays.class, "series.csv");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void asInR(NamedCsvRecord line) {
    double wanted = ReferenceTable.number(line, "value");
    var quantity = line.getField("quantity");
    double found =
        switch (line.getField("set")) {
          case "poisons" -> ofPoisons(quantity);
          case "controls" ->
              quantity.equals("slope")
                  ? CONTROLLED.slope(LineSharing.PARALLEL, "pixley")
                  : CONTROLLED.parallelism().chiSquared();
          default -> profile(quantity);
        };
    assertThat(found).isCloseTo(wanted, within(1e-6 * Math.abs(wanted)));
  }

  private static double profile(String side) {
    var limits =
        PLAIN.with(LimitMethod.PROFILE).fit(Assays.published("rotenone")).lethalDose(50).limits();
    return side.equals("low") ? limits.low() : limits.high();
  }

  private static double ofPoisons(String quantity) {
    int cut = quantity.lastIndexOf('_');
    var name = quantity.substring(cut + 1);
    if (quantity.startsWith("potency")) {
      var both = quantity.contains("scatter") ? SCATTERED : POISONS;
      return part(both.relativePotency(name, "rotenone"), quantity);
    }
    if (quantity.startsWith("ratio")) {
      double level = Double.parseDouble(quantity.substring(5, 7));
      return part(POISONS.lethalDoseRatio(name, "rotenone", level), quantity);
    }
    return switch (quantity) {
      case "parallelism_chi" -> POISONS.parallelism().chiSquared();
      case "parallelism_chi_p" -> POISONS.parallelism().p();
      case "parallelism_f" -> SCATTERED.parallelism().f();
      case "parallelism_f_p" -> SCATTERED.parallelism().p();
      case "equality_chi" -> POISONS.equality().chiSquared();
      case "equality_chi_p" -> POISONS.equality().p();
      case "equality_f" -> SCATTERED.equality().f();
      case "equality_f_p" -> SCATTERED.equality().p();
      default -> ofLines(quantity);
    };
  }

  private static double ofLines(String quantity) {
    int cut = quantity.indexOf('_');
    var sharing = LineSharing.valueOf(quantity.substring(cut + 1));
    return switch (quantity.substring(0, cut)) {
      case "deviance" -> POISONS.deviance(sharing);
      case "pearson" -> POISONS.pearsonChiSquared(sharing);
      case "df" -> POISONS.degreesOfFreedom(sharing);
      default -> throw new IllegalStateException(quantity);
    };
  }

  private static double part(DoseRatio ratio, String quantity) {
    return quantity.contains("_low_")
        ? ratio.limits().low()
        : quantity.contains("_high_") ? ratio.limits().high() : ratio.ratio();
  }

  @Test
  void ratiosTurnAroundWithTheReference() {
    var there = POISONS.relativePotency("deguelin", "rotenone");
    var back = POISONS.relativePotency("rotenone", "deguelin");
    assertThat(there.ratio() * back.ratio()).isCloseTo(1, within(1e-12));
    assertThat(there.limits().low() * back.limits().high()).isCloseTo(1, within(1e-10));
    assertThat(there.isDifferentFromOne()).isTrue();
    assertThat(POISONS.resistanceRatios("rotenone", 50))
        .extracting(DoseRatio::series)
        .containsExactly("deguelin", "mixture");
  }

  @Test
  void aSeriesAgainstItselfIsEqual() {
    var groups = new ArrayList<DoseGroup>();
    for (var series : List.of("one", "two")) {
      Assays.published("rotenone").groups().forEach(each -> groups.add(each.inSeries(series)));
    }
    var both = PLAIN.compare(Assays.of(groups));
    assertThat(both.equality().chiSquared()).isCloseTo(0, within(1e-9));
    assertThat(both.equality().p()).isCloseTo(1, within(1e-6));
    assertThat(both.relativePotency("one", "two").ratio()).isCloseTo(1, within(1e-12));
    assertThat(both.averageDose(50).variance()).isZero();
    assertThat(both.averageDose(50).overAllDays()).isCloseTo(4.845491788, within(1e-9));
  }

  @Test
  void aSharedControlCountsOnce() {
    var groups = new ArrayList<DoseGroup>();
    groups.add(DoseGroup.of(0, 60, 3));
    for (var series : List.of("one", "two")) {
      Assays.published("bugres").groups().stream()
          .filter(each -> !each.isControl())
          .forEach(each -> groups.add(each.inSeries(series)));
    }
    var both = PLAIN.compare(Assays.of(groups));
    assertThat(both.series()).containsExactly("one", "two");
    assertThat(both.degreesOfFreedom(LineSharing.SEPARATE)).isEqualTo(11 - 5);
    assertThat(both.presentation().toText()).contains("share a control");
  }

  @Test
  void daysThatDifferWidenTheAverage() {
    var groups = new ArrayList<DoseGroup>();
    double[] factors = {1, 1.6, 0.7};
    for (int day = 0; day < 3; day++) {
      double factor = factors[day];
      var name = "day " + day;
      Assays.published("rotenone")
          .groups()
          .forEach(
              each ->
                  groups.add(
                      DoseGroup.of(each.dose() * factor, each.exposed(), each.responded())
                          .onDay(name)));
    }
    var average = PLAIN.compare(Assays.of(groups).daysAsSeries()).averageDose(50);
    assertThat(average.chanceOfLarger()).isLessThan(0.001);
    assertThat(average.presentation().toText()).contains("LD50 over 3 days").contains("mg/L");
    assertThat(average.overTheseDays().place())
        .isCloseTo(0.6853378618 + Math.log10(1.6 * 0.7) / 3, within(1e-9));
    assertThat(average.overAllDaysLimits().low())
        .isLessThan(average.overTheseDays().limits().low());
    assertThat(average.overAllDaysLimits().high())
        .isGreaterThan(average.overTheseDays().limits().high());
  }

  @Test
  void oneSeriesAndUnknownNamesAreRefused() {
    assertThatThrownBy(() -> PLAIN.compare(Assays.published("rotenone")))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("two series or more");
    assertThatThrownBy(() -> POISONS.relativePotency("rotenon", "mixture"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("one of [rotenone, deguelin, mixture]");
  }

  @Test
  void thePageShowsTestsAndRatios() {
    var text = POISONS.presentation().toText();
    assertThat(text)
        .contains("parallel lines against separate lines")
        .contains("Relative potency")
        .contains("says nothing about a rate in")
        .doesNotContain("NaN");
  }
}
