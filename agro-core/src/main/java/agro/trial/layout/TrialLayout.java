package agro.trial.layout;

import agro.source.Reference;
import agro.trial.NaturalOrder;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import agro.units.Numbers;
import agro.working.Block;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.Sheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A trial laid out: which treatment stands on which plot, with the seed that gave it. The map, the
 * sheet for the field and their files tell of the treatments what the plan's {@link Blinding}
 * allows; the key and the full table tell all.
 */
public final class TrialLayout implements Presentable {

  private final TrialPlan plan;
  private final long seed;
  private final List<TrialPlot> plots;
  private final Map<String, String> codes;

  private TrialLayout(TrialPlan plan, long seed, List<TrialPlot> plots, Map<String, String> codes) {
    this.plan = plan;
    this.seed = seed;
    this.plots = List.copyOf(plots);
    this.codes = codes;
  }

  static TrialLayout of(TrialPlan plan, long seed, List<TrialPlot> plots) {
    return new TrialLayout(plan, seed, plots, TreatmentCodes.draw(plan.treatments(), seed));
  }

  /**
   * The plan.
   *
   * @return design, treatments and ground
   */
  public TrialPlan plan() {
    return plan;
  }

  /**
   * The seed.
   *
   * @return the number that gives this layout again
   */
  public long seed() {
    return seed;
  }

  /**
   * The design with its factors, to be declared for the trial that grows from this layout.
   *
   * @return the design
   */
  public TrialDesign design() {
    return plan.design();
  }

  /**
   * The plots with their treatments.
   *
   * @return plots in the order in which one walks: along a row and back along the next one
   */
  public List<TrialPlot> plots() {
    return plots;
  }

  /**
   * The code of a treatment, for scoring by people who do not know it.
   *
   * @param treatment treatment in words
   * @return two letters
   * @throws IllegalArgumentException when there is no such treatment
   */
  public String codeOf(String treatment) {
    var code = codes.get(treatment);
    if (code == null) {
      throw new IllegalArgumentException(
          "no treatment \"" + treatment + "\"; the treatments are " + codes.keySet());
    }
    return code;
  }

  /** What people in the field may read of the treatment of a plot. */
  String told(TrialPlot plot) {
    return switch (plan.blinding()) {
      case OPEN -> plot.treatment();
      case TREATMENT_CODES -> codeOf(plot.treatment());
      case PLOT_NUMBERS -> "";
    };
  }

  /**
   * The key: what stands behind codes and numbers. To be kept away from whoever scores.
   *
   * @return a table of codes and plots with their treatments
   */
  public ResultTable key() {
    return LayoutTables.key(this);
  }

  /**
   * The key as pages of its own, one when the treatments fit on it.
   *
   * @return pages to print
   */
  public List<Sheet> keyPages() {
    return KeySheet.draw(this);
  }

  /**
   * The key as a web page that prints page by page.
   *
   * @return an HTML file that needs no other
   */
  public String keyToHtml() {
    return SheetPages.html("Key of " + plan.name(), keyPages());
  }

  /**
   * All plots with block, place, treatment and area, in the order of walking.
   *
   * @return a table
   */
  public ResultTable table() {
    return LayoutTables.full(this);
  }

  /**
   * All plots with their treatments as a file that {@link agro.trial.FieldTrial} reads, with design
   * and seed in lines that begin with #.
   *
   * @return a comma-separated file
   */
  public String toCsv() {
    return LayoutTables.heading(this) + table().toCsv();
  }

  /**
   * The map of the field with what the blinding allows.
   *
   * @return a page to print
   */
  public Sheet fieldMap() {
    return FieldMap.draw(this);
  }

  /**
   * The sheet to take outdoors, with what the blinding allows.
   *
   * @param subSamples lines for each plot, 1 when plots are assessed as a whole
   * @param variables columns to fill, at least one and at most eight
   * @return pages to print
   */
  public FieldSheet fieldSheet(int subSamples, String... variables) {
    return FieldSheet.of(this, subSamples, List.of(variables));
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled(plan.name());
    page.fact("Design", plan.design().words());
    page.fact("Treatments", String.join("; ", plan.treatments()));
    if (!plan.controls().isEmpty()) {
      page.fact("Controls", String.join("; ", plan.controls()));
    }
    page.fact("Plots", Integer.toString(plots.size()));
    page.fact("Size of a plot", sizeWords());
    page.fact("Numbering", plan.numbering().words());
    page.fact("Seed", Long.toString(seed));
    page.table(table());
    page.part(plan.degreesOfFreedom().presentation());
    var sources = new ArrayList<Reference>();
    sources.add(LayoutSources.RANDOM_NUMBERS);
    if (plan.design() instanceof TrialDesign.LatinSquare) {
      sources.add(LayoutSources.LATIN_SQUARES);
    }
    return page.block(new Block.SourcesBlock(sources)).build();
  }

  String sizeWords() {
    var ground = plan.ground();
    return Numbers.plain(ground.plotWidth().inBaseUnit())
        + " m by "
        + Numbers.plain(ground.plotLength().inBaseUnit())
        + " m = "
        + ground.plotArea();
  }

  /**
   * The treatments by plot, for comparison of layouts.
   *
   * @return names of plots with their treatments
   */
  public Map<String, String> treatmentsByPlot() {
    var map = new TreeMap<String, String>(NaturalOrder.ofNames());
    plots.forEach(plot -> map.put(plot.name(), plot.treatment()));
    return map;
  }

  @Override
  public String toString() {
    return plan + ", seed " + seed;
  }
}
