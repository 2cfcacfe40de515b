package agro.course.practical;

import agro.working.TextLanguage;
import java.util.Locale;
import java.util.Optional;

/** The columns of a file of calibrations, with their headings in both languages. */
enum ReadingColumn {
  /** Name or number of the group. */
  GROUP("group", "gruppe"),
  /** Which sprayer it measured. */
  SPRAYER("sprayer", "spritze"),
  /** Length of the course. */
  COURSE("course", "strecke"),
  /** Seconds of each run over the course. */
  TIME("time", "zeit"),
  /** Speed, where no course was timed. */
  SPEED("speed", "geschwindigkeit"),
  /** Width of a pass. */
  WIDTH("width", "breite"),
  /** Nozzles that spray at the same time. */
  NOZZLES("nozzles", "düsen"),
  /** Distance from nozzle to nozzle. */
  SPACING("spacing", "düsenabstand"),
  /** What was caught under single nozzles. */
  CATCHES("catches", "auffangmengen"),
  /** What was caught under all nozzles together. */
  OUTPUT("output", "gesamtmenge"),
  /** For how long it was caught. */
  CATCH_TIME("catch_time", "auffangzeit"),
  /** What was filled up again after the course. */
  REFILL("refill", "nachgefüllt"),
  /** Volume per area as the group worked it out. */
  OWN("own_result", "eigenes_ergebnis"),
  /** Volume per area that it aims at. */
  TARGET("target", "soll");

  private final String english;
  private final String german;

  ReadingColumn(String english, String german) {
    this.english = english;
    this.german = german;
  }

  String heading(TextLanguage language) {
    return language == TextLanguage.GERMAN ? german : english;
  }

  static Optional<ReadingColumn> named(String heading) {
    var wanted = heading.strip().toLowerCase(Locale.ROOT).replace(' ', '_');
    for (var column : values()) {
      if (wanted.equals(column.english) || wanted.equals(column.german)) {
        return Optional.of(column);
      }
    }
    return Optional.empty();
  }
}
