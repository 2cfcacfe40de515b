package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.zip.ZipFile;

/**
 * Adds jars and folders to the class path.
 *
 * @param name the name it is called by
 */
record ClassPathMagic(String name) implements CellMagic {

  static CellMagic named(String name) {
    return new ClassPathMagic(name);
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "jar-or-folder-or-pattern ...";
  }

  @Override
  public String summary() {
    return "adds jars and folders of classes; ~ is your folder, * and ** stand for any name,"
        + " of a folder its jars are added too";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context)
      throws CellMagicProblem, IOException {
    var words = call.words();
    if (words.isEmpty()) {
      throw new CellMagicProblem(
          call.written()
              + " needs at least one jar, folder or pattern, for example "
              + call.written()
              + " lib/*.jar");
    }
    var entries = new ArrayList<Path>();
    for (var word : words) {
      for (var part : parts(word)) {
        entries.addAll(entries(part));
      }
    }
    say(entries, context.addedToClassPath());
    return CellMagicAnswer.addToClassPath(entries);
  }

  /** One word may be a whole class path as the java command takes it. */
  private static List<String> parts(String word) {
    var parts = List.of(word.split(Pattern.quote(File.pathSeparator), -1));
    return FilePattern.of(word).exists()
        ? List.of(word)
        : parts.stream().filter(part -> !part.isEmpty()).toList();
  }

  private static List<Path> entries(String written) throws CellMagicProblem, IOException {
    var pattern = FilePattern.of(written);
    var entries = new ArrayList<Path>();
    for (var found : pattern.files()) {
      entries.addAll(entries(found, pattern.isLiteral()));
    }
    if (entries.isEmpty()) {
      throw new CellMagicProblem(
          "\"" + written + "\" matches files, but no jar and no folder is among them");
    }
    return entries;
  }

  private static List<Path> entries(Path found, boolean named)
      throws CellMagicProblem, IOException {
    if (Files.isDirectory(found)) {
      var all = new ArrayList<>(List.of(found));
      all.addAll(jarsIn(found));
      return all;
    }
    if (isJar(found)) {
      requireReadable(found);
      return List.of(found);
    }
    if (named) {
      throw new CellMagicProblem(
          "\""
              + found
              + "\" is neither a jar nor a folder; expected a file that ends in .jar,"
              + " or a folder of classes");
    }
    return List.of();
  }

  private static List<Path> jarsIn(Path folder) throws CellMagicProblem, IOException {
    try (var files = Files.list(folder)) {
      var jars = files.filter(ClassPathMagic::isJar).sorted().toList();
      for (var jar : jars) {
        requireReadable(jar);
      }
      return jars;
    }
  }

  private static boolean isJar(Path file) {
    return Files.isRegularFile(file) && FilePattern.endsWith(file, ".jar", ".zip");
  }

  private static void requireReadable(Path jar) throws CellMagicProblem {
    try (var opened = new ZipFile(jar.toFile())) {
      opened.size();
    } catch (IOException broken) {
      throw new CellMagicProblem(
          "\""
              + jar
              + "\" could not be opened as a jar ("
              + broken.getMessage()
              + "); is it whole, and may you read it?",
          broken);
    }
  }

  private static void say(List<Path> entries, List<Path> before) {
    var added =
        entries.stream()
            .map(entry -> entry.toAbsolutePath().normalize())
            .distinct()
            .filter(entry -> !before.contains(entry))
            .toList();
    if (added.isEmpty()) {
      System.out.println("Everything of it is on the class path already.");
    } else {
      System.out.println("Added to the class path:");
      added.forEach(entry -> System.out.println("  " + entry));
    }
  }
}
