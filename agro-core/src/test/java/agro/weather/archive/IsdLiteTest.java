package agro.weather.archive;

import static agro.weather.archive.InventedArchive.hourLine;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import agro.report.ReadReport.Deed;
import agro.weather.Medium;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** All files here are invented, in the layout of the archive's format documentation. */
class IsdLiteTest {

  private static final LocalDate DAY = LocalDate.of(2021, 6, 30);

  @Test
  void hoursAreReadInTenthsOfADegreeAndInUtc() {
    var lines =
        List.of(hourLine(DAY, 22, 187), hourLine(DAY, 23, -12), hourLine(DAY.plusDays(1), 0, 0));

    var read = IsdLite.ofPlace("the hill").of(lines, "a");

    assertThat(read.readings().celsius()).containsExactly(18.7, -1.2, 0.0);
    assertThat(read.readings().epochSecond(0))
        .isEqualTo(LocalDateTime.of(2021, 6, 30, 22, 0).toEpochSecond(ZoneOffset.UTC));
    assertThat(read.readings().day(1)).isEqualTo(DAY);
    assertThat(read.report().entries(Deed.ASSUMED)).hasSize(1);
  }

  @Test
  void daysAreThoseOfThePlaceWhenItsStandardTimeIsStated() {
    var read =
        IsdLite.ofPlace("the hill")
            .withDayOffset(ZoneOffset.ofHours(2))
            .withMedium(new Medium.ShelterAir(1.5))
            .of(List.of(hourLine(DAY, 21, 187), hourLine(DAY, 22, 180)), "a");

    assertThat(read.readings().day(0)).isEqualTo(DAY);
    assertThat(read.readings().day(1)).isEqualTo(DAY.plusDays(1));
    assertThat(read.readings().medium()).isEqualTo(new Medium.ShelterAir(1.5));
    assertThat(read.report().entries()).isEmpty();
  }

  @Test
  void aMissingHourIsLeftOutAndTold() {
    var lines = List.of(hourLine(DAY, 1, 10), hourLine(DAY, 2, -9999), hourLine(DAY, 3, -9999), "");

    var read = IsdLite.ofPlace("the hill").of(lines, "a");

    assertThat(read.readings().size()).isEqualTo(1);
    assertThat(read.report().rowsRead()).isEqualTo(3);
    assertThat(read.report().toString()).contains("2 hours without temperature").contains("line 2");
  }

  @Test
  void damageIsRefusedWithItsLine() {
    var good = hourLine(DAY, 1, 10);
    refuses(List.of(good, "2021 06"), "line 2");
    refuses(List.of(good, good), "line 2", "an hour twice");
    refuses(List.of(hourLine(DAY, 2, 10), good), "line 2", "an earlier hour");
    refuses(List.of(good.replace("2021 06 30 01", "2021 06 31 01")), "line 1", "2021 06 31 01");
    refuses(List.of(good.replace("2021 06 30 01", "2021 06 30 24")), "line 1", "2021 06 30 24");
    refuses(List.of(hourLine(DAY, 1, -9999)), "no hour with a temperature");
    refuses(List.of(good + "    1"), "line 1");
    refuses(List.of(good.replace("    10 -9999", "10 -9999")), "line 1", "fixed columns");
    refuses(List.of(), "no hour");
  }

  private static void refuses(List<String> lines, String... parts) {
    assertThatThrownBy(() -> IsdLite.ofPlace("the hill").of(lines, "a"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll(parts);
  }

  @Test
  void theLayoutsAreTold() {
    var dly = InventedArchive.evenMonth(YearMonth.of(2021, 6), 1, 2).get(0);
    var byStation = InventedArchive.dayLine(DAY, "TMAX", 1, "", "");
    var hour = hourLine(DAY, 1, 10);

    assertThat(IsdLite.matches(hour)).isTrue();
    assertThat(GhcnDaily.matches(hour)).isFalse();
    assertThat(List.of(dly, byStation)).allMatch(GhcnDaily::matches).noneMatch(IsdLite::matches);
    var others = new ArrayList<String>();
    others.add("time,temperature");
    others.add("2021-06-30 01:00,12.3");
    others.add("01.06.2021;12,3;8,9");
    others.add("");
    assertThat(others).noneMatch(GhcnDaily::matches).noneMatch(IsdLite::matches);
  }
}
