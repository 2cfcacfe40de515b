package agro.trial.layout;

import agro.report.InputProblem;
import agro.trial.PlotPlace;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Draws the treatments of a plan on its places. */
final class TreatmentDraw {

  /** Draws of one block before the whole layout is begun anew, and how often that is done. */
  private static final int TRIES_OF_BLOCK = 20_000;

  private static final int BEGINNINGS = 20;

  private final PlanContent plan;
  private final PlotGrid grid;
  private final SeededDraws draws;

  TreatmentDraw(PlanContent plan, long seed) {
    this.plan = plan;
    this.grid = PlotGrid.of(plan);
    this.draws = new SeededDraws(seed);
  }

  List<TrialPlot> plots() {
    for (int beginning = 0; beginning < BEGINNINGS; beginning++) {
      var treatments = new LinkedHashMap<PlotGrid.Cell, Map<String, String>>();
      if (lay(treatments)) {
        return named(treatments);
      }
    }
    throw InputProblem.of(
            "no layout of " + plan.name() + " with different neighbours in many draws")
        .expected("a layout in which no two neighbours have the same treatment")
        .because("with few treatments or many plots of one there may be none, or too few of them")
        .mend("leave the condition out, change the shape of the blocks, or take fewer extra plots");
  }

  private boolean lay(Map<PlotGrid.Cell, Map<String, String>> treatments) {
    int blocks = plan.hasBlocks() ? plan.replicates() : 1;
    Map<PlotPlace, Map<String, String>> laid = new HashMap<>();
    for (int block = 1; block <= blocks; block++) {
      int number = block;
      var cells = grid.cells().stream().filter(cell -> cell.block() == number).toList();
      var drawn = block(cells, laid);
      if (drawn.isEmpty()) {
        return false;
      }
      for (int i = 0; i < cells.size(); i++) {
        treatments.put(cells.get(i), drawn.get().get(i));
        laid.put(cells.get(i).place(), drawn.get().get(i));
      }
    }
    return true;
  }

  private Optional<List<Map<String, String>>> block(
      List<PlotGrid.Cell> cells, Map<PlotPlace, Map<String, String>> laid) {
    int tries = plan.differentNeighbours() ? TRIES_OF_BLOCK : 1;
    for (int i = 0; i < tries; i++) {
      var drawn = drawnBlock();
      if (!plan.differentNeighbours() || neighboursDiffer(cells, drawn, laid)) {
        return Optional.of(drawn);
      }
    }
    return Optional.empty();
  }

  private List<Map<String, String>> drawnBlock() {
    if (plan.design() instanceof TrialDesign.LatinSquare) {
      var treatments = plan.treatments();
      var drawn = new ArrayList<Map<String, String>>();
      RandomLatinSquare.draw(treatments.size(), draws)
          .forEach(row -> row.forEach(symbol -> drawn.add(treatments.get(symbol))));
      return drawn;
    }
    if (plan.design() instanceof TrialDesign.SplitPlot) {
      Map<String, List<Map<String, String>>> mainPlots = new LinkedHashMap<>();
      for (var treatment : plan.treatments()) {
        var main = TrialPlan.mainLevel(plan, treatment).orElseThrow();
        mainPlots.computeIfAbsent(main, key -> new ArrayList<>()).add(treatment);
      }
      var drawn = new ArrayList<Map<String, String>>();
      for (var main : draws.shuffled(List.copyOf(mainPlots.values()))) {
        drawn.addAll(draws.shuffled(main));
      }
      return drawn;
    }
    return draws.shuffled(plan.treatmentsOfBlock());
  }

  private static boolean neighboursDiffer(
      List<PlotGrid.Cell> cells,
      List<Map<String, String>> drawn,
      Map<PlotPlace, Map<String, String>> laid) {
    var all = new HashMap<>(laid);
    for (int i = 0; i < cells.size(); i++) {
      all.put(cells.get(i).place(), drawn.get(i));
    }
    for (int i = 0; i < cells.size(); i++) {
      var place = cells.get(i).place();
      var treatment = drawn.get(i);
      boolean same =
          treatment.equals(all.get(new PlotPlace(place.row(), place.column() + 1)))
              || treatment.equals(all.get(new PlotPlace(place.row() + 1, place.column())))
              || (place.row() > 1
                  && treatment.equals(laid.get(new PlotPlace(place.row() - 1, place.column()))))
              || (place.column() > 1
                  && treatment.equals(laid.get(new PlotPlace(place.row(), place.column() - 1))));
      if (same) {
        return false;
      }
    }
    return true;
  }

  private List<TrialPlot> named(Map<PlotGrid.Cell, Map<String, String>> treatments) {
    var plots = new ArrayList<TrialPlot>();
    var numbers = new PlotNumbers(plan, grid).names();
    for (var cell : WalkingOrder.of(grid.cells())) {
      plots.add(
          new TrialPlot(
              "",
              OptionalInt.empty(),
              plan.hasBlocks() ? Integer.toString(cell.block()) : "",
              cell.mainPlot() == 0 ? "" : Integer.toString(cell.mainPlot()),
              numbers.get(cell),
              Optional.of(cell.place()),
              treatments.get(cell),
              Optional.of(plan.ground().plotArea())));
    }
    return List.copyOf(plots);
  }
}
