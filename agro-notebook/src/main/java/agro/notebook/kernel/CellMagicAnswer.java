package agro.notebook.kernel;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/**
 * What the evaluator has to do when a magic has done its own work, in this order.
 *
 * @param classPath jars and folders that cells shall see from now on
 * @param sources code to evaluate, one after the other, until one fails
 * @param evaluatesOwnCode whether the code that stands in the call itself, behind the name or in
 *     the body, is evaluated; its value becomes the value of the call
 * @param afterwards what to do at the end, also when the code failed; on the thread of the cells
 */
public record CellMagicAnswer(
    List<Path> classPath, List<CellSource> sources, boolean evaluatesOwnCode, Runnable afterwards) {

  private static final CellMagicAnswer DONE =
      new CellMagicAnswer(List.of(), List.of(), false, () -> {});

  /** Makes the lists immutable. */
  public CellMagicAnswer {
    classPath = List.copyOf(classPath);
    sources = List.copyOf(sources);
    Objects.requireNonNull(afterwards, "afterwards");
  }

  /**
   * Nothing is left to do.
   *
   * @return the answer
   */
  public static CellMagicAnswer done() {
    return DONE;
  }

  /**
   * Makes jars and folders of classes visible.
   *
   * @param entries jars and folders; those that are visible already are passed over
   * @return the answer
   */
  public static CellMagicAnswer addToClassPath(List<Path> entries) {
    return new CellMagicAnswer(entries, List.of(), false, () -> {});
  }

  /**
   * Evaluates code from elsewhere. The value of the last source becomes the value of the call.
   *
   * @param sources named pieces of code, which may call magics themselves
   * @return the answer
   */
  public static CellMagicAnswer evaluate(List<CellSource> sources) {
    return new CellMagicAnswer(List.of(), sources, false, () -> {});
  }

  /**
   * Evaluates the code that stands in the call itself.
   *
   * @param afterwards what to do when it has ended, well or not; on the thread of the cells
   * @return the answer
   */
  public static CellMagicAnswer evaluateOwnCode(Runnable afterwards) {
    return new CellMagicAnswer(List.of(), List.of(), true, afterwards);
  }
}
