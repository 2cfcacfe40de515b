package agro.notebook.magic;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A library that was asked for, or that one of those needs.
 *
 * @param group who publishes it
 * @param artifact what it is
 * @param version the version that was asked for
 * @param file its file; empty when it is not to be added
 * @param standing the version that is there already
 * @param source where it was downloaded from; empty when it was not
 */
record FoundLibrary(
    String group,
    String artifact,
    String version,
    Optional<Path> file,
    Standing standing,
    Optional<String> source) {

  /** Who brought the version that is on the class path already. */
  enum Owner {
    NOBODY,
    KERNEL,
    EARLIER_CALL
  }

  /**
   * What is on the class path already.
   *
   * @param owner who brought it
   * @param version its version; possibly empty when not known
   */
  record Standing(Owner owner, String version) {
    static final Standing NONE = new Standing(Owner.NOBODY, "");

    static Standing ofKernel(String version) {
      return new Standing(Owner.KERNEL, version);
    }

    static Standing fetched(String version) {
      return new Standing(Owner.EARLIER_CALL, version);
    }
  }

  /** This library when the kernel turns out to hold its classes. */
  FoundLibrary leftToKernel() {
    return new FoundLibrary(
        group, artifact, version, Optional.empty(), Standing.ofKernel(""), source);
  }

  /** Whether the reader gets something else than was asked for. */
  boolean isWorthSaying() {
    return standing.owner() != Owner.NOBODY && !standing.version().equals(version);
  }

  /** The library in words. */
  String words() {
    var name = group + ":" + artifact + ":" + version;
    return switch (standing.owner()) {
      case NOBODY -> name + source.map(from -> " (downloaded from " + from + ")").orElse("");
      case KERNEL ->
          name
              + " (the kernel brings "
              + (standing.version().isEmpty() ? "these classes" : "version " + standing.version())
              + ", which cells use)";
      case EARLIER_CALL ->
          name
              + " (version "
              + standing.version()
              + " was added before and stays; restart the kernel to change it)";
    };
  }
}
