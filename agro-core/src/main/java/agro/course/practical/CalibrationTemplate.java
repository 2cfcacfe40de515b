package agro.course.practical;

import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.Arrays;
import java.util.stream.Collectors;

/** An empty file of calibrations: what to fill in, the headings, and examples as comments. */
final class CalibrationTemplate {

  private CalibrationTemplate() {}

  static String text(TextLanguage language) {
    var words = Wording.of(CalibrationTemplate.class, "practical", language);
    var separator = language == TextLanguage.GERMAN ? ";" : ",";
    var lines = new StringBuilder();
    for (int i = 1; words.has("template.about." + i); i++) {
      lines.append("# ").append(words.say("template.about." + i)).append('\n');
    }
    lines.append(
        Arrays.stream(ReadingColumn.values())
            .map(column -> column.heading(language))
            .collect(Collectors.joining(separator)));
    lines.append('\n');
    for (int i = 1; words.has("template.example." + i); i++) {
      lines.append("# ").append(words.say("template.example." + i)).append('\n');
    }
    return lines.toString();
  }
}
