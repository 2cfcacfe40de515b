package agro.trial.layout;

import agro.report.InputProblem;
import agro.trial.TrialDesign;
import agro.trial.TrialPlot;
import agro.units.Length;
import agro.units.LengthUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A trial to be laid out: its design, its treatments and the ground. {@link #draw} lays the
 * treatments on plots by a seed; the same plan and seed give the same layout always and everywhere.
 * Immutable.
 */
public final class TrialPlan {

  private final PlanContent content;

  private TrialPlan(PlanContent content) {
    this.content = content;
  }

  /**
   * Treatments at random over all plots.
   *
   * @param name name of the trial
   * @param replicates plots of each treatment, at least 2
   * @param factors treatment factors; several make a factorial
   * @return the plan
   */
  public static TrialPlan completelyRandomised(
      String name, int replicates, TreatmentFactor... factors) {
    return of(
        name, replicates, List.of(factors), new TrialDesign.CompletelyRandomised(names(factors)));
  }

  /**
   * Each treatment in each block.
   *
   * @param name name of the trial
   * @param blocks number of blocks, at least 2
   * @param factors treatment factors; several make a factorial
   * @return the plan
   */
  public static TrialPlan completeBlocks(String name, int blocks, TreatmentFactor... factors) {
    return of(name, blocks, List.of(factors), new TrialDesign.CompleteBlocks(names(factors)));
  }

  /**
   * Each treatment once in each row and in each column.
   *
   * @param name name of the trial
   * @param factors treatment factors; their combinations are the treatments, at least 3
   * @return the plan
   * @throws InputProblem when there are fewer than three treatments
   */
  public static TrialPlan latinSquare(String name, TreatmentFactor... factors) {
    var combinations = PlanContent.combinations(List.of(factors));
    if (combinations.size() < 3) {
      throw InputProblem.of("a Latin square of " + combinations.size() + " treatments")
          .expected("3 or more")
          .because("a square of order 2 leaves no degrees of freedom for the error")
          .mend("lay the treatments out in complete blocks");
    }
    return of(
        name, combinations.size(), List.of(factors), new TrialDesign.LatinSquare(names(factors)));
  }

  /**
   * Main plots in complete blocks, divided into plots.
   *
   * @param name name of the trial
   * @param blocks number of blocks, at least 2
   * @param mainFactor factor laid on main plots
   * @param subFactors factors laid on the plots within them
   * @return the plan
   */
  public static TrialPlan splitPlot(
      String name, int blocks, TreatmentFactor mainFactor, TreatmentFactor... subFactors) {
    var factors = new ArrayList<TreatmentFactor>();
    factors.add(mainFactor);
    factors.addAll(List.of(subFactors));
    return of(
        name,
        blocks,
        factors,
        new TrialDesign.SplitPlot(List.of(mainFactor.name()), names(subFactors), true));
  }

  private static List<String> names(TreatmentFactor... factors) {
    return List.of(factors).stream().map(TreatmentFactor::name).toList();
  }

  private static TrialPlan of(
      String name, int replicates, List<TreatmentFactor> factors, TrialDesign design) {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a trial needs a name");
    }
    requireReplicates(replicates);
    var names = new HashSet<String>();
    factors.forEach(factor -> names.add(factor.name()));
    if (names.size() < factors.size()) {
      throw new IllegalArgumentException("two treatment factors have the same name: " + names);
    }
    var metre = Length.of(1, LengthUnit.METRE);
    return new TrialPlan(
        new PlanContent(
            name,
            design,
            factors,
            replicates,
            Map.of(),
            List.of(),
            PlotNumbering.SERPENTINE,
            false,
            Blinding.OPEN,
            TrialGround.of(metre.withBaseValue(3), metre.withBaseValue(10)),
            0,
            1));
  }

  private static void requireReplicates(int replicates) {
    if (replicates < 2) {
      throw InputProblem.of("a trial with " + replicates + " replicates")
          .expected("2 or more")
          .because("one plot of each treatment leaves no error to compare with")
          .mend("plan more blocks or replicates");
    }
  }

  /**
   * This plan with another number of blocks or replicates.
   *
   * @param replicates the number, at least 2
   * @return a new plan
   * @throws InputProblem when it is less than 2, or the design is a Latin square
   */
  public TrialPlan withReplicates(int replicates) {
    requireReplicates(replicates);
    if (content.design() instanceof TrialDesign.LatinSquare && replicates != content.replicates()) {
      throw InputProblem.of("a Latin square with " + replicates + " replicates")
          .expected("as many as treatments, " + content.replicates())
          .because("each treatment stands once in each row and column")
          .mend("add treatments, or lay them out in blocks");
    }
    return new TrialPlan(content.withReplicates(replicates));
  }

  /**
   * This plan with more plots of one treatment in each block (in all, when there are no blocks),
   * usually of a control.
   *
   * @param treatment the treatment in words, as {@link #treatments()} gives them
   * @param extra how many plots more
   * @return a new plan
   * @throws InputProblem when there is no such treatment or the design has no room for it
   */
  public TrialPlan withExtraPlots(String treatment, int extra) {
    requireTreatment(treatment);
    if (!(content.design() instanceof TrialDesign.CompleteBlocks
        || content.design() instanceof TrialDesign.CompletelyRandomised)) {
      throw InputProblem.of("more plots of \"" + treatment + "\" in a " + content.design().words())
          .expected("complete blocks or a completely randomised trial")
          .because("this design gives each treatment the same number of plots")
          .mend("choose complete blocks");
    }
    if (extra < 1) {
      throw new IllegalArgumentException("at least one plot more, but got " + extra);
    }
    return new TrialPlan(content.withExtra(treatment, extra));
  }

  /**
   * This plan with its controls named; the map marks them.
   *
   * @param treatments treatments in words
   * @return a new plan
   * @throws InputProblem when there is no such treatment
   */
  public TrialPlan withControls(String... treatments) {
    List.of(treatments).forEach(this::requireTreatment);
    return new TrialPlan(content.withControls(List.of(treatments)));
  }

  private void requireTreatment(String treatment) {
    if (!treatments().contains(treatment)) {
      throw InputProblem.of("no treatment \"" + treatment + "\" in " + name())
          .expected("one of " + treatments())
          .because("only treatments of the plan can be laid out")
          .mend("write the treatment as the plan has it");
    }
  }

  /**
   * This plan with plots numbered in another way.
   *
   * @param numbering the way
   * @return a new plan
   */
  public TrialPlan withNumbering(PlotNumbering numbering) {
    return new TrialPlan(content.withNumbering(numbering));
  }

  /**
   * This plan with the condition that plots side by side or one above the other never have the same
   * treatment. Layouts that break it are drawn again, which favours no other one.
   *
   * @return a new plan
   */
  public TrialPlan withDifferentNeighbours() {
    return new TrialPlan(content.withDifferentNeighbours());
  }

  /**
   * This plan with treatments hidden from whoever scores.
   *
   * @param blinding what map and sheet tell
   * @return a new plan
   */
  public TrialPlan withBlinding(Blinding blinding) {
    return new TrialPlan(content.withBlinding(blinding));
  }

  /**
   * This plan on its ground.
   *
   * @param ground sizes, paths, slope
   * @return a new plan
   */
  public TrialPlan onGround(TrialGround ground) {
    return new TrialPlan(content.withGround(ground));
  }

  /**
   * This plan with blocks of another shape. Without this, blocks lie in one row of up to twelve
   * plots, and main plots are columns of their plots.
   *
   * @param rowsInBlock rows of plots in a block (in the field, when there are no blocks)
   * @param blocksSideBySide blocks beside each other, 1 to stack all of them
   * @return a new plan
   * @throws InputProblem when the shape does not fit the design
   */
  public TrialPlan withBlockShape(int rowsInBlock, int blocksSideBySide) {
    var shaped = content.withShape(rowsInBlock, blocksSideBySide);
    PlotGrid.of(shaped);
    return new TrialPlan(shaped);
  }

  /**
   * Lays the treatments on the plots.
   *
   * @param seed any number; write it down, it gives the same layout again
   * @return the layout
   * @throws InputProblem when no layout with different neighbours was found
   */
  public TrialLayout draw(long seed) {
    return TrialLayout.of(this, seed, new TreatmentDraw(content, seed).plots());
  }

  /**
   * Name of the trial.
   *
   * @return the name
   */
  public String name() {
    return content.name();
  }

  /**
   * The design.
   *
   * @return design with its factors
   */
  public TrialDesign design() {
    return content.design();
  }

  /**
   * The treatment factors.
   *
   * @return factors in order, those of main plots first
   */
  public List<TreatmentFactor> factors() {
    return content.factors();
  }

  /**
   * The treatments in words.
   *
   * @return one text for each combination of levels
   */
  public List<String> treatments() {
    return content.treatments().stream().map(PlanContent::words).toList();
  }

  /**
   * Number of blocks, or of replicates where there are none.
   *
   * @return at least 2
   */
  public int replicates() {
    return content.replicates();
  }

  /**
   * The named controls.
   *
   * @return treatments in words, possibly none
   */
  public List<String> controls() {
    return content.controls();
  }

  /**
   * The ground.
   *
   * @return sizes, paths, slope
   */
  public TrialGround ground() {
    return content.ground();
  }

  /**
   * What map and sheet tell of the treatments.
   *
   * @return the blinding
   */
  public Blinding blinding() {
    return content.blinding();
  }

  /**
   * How plots are numbered.
   *
   * @return the numbering
   */
  public PlotNumbering numbering() {
    return content.numbering();
  }

  /**
   * Number of plots.
   *
   * @return all plots of the trial
   */
  public int plotCount() {
    return PlotGrid.of(content).cells().size();
  }

  /**
   * The degrees of freedom that the analysis will have.
   *
   * @return sources of variation with their degrees of freedom
   */
  public PlannedDegrees degreesOfFreedom() {
    return PlannedDegrees.of(content);
  }

  /**
   * How many blocks or replicates this design needs to show a difference, whatever their number in
   * the plan.
   *
   * @param wanted the difference, the variation between plots and the chance of finding it
   * @return the answer, with the power of each number of replicates
   * @throws InputProblem when no number of replicates would do
   */
  public ReplicatesNeeded replicatesFor(WantedDifference wanted) {
    return ReplicatesNeeded.of(this, wanted);
  }

  static Optional<String> mainLevel(PlanContent content, Map<String, String> levels) {
    if (content.design() instanceof TrialDesign.SplitPlot split) {
      var main = new LinkedHashMap<String, String>();
      split.mainFactors().forEach(factor -> main.put(factor, levels.get(factor)));
      return Optional.of(TrialPlot.of("main", "", main).treatment());
    }
    return Optional.empty();
  }

  @Override
  public String toString() {
    return name()
        + ": "
        + design().words()
        + ", "
        + treatments().size()
        + " treatments, "
        + plotCount()
        + " plots";
  }
}
