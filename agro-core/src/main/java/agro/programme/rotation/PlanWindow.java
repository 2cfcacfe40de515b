package agro.programme.rotation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * A window for which a programme is sought, and the days on which it would be treated. One product
 * is chosen for all days of a window.
 *
 * @param window the window
 * @param days days of treatment in it, in order
 * @param mustTreat whether a programme without an application in it is of no use
 */
public record PlanWindow(RotationWindow window, List<LocalDate> days, boolean mustTreat) {

  /** Refuses days outside of the window. */
  public PlanWindow {
    Objects.requireNonNull(window, "window");
    days = days.stream().sorted().distinct().toList();
    for (var day : days) {
      if (!window.covers(day)) {
        throw InputProblem.of("a treatment on " + day + " in " + window)
            .expected("a day from " + window.first() + " to " + window.last())
            .because("its mode of action counts for the window in which it lies")
            .mend("choose a day of the window, or another window");
      }
    }
    if (days.isEmpty()) {
      throw InputProblem.of(window + " without a day of treatment")
          .expected("at least one day")
          .because("intervals and waiting times are counted from days")
          .mend("give the day that suits best, for example from the forecast");
    }
  }

  /**
   * A window that has to be treated.
   *
   * @param window the window
   * @param days days of treatment
   * @return the window
   */
  public static PlanWindow treatedOn(RotationWindow window, LocalDate... days) {
    return new PlanWindow(window, List.of(days), true);
  }

  /**
   * The same window, which may also stay untreated.
   *
   * @return a new window
   */
  public PlanWindow mayStayUntreated() {
    return new PlanWindow(window, days, false);
  }

  LocalDate firstTreatment() {
    return days.get(0);
  }

  LocalDate lastTreatment() {
    return days.get(days.size() - 1);
  }
}
