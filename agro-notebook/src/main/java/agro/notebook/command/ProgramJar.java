package agro.notebook.command;

import agro.notebook.install.ProgramVersion;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The jar that this program runs from. */
final class ProgramJar {

  private ProgramJar() {}

  /** The jar, or the folder of classes when the program does not run from a jar. */
  static Path path() {
    try {
      var source = ProgramJar.class.getProtectionDomain().getCodeSource();
      return Path.of(source.getLocation().toURI()).toAbsolutePath();
    } catch (URISyntaxException e) {
      throw new IllegalStateException("the place of a class is a path", e);
    }
  }

  static ProgramVersion version() {
    var path = path();
    return Files.isRegularFile(path)
        ? ProgramVersion.of(path).orElse(ProgramVersion.UNKNOWN)
        : ProgramVersion.UNKNOWN;
  }
}
