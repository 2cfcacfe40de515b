package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicLibrary;
import java.util.List;

/**
 * The magics that fetch libraries. Nothing of the resolver behind them is loaded before one of them
 * is called.
 */
public final class MavenMagics implements CellMagicLibrary {

  private final List<CellMagic> magics;

  /** Makes the magics of one evaluator, which follow the user's own Maven settings. */
  public MavenMagics() {
    this(MavenPlace.ofUser());
  }

  /**
   * Makes the magics of one evaluator.
   *
   * @param place where Maven's settings and local repository are
   */
  MavenMagics(MavenPlace place) {
    var libraries = new LibraryShelf(place);
    magics =
        List.of(
            new MavenMagic(libraries),
            new MavenRepositoryMagic(libraries),
            new PomMagic(libraries));
  }

  @Override
  public List<CellMagic> magics() {
    return magics;
  }
}
