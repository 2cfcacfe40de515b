package agro.weather.log;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;

/** Abbreviations and names of time zones, as far as each means one offset in all the world. */
final class ZoneNames {

  private static final Map<String, Integer> MINUTES =
      Map.ofEntries(
          Map.entry("WET", 0),
          Map.entry("WEST", 60),
          Map.entry("CET", 60),
          Map.entry("MEZ", 60),
          Map.entry("CEST", 120),
          Map.entry("MESZ", 120),
          Map.entry("EET", 120),
          Map.entry("EEST", 180),
          Map.entry("MSK", 180),
          Map.entry("CAT", 120),
          Map.entry("EAT", 180),
          Map.entry("WAT", 60),
          Map.entry("SAST", 120),
          Map.entry("JST", 540),
          Map.entry("KST", 540),
          Map.entry("AWST", 480),
          Map.entry("ACST", 570),
          Map.entry("ACDT", 630),
          Map.entry("AEST", 600),
          Map.entry("AEDT", 660),
          Map.entry("NZST", 720),
          Map.entry("NZDT", 780),
          Map.entry("PDT", -420),
          Map.entry("MDT", -360),
          Map.entry("EDT", -240),
          Map.entry("AKST", -540),
          Map.entry("AKDT", -480),
          Map.entry("HST", -600));

  /** Abbreviations in use for clocks of different offsets. */
  private static final Set<String> AMBIGUOUS =
      Set.of(
          "EST", "CST", "CDT", "IST", "BST", "MST", "PST", "AST", "ADT", "AMT", "ECT", "GST", "SST",
          "WST", "ACT", "LMT", "SGT", "PYT");

  private ZoneNames() {}

  /** Offset in seconds of an abbreviation. */
  static long offset(String name, SourceLocation place) {
    var minutes = MINUTES.get(name);
    if (minutes != null) {
      return minutes * 60L;
    }
    boolean known = AMBIGUOUS.contains(name);
    throw InputProblem.at(place, "the time zone \"" + name + "\"")
        .expected("an offset such as +01:00, or an abbreviation that means one offset everywhere")
        .because(
            known
                ? "this abbreviation is in use for clocks of different offsets"
                : "this abbreviation is not known")
        .mend("declare the clock, for example withZone(ZoneOffset.ofHours(-5))");
  }

  /** Refuses a heading that names a zone by an abbreviation of several meanings. */
  static void refuseAmbiguous(String words, SourceLocation place) {
    for (var word : words.split("[^A-Za-z]+", -1)) {
      if (AMBIGUOUS.contains(word)) {
        offset(word, place);
      }
    }
  }

  /** The zone that words name: an offset from UTC, a region, or an abbreviation without doubt. */
  static Optional<ZoneId> in(String words) {
    for (var word : words.split("[\\s,;()\\[\\]\"=]+", -1)) {
      var zone = ofWord(word.endsWith(".") ? word.substring(0, word.length() - 1) : word);
      if (zone.isPresent()) {
        return zone;
      }
    }
    return Optional.empty();
  }

  private static Optional<ZoneId> ofWord(String word) {
    var upper = word.toUpperCase(Locale.ROOT);
    if (MINUTES.containsKey(upper) && upper.equals(word)) {
      return Optional.of(ZoneOffset.ofTotalSeconds(MINUTES.get(upper) * 60));
    }
    boolean offset =
        upper.startsWith("UTC")
            || upper.startsWith("GMT")
            || (upper.length() == 6 && upper.indexOf(':') == 3);
    if (offset) {
      var cell = WrittenTime.of("2000-01-01 00:00 " + upper);
      return cell.map(WrittenTime::offsetSeconds)
          .filter(OptionalLong::isPresent)
          .map(seconds -> ZoneOffset.ofTotalSeconds((int) seconds.getAsLong()));
    }
    int slash = word.indexOf('/');
    if (slash > 1 && Character.isUpperCase(word.charAt(0)) && slash + 1 < word.length()) {
      try {
        return Optional.of(ZoneId.of(word));
      } catch (DateTimeException e) {
        return Optional.empty();
      }
    }
    return Optional.empty();
  }
}
