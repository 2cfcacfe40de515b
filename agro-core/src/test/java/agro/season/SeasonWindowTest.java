package agro.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class SeasonWindowTest {
  private final SeasonWindow summer = new SeasonWindow(MonthDay.of(3, 1), MonthDay.of(10, 31));
  private final SeasonWindow south = new SeasonWindow(MonthDay.of(9, 1), MonthDay.of(4, 30));

  @Test
  void aSeasonInsideAYear() {
    assertThat(summer.crossesNewYear()).isFalse();
    assertThat(summer.end(2024)).isEqualTo("2024-10-31");
    assertThat(summer.yearOf(LocalDate.of(2024, 3, 1))).isEqualTo(OptionalInt.of(2024));
    assertThat(summer.yearOf(LocalDate.of(2024, 2, 29))).isEmpty();
    assertThat(summer.yearOf(LocalDate.of(2024, 11, 1))).isEmpty();
  }

  @Test
  void aSeasonAcrossNewYearIsNamedAfterItsStart() {
    assertThat(south.crossesNewYear()).isTrue();
    assertThat(south.start(2023)).isEqualTo("2023-09-01");
    assertThat(south.end(2023)).isEqualTo("2024-04-30");
    assertThat(south.yearOf(LocalDate.of(2024, 2, 10))).isEqualTo(OptionalInt.of(2023));
    assertThat(south.yearOf(LocalDate.of(2023, 9, 1))).isEqualTo(OptionalInt.of(2023));
    assertThat(south.yearOf(LocalDate.of(2024, 6, 1))).isEmpty();
  }

  @Test
  void leapDayStandsForTheLastOfFebruary() {
    var late = new SeasonWindow(MonthDay.of(2, 29), MonthDay.of(10, 31));
    assertThat(late.start(2023)).isEqualTo("2023-02-28");
    assertThat(late.start(2024)).isEqualTo("2024-02-29");
  }

  @Test
  void aSeasonNeedsAnEnd() {
    assertThatThrownBy(() -> new SeasonWindow(MonthDay.of(3, 1), MonthDay.of(3, 1)))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("starts and ends on 1 March");
  }
}
