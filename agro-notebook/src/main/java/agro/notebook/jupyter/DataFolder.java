package agro.notebook.jupyter;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where programs keep a user's data, by the custom of each system. */
final class DataFolder {

  private static final String NAME = "agro";

  private DataFolder() {}

  /**
   * The folder of this program.
   *
   * @param system name of the operating system, as Java tells it
   * @param environment the environment variables
   * @param home the user's home folder
   * @return the folder, which need not exist; empty when the user has no home
   */
  static Optional<Path> of(String system, Map<String, String> environment, String home) {
    var name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return given(environment, "LOCALAPPDATA")
          .or(() -> under(home, "AppData", "Local"))
          .map(folder -> folder.resolve(NAME));
    }
    if (name.startsWith("mac")) {
      return under(home, "Library", "Application Support").map(folder -> folder.resolve(NAME));
    }
    return given(environment, "XDG_DATA_HOME")
        .filter(Path::isAbsolute)
        .or(() -> under(home, ".local", "share"))
        .map(folder -> folder.resolve(NAME));
  }

  private static Optional<Path> given(Map<String, String> environment, String variable) {
    return Optional.ofNullable(environment.get(variable))
        .filter(value -> !value.isBlank())
        .map(Path::of);
  }

  private static Optional<Path> under(String home, String... names) {
    return home == null || home.isBlank() ? Optional.empty() : Optional.of(Path.of(home, names));
  }
}
