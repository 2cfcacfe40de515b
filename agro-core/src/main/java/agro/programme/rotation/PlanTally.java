package agro.programme.rotation;

import java.util.List;

/**
 * A limit on a sum over the windows: applications, an amount, or days under one group. Once its
 * owner is part of a programme, the sum over all uses must not exceed what is allowed.
 */
final class PlanTally {

  /** The owner of a limit that always holds. */
  static final int EVERYBODY = -1;

  private final PlanRule rule;
  private final int owner;
  private final long allowed;
  private final long before;
  private final boolean ownerBefore;
  private final long[][] added;
  private final long[] mostAhead;

  /**
   * A limit.
   *
   * @param rule the rule that it stands for
   * @param owner index of the candidate on whose label it stands, or {@link #EVERYBODY}
   * @param allowed largest sum, in the unit of {@code added}
   * @param before the sum of what has been used already
   * @param ownerBefore whether the owner has been used already
   * @param added what each window (first index) adds with each candidate (second)
   */
  PlanTally(
      PlanRule rule, int owner, long allowed, long before, boolean ownerBefore, long[][] added) {
    this(rule, owner, allowed, before, ownerBefore, added, ahead(added, List.of()));
  }

  private PlanTally(
      PlanRule rule,
      int owner,
      long allowed,
      long before,
      boolean ownerBefore,
      long[][] added,
      long[] mostAhead) {
    this.rule = rule;
    this.owner = owner;
    this.allowed = allowed;
    this.before = before;
    this.ownerBefore = ownerBefore || owner == EVERYBODY;
    this.added = added;
    this.mostAhead = mostAhead;
  }

  /** The most that windows from each on can add; uses that exclude each other rest a window. */
  private static long[] ahead(long[][] added, List<Boolean> follows) {
    var ahead = new long[added.length + 2];
    for (int w = added.length - 1; w >= 0; w--) {
      long most = 0;
      for (long each : added[w]) {
        most = Math.max(most, each);
      }
      boolean rests = w + 1 < follows.size() && follows.get(w + 1);
      ahead[w] = Math.max(ahead[w + 1], most + ahead[rests ? w + 2 : w + 1]);
    }
    return ahead;
  }

  /** The same limit, with a closer bound where all that it counts exclude each other in a row. */
  PlanTally within(List<Boolean> follows, PlanModes modes) {
    for (int a = 0; a < added[0].length; a++) {
      for (int b = 0; b < added[0].length; b++) {
        if (counts(a) && counts(b) && !modes.exclude(a, b)) {
          return this;
        }
      }
    }
    return new PlanTally(rule, owner, allowed, before, ownerBefore, added, ahead(added, follows));
  }

  private boolean counts(int candidate) {
    for (var window : added) {
      if (window[candidate] > 0) {
        return true;
      }
    }
    return false;
  }

  PlanRule rule() {
    return rule;
  }

  int owner() {
    return owner;
  }

  long before() {
    return before;
  }

  boolean ownerBefore() {
    return ownerBefore;
  }

  boolean isOwner(int candidate) {
    return candidate == owner;
  }

  boolean concerns(int candidate) {
    return isOwner(candidate) || counts(candidate);
  }

  long added(int window, int candidate) {
    return added[window][candidate];
  }

  boolean isExceeded(long sum) {
    return sum > allowed;
  }

  /** Whether any programme can exceed it. */
  boolean canBind() {
    return before + mostAhead[0] > allowed;
  }

  /** Whether a sum can still be exceeded. */
  boolean canMatter(long sum, boolean ownerUsed, int next, boolean ownerCanFollow) {
    return sum + mostAhead[next] > allowed && (ownerUsed || ownerCanFollow);
  }

  /** Sums above the limit are all the same. */
  long capped(long sum) {
    return Math.min(sum, allowed + 1);
  }
}
