package agro.dose.sprayer;

import agro.source.Reference;

/** How far one nozzle may be from the mean of all; published texts differ. */
public enum NozzleTolerance {
  /** Within 10 % of the mean. */
  TEN_PERCENT(0.10, SprayerSources.CATCH_TOLERANCE),
  /** Within 5 % of the mean. */
  FIVE_PERCENT(0.05, SprayerSources.STRICTER_TOLERANCE);

  private final double share;
  private final Reference source;

  NozzleTolerance(double share, Reference source) {
    this.share = share;
    this.source = source;
  }

  /**
   * The tolerance as a share of the mean.
   *
   * @return 0.10 or 0.05
   */
  public double share() {
    return share;
  }

  /**
   * Who asks for it.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }

  @Override
  public String toString() {
    return (this == TEN_PERCENT ? "10" : "5") + " %";
  }
}
