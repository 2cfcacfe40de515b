package agro.programme.rotation;

import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the search for programmes has found.
 *
 * @param planner the question
 * @param count number of programmes that keep to all rules
 * @param best the best of them, the very best first
 * @param refusals why products are out of the question in single windows
 * @param obstacles where there is no programme: the smallest sets of rules without which there
 *     would be one
 */
public record PlanOutcome(
    RotationPlanner planner,
    BigInteger count,
    List<ProposedProgramme> best,
    List<PlanRefusal> refusals,
    List<Set<PlanRule>> obstacles)
    implements Presentable {

  /** Copies the lists. */
  public PlanOutcome {
    best = List.copyOf(best);
    refusals = List.copyOf(refusals);
    obstacles = List.copyOf(obstacles);
  }

  /**
   * Whether there is a programme.
   *
   * @return false if the rules leave none
   */
  public boolean isPossible() {
    return count.signum() > 0;
  }

  /**
   * The verdict in one sentence.
   *
   * @return how many programmes keep to the rules, or which rules leave none
   */
  public String words() {
    if (isPossible()) {
      return count.equals(BigInteger.ONE)
          ? "One programme keeps to all rules."
          : count + " programmes keep to all rules.";
    }
    if (obstacles.isEmpty()) {
      return "No programme keeps to the rules, and giving up three of them would not make one.";
    }
    var reasons = new TreeSet<String>();
    for (var set : obstacles) {
      reasons.add(String.join(" and ", set.stream().map(PlanRule::words).sorted().toList()));
    }
    return "No programme keeps to the rules. What leaves none: "
        + String.join("; or ", reasons)
        + ".";
  }

  private ResultTable programmes() {
    var columns = new ArrayList<ResultTable.Column>();
    columns.add(ResultTable.Column.of("Rank"));
    planner
        .windows()
        .forEach(each -> columns.add(ResultTable.Column.of("Window " + each.window().number())));
    planner.criteria().stream()
        .filter(each -> each != PlanCriterion.HAZARD)
        .forEach(each -> columns.add(ResultTable.Column.of(each.words())));
    var rows = new ArrayList<List<Cell>>();
    for (var programme : best) {
      var row = new ArrayList<Cell>();
      row.add(Cell.number(rows.size() + 1, 0));
      for (var choice : programme.choices()) {
        row.add(Cell.text(choice.record().map(r -> words(r)).orElse("none")));
      }
      for (var criterion : planner.criteria()) {
        if (criterion != PlanCriterion.HAZARD) {
          row.add(score(programme, criterion));
        }
      }
      rows.add(row);
    }
    return ResultTable.of("Best programmes", columns, rows);
  }

  /** A sum of costs of which one is not recorded is a lower bound, and says so. */
  private static Cell score(ProposedProgramme programme, PlanCriterion criterion) {
    double score = programme.scores().get(criterion);
    boolean unknown =
        criterion == PlanCriterion.COST
            && programme.choices().stream()
                .flatMap(choice -> choice.record().stream())
                .anyMatch(each -> each.further().getOrDefault(PlanCandidate.COST, "").isBlank());
    if (unknown) {
      return Cell.text(
          score > 0
              ? String.format(Locale.ROOT, "over %.2f, not all recorded", score)
              : "not recorded");
    }
    return Cell.number(score, criterion == PlanCriterion.COST ? 2 : 0);
  }

  private String words(agro.programme.LabelRecord record) {
    var groups =
        record.actives().stream().map(active -> active.group().orElse("not recorded")).toList();
    return record.product() + " (" + String.join(" + ", groups) + ")";
  }

  private ResultTable refused() {
    var lines = new LinkedHashMap<String, List<String>>();
    for (var refusal : refusals) {
      lines
          .computeIfAbsent(
              refusal.product() + "\u0000" + refusal.rule().words() + "\u0000" + refusal.words(),
              key -> new ArrayList<>())
          .add(String.valueOf(refusal.window().number()));
    }
    var rows = new ArrayList<List<Cell>>();
    lines.forEach(
        (key, windows) -> {
          var parts = key.split("\u0000", 3);
          rows.add(
              List.of(
                  Cell.text(parts[0]),
                  Cell.text(String.join(", ", windows)),
                  Cell.text(parts[1]),
                  Cell.text(parts[2])));
        });
    var columns =
        List.of(
            ResultTable.Column.of("Product"),
            ResultTable.Column.of("Windows"),
            ResultTable.Column.of("Rule"),
            ResultTable.Column.of("Reason"));
    return ResultTable.of("Out of the question", columns, rows);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Programmes for " + planner.field())
            .paragraph(words())
            .fact(
                "Ranked by",
                String.join(", ", planner.criteria().stream().map(PlanCriterion::words).toList()));
    if (!best.isEmpty()) {
      page.table(programmes());
      best.get(0).scores().forEach((criterion, score) -> hazard(page, criterion, score));
      best.get(0).doubts().forEach(page::paragraph);
    }
    if (!refusals.isEmpty()) {
      page.table(refused());
    }
    return page.cautions(Caution.all())
        .sources(
            List.of(
                RotationSources.WINDOWS,
                RotationSources.DIAMONDBACK,
                RotationSources.SUB_GROUPS,
                RotationSources.SCHEME))
        .build();
  }

  private void hazard(Presentation.Builder page, PlanCriterion criterion, double score) {
    if (criterion == PlanCriterion.HAZARD) {
      page.fact(
          "Hazard classes of the first programme",
          PlanScores.hazardWords((long) score, planner.hazardClasses()));
    }
  }
}
