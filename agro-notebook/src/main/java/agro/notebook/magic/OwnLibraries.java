package agro.notebook.magic;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;

/**
 * The libraries that the kernel itself is made of. Their classes are found before any that are
 * added, so a second version of one of them would be mixed with the first.
 *
 * @param loader what loads the kernel
 */
record OwnLibraries(ClassLoader loader) {

  private static final int SAMPLE = 20;

  /**
   * The version of a library that the kernel brings.
   *
   * @param group who publishes it
   * @param artifact what it is
   * @return its version, or empty when the kernel does not bring it or its version is not known
   */
  Optional<String> version(String group, String artifact) {
    var about = "META-INF/maven/" + group + "/" + artifact + "/pom.properties";
    try (var stream = loader.getResourceAsStream(about)) {
      if (stream == null) {
        return Optional.empty();
      }
      var properties = new Properties();
      properties.load(stream);
      return Optional.ofNullable(properties.getProperty("version"));
    } catch (IOException | IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }

  /**
   * Whether the kernel brings the classes of a jar, in whatever version.
   *
   * @param jar a jar
   * @return true when at least half of a sample of its classes are there already
   */
  boolean holds(Path jar) {
    try (var opened = new JarFile(jar.toFile())) {
      var classes =
          opened.stream()
              .map(ZipEntry::getName)
              .filter(name -> name.endsWith(".class") && !name.startsWith("META-INF/"))
              .filter(name -> !name.endsWith("-info.class"))
              .toList();
      var step = Math.max(1, classes.size() / SAMPLE);
      var looked = 0;
      var there = 0;
      for (var index = 0; index < classes.size(); index += step) {
        looked++;
        there += loader.getResource(classes.get(index)) == null ? 0 : 1;
      }
      return looked > 0 && 2 * there >= looked;
    } catch (IOException notJar) {
      return false;
    }
  }
}
