package agro.trial.layout;

import agro.report.InputProblem;
import agro.trial.PlotPlace;
import agro.trial.TrialDesign;
import java.util.ArrayList;
import java.util.List;

/**
 * The places of a trial before treatments are drawn.
 *
 * @param cells places block by block and, within blocks, main plot by main plot
 * @param rowsInBlock rows of a block
 * @param columnsInBlock columns of a block
 */
record PlotGrid(List<Cell> cells, int rowsInBlock, int columnsInBlock) {

  private static final int LONGEST_ROW = 12;

  /**
   * A place for a plot.
   *
   * @param block number of the block, from 1
   * @param mainPlot number of the main plot within the block, from 1; 0 when there is none
   * @param place row and column in the field
   */
  record Cell(int block, int mainPlot, PlotPlace place) {}

  PlotGrid {
    cells = List.copyOf(cells);
  }

  static PlotGrid of(PlanContent plan) {
    if (plan.design() instanceof TrialDesign.SplitPlot split) {
      return splitPlot(plan, split);
    }
    int blocks = plan.hasBlocks() ? plan.replicates() : 1;
    if (plan.design() instanceof TrialDesign.LatinSquare) {
      requireShape(plan.rowsInBlock() == 0, plan, "a Latin square has as many rows as columns");
      int order = plan.treatments().size();
      return blocks(plan, blocks, order * order, order);
    }
    int plots = plan.treatmentsOfBlock().size();
    return blocks(plan, blocks, plots, rows(plan, plots));
  }

  private static int rows(PlanContent plan, int plots) {
    if (plan.rowsInBlock() > 0) {
      requireShape(plan.rowsInBlock() <= plots, plan, "a block has no more rows than plots");
      return plan.rowsInBlock();
    }
    if (plan.hasBlocks()) {
      return (plots + LONGEST_ROW - 1) / LONGEST_ROW;
    }
    for (int rows = (int) Math.sqrt(plots); 2 * rows * rows >= plots; rows--) {
      if (plots % rows == 0) {
        return rows;
      }
    }
    return (int) Math.sqrt(plots);
  }

  private static PlotGrid blocks(PlanContent plan, int blocks, int plots, int rows) {
    int columns = (plots + rows - 1) / rows;
    var cells = new ArrayList<Cell>();
    for (int block = 0; block < blocks; block++) {
      for (int i = 0; i < plots; i++) {
        cells.add(
            new Cell(block + 1, 0, place(plan, block, rows, columns, i / columns, i % columns)));
      }
    }
    return new PlotGrid(cells, rows, columns);
  }

  private static PlotGrid splitPlot(PlanContent plan, TrialDesign.SplitPlot split) {
    int main = 1;
    for (var factor : plan.factors()) {
      main *= split.mainFactors().contains(factor.name()) ? factor.levels().size() : 1;
    }
    int sub = plan.treatments().size() / main;
    int rows = plan.rowsInBlock() > 0 ? plan.rowsInBlock() : compactRows(plan, main, sub);
    requireShape(sub % rows == 0, plan, "a main plot of " + sub + " plots has to fill its rows");
    int width = sub / rows;
    var cells = new ArrayList<Cell>();
    for (int block = 0; block < plan.replicates(); block++) {
      for (int whole = 0; whole < main; whole++) {
        for (int i = 0; i < sub; i++) {
          int column = whole * width + i % width;
          cells.add(
              new Cell(
                  block + 1, whole + 1, place(plan, block, rows, main * width, i / width, column)));
        }
      }
    }
    return new PlotGrid(cells, rows, main * width);
  }

  /** Rows of a main plot that bring the field nearest to a square. */
  private static int compactRows(PlanContent plan, int main, int sub) {
    int best = sub;
    double least = Double.MAX_VALUE;
    for (int rows = sub; rows >= 1; rows--) {
      int down = rows * plan.replicates();
      double shape =
          MapScale.width(plan.ground(), main * (sub / rows)) / MapScale.length(plan.ground(), down);
      double elongation = Math.max(shape, 1 / shape);
      if (sub % rows == 0 && elongation < least) {
        least = elongation;
        best = rows;
      }
    }
    return best;
  }

  private static PlotPlace place(
      PlanContent plan, int block, int rows, int columns, int row, int column) {
    int beside = plan.blocksSideBySide();
    requireShape(beside >= 1, plan, "at least one block stands in each line of blocks");
    return new PlotPlace(block / beside * rows + row + 1, block % beside * columns + column + 1);
  }

  private static void requireShape(boolean fits, PlanContent plan, String why) {
    if (!fits) {
      throw InputProblem.of(
              "blocks of "
                  + plan.rowsInBlock()
                  + " rows, "
                  + plan.blocksSideBySide()
                  + " side by side, for a "
                  + plan.design().words())
          .expected("a shape that the plots fill")
          .because(why)
          .mend("choose another number of rows, or leave the shape to the plan");
    }
  }
}
