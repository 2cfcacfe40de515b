package agro.notebook.display;

/** Where the bar of a work is seen. */
interface ProgressFace {

  /** How long to wait at least before it is drawn again, in nanoseconds. */
  long pauseNanos();

  /** Draws the bar for the first time or again. */
  void draw(ProgressState state);

  /** Puts a last line in the place of the bar. */
  void replace(String line);

  /** Takes the bar away. */
  void remove();

  /** The same for another work, drawn below. */
  ProgressFace another();
}
