package agro.trial.bioassay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.stats.glm.LinkFunction;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Published assays, to every digit printed. */
class PublishedFitsTest {

  static List<NamedCsvRecord> fits() {
    return ReferenceTable.read(PublishedFitsTest.class, "published-fits.csv");
  }

  @ParameterizedTest
  @MethodSource("fits")
  void everyDigit(NamedCsvRecord line) {
    var fit = fit(line);
    check(value(fit, line.getField("quantity")), line.getField("value"));
  }

  static List<NamedCsvRecord> computed() {
    return ReferenceTable.read(PublishedFitsTest.class, "computed-fits.csv");
  }

  @ParameterizedTest
  @MethodSource("computed")
  void twelveDigits(NamedCsvRecord line) {
    double wanted = ReferenceTable.number(line, "value");
    assertThat(value(fit(line), line.getField("quantity")))
        .isCloseTo(wanted, within(1e-9 * Math.abs(wanted)));
  }

  private static DoseResponseFit fit(NamedCsvRecord line) {
    var scale = DoseScale.valueOf(line.getField("scale"));
    var natural = line.getField("natural");
    boolean beetles = line.getField("set").equals("beetles");
    return DoseResponse.withDefaults()
        .with(LinkFunction.valueOf(line.getField("link")))
        .with(scale)
        .with(FisherInformation.valueOf(line.getField("information")))
        .with(
            line.getField("rule").equals("ALWAYS")
                ? HeterogeneityRule.always()
                : HeterogeneityRule.never())
        .with(
            switch (natural) {
              case "none" -> NaturalMortality.none();
              case "model" -> NaturalMortality.inModel();
              default -> NaturalMortality.fixed(Double.parseDouble(natural));
            })
        .fit(Assays.published(line.getField("set"), beetles && scale == DoseScale.LOG10));
  }

  private static double value(DoseResponseFit fit, String quantity) {
    return switch (quantity) {
      case "a" -> fit.intercept();
      case "a_error" -> fit.interceptStandardError();
      case "b" -> fit.slope();
      case "b_error" -> fit.slopeStandardError();
      case "covariance" -> fit.interceptSlopeCovariance();
      case "natural" -> fit.naturalMortality();
      case "natural_error" -> fit.naturalMortalityStandardError();
      case "deviance" -> fit.deviance();
      case "pearson" -> fit.pearsonChiSquared();
      case "df" -> fit.degreesOfFreedom();
      case "log_likelihood" -> fit.logLikelihood();
      case "aic" -> fit.aic();
      case "factor" -> fit.heterogeneityFactor();
      default -> ofDose(fit, quantity);
    };
  }

  private static double ofDose(DoseResponseFit fit, String quantity) {
    var level = quantity.replaceAll("[^0-9]", "");
    var dose = fit.lethalDose(Double.parseDouble(level));
    return switch (quantity.replace(level, "")) {
      case "dose" -> dose.dose();
      case "place" -> dose.place();
      case "place_error" -> dose.placeStandardError();
      case "low" -> dose.limits().low();
      case "high" -> dose.limits().high();
      case "g" -> dose.g();
      default -> throw new IllegalStateException(quantity);
    };
  }

  /** Within six tenths of a unit of the last digit printed. */
  static void check(double found, String printed) {
    double last = new BigDecimal(printed).ulp().doubleValue();
    assertThat(found).isCloseTo(Double.parseDouble(printed), within(0.6 * last));
  }

  static List<NamedCsvRecord> deaths() {
    return ReferenceTable.read(PublishedFitsTest.class, "fitted-deaths.csv");
  }

  @ParameterizedTest
  @MethodSource("deaths")
  void fittedDeaths(NamedCsvRecord line) {
    var fit =
        DoseResponse.withDefaults()
            .with(LinkFunction.valueOf(line.getField("link")))
            .with(NaturalMortality.none())
            .fit(Assays.published("beetles", true));
    var printed = Arrays.asList(line.getField("values").split(" ", -1));
    var groups = fit.fittedGroups();
    assertThat(groups).hasSameSizeAs(printed);
    for (int i = 0; i < groups.size(); i++) {
      check(groups.get(i).expected(), printed.get(i));
    }
  }

  /** The published rule: no factor while P of X² is 0.15 or more (Lei & Sun 2018, read). */
  @Test
  void publishedRuleForRotenone() {
    var fit =
        DoseResponse.withDefaults()
            .with(FisherInformation.OBSERVED)
            .fit(Assays.published("rotenone"));
    assertThat(fit.isHeterogeneityApplied()).isFalse();
    check(fit.lethalDose(50).limits().low(), "4.363");
    check(fit.lethalDose(50).limits().high(), "5.354");
    check(fit.lethalDose(90).limits().low(), "8.405");
    check(fit.lethalDose(90).limits().high(), "12.134");
  }

  @Test
  void budworm() {
    var comparison =
        DoseResponse.withDefaults()
            .with(LinkFunction.LOGIT)
            .with(DoseScale.LOG2)
            .compare(Assays.published("budworm"));
    for (var line : ReferenceTable.read(PublishedFitsTest.class, "budworm.csv")) {
      check(budworm(comparison, line.getField("quantity")), line.getField("value"));
    }
  }

  private static double budworm(SeriesComparison both, String quantity) {
    var parts = quantity.split("_", -1);
    var sharing = quantity.startsWith("separate") ? LineSharing.SEPARATE : LineSharing.PARALLEL;
    return switch (quantity) {
      case "separate_deviance", "parallel_deviance" -> both.deviance(sharing);
      case "separate_df", "parallel_df" -> both.degreesOfFreedom(sharing);
      case "separate_M_minus_F_a" -> both.intercept(sharing, "M") - both.intercept(sharing, "F");
      case "separate_M_minus_F_b" -> both.slope(sharing, "M") - both.slope(sharing, "F");
      case "separate_F_a", "parallel_F_a", "parallel_M_a" -> both.intercept(sharing, parts[1]);
      case "separate_F_a_error", "parallel_F_a_error", "parallel_M_a_error" ->
          both.interceptStandardError(sharing, parts[1]);
      case "separate_F_b", "parallel_b" -> both.slope(sharing, "F");
      case "separate_F_b_error", "parallel_b_error" -> both.slopeStandardError(sharing, "F");
      case "parallelism" -> both.parallelism().chiSquared();
      case "parallelism_p" -> both.parallelism().p();
      case "F_dose50" -> both.parallelLethalDose("F", 50).dose();
      default -> {
        var dose = both.parallelLethalDose(parts[0], Double.parseDouble(parts[1]));
        yield parts.length == 3 ? dose.placeStandardError() : dose.place();
      }
    };
  }
}
