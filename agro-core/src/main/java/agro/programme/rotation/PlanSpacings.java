package agro.programme.rotation;

import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import agro.dose.LimitScope;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The intervals between applications of all candidates. */
final class PlanSpacings {

  private final List<PlanCandidate> candidates;

  PlanSpacings(List<PlanCandidate> candidates) {
    this.candidates = candidates;
  }

  List<PlanSpacing> all() {
    var found = new ArrayList<PlanSpacing>();
    for (int owner = 0; owner < candidates.size(); owner++) {
      for (var limit : intervals(candidates.get(owner))) {
        var candidate = candidates.get(owner);
        var same = candidates.stream().map(other -> counts(limit, candidate, other)).toList();
        found.add(new PlanSpacing(owner, days(limit), same));
      }
    }
    return found;
  }

  private static List<IntervalLimit> intervals(PlanCandidate candidate) {
    return candidate.limits().stream()
        .filter(IntervalLimit.class::isInstance)
        .map(IntervalLimit.class::cast)
        .filter(limit -> limit.entry() instanceof LabelEntry.Stated<Integer>)
        .toList();
  }

  private static int days(IntervalLimit limit) {
    return ((LabelEntry.Stated<Integer>) limit.entry()).value();
  }

  private static boolean counts(IntervalLimit limit, PlanCandidate owner, PlanCandidate other) {
    return switch (limit.scope()) {
      case GROUP -> owner.modes().stream().anyMatch(mode -> other.hasNumber(mode.number()));
      case ACTIVE_INGREDIENT ->
          owner.record().actives().stream().anyMatch(active -> other.holds(active.name()));
      default -> owner.product().equals(other.product());
    };
  }

  /** Why a candidate comes too close to what was applied already, or to itself. */
  Optional<String> against(
      PlanWindow window, PlanCandidate candidate, List<PlanPast.Applied> past) {
    for (var limit : intervals(candidate)) {
      int needed = days(limit);
      for (int i = 1; i < window.days().size(); i++) {
        if (window.days().get(i - 1).plusDays(needed).isAfter(window.days().get(i))) {
          return Optional.of(
              "applied on "
                  + window.days().get(i - 1)
                  + " and "
                  + window.days().get(i)
                  + ", and the label asks for "
                  + needed
                  + " days between");
        }
      }
      for (var each : past) {
        if (counts(limit, candidate, each) && clash(window, each, needed)) {
          return Optional.of(words(each, needed));
        }
      }
    }
    return againstPast(window, candidate, past);
  }

  private static String words(PlanPast.Applied each, int needed) {
    return each.product().product()
        + " on "
        + each.day()
        + " is less than "
        + needed
        + " days away";
  }

  /** The intervals of what was applied hold for what follows it. */
  private Optional<String> againstPast(
      PlanWindow window, PlanCandidate candidate, List<PlanPast.Applied> past) {
    for (var each : past) {
      for (var owner : candidates) {
        if (!owner.product().equals(each.product().product())) {
          continue;
        }
        for (var limit : intervals(owner)) {
          if (counts(limit, owner, candidate) && clash(window, each, days(limit))) {
            return Optional.of(words(each, days(limit)));
          }
        }
      }
    }
    return Optional.empty();
  }

  private static boolean clash(PlanWindow window, PlanPast.Applied each, int needed) {
    return window.days().stream()
        .anyMatch(
            day ->
                day.isBefore(each.day().plusDays(needed))
                    && each.day().isBefore(day.plusDays(needed)));
  }

  private static boolean counts(
      IntervalLimit limit, PlanCandidate owner, PlanPast.Applied applied) {
    if (limit.scope() == LimitScope.GROUP) {
      return applied.uses().stream()
          .flatMap(use -> use.mode().stream())
          .anyMatch(mode -> owner.hasNumber(mode.number()));
    }
    if (limit.scope() == LimitScope.ACTIVE_INGREDIENT) {
      return applied.uses().stream().anyMatch(use -> owner.holds(use.active()));
    }
    return applied.product().product().equals(owner.product());
  }
}
