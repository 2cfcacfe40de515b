package agro.weather.archive;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.SourceLocation;
import agro.source.Bibliography;
import agro.source.Reference;
import agro.weather.Medium;
import java.nio.file.Path;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Files of the Global Historical Climatology Network, daily: the fixed-width {@code .dly} files and
 * the comma-separated by-station files, plain or compressed with gzip. Temperatures are written in
 * tenths of a degree Celsius. The elements TMAX and TMIN are read, all others passed over. A value
 * with a quality flag failed a check of the archive and is left out unless it is kept on purpose;
 * the report names each check with the number of values and the first line.
 *
 * @param station station to read from a file that holds several; empty when it holds one
 * @param keepsFlagged whether values with a quality flag are kept
 * @param place name of the place; the station's identification when empty
 * @param medium what the thermometer stood in
 */
public record GhcnDaily(
    Optional<String> station, boolean keepsFlagged, Optional<String> place, Medium medium) {

  /** Refuses nulls. */
  public GhcnDaily {
    Objects.requireNonNull(station, "station");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(medium, "medium");
  }

  /**
   * Reads the only station of a file, leaves flagged values out, and takes the thermometer for one
   * in a shelter.
   *
   * @return the usual way to read a file
   */
  public static GhcnDaily withDefaults() {
    return new GhcnDaily(Optional.empty(), false, Optional.empty(), Medium.shelterAir());
  }

  /**
   * Chooses a station.
   *
   * @param identification the 11 characters of the archive
   * @return a new way to read
   */
  public GhcnDaily withStation(String identification) {
    return new GhcnDaily(Optional.of(identification), keepsFlagged, place, medium);
  }

  /**
   * Keeps values with a quality flag; the report counts them.
   *
   * @return a new way to read
   */
  public GhcnDaily keepingFlagged() {
    return new GhcnDaily(station, true, place, medium);
  }

  /**
   * Names the place.
   *
   * @param name name of the place
   * @return a new way to read
   */
  public GhcnDaily withPlace(String name) {
    return new GhcnDaily(station, keepsFlagged, Optional.of(name), medium);
  }

  /**
   * States what the thermometer stood in.
   *
   * @param newMedium the medium
   * @return a new way to read
   */
  public GhcnDaily withMedium(Medium newMedium) {
    return new GhcnDaily(station, keepsFlagged, place, newMedium);
  }

  /**
   * Where the layouts are described.
   *
   * @return the archive's documentation
   */
  public static Reference source() {
    return Bibliography.GHCN_DAILY_README;
  }

  /**
   * Whether a line has the shape of one of the two layouts.
   *
   * @param firstLine first line of a file
   * @return true when {@link #read} can be expected to read the file
   */
  public static boolean matches(String firstLine) {
    return GhcnFixedWidth.matches(firstLine) || GhcnByStation.matches(firstLine);
  }

  /**
   * Reads a file.
   *
   * @param file a file of the archive
   * @return daily extremes, days without both of them missing, and the report
   * @throws InputProblem when the file is missing, empty or in another layout, when a line is
   *     damaged, when it holds several stations and none is chosen, or when no day has both a
   *     minimum and a maximum
   */
  public ArchivedDays read(Path file) {
    var name = file.getFileName().toString();
    return of(ArchiveText.lines(file, name), name);
  }

  /**
   * Reads lines.
   *
   * @param lines lines of a file of the archive
   * @param name name of the file in messages and in the report
   * @return daily extremes and the report
   * @throws InputProblem as for {@link #read}
   */
  public ArchivedDays of(List<String> lines, String name) {
    var collector = new ReadReport.Collector(name);
    var stations = new TreeMap<String, GhcnDays>();
    forEachValue(
        lines,
        name,
        value ->
            stations
                .computeIfAbsent(
                    value.station(), each -> new GhcnDays(name, keepsFlagged, collector))
                .add(value),
        collector);
    var chosen = chosen(stations.navigableKeySet(), name);
    var days = stations.get(chosen).daily(place.orElse(chosen), medium);
    return new ArchivedDays(days, collector.report());
  }

  /**
   * The stations of a file.
   *
   * @param lines lines of a file of the archive
   * @param name name of the file in messages
   * @return identifications of the stations with any element, in ascending order
   * @throws InputProblem when the file is in another layout or a line is damaged
   */
  public static List<String> stations(List<String> lines, String name) {
    var stations = new TreeSet<String>();
    var unused = new ReadReport.Collector(name);
    forEachValue(lines, name, value -> stations.add(value.station()), unused);
    return List.copyOf(stations);
  }

  private static void forEachValue(
      List<String> lines, String name, Consumer<GhcnLine> values, ReadReport.Collector collector) {
    var fixed = new GhcnFixedWidth(name);
    var byStation = new GhcnByStation(name);
    var first = lines.stream().filter(line -> !line.isBlank()).findFirst();
    if (first.isEmpty() || !matches(first.get())) {
      throw InputProblem.at(
              SourceLocation.line(name, 1),
              first.map(line -> "\"" + GhcnFixedWidth.shortened(line) + "\"").orElse("no line"))
          .expected("a .dly file or a by-station file of the archive")
          .because("the layout decides what the columns mean")
          .mend("read other logs with TemperatureLog, or fetch the file again");
    }
    boolean isFixed = GhcnFixedWidth.matches(first.get());
    for (int i = 0; i < lines.size(); i++) {
      var line = lines.get(i);
      if (line.isBlank()) {
        continue;
      }
      collector.countRow();
      if (isFixed) {
        fixed.read(line, i + 1L, values);
      } else {
        byStation.read(line, i + 1L, values);
      }
    }
  }

  private String chosen(NavigableSet<String> stations, String name) {
    if (station.isPresent() && !stations.contains(station.get())) {
      throw InputProblem.at(SourceLocation.file(name), "no station " + station.get())
          .expected("one of " + String.join(", ", stations))
          .because("nothing of the chosen station stands in the file")
          .mend("correct the identification, or read the station's own file");
    }
    if (station.isEmpty() && stations.size() != 1) {
      throw InputProblem.at(
              SourceLocation.file(name),
              stations.size() + " stations: " + String.join(", ", stations))
          .expected("one station, or a choice among them")
          .because("temperatures of two places make no series")
          .mend("name one with withStation");
    }
    return station.orElseGet(stations::first);
  }
}
