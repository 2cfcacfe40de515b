package agro.programme.rotation;

import agro.dose.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * From one window to the next: what a choice leaves, or that a rule refuses it. A sum or a last use
 * is remembered only as long as it can still make a difference.
 */
final class PlanSteps {

  /** The choice of no application. */
  static final int NONE = -1;

  private final PlanSpace space;
  private final PlanModes modes;
  private final List<PlanTally> tallies;
  private final List<PlanSpacing> spacings;
  private final List<List<Integer>> talliesOf = new ArrayList<>();
  private final List<List<Integer>> spacingsOf = new ArrayList<>();
  private final boolean[][] canFollow;

  PlanSteps(PlanSpace space) {
    this.space = space;
    modes = new PlanModes(space);
    tallies =
        space.tallies().stream()
            .filter(each -> space.rules().contains(each.rule()))
            .map(each -> each.within(space.follows(), modes))
            .filter(PlanTally::canBind)
            .toList();
    spacings = space.rules().contains(PlanRule.INTERVAL) ? space.spacings() : List.of();
    int windows = space.windows().size();
    canFollow = new boolean[windows + 1][space.candidates().size()];
    for (int w = windows - 1; w >= 0; w--) {
      for (int c = 0; c < space.candidates().size(); c++) {
        canFollow[w][c] = canFollow[w + 1][c] || space.allowed().get(w).contains(c);
      }
    }
    for (int c = 0; c < space.candidates().size(); c++) {
      talliesOf.add(tallies(c));
      spacingsOf.add(spacings(c));
    }
  }

  private List<Integer> tallies(int candidate) {
    var own = new ArrayList<Integer>();
    for (int t = 0; t < tallies.size(); t++) {
      if (tallies.get(t).concerns(candidate)) {
        own.add(t);
      }
    }
    return own;
  }

  private List<Integer> spacings(int candidate) {
    var own = new ArrayList<Integer>();
    for (int s = 0; s < spacings.size(); s++) {
      if (spacings.get(s).counts(candidate)) {
        own.add(s);
      }
    }
    return own;
  }

  PlanState start() {
    return new PlanState(0, 0, new int[0], new long[0]);
  }

  /** The choices that a window has at all. */
  List<Integer> choices(int window) {
    return space.allowed().get(window);
  }

  /** How a choice stands with the modes of the windows around it. */
  Severity severity(PlanState state, int choice) {
    return modes.severity(state, space.follows().get(state.window()), choice);
  }

  /** The state after a choice; nothing if a rule refuses it. */
  Optional<PlanState> after(PlanState state, int choice) {
    if (choice != NONE && (severity(state, choice) == Severity.ERROR || tooSoon(state, choice))) {
      return Optional.empty();
    }
    var memory = new PlanMemory(state);
    if (choice != NONE) {
      if (!addUp(state, choice, memory)) {
        return Optional.empty();
      }
      for (int s : spacingsOf.get(choice)) {
        memory.put(anyKey(s), state.window());
        if (spacings.get(s).owner() == choice) {
          memory.put(ownerKey(s), state.window());
        }
      }
    }
    forget(memory, state.window() + 1);
    return Optional.of(memory.state(state.window() + 1, modes.classOf(choice)));
  }

  private int anyKey(int spacing) {
    return tallies.size() + 2 * spacing;
  }

  private int ownerKey(int spacing) {
    return anyKey(spacing) + 1;
  }

  /** Twice the sum, and one more if the owner has been used. */
  private static long packed(long sum, boolean ownerUsed) {
    return 2 * sum + (ownerUsed ? 1 : 0);
  }

  private boolean addUp(PlanState state, int choice, PlanMemory memory) {
    for (int t : talliesOf.get(choice)) {
      var tally = tallies.get(t);
      long before = state.value(t, packed(tally.before(), tally.ownerBefore()));
      long sum = before / 2 + tally.added(state.window(), choice);
      boolean owner = before % 2 == 1 || tally.isOwner(choice);
      if (owner && tally.isExceeded(sum)) {
        return false;
      }
      memory.put(t, packed(sum, owner));
    }
    return true;
  }

  private boolean tooSoon(PlanState state, int choice) {
    for (int s : spacingsOf.get(choice)) {
      var spacing = spacings.get(s);
      int owner = (int) state.value(ownerKey(s), NONE);
      int any = spacing.owner() == choice ? (int) state.value(anyKey(s), NONE) : NONE;
      if (isTooSoon(spacing, owner, state.window()) || isTooSoon(spacing, any, state.window())) {
        return true;
      }
    }
    return false;
  }

  private boolean isTooSoon(PlanSpacing spacing, int earlier, int later) {
    return earlier != NONE
        && spacing.isTooSoon(
            space.windows().get(earlier).lastTreatment(),
            space.windows().get(later).firstTreatment());
  }

  private void forget(PlanMemory memory, int next) {
    for (int i = memory.size() - 1; i >= 0; i--) {
      int key = memory.key(i);
      if (key < tallies.size()) {
        forgetSum(memory, i, next);
      } else {
        var spacing = spacings.get((key - tallies.size()) / 2);
        boolean still =
            next < space.windows().size()
                && isTooSoon(spacing, (int) memory.value(i), next)
                && canMatter(spacing, (key - tallies.size()) % 2 == 1, next);
        if (!still) {
          memory.remove(i);
        }
      }
    }
  }

  private boolean canMatter(PlanSpacing spacing, boolean ownerBefore, int next) {
    if (!ownerBefore) {
      return canFollow[next][spacing.owner()];
    }
    for (int c = 0; c < space.candidates().size(); c++) {
      if (spacing.counts(c) && canFollow[next][c]) {
        return true;
      }
    }
    return false;
  }

  private void forgetSum(PlanMemory memory, int i, int next) {
    var tally = tallies.get(memory.key(i));
    long sum = memory.value(i) / 2;
    boolean owner = memory.value(i) % 2 == 1;
    boolean follows = tally.owner() >= 0 && canFollow[next][tally.owner()];
    if (!tally.canMatter(sum, owner, next, follows)) {
      memory.remove(i);
    } else {
      memory.put(memory.key(i), packed(tally.capped(sum), owner));
    }
  }
}
