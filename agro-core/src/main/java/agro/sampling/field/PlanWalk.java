package agro.sampling.field;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.sampling.SamplingUnit;
import agro.sampling.sequential.CountFamily;
import agro.sampling.sequential.FieldClass;
import agro.sampling.sequential.SequentialPlan;
import agro.sampling.sequential.TallyPlan;
import agro.sampling.sequential.WaldLines;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * A plan on its way through a field. It is fed with one count after the other and says whether to
 * stop, why, and how many more units it may take at most. A walk is never changed: each count gives
 * the next one.
 *
 * @param plan the plan
 * @param unit what one count belongs to
 * @param tally animals above which a unit is marked; nothing when animals themselves are added up
 * @param counts animals on each unit so far
 */
public record PlanWalk(
    SequentialPlan plan, SamplingUnit unit, OptionalInt tally, List<Integer> counts)
    implements Presentable {

  /**
   * Checks the counts.
   *
   * @throws InputProblem when one is negative, is no mark where the plan asks for marks, or came
   *     after the plan had stopped
   */
  public PlanWalk {
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(unit, "unit");
    Objects.requireNonNull(tally, "tally");
    counts = List.copyOf(counts);
    long total = 0;
    for (int i = 0; i < counts.size(); i++) {
      int count = counts.get(i);
      requireCount(count, i + 1, asksForMarks(plan) && tally.isEmpty());
      total += tally.isPresent() ? (count > tally.getAsInt() ? 1 : 0) : count;
      var says = plan.decide(i + 1, total);
      if (says != FieldClass.GO_ON && i + 1 < counts.size()) {
        throw InputProblem.of(
                "a count after the plan had stopped at " + unit.words() + " " + (i + 1))
            .expected("no further count: the field is " + says.words())
            .because("the chances of error hold for the decision at the line, not for a later one")
            .mend("end here, or begin a new walk on another day");
      }
    }
  }

  /**
   * A walk before the first unit.
   *
   * @param plan the plan
   * @param unit what one count belongs to
   * @return the walk
   */
  public static PlanWalk start(SequentialPlan plan, SamplingUnit unit) {
    return new PlanWalk(plan, unit, OptionalInt.empty(), List.of());
  }

  /**
   * A walk that is fed with animals and marks units above the tally of its plan.
   *
   * @param tallies where the plan comes from
   * @param plan the plan on marked units
   * @param unit what one count belongs to
   * @return the walk
   */
  public static PlanWalk start(TallyPlan tallies, SequentialPlan plan, SamplingUnit unit) {
    return new PlanWalk(plan, unit, OptionalInt.of(tallies.relation().tally()), List.of());
  }

  private static boolean asksForMarks(SequentialPlan plan) {
    return plan.bounds() instanceof WaldLines lines
        && lines.family() instanceof CountFamily.Presence;
  }

  private static void requireCount(int count, int place, boolean marks) {
    if (count < 0 || (marks && count > 1)) {
      throw InputProblem.of("a count of " + count + " as number " + place)
          .expected(marks ? "1 for a unit with animals, 0 for one without" : "0 or more")
          .because(
              marks
                  ? "the plan adds up units with animals, not animals"
                  : "nobody can count fewer than none")
          .mend(
              marks
                  ? "feed marks, or start the walk with its tally plan and feed animals"
                  : "look for a minus sign");
    }
  }

  /**
   * The walk after one more unit.
   *
   * @param animals animals on it, or its mark, 0 or more
   * @return the next walk
   * @throws InputProblem when the count is negative or no mark, or the plan has stopped
   */
  public PlanWalk count(int animals) {
    var more = new ArrayList<>(counts);
    more.add(animals);
    return new PlanWalk(plan, unit, tally, more);
  }

  /**
   * The walk after the counts of a sample, one by one in their order, up to the stop.
   *
   * @param sample counts in the unit of this walk
   * @return the walk at its stop, or after the last count; counts behind the stop are not used
   * @throws InputProblem when the sample belongs to another unit
   */
  public PlanWalk follow(CountSample sample) {
    unit.requireSame(sample.unit(), "one walk");
    var walk = this;
    for (int count : sample.counts()) {
      if (walk.isStopped()) {
        break;
      }
      walk = walk.count(count);
    }
    return walk;
  }

  /**
   * Units looked at.
   *
   * @return 0 or more
   */
  public int units() {
    return counts.size();
  }

  /**
   * What is added up so far: animals, or marked units.
   *
   * @return 0 or more
   */
  public long total() {
    return totalAfter(counts.size());
  }

  private long totalAfter(int units) {
    return counts.stream().limit(units).mapToLong(this::worth).sum();
  }

  private long worth(int count) {
    if (tally.isEmpty()) {
      return count;
    }
    return count > tally.getAsInt() ? 1 : 0;
  }

  /**
   * What the plan says.
   *
   * @return low, high, undecided at the end, or go on
   */
  public FieldClass says() {
    return counts.isEmpty() ? FieldClass.GO_ON : plan.decide(units(), total());
  }

  /**
   * Whether to stop.
   *
   * @return true when the plan has come to its decision or its end
   */
  public boolean isStopped() {
    return says() != FieldClass.GO_ON;
  }

  /**
   * How many more units it may take at most.
   *
   * @return 0 after the stop; nothing for a plan without an end
   */
  public OptionalInt mostMore() {
    if (isStopped()) {
      return OptionalInt.of(0);
    }
    return plan.mostUnits().isPresent()
        ? OptionalInt.of(plan.mostUnits().getAsInt() - units())
        : OptionalInt.empty();
  }

  /**
   * How many more units without any animal would call the field low.
   *
   * @return 0 after the stop; nothing when the end comes first
   */
  public OptionalInt emptyUnitsToLow() {
    if (isStopped()) {
      return OptionalInt.of(0);
    }
    int most = plan.mostUnits().orElse(Integer.MAX_VALUE);
    long total = total();
    double slope = plan.bounds().middle();
    // Both lines rise with the middle of the plan, so the low one passes the total in time.
    long reach = units() + 10L + (long) Math.ceil(4 * (total + 1) / slope) + plan.leastUnits();
    long last = Math.min(most, Math.max(reach, units() + 1_000L));
    for (int n = units() + 1; n <= last; n++) {
      if (total <= plan.lastLow(n)) {
        return OptionalInt.of(n - units());
      }
    }
    return OptionalInt.empty();
  }

  /**
   * Why to stop or to go on, in a sentence.
   *
   * @return the totals beside the lines
   */
  public String reason() {
    if (counts.isEmpty()) {
      return "Nothing counted yet.";
    }
    var sofar = things(total()) + " on " + units() + " × " + unit.words() + ": ";
    long low = plan.lastLow(units());
    long high = plan.firstHigh(units());
    return switch (says()) {
      case LOW ->
          sofar
              + (total() <= low
                  ? "at or below " + low + ", where the field is low."
                  : "the end of the plan between its lines; by its rule the field is low.");
      case HIGH ->
          sofar
              + (total() >= high
                  ? "at or above " + high + ", where the field is high."
                  : "the end of the plan between its lines; by its rule the field is high.");
      case UNDECIDED -> sofar + "the end of the plan between its lines; the field is undecided.";
      default ->
          sofar
              + (low < 0 ? "too few units for low" : "low at or below " + low)
              + ", "
              + (high == Long.MAX_VALUE ? "too few units for high" : "high at or above " + high)
              + "; go on.";
    };
  }

  private String things(long number) {
    if (tally.isEmpty() && !asksForMarks(plan)) {
      return number + (number == 1 ? " animal" : " animals");
    }
    return number + (number == 1 ? " marked unit" : " marked units");
  }

  /**
   * What to do next, in a sentence.
   *
   * @return stop, or go on with the greatest number of units still to come
   */
  public String next() {
    if (isStopped()) {
      return "Stop: " + says().words() + ".";
    }
    var most =
        mostMore().isPresent()
            ? "at most " + mostMore().getAsInt() + " more"
            : "no greatest number is set";
    var low =
        emptyUnitsToLow().isPresent()
            ? "; " + emptyUnitsToLow().getAsInt() + " more without animals would make it low"
            : "";
    return "Go on: " + most + low + ".";
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    for (int n = 1; n <= units(); n++) {
      rows.add(
          List.of(
              Cell.number(n, 0),
              Cell.number(counts.get(n - 1), 0),
              Cell.number((double) totalAfter(n), 0),
              plan.lastLow(n) < 0 ? Cell.text("–") : Cell.number((double) plan.lastLow(n), 0),
              plan.firstHigh(n) == Long.MAX_VALUE
                  ? Cell.text("–")
                  : Cell.number((double) plan.firstHigh(n), 0)));
    }
    var page =
        Presentation.titled("On the way through the field")
            .fact("Next", next())
            .fact("Why", reason())
            .fact("Plan", plan.bounds().words());
    if (!rows.isEmpty()) {
      page.table(
          ResultTable.of(
              "Counts so far",
              List.of(
                  Column.of("Number"),
                  Column.of("Count", "per " + unit.words()),
                  Column.of(tally.isEmpty() ? "Total" : "Units above " + tally.getAsInt()),
                  Column.of("Low at or below"),
                  Column.of("High at or above")),
              rows));
    }
    return page.sources(List.of(plan.bounds().source())).build();
  }
}
