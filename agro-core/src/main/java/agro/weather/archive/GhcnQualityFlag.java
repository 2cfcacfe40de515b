package agro.weather.archive;

import agro.source.Bibliography;
import agro.source.Reference;
import java.util.Optional;

/**
 * Quality flags of the Global Historical Climatology Network, daily: each names the check that a
 * value failed. A value without a flag failed none.
 */
public enum GhcnQualityFlag {
  /** The value repeats another month or year. */
  DUPLICATE('D', "duplicate check"),
  /** The value stands apart from all others. */
  GAP('G', "gap check"),
  /** Values of one day contradict each other. */
  INTERNAL_CONSISTENCY('I', "internal consistency check"),
  /** The same value comes too often or too long. */
  STREAK('K', "streak or frequent-value check"),
  /** The value may cover several days. */
  MULTIDAY_LENGTH('L', "check on length of multiday period"),
  /** The value contradicts others over a long time. */
  MEGACONSISTENCY('M', "megaconsistency check"),
  /** A zero that should be no value. */
  NAUGHT('N', "naught check"),
  /** Far from what is usual on that day of the year. */
  CLIMATOLOGICAL_OUTLIER('O', "climatological outlier check"),
  /** Too far from the days beside it. */
  LAGGED_RANGE('R', "lagged range check"),
  /** Too far from neighbouring stations. */
  SPATIAL_CONSISTENCY('S', "spatial consistency check"),
  /** Too fast a change from day to day. */
  TEMPORAL_CONSISTENCY('T', "temporal consistency check"),
  /** Too warm for the snow that was measured. */
  TOO_WARM_FOR_SNOW('W', "temperature too warm for snow"),
  /** Outside what is possible on earth. */
  BOUNDS('X', "bounds check"),
  /** Found wrong by an inquiry of the archive. */
  INQUIRY('Z', "flagged after an official inquiry");

  private final char letter;
  private final String check;

  GhcnQualityFlag(char letter, String check) {
    this.letter = letter;
    this.check = check;
  }

  /**
   * The flag that a letter stands for.
   *
   * @param letter letter in the column of the quality flag
   * @return the flag, or nothing for a letter that the documentation does not list
   */
  public static Optional<GhcnQualityFlag> of(char letter) {
    for (var flag : values()) {
      if (flag.letter == letter) {
        return Optional.of(flag);
      }
    }
    return Optional.empty();
  }

  /**
   * Letter in the file.
   *
   * @return an upper-case letter
   */
  public char letter() {
    return letter;
  }

  /**
   * The check that the value failed.
   *
   * @return a phrase in lower case
   */
  public String words() {
    return check;
  }

  /**
   * Where the letters are defined.
   *
   * @return the archive's documentation
   */
  public Reference source() {
    return Bibliography.GHCN_DAILY_README;
  }
}
