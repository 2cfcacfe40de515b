package agro.notebook.install;

import java.util.Map;
import java.util.Optional;

/**
 * What decides where Jupyter's folders are: the system, the environment variables and the home
 * folder. Paths are text, so that the rules of every system can be followed on any.
 *
 * @param system the family of the system
 * @param environment the environment variables
 * @param home the home folder, used where no variable names it
 */
public record Surroundings(SystemKind system, Map<String, String> environment, String home) {

  /** Copies the variables. */
  public Surroundings {
    environment = Map.copyOf(environment);
  }

  /**
   * The surroundings of this process.
   *
   * @return system, variables and home folder
   */
  public static Surroundings ofThisProcess() {
    return new Surroundings(
        SystemKind.of(System.getProperty("os.name")),
        System.getenv(),
        System.getProperty("user.home"));
  }

  /**
   * An environment variable. On Windows the case of its name does not matter.
   *
   * @param name its name
   * @return its value, unless it is unset or empty
   */
  public Optional<String> variable(String name) {
    var exact = Optional.ofNullable(environment.get(name));
    var found =
        exact.isPresent() || system != SystemKind.WINDOWS
            ? exact
            : environment.entrySet().stream()
                .filter(entry -> entry.getKey().equalsIgnoreCase(name))
                .map(Map.Entry::getValue)
                .findFirst();
    return found.filter(value -> !value.isEmpty());
  }

  /**
   * A switch in the environment, set as Jupyter understands it.
   *
   * @param name the variable
   * @return whether it is set to anything but a form of "no"
   */
  boolean isOn(String name) {
    return variable(name).filter(value -> !value.matches("(?i)no|n|false|off|0|0\\.0")).isPresent();
  }

  /**
   * The home folder as Jupyter sees it.
   *
   * @return the folder that the environment names, else that of Java
   */
  public String homeFolder() {
    return variable(system == SystemKind.WINDOWS ? "USERPROFILE" : "HOME").orElse(home);
  }
}
