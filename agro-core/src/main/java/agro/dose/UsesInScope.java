package agro.dose;

import java.util.List;

/**
 * The earlier applications that count with the planned one.
 *
 * @param uses the applications
 * @param reason why they cannot be told, as a clause; empty if they can
 */
record UsesInScope(List<PastUse> uses, String reason) {

  static UsesInScope of(PlannedUse plan, LimitScope scope) {
    var counted = plan.earlier().stream().filter(use -> use.countsIn().contains(scope)).toList();
    if (scope != LimitScope.TWELVE_MONTHS || counted.isEmpty()) {
      return new UsesInScope(counted, "");
    }
    if (plan.day().isEmpty()) {
      return new UsesInScope(
          List.of(),
          "the day of the planned application, from which twelve months count back, is not stated");
    }
    var yearBefore = plan.day().get().minusYears(1);
    return new UsesInScope(
        counted.stream().filter(use -> use.day().isAfter(yearBefore)).toList(), "");
  }
}
