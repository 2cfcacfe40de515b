package agro.programme.rotation;

import agro.report.Progress;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Counts all programmes and lists the best, exactly. What the windows so far leave for the next
 * ones is a state; each state is worked through once, from the last window back (dynamic
 * programming, Bellman 1957, from memory), and the best ways to go on then guide a best-first walk
 * that never turns into a dead end.
 */
final class PlanSearch {

  private static final String WORK = "search for programmes";
  private static final int OFTEN = 1000;

  private final PlanSpace space;
  private final PlanSteps steps;
  private final PlanScores scores;
  private final Progress progress;
  private final Map<PlanState, Ahead> known = new HashMap<>();
  private int firstChoices;

  /** How many ways there are to go on from a state, and the figures of the best. */
  private static final class Ahead {
    final BigInteger ways;
    final long[] best;

    Ahead(BigInteger ways, long[] best) {
      this.ways = ways;
      this.best = best;
    }
  }

  /** A way so far. */
  private static final class Path {
    final List<Integer> choices;
    final PlanState state;
    final long[] soFar;
    final long[] atBest;

    Path(List<Integer> choices, PlanState state, long[] soFar, long[] atBest) {
      this.choices = choices;
      this.state = state;
      this.soFar = soFar;
      this.atBest = atBest;
    }
  }

  /**
   * A way to the end.
   *
   * @param choices index of the candidate in each window, or {@link PlanSteps#NONE}
   * @param scores its figures
   */
  record Found(List<Integer> choices, List<Long> scores) {}

  PlanSearch(PlanSpace space, PlanSteps steps, PlanScores scores, Progress progress) {
    this.space = space;
    this.steps = steps;
    this.scores = scores;
    this.progress = progress;
  }

  /** Number of programmes that keep to all rules. */
  BigInteger count() {
    return ahead(steps.start()).ways;
  }

  /** Whether there is a programme at all. */
  boolean isPossible() {
    return isPossible(steps.start(), new HashSet<>());
  }

  private boolean isPossible(PlanState state, Set<PlanState> dead) {
    if (state.window() == space.windows().size()) {
      return true;
    }
    if (dead.contains(state)) {
      return false;
    }
    for (int choice : steps.choices(state.window())) {
      var next = steps.after(state, choice);
      if (next.isPresent() && isPossible(next.get(), dead)) {
        return true;
      }
    }
    progress.step(WORK, dead.size(), dead.size() + 1L);
    dead.add(state);
    return false;
  }

  private Ahead ahead(PlanState state) {
    if (state.window() == space.windows().size()) {
      return new Ahead(BigInteger.ONE, new long[scores.criteria().size()]);
    }
    var found = known.get(state);
    if (found == null) {
      found = work(state);
      known.put(state, found);
    }
    return found;
  }

  private Ahead work(PlanState state) {
    var ways = BigInteger.ZERO;
    long[] best = null;
    var choices = steps.choices(state.window());
    for (int choice : choices) {
      if (state.window() == 0) {
        progress.step(WORK, firstChoices++ % choices.size(), choices.size());
      } else if (known.size() % OFTEN == 0) {
        progress.step(WORK, firstChoices, Math.max(firstChoices, steps.choices(0).size()));
      }
      var next = steps.after(state, choice);
      if (next.isEmpty()) {
        continue;
      }
      var ahead = ahead(next.get());
      if (ahead.best == null) {
        continue;
      }
      ways = ways.add(ahead.ways);
      var total = sum(scores.of(state, choice), ahead.best);
      best = best == null || Arrays.compare(total, best) < 0 ? total : best;
    }
    return new Ahead(ways, best);
  }

  private static long[] sum(long[] a, long[] b) {
    var sum = a.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += b[i];
    }
    return sum;
  }

  /** The best programmes, the very best first; of equals, the one with earlier records first. */
  List<Found> best(int most) {
    var queue = new PriorityQueue<Path>(order());
    offer(queue, new ArrayList<>(), steps.start(), new long[scores.criteria().size()]);
    var found = new ArrayList<Found>();
    while (!queue.isEmpty() && found.size() < most) {
      var path = queue.poll();
      if (path.state.window() == space.windows().size()) {
        found.add(new Found(path.choices, Arrays.stream(path.soFar).boxed().toList()));
        continue;
      }
      for (int choice : steps.choices(path.state.window())) {
        Optional<PlanState> next = steps.after(path.state, choice);
        if (next.isPresent()) {
          var choices = new ArrayList<>(path.choices);
          choices.add(choice);
          offer(queue, choices, next.get(), sum(path.soFar, scores.of(path.state, choice)));
        }
      }
    }
    return found;
  }

  private void offer(
      PriorityQueue<Path> queue, List<Integer> choices, PlanState state, long[] soFar) {
    var ahead = ahead(state);
    if (ahead.best != null) {
      queue.add(new Path(choices, state, soFar, sum(soFar, ahead.best)));
    }
  }

  private static Comparator<Path> order() {
    return (a, b) -> {
      int byScore = Arrays.compare(a.atBest, b.atBest);
      return byScore != 0 ? byScore : byChoices(a.choices, b.choices);
    };
  }

  private static int byChoices(List<Integer> a, List<Integer> b) {
    int common = Math.min(a.size(), b.size());
    for (int i = 0; i < common; i++) {
      int order = a.get(i).compareTo(b.get(i));
      if (order != 0) {
        return order;
      }
    }
    return Integer.compare(b.size(), a.size());
  }
}
