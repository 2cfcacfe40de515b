package agro.programme.rotation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Days that have to pass between applications of what counts as the same.
 *
 * @param owner index of the candidate on whose label they stand
 * @param days the days
 * @param same for each candidate, whether it counts
 */
record PlanSpacing(int owner, int days, List<Boolean> same) {

  PlanSpacing {
    same = List.copyOf(same);
  }

  boolean counts(int candidate) {
    return same.get(candidate);
  }

  boolean isTooSoon(LocalDate earlier, LocalDate later) {
    return ChronoUnit.DAYS.between(earlier, later) < days;
  }
}
