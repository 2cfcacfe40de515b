package agro.programme.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.ApplicationLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
import agro.programme.LabelActive;
import agro.programme.LabelBook;
import agro.programme.LabelRecord;
import agro.programme.Programme;
import agro.report.InputProblem;
import java.math.BigInteger;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Programmes found by the search against all that there are, tried one by one. */
class RotationPlannerTest {

  private static final List<String> GROUPS =
      List.of("28", "5", "6", "3A", "3B", "1A", "1B", "4A", "UN", "22A");

  private static <T> T one(Random random, List<T> list) {
    return list.get(random.nextInt(list.size()));
  }

  private static LabelRecord record(Random random, int number) {
    var limits =
        LabelLimits.of("invented")
            .with(PreHarvestLimit.ofDays(one(random, List.of(0, 3, 14, 40))))
            .with(
                ApplicationLimit.maximum(1 + random.nextInt(3))
                    .per(
                        one(
                            random,
                            List.of(
                                LimitScope.CROP,
                                LimitScope.SEASON,
                                LimitScope.TWELVE_MONTHS,
                                LimitScope.GROUP,
                                LimitScope.ACTIVE_INGREDIENT))))
            .with(
                IntervalLimit.ofDays(one(random, List.of(1, 7, 25, 60)))
                    .per(
                        one(
                            random,
                            List.of(
                                LimitScope.CROP, LimitScope.GROUP, LimitScope.ACTIVE_INGREDIENT))));
    var actives = new ArrayList<LabelActive>();
    int first = random.nextInt(GROUPS.size());
    actives.add(RotationScenes.active("active " + GROUPS.get(first), GROUPS.get(first)));
    if (random.nextInt(4) == 0) {
      int second = (first + 1 + random.nextInt(GROUPS.size() - 1)) % GROUPS.size();
      actives.add(RotationScenes.active("active " + GROUPS.get(second), GROUPS.get(second)));
    }
    return RotationScenes.record("P" + number, limits, actives.toArray(LabelActive[]::new));
  }

  private static RotationPlanner scene(Random random) {
    var records = new ArrayList<LabelRecord>();
    int products = 2 + random.nextInt(4);
    for (int i = 0; i < products; i++) {
      records.add(record(random, i));
    }
    int length = 15 + random.nextInt(15);
    int number = 3 + random.nextInt(2);
    int cycle = length * number + random.nextInt(20);
    var picking = RotationScenes.START.plusDays(cycle - 1L - random.nextInt(length));
    Programme programme = RotationScenes.programme(new LabelBook(records), cycle, picking);
    var season =
        RotationWindows.every(
            RotationScenes.START,
            RotationScenes.START.plusDays((long) length * number - 1),
            length);
    int past = random.nextInt(3);
    for (int i = 0; i < past; i++) {
      var day = RotationScenes.START.plusDays(random.nextInt(length));
      programme =
          programme.with(RotationScenes.spray("past " + i, day, one(random, records).product()));
    }
    var windows = new ArrayList<PlanWindow>();
    for (var window : season.windows().subList(1, number)) {
      var day = window.first().plusDays(random.nextInt(length - 8));
      var planned =
          random.nextInt(4) == 0
              ? PlanWindow.treatedOn(window, day, day.plusDays(7))
              : PlanWindow.treatedOn(window, day);
      windows.add(random.nextInt(3) == 0 ? planned.mayStayUntreated() : planned);
    }
    return RotationPlanner.of(programme, RotationScenes.FIELD, "", season, windows)
        .showing(100_000);
  }

  private static List<List<Optional<LabelRecord>>> all(RotationPlanner planner) {
    List<List<Optional<LabelRecord>>> all = List.of(List.of());
    for (var window : planner.windows()) {
      var longer = new ArrayList<List<Optional<LabelRecord>>>();
      for (var begun : all) {
        var options = new ArrayList<Optional<LabelRecord>>();
        planner.programme().labels().records().forEach(r -> options.add(Optional.of(r)));
        if (!window.mustTreat()) {
          options.add(Optional.empty());
        }
        for (var option : options) {
          var next = new ArrayList<>(begun);
          next.add(option);
          longer.add(next);
        }
      }
      all = longer;
    }
    return all;
  }

  @Property(seed = "8", tries = 60)
  void everyProgrammeThatKeepsTheRulesIsFoundAndNoOther(
      @ForAll @LongRange(min = 0, max = Long.MAX_VALUE) long seed) {
    compareWithAll(seed);
  }

  @Property(seed = "8", tries = 2000)
  @Tag("slow")
  void everyProgrammeOfTwoThousandFarmsIsFoundAndNoOther(
      @ForAll @LongRange(min = 0, max = Long.MAX_VALUE) long seed) {
    compareWithAll(seed);
  }

  private static void compareWithAll(long seed) {
    var planner = scene(new Random(seed));
    var expected =
        all(planner).stream().filter(each -> new RuleByHand(planner, each).isKept()).toList();
    var outcome = planner.plan();
    assertThat(outcome.count()).isEqualTo(BigInteger.valueOf(expected.size()));
    var found =
        outcome.best().stream()
            .map(each -> each.choices().stream().map(WindowChoice::record).toList())
            .toList();
    assertThat(found).containsExactlyInAnyOrderElementsOf(expected);
    assertThat(outcome.isPossible()).isEqualTo(!expected.isEmpty());
  }

