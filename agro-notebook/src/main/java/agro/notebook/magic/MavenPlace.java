package agro.notebook.magic;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where Maven's settings and its local repository are.
 *
 * @param settings the user's settings file; empty for the one in the user's Maven folder
 * @param localRepository the local repository; empty for the one that the settings name
 */
record MavenPlace(Optional<Path> settings, Optional<Path> localRepository) {

  static MavenPlace ofUser() {
    return new MavenPlace(Optional.empty(), Optional.empty());
  }
}
