package agro.season;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.weather.Medium;
import agro.weather.climate.PastYears;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the table of places. */
final class PlaceTable {
  private static final String SENSOR = "sensor_m";
  private static final String TREND = "trend_c_per_decade";

  private final ReadReport.Collector report;

  private PlaceTable(ReadReport.Collector report) {
    this.report = report;
  }

  static Map<String, MonitoredPlace> read(Path folder, ReadReport.Collector report) {
    var table = new PlaceTable(report);
    var lines = FolderTable.lines(folder, FolderLayout.PLACES, report);
    var places = FolderTable.named(lines, FolderLayout.PLACES, table::place);
    for (var line : lines) {
      if (line.optionalText("neighbour").isPresent()) {
        requireNeighbour(line, places);
      }
    }
    return places;
  }

  private static void requireNeighbour(DelimitedLine line, Map<String, MonitoredPlace> places) {
    var neighbour = FolderTable.reference(line, "neighbour", FolderLayout.PLACES, places.keySet());
    if (neighbour.equals(line.text("place"))) {
      throw InputProblem.at(line.location("neighbour"), neighbour + " is its own neighbour")
          .expected("another place, or an empty cell")
          .because("a log cannot bridge its own gaps")
          .mend("name the station that helps out, or leave the cell empty");
    }
  }

  private MonitoredPlace place(DelimitedLine line) {
    report.countRow();
    return new MonitoredPlace(
        line.text("place"),
        within(line, "latitude", 90),
        within(line, "altitude_m", 9000),
        medium(line),
        line.optionalText("neighbour"),
        line.optionalText("note").orElse(""),
        trend(line));
  }

  private static Optional<ClimateTrend> trend(DelimitedLine line) {
    var trend = line.optionalNumber(TREND);
    if (trend.isEmpty()) {
      return Optional.empty();
    }
    if (Math.abs(trend.getAsDouble()) > PastYears.STEEPEST_TREND) {
      throw InputProblem.at(line.location(TREND), "the cell reads " + trend.getAsDouble())
          .expected("at most 2 °C a decade upwards or downwards")
          .because("a steeper trend is a mistake of unit or decade")
          .mend("give the warming in °C for ten years, such as 0.3");
    }
    return Optional.of(
        new ClimateTrend(
            trend.getAsDouble(),
            PestTable.source(line, "trend_source", line.text("place") + ", trend of the climate")));
  }

  private static OptionalDouble within(DelimitedLine line, String column, double limit) {
    var number = line.optionalNumber(column);
    if (number.isPresent() && Math.abs(number.getAsDouble()) > limit) {
      throw InputProblem.at(line.location(column), "the cell reads " + number.getAsDouble())
          .expected("a number from -" + (int) limit + " to " + (int) limit)
          .because("no place on earth lies outside that range")
          .mend("look for a missing decimal point or another unit");
    }
    return number;
  }

  private Medium medium(DelimitedLine line) {
    var word = line.optionalChoice("medium", MediumWord.class);
    if (word.isEmpty()) {
      assume(line, "medium", "air in a shelter");
    }
    return switch (word.orElse(MediumWord.SHELTER_AIR)) {
      case SHELTER_AIR -> new Medium.ShelterAir(shelterHeight(line));
      case CANOPY_AIR -> new Medium.CanopyAir(line.number(SENSOR));
      case TUNNEL -> new Medium.Tunnel();
      case SOIL -> new Medium.Soil(line.number(SENSOR));
    };
  }

  private double shelterHeight(DelimitedLine line) {
    var height = line.optionalNumber(SENSOR);
    if (height.isEmpty()) {
      assume(line, SENSOR, "a thermometer at 2 m above ground");
    }
    return height.orElse(Medium.USUAL_SHELTER_HEIGHT_METRES);
  }

  private void assume(DelimitedLine line, String column, String what) {
    report.add(
        Deed.ASSUMED, line.location(column), line.text("place") + ": " + what + ", as not stated");
  }

  /** The words of the column {@code medium}. */
  enum MediumWord {
    SHELTER_AIR,
    CANOPY_AIR,
    TUNNEL,
    SOIL
  }
}
