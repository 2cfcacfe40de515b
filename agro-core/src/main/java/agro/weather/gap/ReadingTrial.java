package agro.weather.gap;

/**
 * Errors of a bridge over a stretch of readings: the same hours of other days, which were observed,
 * are bridged in the same way and compared.
 */
final class ReadingTrial {

  /** Days on each side that are tried. */
  static final int DAYS_TRIED = 30;

  /** Fewest days that tell an error. */
  static final int LEAST_TRIALS = 5;

  private final ReadingLookup lookup;
  private final ReadingBridge bridge;

  ReadingTrial(ReadingLookup lookup) {
    this.lookup = lookup;
    bridge = new ReadingBridge(lookup);
  }

  /** What bridging missed on other days: root mean square errors in °C. */
  static final class Errors {
    private final int trials;
    private final double[] errors;

    private Errors(int trials, double[] errors) {
      this.trials = trials;
      this.errors = errors;
    }

    /** Days that could be tried. */
    int trials() {
      return trials;
    }

    double at(int index) {
      return errors[index];
    }

    boolean areTold() {
      return trials >= LEAST_TRIALS;
    }
  }

  /** Errors at the moments of a stretch, which are zero at its known ends. */
  Errors errors(long[] moments, ReadingGapMethod method) {
    var squares = new double[moments.length];
    int trials = 0;
    for (int day = -DAYS_TRIED; day <= DAYS_TRIED; day++) {
      if (day != 0) {
        var moved = moved(moments, day);
        var truth = truth(moved);
        var guess = truth.length == 0 ? truth : guess(moved, method);
        if (guess.length > 0) {
          trials++;
          for (int i = 0; i < squares.length; i++) {
            squares[i] += (guess[i] - truth[i]) * (guess[i] - truth[i]);
          }
        }
      }
    }
    for (int i = 0; i < squares.length; i++) {
      squares[i] = Math.sqrt(squares[i] / Math.max(1, trials));
    }
    return new Errors(trials, squares);
  }

  /**
   * Errors of the lowest and the highest temperature of a day, of whose moments those from one
   * index to another are bridged from the stretch around them.
   *
   * @param day moments of the day
   * @param moments moments of the stretch, ends included
   * @return trials, and the two errors
   */
  Errors extremes(long[] day, long[] moments, ReadingGapMethod method) {
    double minSquares = 0;
    double maxSquares = 0;
    int trials = 0;
    for (int shift = -DAYS_TRIED; shift <= DAYS_TRIED; shift++) {
      var moved = moved(moments, shift);
      var movedDay = moved(day, shift);
      var truth = shift == 0 ? new double[0] : truth(movedDay);
      var whole = truth.length == 0 ? truth : truth(moved);
      var guess = whole.length == 0 ? whole : guess(moved, method);
      if (guess.length > 0) {
        trials++;
        var filled = replaced(movedDay, truth, moved, guess);
        double min = lowest(filled) - lowest(truth);
        double max = highest(filled) - highest(truth);
        minSquares += min * min;
        maxSquares += max * max;
      }
    }
    int count = Math.max(1, trials);
    return new Errors(
        trials, new double[] {Math.sqrt(minSquares / count), Math.sqrt(maxSquares / count)});
  }

  private static long[] moved(long[] moments, int days) {
    var moved = new long[moments.length];
    for (int i = 0; i < moved.length; i++) {
      moved[i] = moments[i] + days * ReadingLookup.DAY_SECONDS;
    }
    return moved;
  }

  /** Observed temperatures at all moments; nothing when one is not known. */
  private double[] truth(long[] moments) {
    var truth = new double[moments.length];
    for (int i = 0; i < truth.length; i++) {
      truth[i] = lookup.at(moments[i]);
      if (Double.isNaN(truth[i])) {
        return new double[0];
      }
    }
    return truth;
  }

  private double[] guess(long[] moments, ReadingGapMethod method) {
    return bridge.values(moments, method).orElse(new double[0]);
  }

  /** The temperatures of a day, those inside the stretch replaced by what was guessed. */
  private static double[] replaced(long[] day, double[] truth, long[] moments, double[] guess) {
    var filled = truth.clone();
    int k = 1;
    for (int i = 0; i < day.length; i++) {
      while (k < moments.length - 1 && moments[k] < day[i]) {
        k++;
      }
      if (k < moments.length - 1 && moments[k] == day[i]) {
        filled[i] = guess[k];
      }
    }
    return filled;
  }

  private static double lowest(double[] values) {
    double lowest = Double.POSITIVE_INFINITY;
    for (double value : values) {
      lowest = Math.min(lowest, value);
    }
    return lowest;
  }

  private static double highest(double[] values) {
    double highest = Double.NEGATIVE_INFINITY;
    for (double value : values) {
      highest = Math.max(highest, value);
    }
    return highest;
  }
}
