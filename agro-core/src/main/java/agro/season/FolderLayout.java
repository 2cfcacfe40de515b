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
              "comma (assumed when empty), semicolon or tab between cells",
              "comma",
              "comma"),
          Column.open("decimal", "point (assumed when empty) or comma", "point", "point"),
          Column.needed("time_column", "heading of the column of times or days", "time", "day"),
          Column.open(
              "time_pattern",
              "letters of the written time, such as `dd.MM.yyyy HH:mm`; year-month-day when empty",
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
              "codes that stand for no value, apart by spaces; empty cells always do",
              "-999"),
          Column.open("made_on", "day on which forecast days were made; needed for those", ""))),
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
              "season_end",
              "month-day on which the season ends; may lie beyond New Year",
              "10-31"))),
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
