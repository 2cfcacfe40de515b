package agro.season;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.development.UpperCutoff;
import agro.generation.IntervalRange;
import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.Temperature;
import agro.units.ThermalTime;
import agro.weather.MediumKind;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads the table of pests. */
final class PestTable {
  private static final double COLDEST_THRESHOLD = -20;
  private static final double WARMEST_THRESHOLD = 60;

  private final ReadReport.Collector report;

  private PestTable(ReadReport.Collector report) {
    this.report = report;
  }

  static Map<String, MonitoredPest> read(Path folder, ReadReport.Collector report) {
    var lines = FolderTable.lines(folder, FolderLayout.PESTS, report);
    return FolderTable.named(lines, FolderLayout.PESTS, new PestTable(report)::pest);
  }

  private MonitoredPest pest(DelimitedLine line) {
    report.countRow();
    var season = new SeasonWindow(monthDay(line, "season_start"), monthDay(line, "season_end"));
    return new MonitoredPest(
        line.text("pest"),
        line.optionalText("scientific_name").orElse(""),
        assumed(line, "medium", line.optionalChoice("medium", MediumKind.class), MediumKind.AIR),
        FolderTable.located(line, "lower_c", () -> model(line)),
        source(line, "threshold_source"),
        FolderTable.located(line, "egg_to_adult_c_d", () -> range(line)),
        season,
        List.of(),
        new PestLimitCells(line, season, report).limits());
  }

  private <T> T assumed(DelimitedLine line, String column, Optional<T> given, T usual) {
    if (given.isEmpty()) {
      report.add(
          Deed.ASSUMED,
          line.location(column),
          line.text("pest") + ": " + column + " " + words(usual) + ", as not stated");
    }
    return given.orElse(usual);
  }

  private static String words(Object constant) {
    return constant.toString().toLowerCase(Locale.ROOT);
  }

  private DegreeDayModel model(DelimitedLine line) {
    var lower = celsius(line, "lower_c", line.number("lower_c"));
    var upper = line.optionalNumber("upper_c");
    var thresholds =
        upper.isPresent()
            ? Thresholds.between(lower, celsius(line, "upper_c", upper.getAsDouble()))
            : Thresholds.above(lower);
    var cutoff = line.optionalChoice("cutoff", UpperCutoff.class);
    return DegreeDayModel.singleSine(thresholds, assumed(line, "cutoff", cutoff, UpperCutoff.NONE));
  }

  static Temperature celsius(DelimitedLine line, String column, double value) {
    if (!(value >= COLDEST_THRESHOLD && value <= WARMEST_THRESHOLD)) {
      throw InputProblem.at(line.location(column), "a threshold of " + value + " °C")
          .expected("a temperature from -20 to 60 °C")
          .because("no insect or mite develops outside that range")
          .mend("look for a missing decimal point, or a threshold in °F");
    }
    return Temperature.ofCelsius(value);
  }

  private IntervalRange range(DelimitedLine line) {
    var low = line.optionalNumber("generation_low_c_d");
    var high = line.optionalNumber("generation_high_c_d");
    if (low.isPresent() && high.isPresent()) {
      return IntervalRange.between(
          new ThermalTime(low.getAsDouble()),
          new ThermalTime(high.getAsDouble()),
          source(line, "generation_source"));
    }
    if (low.isPresent() || high.isPresent()) {
      throw InputProblem.at(line.location("generation_low_c_d"), "one end of the range alone")
          .expected("both generation_low_c_d and generation_high_c_d, or neither")
          .because("the interval between flights is sought between the two")
          .mend("fill in the other end, or leave both empty and give egg_to_adult_c_d");
    }
    return published(line);
  }

  private IntervalRange published(DelimitedLine line) {
    var eggToAdult = line.optionalNumber("egg_to_adult_c_d");
    if (eggToAdult.isEmpty()) {
      throw InputProblem.at(line.location("egg_to_adult_c_d"), "neither a range nor a requirement")
          .expected("a range of the interval between flights, or a published requirement")
          .because("half an interval with twice the generations would fit as well")
          .mend(
              "fill in egg_to_adult_c_d with its source, or generation_low_c_d and"
                  + " generation_high_c_d with theirs");
    }
    var sources = new ArrayList<>(List.of(source(line, "egg_to_adult_source")));
    var whole = new ThermalTime(eggToAdult.getAsDouble());
    var firstEgg = line.optionalNumber("first_egg_c_d");
    if (firstEgg.isPresent()) {
      whole = whole.plus(new ThermalTime(firstEgg.getAsDouble()));
      sources.add(source(line, "first_egg_source"));
    } else {
      report.add(
          Deed.ASSUMED,
          line.location("first_egg_c_d"),
          line.text("pest")
              + ": the time from adult to first egg is not stated; the interval between flights is"
              + " sought about the egg-to-adult figure, which is too short by it");
    }
    return IntervalRange.about(whole, sources);
  }

  /**
   * The words of a standing mark a figure without a publication; other text cites what was read.
   */
  static Reference source(DelimitedLine line, String column) {
    return source(line, column, line.text("pest") + ", " + words(column));
  }

  static Reference source(DelimitedLine line, String column, String ofWhat) {
    var text = line.text(column);
    for (var standing : Standing.values()) {
      if (standing.words().equalsIgnoreCase(text)) {
        return new Reference("", 0, ofWhat, "", standing);
      }
    }
    return new Reference("", 0, text, "", Standing.READ);
  }

  /** What a column with a source is the source of. */
  private static String words(String sourceColumn) {
    return switch (sourceColumn) {
      case "egg_to_adult_source" -> "thermal time from egg to adult";
      case "first_egg_source" -> "thermal time from adult to first egg";
      case "generation_source" -> "range of the interval between flights";
      case "day_length_source" -> "critical day length";
      case "cold_end_source" -> "cold that ends the season";
      case "source" -> "thermal time from the flight to a stage";
      default -> "thresholds";
    };
  }

  static MonthDay monthDay(DelimitedLine line, String column) {
    var text = line.text(column);
    try {
      return MonthDay.parse("--" + text);
    } catch (DateTimeException e) {
      throw InputProblem.at(line.location(column), "the cell reads \"" + text + "\"")
          .expected("two digits of the month and two of the day, such as 03-01")
          .because("a season starts and ends on a day of every year")
          .mend("write month and day with a hyphen and without a year");
    }
  }
}
