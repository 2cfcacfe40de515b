package agro.programme.rotation;

import agro.dose.LabelLimit;
import agro.programme.LabelRecord;
import agro.programme.Programme;
import agro.report.InputProblem;
import agro.report.Progress;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Proposes programmes for the windows of a season from the user's own label records. The search is
 * exact: it counts all programmes that keep to the rules, and lists the best of them; where there
 * is none, it says which rule leaves none.
 *
 * @param programme fields, crops, label records and what has been applied
 * @param field the field
 * @param pest the pest as the label records write it; empty if the labels' pests are not looked at
 * @param windowsOfSeason all windows of the season, past ones included
 * @param windows those for which a programme is sought, in order
 * @param rules rules of rotation
 * @param criteria by what programmes are ranked, the most important first
 * @param hazardClasses hazard classes of the user's records, the mildest first
 * @param unrecorded what becomes of records in which a limit is missing
 * @param mostShown most programmes that are listed
 */
public record RotationPlanner(
    Programme programme,
    String field,
    String pest,
    RotationWindows windowsOfSeason,
    List<PlanWindow> windows,
    RotationRules rules,
    List<PlanCriterion> criteria,
    List<String> hazardClasses,
    UnrecordedLimits unrecorded,
    int mostShown) {

  private static final int USUALLY_SHOWN = 5;
  private static final int MOST_HAZARD_CLASSES = 6;

  /** The classes of the World Health Organization, the mildest first. */
  private static final List<String> WHO_CLASSES = List.of("U", "III", "II", "Ib", "Ia");

  /** Refuses windows that are no windows of the season. */
  public RotationPlanner {
    programme.field(field);
    Objects.requireNonNull(pest, "pest");
    Objects.requireNonNull(rules, "rules");
    Objects.requireNonNull(unrecorded, "unrecorded");
    windows = List.copyOf(windows);
    criteria = List.copyOf(criteria);
    hazardClasses = List.copyOf(hazardClasses);
    if (hazardClasses.size() > MOST_HAZARD_CLASSES) {
      throw InputProblem.of(hazardClasses.size() + " hazard classes")
          .expected("at most " + MOST_HAZARD_CLASSES)
          .because("products are counted in each class")
          .mend("put classes together");
    }
    LocalDate last = null;
    for (var each : windows) {
      boolean known = windowsOfSeason.windows().contains(each.window());
      if (!known || (last != null && !each.firstTreatment().isAfter(last))) {
        throw InputProblem.of("a programme for " + each.window())
            .expected("windows of the season in the order of their days, each once")
            .because("what may be used in a window depends on the one before it")
            .mend("take the windows from the list of the season");
      }
      last = each.lastTreatment();
    }
    if (windows.isEmpty() || criteria.isEmpty() || mostShown < 1) {
      throw InputProblem.of(
              windows.size()
                  + " windows, "
                  + criteria.size()
                  + " criteria, "
                  + mostShown
                  + " shown")
          .expected("at least one of each")
          .because("otherwise there is nothing to propose")
          .mend("give the windows that are to be treated, and by what programmes are ranked");
    }
  }

  /**
   * A planner by the standard rules and all criteria.
   *
   * @param programme fields, crops, label records and what has been applied
   * @param field the field
   * @param pest the pest as the label records write it; empty if the labels' pests are not looked
   *     at
   * @param windowsOfSeason all windows of the season
   * @param windows those for which a programme is sought
   * @return the planner
   */
  public static RotationPlanner of(
      Programme programme,
      String field,
      String pest,
      RotationWindows windowsOfSeason,
      List<PlanWindow> windows) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        RotationRules.standard(),
        List.of(PlanCriterion.values()),
        WHO_CLASSES,
        UnrecordedLimits.LEFT_OUT,
        USUALLY_SHOWN);
  }

  /**
   * The same planner by other rules of rotation.
   *
   * @param other the rules
   * @return a new planner
   */
  public RotationPlanner with(RotationRules other) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        other,
        criteria,
        hazardClasses,
        unrecorded,
        mostShown);
  }

  /**
   * The same planner with another order of criteria.
   *
   * @param other criteria, the most important first
   * @return a new planner
   */
  public RotationPlanner rankedBy(PlanCriterion... other) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        rules,
        List.of(other),
        hazardClasses,
        unrecorded,
        mostShown);
  }

  /**
   * The same planner with other hazard classes.
   *
   * @param other the classes as the records write them, the mildest first
   * @return a new planner
   */
  public RotationPlanner withHazardClasses(String... other) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        rules,
        criteria,
        List.of(other),
        unrecorded,
        mostShown);
  }

  /**
   * The same planner with another treatment of records in which a limit is missing.
   *
   * @param other left out or doubted
   * @return a new planner
   */
  public RotationPlanner with(UnrecordedLimits other) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        rules,
        criteria,
        hazardClasses,
        other,
        mostShown);
  }

  /**
   * The same planner with another number of programmes listed.
   *
   * @param most most programmes, at least 1
   * @return a new planner
   */
  public RotationPlanner showing(int most) {
    return new RotationPlanner(
        programme,
        field,
        pest,
        windowsOfSeason,
        windows,
        rules,
        criteria,
        hazardClasses,
        unrecorded,
        most);
  }

  /** The label records for the crop, as the search sees them. */
  List<PlanCandidate> candidates() {
    var crop = programme.plantingFor(field, windows.get(0).firstTreatment());
    var records =
        crop.map(planting -> programme.labels().forCrop(planting.crop()))
            .orElse(programme.labels().records());
    return records.stream()
        .map(each -> PlanCandidate.of(each, limits(each), rules.table(), hazardClasses))
        .toList();
  }

  private List<LabelLimit> limits(LabelRecord record) {
    var all = new ArrayList<>(record.limits().limits());
    var district = programme.field(field).district();
    for (var rule : programme.localRules()) {
      if (rule.holdsFor(record.product(), record.crop(), district)) {
        all.addAll(rule.limits().limits());
      }
    }
    return all;
  }

  /**
   * Searches, with the progress of the thread.
   *
   * @return number of programmes and the best of them
   */
  public PlanOutcome plan() {
    return plan(Progress.ofThread());
  }

  /**
   * Searches.
   *
   * @param progress told of the work; may stop it
   * @return number of programmes and the best of them
   */
  public PlanOutcome plan(Progress progress) {
    var spaces = new PlanSpaces(this);
    var space = spaces.under(EnumSet.allOf(PlanRule.class));
    var steps = new PlanSteps(space);
    var scores = new PlanScores(space, steps, criteria, unrecorded);
    var search = new PlanSearch(space, steps, scores, progress);
    var count = search.count();
    var found =
        search.best(mostShown).stream().map(f -> proposed(f, space, steps, scores)).toList();
    var obstacles = count.signum() == 0 ? obstacles(spaces, progress) : List.<Set<PlanRule>>of();
    return new PlanOutcome(this, count, found, space.refusals(), obstacles);
  }

  private static ProposedProgramme proposed(
      PlanSearch.Found found, PlanSpace space, PlanSteps steps, PlanScores scores) {
    var choices = new ArrayList<WindowChoice>();
    var doubts = new ArrayList<String>();
    var state = steps.start();
    for (int choice : found.choices()) {
      var window = space.windows().get(state.window());
      Optional<LabelRecord> record = Optional.empty();
      if (choice != PlanSteps.NONE) {
        record = Optional.of(space.candidates().get(choice).record());
        doubts.addAll(scores.doubts(state, choice));
      }
      choices.add(new WindowChoice(window, record));
      state = steps.after(state, choice).orElseThrow();
    }
    var shown = new EnumMap<PlanCriterion, Double>(PlanCriterion.class);
    for (int i = 0; i < found.scores().size(); i++) {
      shown.put(scores.criteria().get(i), scores.shown(i, found.scores().get(i)));
    }
    return new ProposedProgramme(choices, shown, doubts.stream().distinct().toList());
  }

  /** The smallest sets of rules without which there would be a programme. */
  private List<Set<PlanRule>> obstacles(PlanSpaces spaces, Progress progress) {
    var rules = PlanRule.values();
    for (int size = 1; size <= 3; size++) {
      var found = new ArrayList<Set<PlanRule>>();
      for (int bits = 1; bits < 1 << rules.length; bits++) {
        if (Integer.bitCount(bits) != size) {
          continue;
        }
        var without = EnumSet.noneOf(PlanRule.class);
        for (int i = 0; i < rules.length; i++) {
          if ((bits & 1 << i) != 0) {
            without.add(rules[i]);
          }
        }
        var space = spaces.under(EnumSet.complementOf(without));
        var steps = new PlanSteps(space);
        var scores = new PlanScores(space, steps, List.of(), unrecorded);
        if (new PlanSearch(space, steps, scores, progress).isPossible()) {
          found.add(Set.copyOf(without));
        }
      }
      if (!found.isEmpty()) {
        return found;
      }
    }
    return List.of();
  }
}
