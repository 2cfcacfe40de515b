package agro.notebook.install;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;

/**
 * Where Jupyter looks for data such as kernel specs: the rules of the chapters on common
 * directories (Jupyter documentation) and on kernel specs (documentation of jupyter_client), as
 * functions of the system and its environment.
 */
public final class DataFolders {

  private DataFolders() {}

  /**
   * The data folder of the user.
   *
   * @param at system and environment
   * @return the folder, which need not exist
   */
  public static String user(Surroundings at) {
    return at.variable("JUPYTER_DATA_DIR").orElseGet(() -> usual(at));
  }

  private static String usual(Surroundings at) {
    var system = at.system();
    var home = at.homeFolder();
    var platform = at.isOn("JUPYTER_PLATFORM_DIRS");
    return switch (system) {
      case LINUX ->
          at.variable("XDG_DATA_HOME")
              .map(folder -> system.join(folder, "jupyter"))
              .orElseGet(() -> system.join(home, ".local", "share", "jupyter"));
      case MACOS ->
          platform
              ? system.join(home, "Library", "Application Support", "Jupyter")
              : system.join(home, "Library", "Jupyter");
      case WINDOWS ->
          at.variable(platform ? "LOCALAPPDATA" : "APPDATA")
              .map(folder -> system.join(folder, platform ? "Jupyter" : "jupyter"))
              .orElseGet(() -> withoutAppData(at));
    };
  }

  private static String withoutAppData(Surroundings at) {
    var system = at.system();
    var settings =
        at.variable("JUPYTER_CONFIG_DIR").orElseGet(() -> system.join(at.homeFolder(), ".jupyter"));
    return system.join(settings, "data");
  }

  /**
   * The Python environment that is active, a virtual one or one of conda.
   *
   * @param at system and environment
   * @return its top folder
   */
  public static Optional<String> activeEnvironment(Surroundings at) {
    return at.variable("VIRTUAL_ENV").or(() -> at.variable("CONDA_PREFIX"));
  }

  /**
   * The data folder below the top of an environment.
   *
   * @param prefix the top folder
   * @param system the system
   * @return the data folder
   */
  public static String below(String prefix, SystemKind system) {
    return system.join(prefix, "share", "jupyter");
  }

  /**
   * The data folders for all users of the machine.
   *
   * @param at system and environment
   * @return the folders in the order in which Jupyter looks
   */
  public static List<String> shared(Surroundings at) {
    if (at.system() == SystemKind.WINDOWS) {
      return at.variable("PROGRAMDATA")
          .map(folder -> List.of(at.system().join(folder, "jupyter")))
          .orElse(List.of());
    }
    return List.of("/usr/local/share/jupyter", "/usr/share/jupyter");
  }

  /**
   * All data folders, each once, in the order in which Jupyter looks: those of {@code
   * JUPYTER_PATH}, that of the user, that of the active environment (before the user's if one is
   * active and current Jupyter is not told otherwise), those of the machine.
   *
   * @param at system and environment
   * @return the folders, which need not exist
   */
  public static List<String> search(Surroundings at) {
    var found = new LinkedHashSet<String>();
    at.variable("JUPYTER_PATH").map(at.system()::split).ifPresent(found::addAll);
    var environment =
        activeEnvironment(at).map(prefix -> below(prefix, at.system())).stream().toList();
    var preferred =
        at.variable("JUPYTER_PREFER_ENV_PATH").isPresent()
            ? at.isOn("JUPYTER_PREFER_ENV_PATH")
            : !environment.isEmpty();
    if (preferred) {
      found.addAll(environment);
    }
    found.add(user(at));
    found.addAll(environment);
    found.addAll(shared(at));
    return new ArrayList<>(found);
  }
}
