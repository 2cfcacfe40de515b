package agro.trial.layout;

import agro.trial.TrialDesign;
import agro.working.Block;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import java.util.ArrayList;
import java.util.List;

/**
 * Degrees of freedom of a planned trial.
 *
 * @param sources sources of variation in the order of the analysis of variance
 */
public record PlannedDegrees(List<Source> sources) implements Presentable {

  /** Residual degrees of freedom that a trial should have. */
  public static final int RECOMMENDED_RESIDUAL = 12;

  /**
   * A source of variation.
   *
   * @param name what varies
   * @param degrees its degrees of freedom
   * @param error whether treatments are compared with it
   */
  public record Source(String name, int degrees, boolean error) {}

  /** Makes the list immutable. */
  public PlannedDegrees {
    sources = List.copyOf(sources);
  }

  static PlannedDegrees of(PlanContent plan) {
    var sources = new ArrayList<Source>();
    int treatments = plan.treatments().size();
    int plots = PlotGrid.of(plan).cells().size();
    if (plan.design() instanceof TrialDesign.SplitPlot split) {
      splitPlot(plan, split, treatments, sources);
    } else if (plan.design() instanceof TrialDesign.LatinSquare) {
      sources.add(new Source("rows", treatments - 1, false));
      sources.add(new Source("columns", treatments - 1, false));
      sources.add(new Source("treatments", treatments - 1, false));
      sources.add(new Source("residual", (treatments - 1) * (treatments - 2), true));
    } else {
      int blocks = plan.hasBlocks() ? plan.replicates() - 1 : 0;
      if (blocks > 0) {
        sources.add(new Source("blocks", blocks, false));
      }
      sources.add(new Source("treatments", treatments - 1, false));
      sources.add(new Source("residual", plots - 1 - blocks - (treatments - 1), true));
    }
    return new PlannedDegrees(sources);
  }

  private static void splitPlot(
      PlanContent plan, TrialDesign.SplitPlot split, int treatments, List<Source> sources) {
    int main = 1;
    for (var factor : plan.factors()) {
      main *= split.mainFactors().contains(factor.name()) ? factor.levels().size() : 1;
    }
    int sub = treatments / main;
    int blocks = plan.replicates();
    sources.add(new Source("blocks", blocks - 1, false));
    sources.add(new Source(String.join(" and ", split.mainFactors()), main - 1, false));
    sources.add(new Source("residual of main plots", (blocks - 1) * (main - 1), true));
    sources.add(new Source(String.join(" and ", split.subFactors()), sub - 1, false));
    sources.add(new Source("interaction", (main - 1) * (sub - 1), false));
    sources.add(new Source("residual of plots", main * (blocks - 1) * (sub - 1), true));
  }

  /**
   * The least residual degrees of freedom of any stratum.
   *
   * @return 0 or more
   */
  public int residual() {
    return sources.stream()
        .filter(Source::error)
        .mapToInt(Source::degrees)
        .min()
        .orElseThrow(() -> new IllegalStateException("a design has a residual"));
  }

  /**
   * All degrees of freedom.
   *
   * @return number of plots less one
   */
  public int total() {
    return sources.stream().mapToInt(Source::degrees).sum();
  }

  /**
   * Whether each residual has the recommended degrees of freedom.
   *
   * @return true for 12 or more
   */
  public boolean isEnough() {
    return residual() >= RECOMMENDED_RESIDUAL;
  }

  /**
   * The rule on residual degrees of freedom, held against this plan.
   *
   * @return one sentence
   */
  public String note() {
    return "The residual has "
        + residual()
        + " degrees of freedom"
        + (sources.stream().filter(Source::error).count() > 1 ? " in the smaller stratum" : "")
        + (isEnough() ? ", at least the " : ", fewer than the ")
        + RECOMMENDED_RESIDUAL
        + " that trials of efficacy should have (EPPO PP 1/152, value from memory)"
        + (isEnough() ? "." : ": plan more replicates or treatments.");
  }

  @Override
  public Presentation presentation() {
    var rows = new ArrayList<List<Cell>>();
    sources.forEach(
        source -> rows.add(List.of(Cell.text(source.name()), Cell.number(source.degrees(), 0))));
    rows.add(List.of(Cell.text("total"), Cell.number(total(), 0)));
    var columns =
        List.of(ResultTable.Column.of("Source"), ResultTable.Column.of("Degrees of freedom"));
    return Presentation.titled("Degrees of freedom of the plan")
        .table(ResultTable.of("Sources of variation", columns, rows))
        .paragraph(note())
        .block(new Block.SourcesBlock(List.of(LayoutSources.EFFICACY_STANDARD)))
        .build();
  }
}
