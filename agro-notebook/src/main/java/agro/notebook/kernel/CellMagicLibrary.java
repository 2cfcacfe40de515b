package agro.notebook.kernel;

import java.util.List;

/**
 * Brings magics to evaluators. Found as a service ({@link java.util.ServiceLoader}), made anew for
 * each evaluator, and not before a cell of it calls a magic; magics of one library may share state.
 */
public interface CellMagicLibrary {

  /**
   * The magics.
   *
   * @return the same ones each time
   */
  List<CellMagic> magics();
}
