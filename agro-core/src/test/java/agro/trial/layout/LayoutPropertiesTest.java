package agro.trial.layout;

import static org.assertj.core.api.Assertions.assertThat;

import agro.trial.FieldTrial;
import agro.trial.PlotColumns;
import agro.trial.TrialFinding;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for every layout, and that each is recognised from its table again. */
class LayoutPropertiesTest {

  private static TreatmentFactor factor(String name, int levels) {
    return new TreatmentFactor(
        name, IntStream.rangeClosed(1, levels).mapToObj(i -> name + " no " + i).toList());
  }

  @Property(seed = "8", tries = 60)
  void blocksHoldEachTreatmentOnce(
      @ForAll @IntRange(min = 2, max = 15) int treatments,
      @ForAll @IntRange(min = 2, max = 6) int blocks,
      @ForAll @IntRange(min = 1, max = 2) int beside,
      @ForAll long seed) {
    var layout =
        TrialPlan.completeBlocks("t", blocks, factor("treatment", treatments))
            .withBlockShape(1, beside)
            .draw(seed);

    var byBlock = grouped(layout, TrialPlot::block);
    assertThat(byBlock).hasSize(blocks);
    byBlock
        .values()
        .forEach(
            plots ->
                assertThat(plots.stream().map(TrialPlot::treatment))
                    .containsExactlyInAnyOrderElementsOf(layout.plan().treatments()));
    namesAndPlacesAreUnique(layout);
  }

  @Property(seed = "8", tries = 60)
  void latinSquaresHoldEachTreatmentOnceInRowAndColumn(
      @ForAll @IntRange(min = 3, max = 10) int order, @ForAll long seed) {
    var layout = TrialPlan.latinSquare("t", factor("treatment", order)).draw(seed);

    var rows = grouped(layout, plot -> "" + plot.place().orElseThrow().row());
    var columns = grouped(layout, plot -> "" + plot.place().orElseThrow().column());
    assertThat(rows).hasSize(order);
    assertThat(columns).hasSize(order);
    var lines = new ArrayList<>(rows.values());
    lines.addAll(columns.values());
    lines.forEach(
        plots ->
            assertThat(plots.stream().map(TrialPlot::treatment))
                .containsExactlyInAnyOrderElementsOf(layout.plan().treatments()));
    namesAndPlacesAreUnique(layout);
  }

  @Property(seed = "8", tries = 60)
  void completelyRandomisedTrialsHaveTheirReplicates(
      @ForAll @IntRange(min = 2, max = 7) int treatments,
      @ForAll @IntRange(min = 2, max = 6) int replicates,
      @ForAll long seed) {
    var layout =
        TrialPlan.completelyRandomised("t", replicates, factor("treatment", treatments)).draw(seed);

    var byTreatment = grouped(layout, TrialPlot::treatment);
    assertThat(byTreatment).hasSize(treatments);
    assertThat(byTreatment.values()).allMatch(plots -> plots.size() == replicates);
    namesAndPlacesAreUnique(layout);
  }

  @Property(seed = "8", tries = 60)
  void mainPlotsKeepTheirLevelAndHoldEachOfTheOtherFactor(
      @ForAll @IntRange(min = 2, max = 4) int main,
      @ForAll @IntRange(min = 2, max = 6) int sub,
      @ForAll @IntRange(min = 2, max = 5) int blocks,
      @ForAll long seed) {
    var layout =
        TrialPlan.splitPlot("t", blocks, factor("water", main), factor("product", sub)).draw(seed);

    var mainPlots = grouped(layout, plot -> plot.block() + "/" + plot.mainPlot());
    assertThat(mainPlots).hasSize(main * blocks);
    mainPlots
        .values()
        .forEach(
            plots -> {
              assertThat(plots.stream().map(plot -> plot.level("water").orElseThrow()).distinct())
                  .hasSize(1);
              assertThat(plots.stream().map(plot -> plot.level("product").orElseThrow()))
                  .hasSize(sub)
                  .doesNotHaveDuplicates();
            });
    grouped(layout, TrialPlot::block)
        .values()
        .forEach(
            plots ->
                assertThat(plots.stream().map(TrialPlot::treatment))
                    .containsExactlyInAnyOrderElementsOf(layout.plan().treatments()));
    namesAndPlacesAreUnique(layout);
  }

