package agro.weather.log;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.weather.Medium;
import agro.weather.MediumKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What a heading says about the medium that the thermometer stood in. */
final class HeadingMedium {

  /** Depth that is assumed where a heading says soil and no depth (common practice, no source). */
  static final double USUAL_DEPTH_METRES = 0.1;

  private static final Set<String> SOIL =
      Set.of(
          "soil",
          "tsoil",
          "soiltemp",
          "soiltemperature",
          "ground",
          "boden",
          "bodentemperatur",
          "erdboden",
          "sol",
          "suelo",
          "solo",
          "suolo",
          "bodem",
          "gleba");

  private HeadingMedium() {}

  /**
   * The soil that the headings of the temperatures name.
   *
   * @param medium soil at the depth of the heading, or at the usual one
   * @param hasDepth whether the heading says how deep
   * @param heading the heading
   */
  record Soil(Medium medium, boolean hasDepth, String heading) {

    String words() {
      return "the heading \""
          + heading
          + "\" says that the thermometer is in the soil"
          + (hasDepth ? "" : ", but not how deep");
    }
  }

  /** The soil that the headings name; nothing when they name none. */
  static Optional<Soil> soil(LogColumns columns) {
    var headings =
        columns instanceof LogColumns.Readings readings
            ? List.of(readings.temperatureColumn())
            : List.of(
                ((LogColumns.Extremes) columns).minimumColumn(),
                ((LogColumns.Extremes) columns).maximumColumn());
    for (var heading : headings) {
      var words = HeadingWords.words(heading);
      if (words.stream().anyMatch(SOIL::contains)) {
        double depth = depthMetres(words);
        boolean hasDepth = depth > 0;
        var medium = new Medium.Soil(hasDepth ? depth : USUAL_DEPTH_METRES);
        return Optional.of(new Soil(medium, hasDepth, heading));
      }
    }
    return Optional.empty();
  }

  /** Tells that a heading says soil and the medium given is another one. */
  static void noteContradiction(
      LogColumns columns, Medium given, ReadReport.Collector report, SourceLocation file) {
    var soil = soil(columns);
    if (soil.isPresent() && given.kind() != MediumKind.SOIL) {
      report.add(
          Deed.NOTED,
          file.column(soil.get().heading()),
          soil.get().words() + "; the medium given is " + given.words());
    }
  }

  /** The depth, written as in "10cm" or "10 cm"; 0 for none. */
  private static double depthMetres(List<String> words) {
    for (int i = 0; i < words.size(); i++) {
      var word = words.get(i);
      int digits = 0;
      while (digits < word.length() && Character.isDigit(word.charAt(digits))) {
        digits++;
      }
      if (digits == 0 || digits > 3) {
        continue;
      }
      var unit = word.substring(digits);
      if (unit.isEmpty() && i + 1 < words.size()) {
        unit = words.get(i + 1);
      }
      double number = Integer.parseInt(word, 0, digits, 10);
      double metres =
          switch (unit) {
            case "cm" -> 0.01 * number;
            case "mm" -> 0.001 * number;
            case "m" -> number;
            case "in", "inch", "inches" -> 0.0254 * number;
            default -> 0;
          };
      if (metres > 0) {
        return metres;
      }
    }
    return 0;
  }
}
