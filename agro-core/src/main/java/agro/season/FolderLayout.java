package agro.season;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The written layout: the tables of a season folder, their columns, and what goes into them. */
enum FolderLayout {
  PLACES(
      "places.csv",
      "fields and stations, one a line",
      List.of(
          Column.needed(
              "place",
              "name of the place, as the other tables write it",
              "Long Acre",
              "District station"),
          Column.open("latitude", "degrees, south negative", "46.4", "46.4"),
          Column.open("altitude_m", "metres above the sea", "500", "480"),
          Column.open(
              "medium",
              "what the thermometer stands in: shelter air (assumed when empty), canopy air, tunnel,"
                  + " soil",
              "shelter air",
              "shelter air"),
          Column.open(
              "sensor_m",
              "height of the thermometer above ground, or its depth in soil, in metres; 2 is assumed"
                  + " for a shelter",
              "2",
              "2"),
          Column.open(
              "neighbour",
              "the place whose log bridges gaps of this one and gives past years",
              "District station"),
          Column.open(
              "trend_c_per_decade",
              "warming of the climate in °C for ten years, by which past years are moved; they stay"
                  + " as they were when empty",
              ""),
          Column.open("trend_source", "where the trend comes from; needed with one", ""),
          Column.open("note", "anything", ""))),
  LOGS(
      "logs.csv",
      "temperature logs, one file a line; each line says how its file is written",
      List.of(
          Column.needed(
              "file",
              "path from this folder",
              "logs/long-acre-2026.csv",
              "logs/district-station.csv"),
          Column.needed("place", "a place of `places.csv`", "Long Acre", "District station"),
          Column.needed(
              "kind",
              "readings (several a day), daily extremes, or forecast days (daily extremes foreseen)",
              "readings",
              "daily extremes"),
          Column.open(
              "separator",
              "comma, semicolon or tab between cells; detected when empty",
              "comma",
              "comma"),
          Column.open("decimal", "point or comma; detected when empty", "point", "point"),
          Column.needed("time_column", "heading of the column of times or days", "time", "day"),
          Column.open(
              "time_pattern",
              "letters of the written time, such as `dd.MM.yyyy HH:mm`; detected when empty",
              "yyyy-MM-dd HH:mm"),
          Column.open(
              "zone",
              "clock of the readings: a region such as `Europe/Ljubljana`, an offset such as"
                  + " `+01:00`, or `UTC`; one time all year is assumed when empty",
              "+01:00"),
          Column.open(
              "day_offset",
              "offset from UTC in whose midnights readings are cut into days, for a clock that is"
                  + " not the local one; the standard time of the zone when empty",
              ""),
          Column.open("value_column", "heading of the temperatures; needed for readings", "air"),
          Column.open(
              "min_column",
              "heading of the daily minima; needed for daily extremes and forecast days",
              "",
              "min"),
          Column.open(
              "max_column",
              "heading of the daily maxima; needed for daily extremes and forecast days",
              "",
              "max"),
          Column.needed("unit", "°C, °F or K (or the UCUM codes Cel, [degF], K)", "°C", "°C"),
          Column.open(
              "missing",
              "codes that stand for no value, apart by spaces; empty cells always do, and the usual"
                  + " codes where the way of writing is detected",
              "-999"),
          Column.open("made_on", "day on which forecast days were made; needed for those", ""),
          Column.open(
              "errors_c",
              "standard errors of forecast days in °C, apart by spaces: of the day they were made,"
                  + " of the next and so on; the last one holds for all later days; taken as exact"
                  + " when empty",
              ""))),
  PESTS(
      "pests.csv",
      "pests, one a line, with thresholds and requirements and the source of each",
      List.of(
          Column.needed("pest", "name of the pest, as the other tables write it", "leek moth"),
          Column.open("scientific_name", "scientific name", "Acrolepiopsis assectella"),
          Column.open(
              "medium", "air (assumed when empty) or soil: where the thresholds hold", "air"),
          Column.needed("lower_c", "lower threshold in °C", "7"),
          Column.open("upper_c", "upper threshold in °C; needed for a cutoff", ""),
          Column.open(
              "cutoff",
              "what happens above the upper threshold: none (assumed when empty), horizontal,"
                  + " intermediate, vertical",
              "none"),
          Column.needed(
              "threshold_source", "where the thresholds come from", "Mason et al. (2010)"),
          Column.open(
              "generation_low_c_d",
              "smallest interval from one flight to the next that is possible, in °C·d",
              ""),
          Column.open("generation_high_c_d", "largest such interval, in °C·d", ""),
          Column.open("generation_source", "where this range comes from", ""),
          Column.open(
              "egg_to_adult_c_d", "published requirement from egg to adult, in °C·d", "444.6"),
          Column.open("egg_to_adult_source", "where it comes from", "Mason et al. (2010)"),
          Column.open(
              "first_egg_c_d",
              "requirement from the adult to its first egg, in °C·d, which an egg-to-adult figure"
                  + " lacks",
              ""),
          Column.open("first_egg_source", "where it comes from", ""),
          Column.needed("season_start", "month-day from whose beginning degree-days run", "03-01"),
          Column.needed(
              "season_end", "month-day on which the season ends; may lie beyond New Year", "10-31"),
          Column.open(
              "critical_day_length_h",
              "day length in hours; eggs laid after the day on which it falls below give no further"
                  + " flight that season; needs the latitude of the place",
              ""),
          Column.open(
              "day_length_ends",
              "where the sun stands when the day begins and ends: upper edge seen (assumed when"
                  + " empty), centre, civil twilight, nautical twilight, astronomical twilight",
              ""),
          Column.open("day_length_source", "where it comes from; needed with one", ""),
          Column.open(
              "cold_end_c", "a day with this minimum in °C or a lower one ends the season", ""),
          Column.open(
              "cold_end_from", "month-day from which it does; needed with such a minimum", ""),
          Column.open("cold_end_source", "where it comes from; needed with one", ""),
          Column.open(
              "last_useful_day",
              "month-day after which a date does not matter, such as the end of harvest",
              ""))),
  STAGES(
      "stages.csv",
      "stages that follow each flight, such as the hatch of eggs; the file may be left out",
      List.of(
          Column.needed("pest", "a pest of `pests.csv`", "leek moth"),
          Column.needed("stage", "the stage in words", "eggs hatch"),
          Column.needed(
              "after_flight_c_d", "°C·d from a share of the flight to that of the stage", "90"),
          Column.needed(
              "lower_c",
              "lower threshold of this requirement in °C; where it is not that of the pest the"
                  + " stage is added up on a scale of its own",
              "7"),
          Column.open(
              "upper_c", "its upper threshold in °C; needed where the pest has a cutoff", ""),
          Column.needed("source", "where it comes from", "invented for demonstration"))),
  TRAPS(
      "traps.csv",
      "traps, one a line",
      List.of(
          Column.needed("trap", "name of the trap", "LA1"),
          Column.needed("place", "a place of `places.csv`", "Long Acre"),
          Column.needed("pest", "a pest of `pests.csv`", "leek moth"))),
  VISITS(
      "visits.csv",
      "the visit book: one line for each visit to each trap, those of a trap in order of days",
      List.of(
          Column.needed("trap", "a trap of `traps.csv`", "LA1", "LA1"),
          Column.needed("date", "day of the visit, year-month-day", "2026-03-20", "2026-03-24"),
          Column.needed(
              "state",
              "set (the trap was put up), working, failed (blown down, dry, taken), full",
              "set",
              "working"),
          Column.open(
              "count",
              "animals caught since the line before; needed for working and full, 0 is a count;"
                  + " empty for set and failed",
              "",
              "0"),
          Column.open("nights_open", "nights on which the trap could catch; all when empty", ""),
          Column.open("lure_renewed", "yes or no (assumed when empty)", "yes"),
          Column.open("note", "anything", ""))),
  FORECASTS(
      "forecasts.csv",
      "the ledger: forecasts as they were issued, one date a line; the program adds lines and never"
          + " changes one, nor should you",
      List.of(
          Column.needed("issued", "day of issue; nothing later was known", "2026-05-20"),
          Column.needed("place", "the place", "Long Acre"),
          Column.needed("pest", "the pest", "leek moth"),
          Column.needed("season_start", "first day of the season that was forecast", "2026-03-01"),
          Column.needed("season_end", "its last day; later is `not this season`", "2026-10-31"),
          Column.needed("event", "flight, or the stage that follows it", "flight"),
          Column.needed("generation", "number of the flight", "2"),
          Column.needed("share_percent", "share of the flight that is over: 5, 50 or 95", "50"),
          Column.needed(
              "p05",
              "the day by which the event comes with 5 chances in 100, or `not this season`",
              "2026-06-11"),
          Column.needed(
              "p10", "the day by which the event comes with 10 chances in 100", "2026-06-14"),
          Column.needed(
              "p25", "the day by which the event comes with 25 chances in 100", "2026-06-18"),
          Column.needed(
              "p50", "the day by which the event comes with 50 chances in 100", "2026-06-23"),
          Column.needed(
              "p75", "the day by which the event comes with 75 chances in 100", "2026-06-29"),
          Column.needed(
              "p90", "the day by which the event comes with 90 chances in 100", "2026-07-06"),
          Column.needed(
              "p95", "the day by which the event comes with 95 chances in 100", "2026-07-11"),
          Column.needed(
              "chance_not_reached",
              "chance that the event does not come this season, 0 to 1",
              "0.02"),
          Column.needed(
              "method", "what the forecast rests on", "\"normal flights, 4 seasons, invented\""),
          Column.open("note", "anything", "")));

