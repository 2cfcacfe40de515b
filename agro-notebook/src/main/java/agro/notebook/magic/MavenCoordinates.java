package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import java.util.regex.Pattern;

/**
 * The name of a library in Maven's repositories.
 *
 * @param group who publishes it
 * @param artifact what it is
 * @param packaging the ending of the file
 * @param classifier which of several files of one artifact; possibly empty
 * @param version a version, or a range of versions
 */
record MavenCoordinates(
    String group, String artifact, String packaging, String classifier, String version) {

  private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_.-]+");
  private static final Pattern VERSION = Pattern.compile("[A-Za-z0-9_.+-]+|[\\[(][^:\\s]*[\\])]");

  /**
   * Reads coordinates as they are written behind {@code %maven}.
   *
   * @param written {@code group:artifact[:packaging[:classifier]]:version}
   * @return the coordinates
   * @throws CellMagicProblem when they are not written so; the message says what is wrong
   */
  static MavenCoordinates of(String written) throws CellMagicProblem {
    var parts = written.split(":", -1);
    if (parts.length == 2) {
      throw problem(written, "the version is missing");
    }
    if (parts.length < 3 || parts.length > 5) {
      throw problem(written, "it has " + parts.length + " parts between colons");
    }
    var version = parts[parts.length - 1];
    for (var index = 0; index < parts.length - 1; index++) {
      if (!NAME.matcher(parts[index]).matches()) {
        throw problem(written, "\"" + parts[index] + "\" is no name");
      }
    }
    if (!VERSION.matcher(version).matches()) {
      throw problem(written, "\"" + version + "\" is no version");
    }
    return new MavenCoordinates(
        parts[0],
        parts[1],
        parts.length > 3 ? parts[2] : "jar",
        parts.length > 4 ? parts[3] : "",
        version);
  }

  private static CellMagicProblem problem(String written, String what) {
    return new CellMagicProblem(
        "\""
            + written
            + "\" does not name a library: "
            + what
            + "; expected group:artifact:version, or group:artifact:packaging:version, or"
            + " group:artifact:packaging:classifier:version, such as"
            + " org.apache.commons:commons-text:1.12.0");
  }
}
