package agro.notebook.run;

/** Hears how far the run of a notebook has come. Called between cells. */
public interface RunListener {

  /**
   * A cell of code is about to run.
   *
   * @param number its place among the cells of code, counted from 1
   * @param total cells of code in all
   */
  void cellStarts(int number, int total);

  /**
   * A cell of code has ended.
   *
   * @param outcome how
   */
  void cellEnded(CellOutcome outcome);

  /**
   * A listener that hears nothing.
   *
   * @return the silent listener
   */
  static RunListener silent() {
    return new RunListener() {
      @Override
      public void cellStarts(int number, int total) {}

      @Override
      public void cellEnded(CellOutcome outcome) {}
    };
  }
}
