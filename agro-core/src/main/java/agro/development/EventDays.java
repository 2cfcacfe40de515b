package agro.development;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The days on which the members of an ensemble reach a sum, as a count for each day, and how many
 * do not reach it by the end of their series. These are kept as members that come later than every
 * day: leaving them out would make the event look earlier and surer than it is. Immutable.
 */
public final class EventDays implements Presentable {

  private static final double[] SHOWN = {0.1, 0.5, 0.9};

  private final LocalDate start;
  private final long[] reachedBy;
  private final long members;

  /**
   * Takes over running counts.
   *
   * @param start day 0
   * @param reachedBy members that have reached the sum by the end of each day since the start
   * @param members all members
   */
  EventDays(LocalDate start, long[] reachedBy, long members) {
    this.start = start;
    this.reachedBy = reachedBy;
    this.members = members;
  }

  /**
   * Day 0, from whose beginning the sums are counted.
   *
   * @return the start
   */
  public LocalDate start() {
    return start;
  }

  /**
   * Number of members, those that do not reach the sum included.
   *
   * @return at least 1
   */
  public long members() {
    return members;
  }

  /**
   * Members that reach the sum in the course of a day.
   *
   * @param day days since the start, from 0
   * @return 0 or more; 0 outside the series
   */
  public long countOn(int day) {
    if (day < 0 || day >= reachedBy.length) {
      return 0;
    }
    return reachedBy[day] - (day == 0 ? 0 : reachedBy[day - 1]);
  }

  /**
   * Share of the members that reach the sum at all.
   *
   * @return 0 to 1
   */
  public double shareReached() {
    return (double) reachedBy[reachedBy.length - 1] / members;
  }

  /**
   * Share of the members that have reached the sum by the end of a day.
   *
   * @param day any day
   * @return 0 before the start, {@link #shareReached()} after the end of the series
   */
  public double shareBy(LocalDate day) {
    long index = day.toEpochDay() - start.toEpochDay();
    int last = reachedBy.length - 1;
    return index < 0 ? 0 : (double) reachedBy[(int) Math.min(index, last)] / members;
  }

  /**
   * A quantile of the days, between the two nearest members on a straight line (definition 7 of
   * Hyndman and Fan, which NumPy and R take when none is asked for).
   *
   * @param probability 0 to 1
   * @return days since the start; positive infinity where the members in question do not reach the
   *     sum
   * @throws InputProblem for another probability
   */
  public double quantile(double probability) {
    if (!(probability >= 0 && probability <= 1)) {
      throw InputProblem.of("the quantile of probability " + probability)
          .expected("a probability from 0 to 1")
          .because("there is no other share of the members")
          .mend("give 0.5 for the median");
    }
    double rank = (members - 1) * probability;
    long below = (long) rank;
    double lower = dayOfMember(below);
    double upper = rank > below ? dayOfMember(below + 1) : lower;
    return lower == upper ? lower : lower + (rank - below) * (upper - lower);
  }

  /** Day of the member of a rank from 0, members in the order of their days. */
  private double dayOfMember(long rank) {
    int low = 0;
    int high = reachedBy.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (reachedBy[middle] <= rank) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low == reachedBy.length ? Double.POSITIVE_INFINITY : low;
  }

  /**
   * The day by whose end a share of all members has reached the sum.
   *
   * @param share above 0 to 1
   * @return the first such day, or nothing when fewer members reach it at all
   * @throws InputProblem for another share
   */
  public Optional<LocalDate> dateOf(double share) {
    if (!(share > 0 && share <= 1)) {
      throw InputProblem.of("the date of a share of " + share)
          .expected("a share above 0 and at most 1")
          .because("no date belongs to another share")
          .mend("give 0.5 for the day by which half of the members have come");
    }
    double day = dayOfMember((long) Math.ceil(share * members) - 1);
    return Double.isInfinite(day) ? Optional.empty() : Optional.of(start.plusDays((long) day));
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Days on which a sum is reached")
            .fact("counted from", "the beginning of " + start)
            .fact("members", Long.toString(members))
            .fact("reach it", Numbers.fixed(100 * shareReached(), 1) + " %");
    for (double share : SHOWN) {
      page.fact(
          Numbers.plain(100 * share) + " % of all members by",
          dateOf(share).map(LocalDate::toString).orElse("not within the series"));
    }
    return page.cautions(List.of(Caution.LABEL_FIRST, Caution.LICENSED_ADVISER)).build();
  }

  @Override
  public String toString() {
    return members + " members, " + Numbers.fixed(100 * shareReached(), 1) + " % reach the sum";
  }
}
