package agro.notebook.install;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.jar.Attributes;
import java.util.jar.JarFile;

/**
 * Which build of the program something is.
 *
 * @param version its version; empty when unknown
 * @param fingerprint a short name for its content; empty when unknown
 */
public record ProgramVersion(String version, String fingerprint) {

  /** What is not known, outside a jar. */
  public static final ProgramVersion UNKNOWN = new ProgramVersion("", "");

  /**
   * Reads a jar.
   *
   * @param jar the jar
   * @return its version, or nothing when it is no readable jar
   */
  public static Optional<ProgramVersion> of(Path jar) {
    try (var file = new JarFile(jar.toFile())) {
      var manifest = file.getManifest();
      var version =
          manifest == null
              ? null
              : manifest.getMainAttributes().getValue(Attributes.Name.IMPLEMENTATION_VERSION);
      return Optional.of(new ProgramVersion(version == null ? "" : version, Fingerprint.of(jar)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
