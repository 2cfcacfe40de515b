package agro.trial.layout;

import agro.report.InputProblem;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Numbers the places of a plan. */
final class PlotNumbers {

  private static final int HUNDRED = 100;

  private final PlanContent plan;
  private final PlotGrid grid;

  PlotNumbers(PlanContent plan, PlotGrid grid) {
    this.plan = plan;
    this.grid = grid;
  }

  Map<PlotGrid.Cell, String> names() {
    return switch (plan.numbering()) {
      case SERPENTINE -> fromOne(WalkingOrder.of(grid.cells()));
      case ROW_BY_ROW ->
          fromOne(
              grid.cells().stream()
                  .sorted(
                      Comparator.comparingInt((PlotGrid.Cell cell) -> cell.place().row())
                          .thenComparingInt(cell -> cell.place().column()))
                  .toList());
      case BLOCK_HUNDREDS -> byBlock();
    };
  }

  private static Map<PlotGrid.Cell, String> fromOne(List<PlotGrid.Cell> cells) {
    var names = new HashMap<PlotGrid.Cell, String>();
    for (int i = 0; i < cells.size(); i++) {
      names.put(cells.get(i), Integer.toString(i + 1));
    }
    return names;
  }

  private Map<PlotGrid.Cell, String> byBlock() {
    var names = new HashMap<PlotGrid.Cell, String>();
    Map<Integer, Integer> used = new HashMap<>();
    for (var cell : WalkingOrder.of(grid.cells())) {
      int number = used.merge(cell.block(), 1, Integer::sum);
      if (number >= HUNDRED) {
        throw InputProblem.of("more than 99 plots in block " + cell.block())
            .expected("at most 99 plots in a block")
            .because("block 1 would run into the numbers of block 2")
            .mend("number the plots from 1 on");
      }
      names.put(cell, Integer.toString(HUNDRED * cell.block() + number));
    }
    return names;
  }
}
