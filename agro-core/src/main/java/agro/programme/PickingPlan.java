package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;

/**
 * The days on which a crop is picked. A crop that is picked often has many.
 *
 * @param days the days in order
 * @param doneBy hour by which the picking of a day is over; nothing if not stated
 */
public record PickingPlan(List<LocalDate> days, Optional<LocalTime> doneBy) {

  /** Sorts the days and leaves out repeats. */
  public PickingPlan {
    days = List.copyOf(new TreeSet<>(days));
    Objects.requireNonNull(doneBy, "doneBy");
  }

  /**
   * No day is stated.
   *
   * @return an empty plan, which says nothing of harvest
   */
  public static PickingPlan notStated() {
    return new PickingPlan(List.of(), Optional.empty());
  }

  /**
   * Single days.
   *
   * @param days the days
   * @return the plan
   */
  public static PickingPlan on(LocalDate... days) {
    return new PickingPlan(List.of(days), Optional.empty());
  }

  /**
   * A crop that is picked every so many days.
   *
   * @param first first picking
   * @param last the last day on which a picking may fall
   * @param everyDays days from one picking to the next, one or more
   * @return the plan
   * @throws InputProblem for less than one day or a last day before the first
   */
  public static PickingPlan every(LocalDate first, LocalDate last, int everyDays) {
    if (everyDays < 1 || last.isBefore(first)) {
      throw InputProblem.of(
              "picking from " + first + " to " + last + " every " + everyDays + " days")
          .expected("a last day on or after the first one, and at least one day between pickings")
          .because("no picking days come of it")
          .mend("look at both days and the number of days between");
    }
    var days = new ArrayList<LocalDate>();
    for (var day = first; !day.isAfter(last); day = day.plusDays(everyDays)) {
      days.add(day);
    }
    return new PickingPlan(days, Optional.empty());
  }

  /**
   * The same days with the hour by which picking is over. An application that begins later on a
   * picking day does not touch the harvest of that day.
   *
   * @param hour the hour on the clock of the field
   * @return the plan
   */
  public PickingPlan doneBy(LocalTime hour) {
    return new PickingPlan(days, Optional.of(hour));
  }

  /**
   * Whether picking days are known.
   *
   * @return true if at least one is
   */
  public boolean isStated() {
    return !days.isEmpty();
  }
}
