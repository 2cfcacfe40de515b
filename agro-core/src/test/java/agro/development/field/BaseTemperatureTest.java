package agro.development.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.ReferenceTable;
import agro.report.InputProblem;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BaseTemperatureTest {

  private static final List<FieldDuration> FIVE =
      List.of(
          new FieldDuration("1", 40, 14.0),
          new FieldDuration("2", 32, 16.0),
          new FieldDuration("3", 27, 18.0),
          new FieldDuration("4", 22, 20.5),
          new FieldDuration("5", 19, 22.5));

  private static final BaseTemperature PLAIN =
      BaseTemperature.withDefaults().withIntervals(0.9, 0, 1);

  static List<NamedCsvRecord> reference() {
    return ReferenceTable.read(BaseTemperatureTest.class, "base-temperature.csv");
  }

  /** Sources and tolerance: base-temperature.csv. */
  @ParameterizedTest
  @MethodSource("reference")
  void closedFormsAgreeWithADirectSearchInR(NamedCsvRecord line) {
    var estimate = PLAIN.fit(FIVE).by(BaseCriterion.valueOf(line.getField("criterion")));

    assertThat(estimate.celsius().getAsDouble())
        .isCloseTo(ReferenceTable.number(line, "base_c"), within(1e-6));
    assertThat(estimate.meanDegreeDaysC())
        .isCloseTo(ReferenceTable.number(line, "mean_c_d"), within(3e-5));
    assertThat(estimate.sdDegreeDaysC())
        .isCloseTo(ReferenceTable.number(line, "sd_c_d"), within(1e-6));
    assertThat(estimate.sdDays()).isCloseTo(ReferenceTable.number(line, "sd_d"), within(1e-6));
    assertThat(100 * estimate.variation())
        .isCloseTo(ReferenceTable.number(line, "cv_percent"), within(1e-6));
  }

  @Test
  void exactDurationsGiveTheirBaseByEveryCriterion() {
    var exact = new ArrayList<FieldDuration>();
    for (double t = 12; t <= 24; t += 3) {
      exact.add(new FieldDuration("at " + t, 300 / (t - 7.5), t));
    }
    for (var estimate : PLAIN.fit(exact).estimates()) {
      assertThat(estimate.celsius().getAsDouble())
          .as(estimate.criterion().words())
          .isCloseTo(7.5, within(1e-9));
      assertThat(estimate.meanDegreeDaysC()).isCloseTo(300, within(1e-6));
    }
  }

  @Test
  void withoutColdDaysTheGridFindsTheClosedForms() {
    var seasons = InventedFieldSeasons.of(8, 7, 12, 3);
    var daily = PLAIN.fitDaily(seasons);
    var closed = PLAIN.fit(seasons.stream().map(FieldSeasonLog::duration).toList());
    for (var criterion : BaseCriterion.values()) {
      assertThat(daily.by(criterion).celsius().getAsDouble())
          .as(criterion.words())
          .isCloseTo(closed.by(criterion).celsius().getAsDouble(), within(0.0051));
      assertThat(daily.by(criterion).sdDays())
          .isCloseTo(closed.by(criterion).sdDays(), within(1e-3));
    }
  }

  @Test
  void withColdDaysTheGridIsNearerToTheTruthThanTheClosedForm() {
    double grid = 0;
    double closedForm = 0;
    for (int seed = 1; seed <= 10; seed++) {
      var seasons = InventedFieldSeasons.of(8, 7, 4, seed);
      var daily = PLAIN.fitDaily(seasons).by(BaseCriterion.LEAST_SD_DAYS);
      var closed =
          PLAIN
              .fit(seasons.stream().map(FieldSeasonLog::duration).toList())
              .by(BaseCriterion.LEAST_SD_DAYS);
      grid += Math.abs(daily.celsius().getAsDouble() - 7);
      closedForm += Math.abs(closed.celsius().getAsDouble() - 7);
    }
    assertThat(grid).isLessThan(0.8 * closedForm);
  }

  @Test
  void theIntervalIsThatOfItsSeedAndHoldsTheEstimate() {
    var seasons =
        InventedFieldSeasons.of(8, 7, 12, 3).stream().map(FieldSeasonLog::duration).toList();
    var first = BaseTemperature.withDefaults().fit(seasons).by(BaseCriterion.LEAST_SD_DAYS);
    var again = BaseTemperature.withDefaults().fit(seasons).by(BaseCriterion.LEAST_SD_DAYS);
    var other =
        BaseTemperature.withDefaults()
            .withIntervals(0.9, 1_000, 2)
            .fit(seasons)
            .by(BaseCriterion.LEAST_SD_DAYS);

    assertThat(first).isEqualTo(again);
    assertThat(first.interval()).isNotEqualTo(other.interval());
    var interval = first.interval().orElseThrow();
    assertThat(interval.low()).isLessThan(first.celsius().getAsDouble());
    assertThat(interval.high()).isGreaterThan(first.celsius().getAsDouble());
  }

  /** Nominal 0.90 over seeds 1 to 400 of ten seasons; scatter of counts is 0.015. */
  @Test
  @Tag("slow")
  void theIntervalCoversTheTruth() {
    int covered = 0;
    int worlds = 400;
    for (int seed = 1; seed <= worlds; seed++) {
      var seasons =
          InventedFieldSeasons.of(10, 7, 12, seed).stream().map(FieldSeasonLog::duration).toList();
      var interval =
          BaseTemperature.withDefaults()
              .withIntervals(0.9, 500, seed)
              .fit(seasons)
              .by(BaseCriterion.LEAST_SD_DAYS)
              .interval()
              .orElseThrow();
      covered += interval.low() <= 7 && interval.high() >= 7 ? 1 : 0;
    }
    assertThat((double) covered / worlds).isBetween(0.85, 0.95);
  }

  @Test
  void pagesShowCriteriaIntervalsAndSources() {
    var page = BaseTemperature.withDefaults().fit(FIVE).presentation();

    assertThat(page.toMarkdown())
        .contains(
            "least coefficient of variation",
            "6.20",
            "Yang",
            "With 5 seasons",
            "90 % from",
            "resampled 1000 times");
    assertThat(page.toHtml()).contains("reduced major axis");
  }

  @Test
  void badInputIsRefused() {
    refuses(() -> PLAIN.fit(FIVE.subList(0, 2)), "2 seasons or sites");
    refuses(
        () ->
            PLAIN.fit(
                List.of(
                    new FieldDuration("a", 30, 15),
                    new FieldDuration("b", 31, 15),
                    new FieldDuration("c", 29, 15))),
        "equal temperatures");
    refuses(
        () ->
            PLAIN.fit(
                List.of(
                    new FieldDuration("a", 30, 15),
                    new FieldDuration("b", 30, 16),
                    new FieldDuration("c", 30, 17))),
        "equal durations");
    refuses(() -> new FieldDuration("a", 0, 15), "a: 0.0 days");
    refuses(() -> new FieldDuration("a", 12, Double.NaN), "NaN");
    refuses(() -> BaseTemperature.withDefaults().withIntervals(1, 100, 1), "level");
    var season = InventedFieldSeasons.of(3, 7, 12, 1).get(0);
    refuses(
        () -> new FieldSeasonLog("a", season.temperatures(), season.start(), season.start()),
        "an event after the start");
  }

  private static void refuses(Runnable call, String part) {
    assertThatThrownBy(call::run).isInstanceOf(InputProblem.class).hasMessageContaining(part);
  }
}
