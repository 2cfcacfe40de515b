package agro.notebook.install;

import java.nio.file.Path;
import java.util.List;

/**
 * An installation that has been made.
 *
 * @param folder the folder of the kernel spec
 * @param name the name of the kernel
 * @param replaced whether it took the place of an earlier one
 * @param remarks what the user should know, each a sentence
 */
public record Installed(Path folder, String name, boolean replaced, List<String> remarks) {

  /** Copies the remarks. */
  public Installed {
    remarks = List.copyOf(remarks);
  }
}
