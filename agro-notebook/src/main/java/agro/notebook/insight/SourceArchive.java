package agro.notebook.insight;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;

/**
 * Source files of the types that cells use. They are looked for inside the class path under {@value
 * #ATTACHED}, in the {@code src.zip} of the JDK, and in jars named {@code *-sources.jar} beside the
 * jars of the class path, as Maven stores them.
 */
final class SourceArchive {

  /** Where a jar of ours carries its own sources. */
  static final String ATTACHED = "META-INF/sources/";

  private final Path jdkSources;
  private final List<Path> classPath;

  /**
   * An archive; nothing is opened until it is asked.
   *
   * @param jdkSources the {@code src.zip} of the JDK, which need not exist
   * @param classPath jars whose sources may lie beside them
   */
  SourceArchive(Path jdkSources, List<Path> classPath) {
    this.jdkSources = jdkSources;
    this.classPath = new ArrayList<>(classPath);
  }

  /** The place where a JDK keeps its sources when it has them. */
  static Path ofThisJdk() {
    return Path.of(System.getProperty("java.home", "."), "lib", "src.zip");
  }

  void add(Path jar) {
    classPath.add(jar);
  }

  /**
   * The source file of a type.
   *
   * @param module the name of its module, or an empty text
   * @param fullName the full name of an outermost type
   * @return the text of the file, or empty when there is none
   */
  Optional<String> source(String module, String fullName) {
    var file = fullName.replace('.', '/') + ".java";
    try {
      var attached = SourceArchive.class.getClassLoader().getResourceAsStream(ATTACHED + file);
      if (attached != null) {
        return Optional.of(text(attached));
      }
      if (!module.isEmpty()) {
        return entry(jdkSources, module + "/" + file).or(() -> entry(jdkSources, file));
      }
      for (var jar : classPath) {
        var found = entry(beside(jar), file);
        if (found.isPresent()) {
          return found;
        }
      }
      return Optional.empty();
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static Path beside(Path jar) {
    var name = String.valueOf(jar.getFileName());
    return jar.resolveSibling(name.replaceAll("\\.jar$", "") + "-sources.jar");
  }

  private static Optional<String> entry(Path archive, String file) {
    if (!Files.isRegularFile(archive)) {
      return Optional.empty();
    }
    try (var zip = new ZipFile(archive.toFile(), StandardCharsets.UTF_8)) {
      var entry = zip.getEntry(file);
      return entry == null ? Optional.empty() : Optional.of(text(zip.getInputStream(entry)));
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }

  private static String text(InputStream stream) throws IOException {
    try (stream) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
