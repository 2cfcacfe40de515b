package agro.notebook.install;

import agro.report.InputProblem;

/** For whom the kernel is installed. */
public sealed interface Destination {

  /**
   * The data folder of Jupyter that the kernel goes to.
   *
   * @param at system and environment
   * @return the folder, which need not exist
   * @throws InputProblem when there is no such folder in these surroundings
   */
  String dataFolder(Surroundings at);

  /** The user who runs the installation. */
  record CurrentUser() implements Destination {
    @Override
    public String dataFolder(Surroundings at) {
      return DataFolders.user(at);
    }
  }

  /** The Python environment that is active. */
  record ActiveEnvironment() implements Destination {
    @Override
    public String dataFolder(Surroundings at) {
      return DataFolders.activeEnvironment(at)
          .map(prefix -> DataFolders.below(prefix, at.system()))
          .orElseThrow(
              () ->
                  InputProblem.of("no Python environment is active")
                      .expected("VIRTUAL_ENV or CONDA_PREFIX among the environment variables")
                      .because("the kernel was to be installed into the active environment")
                      .mend(
                          "activate the environment first, or name its folder with --prefix, or"
                              + " install for yourself with --user"));
    }
  }

  /**
   * A folder that a Python environment or an installation has as its top.
   *
   * @param folder the folder
   */
  record Prefix(String folder) implements Destination {
    @Override
    public String dataFolder(Surroundings at) {
      return DataFolders.below(folder, at.system());
    }
  }
}
