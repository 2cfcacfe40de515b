package agro.generation;

/**
 * How much of a flight had flown at the beginning of the day of issue.
 *
 * @param generation number of the flight
 * @param low share with 1 chance in 10 that it is less, 0 to 1
 * @param median share that is as likely more as less
 * @param high share with 1 chance in 10 that it is more
 */
public record FlownShare(int generation, double low, double median, double high) {

  /** Checks the order. */
  public FlownShare {
    if (!(low >= 0 && low <= median && median <= high && high <= 1)) {
      throw new IllegalArgumentException(
          "shares from 0 to 1 in order are needed, not " + low + ", " + median + ", " + high);
    }
  }
}
