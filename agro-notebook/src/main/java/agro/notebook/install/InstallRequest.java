package agro.notebook.install;

import java.nio.file.Path;
import java.util.List;

/**
 * What is to be installed.
 *
 * @param destination for whom
 * @param name the name by which Jupyter calls the kernel
 * @param displayName the name that people choose from
 * @param options further options of the virtual machine
 * @param jar the jar of the program
 * @param jarUse whether the jar is copied
 * @param archiveUse whether a class-data archive is made
 * @param version the version of the program
 */
public record InstallRequest(
    Destination destination,
    String name,
    String displayName,
    List<String> options,
    Path jar,
    JarUse jarUse,
    ArchiveUse archiveUse,
    String version) {

  /** What becomes of the jar. */
  public enum JarUse {
    /** It is copied beside the spec, and the original may go. */
    COPIED,
    /** It stays where it is and must not go. */
    IN_PLACE
  }

  /** Whether the start is made quicker by a class-data archive. */
  public enum ArchiveUse {
    /** An archive is made if the virtual machine can. */
    MADE,
    /** There is none. */
    NONE
  }

  /** Copies the options. */
  public InstallRequest {
    options = List.copyOf(options);
  }
}
