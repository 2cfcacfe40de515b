package agro.programme.rotation;

import agro.dose.Severity;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** How the modes of every candidate stand with those of every other and of what is used already. */
final class PlanModes {

  private final List<List<ModeOfAction>> classes = new ArrayList<>();
  private final int[] classOf;
  private final Severity[][] judged;
  private final Severity[][] fixed;
  private final boolean held;

  PlanModes(PlanSpace space) {
    held = space.rules().contains(PlanRule.SUCCESSIVE_WINDOWS);
    classes.add(List.of());
    classOf = new int[space.candidates().size()];
    for (int c = 0; c < classOf.length; c++) {
      var modes = space.candidates().get(c).modes();
      if (!classes.contains(modes)) {
        classes.add(modes);
      }
      classOf[c] = classes.indexOf(modes);
    }
    int n = classes.size();
    judged = new Severity[n][n];
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        judged[a][b] = worst(classes.get(a), classes.get(b));
      }
    }
    fixed = new Severity[space.windows().size()][n];
    for (int w = 0; w < fixed.length; w++) {
      for (int b = 0; b < n; b++) {
        fixed[w][b] = fixed(space, w, classes.get(b));
      }
    }
  }

  private Severity fixed(PlanSpace space, int window, List<ModeOfAction> modes) {
    var before = worst(all(space, space.modesBefore().get(window)), modes);
    boolean next = window + 1 < space.windows().size() && space.follows().get(window + 1);
    var after = next ? worst(modes, all(space, space.fixedModes().get(window + 1))) : Severity.NOTE;
    return before.compareTo(after) >= 0 ? before : after;
  }

  private static List<ModeOfAction> all(PlanSpace space, Set<Integer> indices) {
    return indices.stream().map(space.modes()::get).toList();
  }

  private Severity worst(Collection<ModeOfAction> before, Collection<ModeOfAction> after) {
    var worst = Severity.NOTE;
    for (var a : before) {
      for (var b : after) {
        var own = Succession.judge(a, b).orElse(Severity.NOTE);
        worst = own.compareTo(worst) > 0 ? own : worst;
      }
    }
    return worst == Severity.ERROR && !held ? Severity.WARNING : worst;
  }

  /** Which set of modes a choice has; 0 for no application. */
  int classOf(int choice) {
    return choice == PlanSteps.NONE ? 0 : classOf[choice];
  }

  /** Whether two candidates exclude each other in windows that follow each other. */
  boolean exclude(int a, int b) {
    return judged[classOf[a]][classOf[b]] == Severity.ERROR;
  }

  /** The worst that a choice is with the modes of the windows around it. */
  Severity severity(PlanState state, boolean follows, int choice) {
    int own = classOf[choice];
    var before = follows ? judged[state.modesBefore()][own] : Severity.NOTE;
    var used = fixed[state.window()][own];
    return before.compareTo(used) >= 0 ? before : used;
  }
}