  static final String NIGHTS_OPEN = "nights_open";

  private final String fileName;
  private final String about;
  private final List<Column> columns;

  FolderLayout(String fileName, String about, List<Column> columns) {
    this.fileName = fileName;
    this.about = about;
    this.columns = columns;
  }

  String fileName() {
    return fileName;
  }

  String about() {
    return about;
  }

  List<Column> columns() {
    return columns;
  }

  List<String> neededColumns() {
    return columns.stream().filter(Column::isNeeded).map(Column::name).toList();
  }

  /** Example lines, which together make a folder that can be read. */
  List<String> examples() {
    int lines = columns.stream().mapToInt(column -> column.examples().size()).max().orElse(0);
    return IntStream.range(0, lines)
        .mapToObj(
            line ->
                columns.stream()
                    .map(
                        column ->
                            line < column.examples().size() ? column.examples().get(line) : "")
                    .collect(Collectors.joining(",")))
        .toList();
  }

  /**
   * One column.
   *
   * @param name its heading
   * @param isNeeded whether a cell must hold something
   * @param meaning what goes into it
   * @param examples its cells in the example lines; lines beyond them leave it empty
   */
  record Column(String name, boolean isNeeded, String meaning, List<String> examples) {
    static Column needed(String name, String meaning, String... examples) {
      return new Column(name, true, meaning, List.of(examples));
    }

    static Column open(String name, String meaning, String... examples) {
      return new Column(name, false, meaning, List.of(examples));
    }
  }
}