  @Property(seed = "8", tries = 40)
  void neighboursDifferWhenAsked(
      @ForAll @IntRange(min = 4, max = 8) int treatments,
      @ForAll @IntRange(min = 2, max = 5) int blocks,
      @ForAll long seed) {
    var plan =
        TrialPlan.completeBlocks("t", blocks, factor("treatment", treatments))
            .withExtraPlots("treatment no 1", 1)
            .withDifferentNeighbours();

    var places = new HashMap<List<Integer>, String>();
    for (var plot : plan.draw(seed).plots()) {
      var place = plot.place().orElseThrow();
      places.put(List.of(place.row(), place.column()), plot.treatment());
    }

    places.forEach(
        (place, treatment) -> {
          assertThat(places.get(List.of(place.get(0) + 1, place.get(1)))).isNotEqualTo(treatment);
          assertThat(places.get(List.of(place.get(0), place.get(1) + 1))).isNotEqualTo(treatment);
        });
    assertThat(places).hasSize((treatments + 1) * blocks);
  }

  @Property(seed = "8", tries = 120)
  void theDesignIsRecognisedFromItsTableInAnyOrderOfLines(
      @ForAll("plans") TrialPlan plan, @ForAll long seed) {
    var layout = plan.draw(seed);
    var table = table(layout, seed);
    var columns = PlotColumns.ofCounts("larvae");
    for (var factor : plan.factors()) {
      columns = columns.withFactor(factor.name());
    }

    var trial = FieldTrial.parse("t", table, columns);

    assertThat(trial.review().design()).isEqualTo(plan.design());
    assertThat(trial.withDesign(plan.design()).review().isSound()).isTrue();
    assertThat(trial.review().findings(TrialFinding.Kind.UNEQUAL_REPLICATION)).isEmpty();
    assertThat(trial.plots().stream().map(TrialPlot::toString))
        .containsExactlyInAnyOrderElementsOf(
            layout.plots().stream().map(TrialPlot::toString).toList());
  }

  @Provide
  Arbitrary<TrialPlan> plans() {
    var size = Arbitraries.integers().between(4, 7);
    var blocks = Arbitraries.integers().between(3, 5);
    return Combinators.combine(size, blocks, Arbitraries.integers().between(0, 5))
        .as(
            (treatments, replicates, kind) ->
                switch (kind) {
                  case 0 ->
                      TrialPlan.completelyRandomised(
                          "t", replicates, factor("treatment", treatments));
                  case 1 ->
                      TrialPlan.completeBlocks("t", replicates, factor("treatment", treatments));
                  case 2 -> TrialPlan.latinSquare("t", factor("treatment", treatments));
                  case 3 ->
                      TrialPlan.splitPlot(
                          "t", replicates, factor("water", 3), factor("product", treatments));
                  case 4 ->
                      TrialPlan.completeBlocks(
                          "t", replicates, factor("water", 2), factor("product", treatments));
                  default ->
                      TrialPlan.splitPlot(
                              "t", replicates, factor("water", 2), factor("product", treatments))
                          .withNumbering(PlotNumbering.BLOCK_HUNDREDS);
                });
  }

  /** The table of a layout with a count in each line, in another order of lines. */
  private static String table(TrialLayout layout, long seed) {
    var lines = new ArrayList<>(List.of(layout.toCsv().split("\r\n")));
    var comments = lines.stream().filter(line -> line.startsWith("#")).toList();
    lines.removeAll(comments);
    var heading = lines.remove(0) + ",larvae";
    Collections.shuffle(lines, new Random(seed));
    return String.join("\n", comments)
        + "\n"
        + heading
        + "\n"
        + lines.stream().map(line -> line + ",7").collect(Collectors.joining("\n"));
  }

  @Property(seed = "8", tries = 60)
  void theSameSeedGivesTheSameLayoutAndThreadsDoNotMatter(
      @ForAll("plans") TrialPlan plan, @ForAll long seed) {
    var first = plan.draw(seed).treatmentsByPlot();

    var others =
        IntStream.range(0, 4).parallel().mapToObj(i -> plan.draw(seed).treatmentsByPlot()).toList();

    assertThat(others).allMatch(first::equals);
  }

  private static Map<String, List<TrialPlot>> grouped(
      TrialLayout layout, Function<TrialPlot, String> by) {
    return layout.plots().stream().collect(Collectors.groupingBy(by));
  }

  private static void namesAndPlacesAreUnique(TrialLayout layout) {
    var names = new HashSet<String>();
    var places = new HashSet<Object>();
    for (var plot : layout.plots()) {
      assertThat(names.add(plot.name())).isTrue();
      assertThat(places.add(plot.place().orElseThrow())).isTrue();
    }
    assertThat(layout.plots()).hasSize(layout.plan().plotCount());
    assertThat(layout.plan().degreesOfFreedom().total()).isEqualTo(layout.plots().size() - 1);
  }
}
