package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicLibrary;
import java.util.List;

/** The magics that need nothing from outside: class path, files, time, lists. */
public final class SessionMagics implements CellMagicLibrary {

  private final List<CellMagic> magics =
      List.of(
          new OverviewMagic(),
          new ListMagic(),
          new TimeMagic(),
          new LoadMagic(),
          ClassPathMagic.named("classpath"),
          ClassPathMagic.named("jars"));

  /** Makes the magics of one evaluator. */
  public SessionMagics() {}

  @Override
  public List<CellMagic> magics() {
    return magics;
  }
}
