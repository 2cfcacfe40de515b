package agro.programme.bulletin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.generation.TrapSeason;
import agro.generation.TrapState;
import agro.generation.TrapVisit;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

class CatchSpanTest {

  private static LocalDate may(int day) {
    return LocalDate.of(2026, 5, day);
  }

  @Test
  void trapsVisitedOnTheSameDaysAddUp() {
    var spans =
        CatchSpan.of(
            new TrapSeason(
                2026,
                List.of(
                    TrapVisit.working("A", may(1), may(5), 6),
                    TrapVisit.working("B", may(1), may(5), 2))));
    assertThat(spans).hasSize(1);
    assertThat(spans.get(0).perTrapNight().getAsDouble()).isCloseTo(1, within(1e-12));
    assertThat(spans.get(0).trapNights()).isEqualTo(8);
  }

  @Test
  void aVisitOfAnotherTrapCutsTheSpanAndKeepsTheSum() {
    var spans =
        CatchSpan.of(
            new TrapSeason(
                2026,
                List.of(
                    TrapVisit.working("A", may(1), may(5), 8),
                    TrapVisit.working("B", may(2), may(7), 10))));
    assertThat(spans.stream().map(CatchSpan::from)).containsExactly(may(1), may(2), may(5));
    assertThat(spans.stream().mapToDouble(CatchSpan::caught).sum()).isCloseTo(18, within(1e-9));
    assertThat(spans.stream().mapToDouble(CatchSpan::trapNights).sum()).isCloseTo(9, within(1e-9));
    assertThat(spans.get(1).perTrapNight().getAsDouble()).isCloseTo(2, within(1e-9));
  }

  @Test
  void failedIsNotZeroAndFullIsAtLeast() {
    var spans =
        CatchSpan.of(
            new TrapSeason(
                2026,
                List.of(
                    TrapVisit.failed("A", may(1), may(5)),
                    new TrapVisit("A", may(5), may(6), 300, TrapState.FULL, 1, false),
                    TrapVisit.working("A", may(6), may(8), 0))));
    assertThat(spans.get(0).perTrapNight()).isEmpty();
    assertThat(spans.get(1).atLeast()).isTrue();
    assertThat(spans.get(2).perTrapNight()).hasValue(0);
  }

  @Test
  void numbersAtTheEdgeOfAPictureAreRound() {
    assertThat(CatchPanel.niceAbove(0)).isEqualTo(1);
    assertThat(CatchPanel.niceAbove(0.3)).isCloseTo(0.5, within(1e-12));
    assertThat(CatchPanel.niceAbove(2)).isEqualTo(2);
    assertThat(CatchPanel.niceAbove(2.1)).isEqualTo(5);
    assertThat(CatchPanel.niceAbove(73)).isEqualTo(100);
  }
}