  @Property(seed = "8", tries = 40)
  void programmesComeInTheOrderOfTheCriteria(
      @ForAll @LongRange(min = 0, max = Long.MAX_VALUE) long seed) {
    var planner = scene(new Random(seed));
    var best = planner.plan().best();
    for (int i = 1; i < best.size(); i++) {
      assertThat(compare(planner, best.get(i - 1), best.get(i))).isNotPositive();
    }
    assertThat(planner.showing(1).plan().best())
        .isEqualTo(best.subList(0, Math.min(1, best.size())));
  }

  private static int compare(RotationPlanner planner, ProposedProgramme a, ProposedProgramme b) {
    for (var criterion : planner.criteria()) {
      int order = Double.compare(a.scores().get(criterion), b.scores().get(criterion));
      if (order != 0) {
        return criterion.moreIsBetter() ? -order : order;
      }
    }
    return 0;
  }

  private static RotationPlanner two(LabelRecord... records) {
    var programme = RotationScenes.programme(LabelBook.of(records), 42);
    var season = RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(41), 21);
    var windows =
        season.windows().stream()
            .map(each -> PlanWindow.treatedOn(each, each.first().plusDays(3)))
            .toList();
    return RotationPlanner.of(programme, RotationScenes.FIELD, "", season, windows);
  }

  @Test
  void theRuleThatLeavesNoneIsNamed() {
    var limits = RotationScenes.limits(3, 9, 1);
    var outcome =
        two(
                RotationScenes.record("A", limits, RotationScenes.active("a", "28")),
                RotationScenes.record("B", limits, RotationScenes.active("b", "28")))
            .plan();
    assertThat(outcome.isPossible()).isFalse();
    assertThat(outcome.obstacles())
        .containsExactlyInAnyOrder(
            java.util.Set.of(PlanRule.SUCCESSIVE_WINDOWS, PlanRule.SHARE_OF_SEASON));
    assertThat(outcome.words()).contains("no group in two windows in a row");
    assertThat(outcome.presentation().toText()).contains("No programme keeps to the rules");
  }

  @Test
  void aLimitThatNobodyRecordedIsNoFreedom() {
    var bare = LabelLimits.of("invented");
    var planner =
        two(
            RotationScenes.record("A", bare, RotationScenes.active("a", "28")),
            RotationScenes.record(
                "B", RotationScenes.limits(3, 9, 1), RotationScenes.active("b", "5")));
    var outcome = planner.plan();
    assertThat(outcome.isPossible()).isFalse();
    assertThat(outcome.refusals())
        .anyMatch(each -> each.rule() == PlanRule.LIMITS_RECORDED && each.product().equals("A"));
    var doubted = planner.with(UnrecordedLimits.DOUBTED).plan();
    assertThat(doubted.count()).isEqualTo(BigInteger.TWO);
    assertThat(doubted.best().get(0).doubts()).anyMatch(doubt -> doubt.contains("not recorded"));
    assertThat(doubted.presentation().toHtml()).contains("not recorded is");
    assertThat(doubted.presentation().toText()).contains("not recorded").doesNotContain("0.00");
  }

  @Test
  void thirtyRecordsAndSixWindowsAreCountedAndRanked() {
    var records = new ArrayList<LabelRecord>();
    for (int i = 0; i < 30; i++) {
      var group = List.of("28", "5", "6", "3A", "22A", "4A", "1B", "15", "11A", "13").get(i % 10);
      var limits = RotationScenes.limits(7, 1 + i % 3, 10);
      records.add(RotationScenes.record("P" + i, limits, RotationScenes.active("a" + i, group)));
    }
    var programme = RotationScenes.programme(new LabelBook(records), 126);
    var season =
        RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(125), 21);
    var windows =
        season.windows().stream()
            .map(each -> PlanWindow.treatedOn(each, each.first().plusDays(5)))
            .toList();
    var outcome = RotationPlanner.of(programme, RotationScenes.FIELD, "", season, windows).plan();
    // Free of the limits of single products, 30 · 27^5 programmes change the group each time.
    assertThat(outcome.count())
        .isBetween(
            BigInteger.valueOf(300_000_000), BigInteger.valueOf(30L * 27 * 27 * 27 * 27 * 27));
    assertThat(outcome.best()).hasSize(5);
  }

  @Test
  void aHazardClassThatIsNotOnTheListIsRefusedWithItsPlace() {
    var book =
        LabelBook.parse(
            "labels.csv",
            """
            product,crop,active,group,pre_harvest,max_applications,hazard_class
            A,cabbage,a,28,3 days,2,IV
            """);
    var programme = RotationScenes.programme(book, 42);
    var season = RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(41), 21);
    var window = PlanWindow.treatedOn(season.windows().get(0), LocalDate.of(2027, 4, 3));
    var planner = RotationPlanner.of(programme, RotationScenes.FIELD, "", season, List.of(window));
    assertThatThrownBy(planner::plan)
        .isInstanceOf(InputProblem.class)
        .hasMessageContainingAll("labels.csv", "line 2", "IV", "Ib");
    assertThat(planner.withHazardClasses("V", "IV", "III").plan().count())
        .isEqualTo(BigInteger.ONE);
  }
}
