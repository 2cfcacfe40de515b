package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.Arrays;
import java.util.List;

/**
 * When in the day extremes were probably read, told from their changes from day to day (after
 * DeGaetano 1999). Read in the afternoon, a hot day counts twice, so that maxima rise in larger
 * steps than they fall; read in the morning, a cold night counts twice, and minima fall in larger
 * steps than they rise; at midnight both ways are alike.
 *
 * @param maximumSkewCelsius upper percentiles of the rises of the maxima less those of their falls,
 *     in °C
 * @param minimumSkewCelsius upper percentiles of the falls of the minima less those of their rises,
 *     in °C
 * @param days days used
 * @param verdict what the two say
 */
public record ReadingHourHint(
    double maximumSkewCelsius, double minimumSkewCelsius, int days, Verdict verdict)
    implements Presentable {

  /** When the extremes were probably read. */
  public enum Verdict {
    /** In the afternoon or evening. */
    AFTERNOON("read in the afternoon"),
    /** In the morning. */
    MORNING("read in the morning"),
    /** At midnight, or at an hour that leaves no trace. */
    NO_TRACE("no trace of a reading by day");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    /**
     * The verdict in words.
     *
     * @return a phrase in lower case
     */
    public String words() {
      return words;
    }
  }

  /** Fewest changes from one day to the next. */
  public static final int LEAST_DAYS = 180;

  /** Least skew that counts, in °C (ours; the published functions are fitted to one country). */
  private static final double LEAST_SKEW = 0.4;

  private static final double[] SHARES = {0.5, 0.6, 0.7, 0.8, 0.9};

  /**
   * Looks at a series.
   *
   * @param observed daily extremes, under the day of their reading
   * @return the hint
   * @throws InputProblem when fewer than {@value #LEAST_DAYS} pairs of running days were observed
   */
  public static ReadingHourHint of(DailyTemperatures observed) {
    int size = observed.size();
    var low = new double[size];
    var high = new double[size];
    int known = 0;
    for (int i = 1; i < size; i++) {
      if (observed.originAt(i) != DayOrigin.MISSING
          && observed.originAt(i - 1) != DayOrigin.MISSING) {
        var day = observed.day(i);
        low[known] = observed.minCelsius(day.minusDays(1)) - observed.minCelsius(day);
        high[known++] = observed.maxCelsius(day) - observed.maxCelsius(day.minusDays(1));
      }
    }
    if (known < LEAST_DAYS) {
      throw InputProblem.of(observed + ": " + known + " changes from one day to the next")
          .expected("at least " + LEAST_DAYS)
          .because("the trace of the hour is small against the weather")
          .mend("take a whole year");
    }
    double maximum = skew(Arrays.copyOf(high, known));
    double minimum = skew(Arrays.copyOf(low, known));
    var verdict = Verdict.NO_TRACE;
    if (Math.max(maximum, minimum) >= LEAST_SKEW) {
      verdict = maximum > minimum ? Verdict.AFTERNOON : Verdict.MORNING;
    }
    return new ReadingHourHint(maximum, minimum, known, verdict);
  }

  /** Mean over some percentiles of the positive changes less those of the negative ones. */
  private static double skew(double[] changes) {
    double[] rises = Arrays.stream(changes).filter(change -> change > 0).sorted().toArray();
    double[] falls =
        Arrays.stream(changes).filter(change -> change < 0).map(Math::abs).sorted().toArray();
    if (rises.length == 0 || falls.length == 0) {
      return 0;
    }
    double sum = 0;
    for (double share : SHARES) {
      sum += percentile(rises, share) - percentile(falls, share);
    }
    return sum / SHARES.length;
  }

  private static double percentile(double[] sorted, double share) {
    double place = share * (sorted.length - 1);
    int below = (int) place;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("When were these extremes read?")
        .fact("Verdict", verdict.words())
        .fact("Rises of the maxima less their falls", Numbers.fixed(maximumSkewCelsius, 2) + " °C")
        .fact("Falls of the minima less their rises", Numbers.fixed(minimumSkewCelsius, 2) + " °C")
        .fact("Days", Integer.toString(days))
        .paragraph(
            "A hint and no proof: ask the observer. Upper percentiles of the changes from day to day"
                + " are compared; "
                + Numbers.plain(LEAST_SKEW)
                + " °C or more counts.")
        .sources(List.of(SitingSources.DEGAETANO_1999))
        .build();
  }
}
