package agro.development;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Many temperature series as equally likely members, asked for the days on which sums are reached:
 * by each member with a requirement of its own, or by every member with every one of many draws of
 * the requirement. The day of a sum is the first one at whose end the sum is not below it.
 * Immutable.
 *
 * <p>Sums only grow, so draws in ascending order are reached in that order: the draws that a member
 * reaches by the end of a day are counted, not looked up one by one.
 */
public final class ThermalTimeEnsemble {

  private final LocalDate start;
  private final StationSums sums;
  private final int first;
  private final int members;
  private final int days;

  private ThermalTimeEnsemble(StationSums sums, LocalDate start) {
    this.start = start;
    this.sums = sums;
    first = sums.indexOf(start);
    members = sums.places().size();
    days = sums.days() - first;
  }

  /**
   * An ensemble of the sums of many series.
   *
   * @param members degree-days of the members, as {@link DegreeDayBatch#accumulate} adds them up
   * @param start first day that counts, such as a biofix; no member misses a day from then on
   * @return the ensemble
   * @throws InputProblem when the start is outside the series or a day is missing
   */
  public static ThermalTimeEnsemble of(StationSums members, LocalDate start) {
    var ensemble = new ThermalTimeEnsemble(members, start);
    for (int i = 0; i < ensemble.members; i++) {
      if (!members.isWholeFrom(i, ensemble.first)) {
        throw InputProblem.of(members.places().get(i) + ": a day is missing from " + start + " on")
            .expected("members without gaps")
            .because("a day left out would count as a day without development")
            .mend("fill the gaps, or leave the member out");
      }
    }
    return ensemble;
  }

  /**
   * Number of members.
   *
   * @return at least 1
   */
  public int members() {
    return members;
  }

  /**
   * The days on which each member reaches its own requirement.
   *
   * @param requirementsC a sum in °C·d for each member, none of them NaN
   * @param multiples what the requirements are multiplied with for each event, above zero, such as
   *     1 and 2 for two generations
   * @return the days of each event, in the order of the multiples
   * @throws InputProblem when the number of requirements is not that of the members, one is NaN, or
   *     a multiple is not above zero
   */
  public List<EventDays> each(double[] requirementsC, double... multiples) {
    requireSums(requirementsC, multiples);
    if (requirementsC.length != members) {
      throw InputProblem.of(requirementsC.length + " requirements for " + members + " members")
          .expected("one requirement for each member")
          .because("each member has its own")
          .mend("give as many as there are members, or cross all draws with all members");
    }
    var counts = new long[multiples.length][days];
    for (int member = 0; member < members; member++) {
      for (int event = 0; event < multiples.length; event++) {
        int day = firstDay(member, multiples[event] * requirementsC[member]);
        if (day < days) {
          counts[event][day]++;
        }
      }
    }
    return Arrays.stream(counts).map(each -> new EventDays(start, running(each), members)).toList();
  }

  /**
   * The days on which every member reaches every draw of the requirement, all pairs equally likely.
   *
   * @param drawsC sums in °C·d in any order, at least one, none of them NaN
   * @param multiples what the draws are multiplied with for each event, above zero
   * @return the days of each event, in the order of the multiples
   * @throws InputProblem when there is no draw, one is NaN, or a multiple is not above zero
   */
  public List<EventDays> crossed(double[] drawsC, double... multiples) {
    var events = new ArrayList<EventDays>();
    var sorted = sorted(drawsC, multiples);
    for (double multiple : multiples) {
      var reachedBy = new long[days];
      for (int member = 0; member < members; member++) {
        addReached(member, sorted, multiple, reachedBy);
      }
      events.add(new EventDays(start, reachedBy, (long) members * sorted.length));
    }
    return List.copyOf(events);
  }

  /**
   * The same as {@link #crossed}, member by member.
   *
   * @param drawsC sums in °C·d in any order, at least one, none of them NaN
   * @param multiples what the draws are multiplied with for each event, above zero
   * @return for each member the days of each event, in the order of the multiples
   * @throws InputProblem when there is no draw, one is NaN, or a multiple is not above zero
   */
  public List<List<EventDays>> crossedByMember(double[] drawsC, double... multiples) {
    var sorted = sorted(drawsC, multiples);
    var all = new ArrayList<List<EventDays>>();
    for (int member = 0; member < members; member++) {
      var events = new ArrayList<EventDays>();
      for (double multiple : multiples) {
        var reachedBy = new long[days];
        addReached(member, sorted, multiple, reachedBy);
        events.add(new EventDays(start, reachedBy, sorted.length));
      }
      all.add(List.copyOf(events));
    }
    return List.copyOf(all);
  }

  private static double[] sorted(double[] draws, double[] multiples) {
    requireSums(draws, multiples);
    var sorted = draws.clone();
    Arrays.sort(sorted);
    return sorted;
  }

  private static void requireSums(double[] sums, double[] multiples) {
    boolean usable = sums.length > 0 && multiples.length > 0;
    for (double sum : sums) {
      usable &= !Double.isNaN(sum);
    }
    for (double multiple : multiples) {
      usable &= multiple > 0 && multiple < Double.POSITIVE_INFINITY;
    }
    if (!usable) {
      throw InputProblem.of(sums.length + " sums with the multiples " + Arrays.toString(multiples))
          .expected("at least one sum, none of them NaN, and multiples above zero")
          .because("no day can be told for another sum")
          .mend("look where the requirement was drawn from");
    }
  }

  /** First day at whose end a member's sum is not below the wanted one; days when there is none. */
  private int firstDay(int member, double wanted) {
    return sums.daysBelow(member, first, wanted);
  }

  /** Adds, for each day, the draws that a member has reached by its end. */
  private void addReached(int member, double[] sorted, double multiple, long[] reachedBy) {
    int begin = firstDay(member, multiple * sorted[0]);
    int last = firstDay(member, multiple * sorted[sorted.length - 1]);
    int reached = 0;
    for (int day = begin; day < last; day++) {
      reached = countUpTo(sorted, multiple, sums.sumBetween(member, first, first + day), reached);
      reachedBy[day] += reached;
    }
    for (int day = last; day < days; day++) {
      reachedBy[day] += sorted.length;
    }
  }

  /** Number of draws that are not above a sum, at least a number that is known. */
  private static int countUpTo(double[] sorted, double multiple, double sum, int known) {
    int low = known;
    int high = sorted.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (multiple * sorted[middle] <= sum) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static long[] running(long[] counts) {
    for (int i = 1; i < counts.length; i++) {
      counts[i] += counts[i - 1];
    }
    return counts;
  }
}
