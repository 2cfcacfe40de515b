package agro.programme.rotation;

import agro.dose.LabelEntry;
import agro.dose.Severity;
import agro.programme.BeeRule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;

/**
 * Figures of the criteria, each a whole number that adds up over the windows and is better when
 * smaller.
 */
final class PlanScores {

  private static final double MILLIS = 1000;
  private static final int HAZARD_BASE = 1000;

  private final PlanSpace space;
  private final PlanSteps steps;
  private final List<PlanCriterion> criteria;
  private final UnrecordedLimits unrecorded;
  private final int doubts;
  private final long[][][] alone;

  PlanScores(
      PlanSpace space, PlanSteps steps, List<PlanCriterion> criteria, UnrecordedLimits unrecorded) {
    this.space = space;
    this.steps = steps;
    this.criteria = criteria;
    this.unrecorded = unrecorded;
    doubts = criteria.indexOf(PlanCriterion.DOUBTS);
    alone = alone();
  }

  /** The figures that a choice adds. */
  long[] of(PlanState state, int choice) {
    var scores = new long[criteria.size()];
    if (choice != PlanSteps.NONE) {
      System.arraycopy(alone[state.window()][choice], 0, scores, 0, scores.length);
      if (doubts >= 0 && steps.severity(state, choice) == Severity.WARNING) {
        scores[doubts]++;
      }
    }
    return scores;
  }

  private long[][][] alone() {
    var all = new long[space.windows().size()][space.candidates().size()][criteria.size()];
    for (int w = 0; w < all.length; w++) {
      for (int c = 0; c < all[w].length; c++) {
        for (int i = 0; i < criteria.size(); i++) {
          all[w][c][i] = score(criteria.get(i), space.windows().get(w), space.candidates().get(c));
        }
      }
    }
    return all;
  }

  private long score(PlanCriterion criterion, PlanWindow window, PlanCandidate candidate) {
    int times = window.days().size();
    return switch (criterion) {
      case WINDOWS_TREATED -> -1;
      case DOUBTS -> doubtsAlone(candidate).size();
      case DAYS_COVERED -> -covered(window, candidate);
      case HAZARD -> times * hazard(candidate);
      case BEE_RULES -> hasBeeRule(candidate) ? times : 0;
      case COST -> times * Math.round(MILLIS * candidate.cost().orElse(0.0));
      case HARVEST_WAIT -> candidate.preHarvestDays().orElse(0);
      case APPLICATIONS -> times;
    };
  }

  private static boolean hasBeeRule(PlanCandidate candidate) {
    return !(candidate.record().stewardship().bees() instanceof LabelEntry.LabelSaysNone<?>);
  }

  /** A product of one class outweighs any number of the next milder one. */
  private static long hazard(PlanCandidate candidate) {
    long weight = 1;
    for (int i = 0; i < candidate.hazard().orElse(0); i++) {
      weight *= HAZARD_BASE;
    }
    return candidate.hazard().isPresent() ? weight : 0;
  }

  /** Days of a window that lie under the residue of its applications. */
  private static long covered(PlanWindow window, PlanCandidate candidate) {
    if (candidate.residueDays().isEmpty()) {
      return 0;
    }
    var covered = new HashSet<java.time.LocalDate>();
    for (var day : window.days()) {
      for (int i = 0; i < candidate.residueDays().getAsInt(); i++) {
        covered.add(day.plusDays(i));
      }
    }
    covered.removeIf(day -> !window.window().covers(day));
    return covered.size();
  }

  /** What has to be looked up or thought over before a choice is followed. */
  List<String> doubts(PlanState state, int choice) {
    var doubts = new ArrayList<String>();
    var candidate = space.candidates().get(choice);
    var window = space.windows().get(state.window()).window();
    var severity = steps.severity(state, choice);
    if (severity == Severity.WARNING) {
      doubts.add(
          candidate.product()
              + " in window "
              + window.number()
              + ": the window before has a sub-group of the same number or an unknown mode as well");
    }
    doubts.addAll(doubtsAlone(candidate));
    return doubts;
  }

  private List<String> doubtsAlone(PlanCandidate candidate) {
    var doubts = new ArrayList<String>();
    var missing = PlanRefusals.missing(candidate);
    if (unrecorded == UnrecordedLimits.DOUBTED && !missing.isEmpty()) {
      doubts.add(
          candidate.product() + ": not recorded is the " + String.join(" and the ", missing));
    }
    if (candidate.record().stewardship().bees() instanceof LabelEntry.Stated<BeeRule> rule
        && rule.value() == BeeRule.NOT_WHILE_BEES_FLY) {
      doubts.add(candidate.product() + ": " + rule.value().words());
    }
    return doubts;
  }

  /** A figure as a person reads it. */
  double shown(int criterion, long score) {
    double value =
        switch (criteria.get(criterion)) {
          case COST -> score / MILLIS;
          default -> score;
        };
    return criteria.get(criterion).moreIsBetter() ? -value : value;
  }

  List<PlanCriterion> criteria() {
    return criteria;
  }

  /** The number of products in each hazard class, the worst first. */
  static String hazardWords(long score, List<String> classes) {
    var words = new ArrayList<String>();
    long weight = 1;
    for (int i = 1; i < classes.size(); i++) {
      weight *= HAZARD_BASE;
    }
    for (int i = classes.size() - 1; i >= 0; i--) {
      long number = score / weight % HAZARD_BASE;
      if (number > 0) {
        words.add(String.format(Locale.ROOT, "%d of class %s", number, classes.get(i)));
      }
      weight /= HAZARD_BASE;
    }
    return words.isEmpty() ? "not recorded" : String.join(", ", words);
  }
}
