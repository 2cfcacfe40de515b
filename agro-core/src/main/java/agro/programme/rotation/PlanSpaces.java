package agro.programme.rotation;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts the question of a planner into numbers. */
final class PlanSpaces {

  private final RotationPlanner planner;
  private final PlanPast past;
  private final List<PlanCandidate> candidates;
  private final List<ModeOfAction> modes;

  PlanSpaces(RotationPlanner planner) {
    this.planner = planner;
    past = new PlanPast(planner.programme(), planner.field(), planner.rules().table());
    candidates = planner.candidates();
    modes = modes();
  }

  private List<ModeOfAction> modes() {
    var all = new LinkedHashSet<ModeOfAction>();
    candidates.forEach(each -> all.addAll(each.modes()));
    past.all().forEach(each -> each.uses().forEach(use -> use.mode().ifPresent(all::add)));
    return List.copyOf(all);
  }

  /** The space under some of the rules. */
  PlanSpace under(Set<PlanRule> rules) {
    var spacings = new PlanSpacings(candidates);
    var refusals = new ArrayList<PlanRefusal>();
    var allowed = new ArrayList<List<Integer>>();
    var checks = new PlanRefusals(planner, past, spacings);
    for (var window : planner.windows()) {
      var here = new ArrayList<Integer>();
      if (!window.mustTreat()) {
        here.add(PlanSteps.NONE);
      }
      for (int c = 0; c < candidates.size(); c++) {
        var against =
            checks.of(window, candidates.get(c)).stream()
                .filter(refusal -> rules.contains(refusal.rule()))
                .toList();
        refusals.addAll(against);
        if (against.isEmpty()) {
          here.add(c);
        }
      }
      allowed.add(here);
    }
    return new PlanSpace(
        planner.windows(),
        candidates,
        refusals,
        allowed,
        modes,
        fixedModes(0),
        follows(),
        fixedModes(-1),
        new PlanTallies(planner, past, candidates).all(),
        spacings.all().stream().filter(this::canBind).toList(),
        Set.copyOf(rules));
  }

  private boolean canBind(PlanSpacing spacing) {
    var windows = planner.windows();
    for (int i = 0; i < windows.size(); i++) {
      for (int j = i + 1; j < windows.size(); j++) {
        if (spacing.isTooSoon(windows.get(i).lastTreatment(), windows.get(j).firstTreatment())) {
          return true;
        }
      }
    }
    return false;
  }

  private int position(int index) {
    return planner.windowsOfSeason().windows().indexOf(planner.windows().get(index).window());
  }

  private List<Boolean> follows() {
    var follows = new ArrayList<Boolean>();
    for (int i = 0; i < planner.windows().size(); i++) {
      follows.add(i > 0 && position(i) == position(i - 1) + 1);
    }
    return follows;
  }

  /** For each window, modes in use already in the window of the season at a distance from it. */
  private List<Set<Integer>> fixedModes(int distance) {
    var fixed = new ArrayList<Set<Integer>>();
    for (int i = 0; i < planner.windows().size(); i++) {
      int wanted = position(i) + distance;
      var used = new HashSet<Integer>();
      for (var each : past.inField()) {
        if (planner.windowsOfSeason().indexAt(each.day()) == wanted) {
          each.uses().forEach(use -> use.mode().ifPresent(mode -> used.add(modes.indexOf(mode))));
        }
      }
      fixed.add(Set.copyOf(used));
    }
    return fixed;
  }
}
