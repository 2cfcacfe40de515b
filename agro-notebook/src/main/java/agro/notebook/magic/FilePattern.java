package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import java.io.File;
import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import java.util.stream.Stream;

/**
 * Files as a user names them: a path or a pattern, from the user's own folder when it begins with
 * ~.
 */
final class FilePattern {

  private static final Pattern WILD = Pattern.compile("[*?\\[{]");

  private final String written;
  private final String expanded;

  private FilePattern(String written) {
    this.written = written;
    var own = written.equals("~") || written.matches("~[/\\\\].*");
    var slashes = File.separatorChar == '\\' ? written.replace('\\', '/') : written;
    expanded = own ? System.getProperty("user.home") + slashes.substring(1) : slashes;
  }

  static FilePattern of(String written) {
    return new FilePattern(written);
  }

  /** Whether it names one file as it is, and is no pattern. */
  boolean isLiteral() {
    return !WILD.matcher(expanded).find() || exists();
  }

  /** Whether there is a file of exactly that name. */
  boolean exists() {
    try {
      return Files.exists(Path.of(expanded));
    } catch (InvalidPathException wildcards) {
      return false;
    }
  }

  /**
   * The path, without looking for wildcards.
   *
   * @throws CellMagicProblem when it cannot be a path here
   */
  Path path() throws CellMagicProblem {
    try {
      return Path.of(expanded);
    } catch (InvalidPathException impossible) {
      throw new CellMagicProblem(
          "\"" + written + "\" cannot be the name of a file here (" + impossible.getReason() + ")",
          impossible);
    }
  }

  /**
   * The files and folders that are there.
   *
   * @return at least one, sorted
   * @throws CellMagicProblem when there is none; the message says where it was looked for
   */
  List<Path> files() throws CellMagicProblem, IOException {
    if (isLiteral()) {
      if (!Files.exists(path())) {
        throw new CellMagicProblem(
            "there is no \"" + written + "\"; looked for " + path().toAbsolutePath().normalize());
      }
      return List.of(path());
    }
    var names = List.of(expanded.split("/+", -1));
    var fixed = (int) names.stream().takeWhile(name -> !WILD.matcher(name).find()).count();
    var folder = folder(names.subList(0, fixed));
    var rest = names.subList(fixed, names.size());
    var found = Files.isDirectory(folder) ? matching(folder, rest) : List.<Path>of();
    if (found.isEmpty()) {
      throw new CellMagicProblem(
          "no file matches \""
              + written
              + "\"; looked in "
              + folder.toAbsolutePath().normalize()
              + (Files.isDirectory(folder) ? "" : ", which is not a folder"));
    }
    return found;
  }

  private static Path folder(List<String> names) {
    var text = String.join("/", names);
    return names.isEmpty() ? Path.of("") : Path.of(text.isEmpty() ? "/" : text + "/");
  }

  private List<Path> matching(Path folder, List<String> names)
      throws CellMagicProblem, IOException {
    var glob = String.join("/", names);
    var globs = new ArrayList<>(List.of(glob));
    if (glob.startsWith("**/")) {
      globs.add(glob.substring("**/".length()));
    }
    var depth = glob.contains("**") ? Integer.MAX_VALUE : names.size();
    try (Stream<Path> files = Files.walk(folder, depth)) {
      var matchers =
          globs.stream()
              .map(one -> FileSystems.getDefault().getPathMatcher("glob:" + one))
              .toList();
      return files
          .filter(
              file ->
                  matchers.stream().anyMatch(matcher -> matcher.matches(folder.relativize(file))))
          .sorted()
          .toList();
    } catch (PatternSyntaxException malformed) {
      throw new CellMagicProblem(
          "\"" + written + "\" is no pattern of file names (" + malformed.getDescription() + ")",
          malformed);
    }
  }

  /** Whether a file's name ends in one of some endings, in small or capital letters. */
  static boolean endsWith(Path file, String... endings) {
    var name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    return Stream.of(endings).anyMatch(name::endsWith);
  }
}
