package agro.report;

import static agro.report.ReadReport.Deed.ASSUMED;
import static agro.report.ReadReport.Deed.DROPPED;
import static agro.report.ReadReport.Deed.NOTED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Deeds are collected, counted and joined. */
class ReadReportTest {

  private static ReadReport log() {
    var collector = new ReadReport.Collector("log.csv");
    collector.countRow();
    collector.countRow();
    collector.add(ASSUMED, SourceLocation.NONE, "the shelter stands 2 m high");
    collector.add(DROPPED, SourceLocation.line("log.csv", 3), "99 °C is no air temperature");
    return collector.report();
  }

  @Test
  void printsEveryDeedWithItsPlace() {
    assertThat(log())
        .hasToString(
            """
            log.csv: 2 rows read
              assumed: the shelter stands 2 m high
              dropped (log.csv, line 3): 99 °C is no air temperature""");
  }

  @Test
  void nothingDoneIsSaid() {
    assertThat(new ReadReport("log.csv", 5, List.of()))
        .hasToString("log.csv: 5 rows read, nothing assumed, mended, dropped or filled");
    assertThat(new ReadReport("log.csv", 1, List.of()))
        .asString()
        .startsWith("log.csv: 1 row read");
  }

  @Test
  void entriesOfOneKind() {
    assertThat(log().entries(DROPPED))
        .extracting(ReadReport.Entry::text)
        .containsExactly("99 °C is no air temperature");
    assertThat(log().entries(NOTED)).isEmpty();
  }

  @Test
  void reportsJoinInOrderAndAddTheirRows() {
    var visits =
        new ReadReport(
            "visits.csv", 3, List.of(new ReadReport.Entry(NOTED, SourceLocation.NONE, "late")));
    var both = log().and(visits);
    assertThat(both.source()).isEqualTo("log.csv");
    assertThat(both.rowsRead()).isEqualTo(5);
    assertThat(both.entries())
        .extracting(ReadReport.Entry::deed)
        .containsExactly(ASSUMED, DROPPED, NOTED);

    var collector = new ReadReport.Collector("folder");
    collector.addAll(log());
    collector.addAll(visits);
    assertThat(collector.report()).isEqualTo(new ReadReport("folder", 5, both.entries()));
  }

  @Test
  void reportDoesNotChangeWithItsCollector() {
    var collector = new ReadReport.Collector("log.csv");
    var before = collector.report();
    collector.add(NOTED, SourceLocation.NONE, "later");
    assertThat(before.entries()).isEmpty();
    assertThat(before.entries()).isUnmodifiable();
  }

  @Test
  void rowsAreNotNegative() {
    assertThatThrownBy(() -> new ReadReport("log.csv", -1, List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("rows read cannot be negative, but got -1");
  }
}
