package agro.notebook.magic;

import java.util.regex.Pattern;

/** Makes whole project files of the pieces that people write into cells. */
final class PomText {

  private static final Pattern FIRST_ELEMENT = Pattern.compile("<([A-Za-z][\\w.-]*)");

  private static final String BEFORE =
      "<project xmlns=\"http://maven.apache.org/POM/4.0.0\"><modelVersion>4.0.0</modelVersion>"
          + "<groupId>notebook</groupId><artifactId>cell</artifactId><version>1</version>"
          + "<packaging>pom</packaging>";

  private PomText() {}

  /**
   * A whole project file.
   *
   * @param written a whole project, parts of one such as dependencies and repositories, or single
   *     dependencies
   * @return the text of a project file in which each line has the number that it had before
   */
  static String project(String written) {
    var blanked = written.replaceAll("(?s)<!--.*?-->", "");
    var first = FIRST_ELEMENT.matcher(blanked);
    var element = first.find() ? first.group(1) : "";
    return switch (element) {
      case "project" ->
          written.stripLeading().startsWith("<?xml") ? written.stripLeading() : written;
      case "dependency" -> BEFORE + "<dependencies>" + written + "</dependencies></project>";
      default -> BEFORE + written + "</project>";
    };
  }
}
