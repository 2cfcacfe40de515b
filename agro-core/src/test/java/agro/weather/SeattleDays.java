package agro.weather;

import agro.ReferenceTable;
import java.time.LocalDate;

/** Four years of observed days, open data; the file names its source. */
public final class SeattleDays {

  private SeattleDays() {}

  /** 2012 to 2015 without a gap. */
  public static DailyTemperatures all() {
    var days =
        ReferenceTable.read(SeattleDays.class, "/agro/weather/open/seattle-daily.csv").stream()
            .map(
                line ->
                    new DailyExtremes(
                        LocalDate.parse(line.getField("date")),
                        ReferenceTable.number(line, "temp_min"),
                        ReferenceTable.number(line, "temp_max")))
            .toList();
    return DailyTemperatures.of("Seattle", Medium.shelterAir(), days, DayOrigin.OBSERVED);
  }

  /** Without the days from one to another. */
  public static DailyTemperatures without(DailyTemperatures series, String from, String to) {
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(builder, series.firstDay());
    LocalDate.parse(from)
        .datesUntil(LocalDate.parse(to).plusDays(1))
        .forEach(day -> builder.put(day, Double.NaN, Double.NaN, DayOrigin.MISSING));
    return builder.build(series.place(), series.medium());
  }

  /** With all days after one replaced by nonsense, or taken out when it is NaN. */
  public static DailyTemperatures spoiltAfter(
      DailyTemperatures series, LocalDate day, double nonsense) {
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(builder, series.firstDay());
    for (var later = day.plusDays(1); !later.isAfter(series.lastDay()); later = later.plusDays(1)) {
      builder.put(
          later,
          nonsense,
          nonsense,
          Double.isNaN(nonsense) ? DayOrigin.MISSING : DayOrigin.OBSERVED);
    }
    return builder.build(series.place(), series.medium());
  }
}
