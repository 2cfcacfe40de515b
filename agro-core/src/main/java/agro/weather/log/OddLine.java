package agro.weather.log;

import java.util.Optional;

/** Reads the few lines of a log that a {@link ReadingScan} cannot take, each by itself. */
interface OddLine {

  /**
   * What a line holds.
   *
   * @param isReading false for a line that is passed over without a word, such as a blank one
   * @param localSecond seconds from 1970-01-01T00:00 on the clock that wrote the time
   * @param offset offset of the time from UTC in seconds, 0 when none is written
   * @param value the number in the cell of the temperature, NaN when there is none
   * @param decimals digits behind its decimal mark; -1 when there is no number
   */
  record Found(boolean isReading, long localSecond, int offset, double value, int decimals) {

    /** A line that is passed over. */
    static final Found NOTHING = new Found(false, 0, 0, Double.NaN, -1);
  }

  /**
   * Reads a line.
   *
   * @param from its first byte
   * @param end the byte behind its last one
   * @param line its number in the file
   * @return what it holds; nothing when the whole file has to be read in another way
   */
  Optional<Found> read(int from, int end, int line);
}
