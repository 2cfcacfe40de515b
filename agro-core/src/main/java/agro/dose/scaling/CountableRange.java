package agro.dose.scaling;

import agro.source.Reference;

/** How many colonies a plate may carry to be counted. Laboratories use one or the other. */
public enum CountableRange {
  /** 30 to 300 colonies (value from memory). */
  FROM_30_TO_300(30, 300, ScalingSources.COUNTABLE_30_300),
  /** 25 to 250 colonies (value from memory). */
  FROM_25_TO_250(25, 250, ScalingSources.COUNTABLE_25_250);

  private final int least;
  private final int most;
  private final Reference source;

  CountableRange(int least, int most, Reference source) {
    this.least = least;
    this.most = most;
    this.source = source;
  }

  /**
   * The mark of a plate.
   *
   * @param colonies colonies on the plate
   * @return whether the plate is counted
   */
  public PlateMark mark(int colonies) {
    if (colonies < least) {
      return PlateMark.TOO_FEW;
    }
    return colonies > most ? PlateMark.TOO_MANY : PlateMark.COUNTABLE;
  }

  /**
   * Where the range comes from.
   *
   * @return the source with its standing
   */
  public Reference source() {
    return source;
  }

  @Override
  public String toString() {
    return least + " to " + most + " colonies";
  }
}
