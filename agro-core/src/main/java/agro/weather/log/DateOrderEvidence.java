package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Decides from all dates of a log whether day, month or year comes first: by numbers that can be no
 * month, and by the steps of time, which are even in one order and leap in the others. Where both
 * say different things, or neither says anything, it is not guessed.
 */
final class DateOrderEvidence {

  private static final int SECONDS_OF_DAY = 86_400;

  /** No log of readings or days goes from month to month or from year to year, in seconds. */
  private static final long LONGEST_USUAL_STEP = 8L * SECONDS_OF_DAY;

  /**
   * What speaks against an order.
   *
   * @param order the order
   * @param impossible dates that the calendar does not have in that order
   * @param leaps steps of time that differ from the usual one
   */
  private record Case(DateOrder order, int impossible, int leaps) {
    boolean isNoWorse(Case other) {
      return impossible <= other.impossible && leaps <= other.leaps;
    }

    boolean isBetter(Case other) {
      return isNoWorse(other) && (impossible < other.impossible || leaps < other.leaps);
    }
  }

  private DateOrderEvidence() {}

  static DateOrder decide(
      List<WrittenTime> times, SourceLocation column, String example, ReadReport.Collector report) {
    var cases = new ArrayList<Case>();
    for (var order : DateOrder.values()) {
      cases.add(evidence(times, order));
    }
    // An order in which hardly any date exists is none, and does not compete.
    cases.removeIf(each -> each.impossible() * 2 > times.size());
    for (var one : cases) {
      boolean best = true;
      for (var other : cases) {
        best &= one.order() == other.order() || one.isBetter(other);
      }
      if (best) {
        report.add(
            Deed.NOTED,
            column,
            "dates such as \""
                + example
                + "\" are read as "
                + one.order().words()
                + why(one, cases));
        return one.order();
      }
    }
    throw undecided(cases, column, example);
  }

  private static String why(Case best, List<Case> cases) {
    int impossible = 0;
    for (var other : cases) {
      impossible += other.order() == best.order() ? 0 : other.impossible();
    }
    if (cases.size() == 1) {
      return ": only so does the calendar have them";
    }
    return impossible > 0
        ? ": in another order some are no days of the calendar"
        : ": in another order the steps of time would be uneven";
  }

  private static InputProblem undecided(List<Case> cases, SourceLocation column, String example) {
    var orders = new ArrayList<String>();
    for (var each : cases) {
      orders.add(each.order().words());
    }
    return InputProblem.at(
            column, "dates such as \"" + example + "\" may be " + String.join(" or ", orders))
        .expected(
            "a date above 12, or steps of time, that decide between day first and month first")
        .because("the log alone does not tell, and the wrong order gives other days")
        .mend(
            "say which comes first: LogFormat.detect().withDateOrder(DateOrder.DAY_FIRST), or"
                + " MONTH_FIRST or YEAR_FIRST");
  }

  private static Case evidence(List<WrittenTime> times, DateOrder order) {
    int impossible = 0;
    var steps = new long[Math.max(0, times.size() - 1)];
    int count = 0;
    long before = Long.MIN_VALUE;
    for (var time : times) {
      var day = time.date().flatMap(parts -> parts.day(order));
      if (day.isEmpty()) {
        impossible++;
        before = Long.MIN_VALUE;
        continue;
      }
      long second = day.get().toEpochDay() * SECONDS_OF_DAY + Math.max(0, time.clock());
      if (before != Long.MIN_VALUE) {
        steps[count++] = second - before;
      }
      before = second;
    }
    return new Case(order, impossible, leaps(Arrays.copyOf(steps, count)));
  }

  private static int leaps(long[] steps) {
    if (steps.length == 0) {
      return 0;
    }
    var sorted = steps.clone();
    Arrays.sort(sorted);
    long usual = sorted[sorted.length / 2];
    int leaps = 0;
    for (long step : steps) {
      leaps += step == usual && Math.abs(usual) <= LONGEST_USUAL_STEP ? 0 : 1;
    }
    return leaps;
  }
}
