package agro.notebook.command;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Parameters of notebooks from a text file: a line {@code NAME=VALUE} for each. */
final class ParametersFile {

  private ParametersFile() {}

  /**
   * Reads parameters.
   *
   * @param file a text in UTF-8; empty lines and lines that begin with # say nothing
   * @return values by name, in their order
   * @throws InputProblem when the file cannot be read or a line has no name or a name comes twice
   */
  static Map<String, String> read(Path file) {
    var values = new LinkedHashMap<String, String>();
    var lines = lines(file);
    for (var number = 1; number <= lines.size(); number++) {
      var line = lines.get(number - 1).replace("\uFEFF", "").strip();
      if (!line.isEmpty() && !line.startsWith("#")) {
        var sign = line.indexOf('=');
        var name = line.substring(0, Math.max(0, sign)).strip();
        if (name.isEmpty() || values.containsKey(name)) {
          throw InputProblem.at(SourceLocation.line(file.toString(), number), "\"" + line + "\"")
              .expected("NAME=VALUE, each name once")
              .because("it is not clear which parameter is meant")
              .mend("correct the line or put # before it");
        }
        values.put(name, line.substring(sign + 1).strip());
      }
    }
    return values;
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw InputProblem.at(
              SourceLocation.file(file.toString()),
              "the file could not be read (" + unreadable + ")")
          .expected("a text file in UTF-8 with lines NAME=VALUE")
          .because("the parameters are not known")
          .mend("check the name of the file and that you may read it");
    }
  }
}
