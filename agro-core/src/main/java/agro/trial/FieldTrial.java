package agro.trial;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.working.Presentable;
import agro.working.Presentation;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * A field trial as it was written down: plots with their treatments, and what was assessed in them.
 * Immutable; each change gives a new trial that remembers it. The plot is the replicate: repeated
 * lines of one plot on one day are sub-samples. The order of the lines changes nothing.
 */
public final class FieldTrial implements Presentable {

  private final TrialContent content;
  private final PlotRegister register;

  private FieldTrial(TrialContent content) {
    this.content = content;
    this.register = PlotRegister.of(content.assessments());
  }

  static FieldTrial of(TrialContent content) {
    return new FieldTrial(content);
  }

  /**
   * Reads a plot table with commas and decimal points in UTF-8.
   *
   * @param file the file
   * @param columns what its columns hold
   * @return the trial
   * @throws InputProblem when a column is missing or a cell cannot be read
   */
  public static FieldTrial read(Path file, PlotColumns columns) {
    return PlotTableReader.read(file, columns);
  }

  /**
   * Reads a plot table that is in memory.
   *
   * @param name name of the trial, also in messages
   * @param text heading line and lines
   * @param columns what its columns hold
   * @return the trial
   * @throws InputProblem when a column is missing or a cell cannot be read
   */
  public static FieldTrial parse(String name, String text, PlotColumns columns) {
    return PlotTableReader.parse(name, text, columns);
  }

  /**
   * A trial from records.
   *
   * @param name name of the trial
   * @param responses the variables
   * @param assessments what was assessed; a plot without any value comes in by an assessment whose
   *     value is missing
   * @return the trial
   * @throws InputProblem when there are no assessments, a variable is not declared, or lines have
   *     different treatment factors
   */
  public static FieldTrial of(
      String name, List<TrialResponse> responses, List<Assessment> assessments) {
    var report = new ReadReport.Collector(name);
    assessments.forEach(line -> report.countRow());
    var numbered = SubSamples.numbered(assessments, report);
    return of(TrialContent.fresh(name, responses, numbered, report.report()));
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
   * The plots, each once, by site, year, block and name. A plot that is written in two ways stands
   * here in the more frequent one, and {@link #review()} says so.
   *
   * @return at least one plot
   */
  public List<TrialPlot> plots() {
    return register.plots();
  }

  /**
   * Everything that was assessed.
   *
   * @return assessments in the order of the table
   */
  public List<Assessment> assessments() {
    return content.assessments();
  }

  /**
   * The declared variables.
   *
   * @return variables in the order of their declaration
   */
  public List<TrialResponse> responses() {
    return content.responses();
  }

  /**
   * One variable.
   *
   * @param name its name
   * @return the variable, to be asked for a day
   * @throws InputProblem when the trial has no such variable
   */
  public TrialVariable variable(String name) {
    for (var response : content.responses()) {
      if (response.name().equals(name)) {
        return new TrialVariable(this, response);
      }
    }
    throw InputProblem.of("no variable \"" + name + "\" in " + name())
        .expected(
            "one of "
                + content.responses().stream()
                    .map(response -> "\"" + response.name() + "\"")
                    .collect(Collectors.joining(", ")))
        .because("there is nothing to analyse")
        .mend("write the name as it was declared, or declare the column");
  }

  /**
   * Names of the treatment factors.
   *
   * @return at least one name
   */
  public List<String> factors() {
    return List.copyOf(plots().get(0).levels().keySet());
  }

  /**
   * Levels of a factor.
   *
   * @param factor name of the factor
   * @return the levels, sorted with numbers taken as numbers
   */
  public List<String> levels(String factor) {
    var levels = new TreeSet<>(NaturalOrder.ofNames());
    plots().forEach(plot -> plot.level(factor).ifPresent(levels::add));
    return List.copyOf(levels);
  }

  /**
   * Treatments in words, each once.
   *
   * @return the treatments, sorted with numbers taken as numbers
   */
  public List<String> treatments() {
    var names = new TreeSet<>(NaturalOrder.ofNames());
    plots().forEach(plot -> names.add(plot.treatment()));
    return List.copyOf(names);
  }

  /**
   * Sites with their years.
   *
   * @return the environments in order; one empty text when neither is written down
   */
  public List<String> environments() {
    var names = new LinkedHashSet<String>();
    plots().forEach(plot -> names.add(plot.environment()));
    return List.copyOf(names);
  }

  /**
   * The days of assessment.
   *
   * @return days in order, none when the trial has no dates
   */
  public List<LocalDate> dates() {
    var days = new TreeSet<LocalDate>();
    assessments().forEach(line -> line.date().ifPresent(days::add));
    return List.copyOf(days);
  }

  /**
   * The treatments that were declared to be controls.
   *
   * @return treatments in words, possibly none
   */
  public List<String> controls() {
    return content.controls();
  }

  /**
   * Treatments whose name sounds like that of a control. They are offered, never taken by
   * themselves.
   *
   * @return treatments in words, possibly none
   */
  public List<String> controlCandidates() {
    return treatments().stream().filter(ControlNames::soundsLikeControl).toList();
  }

  /**
   * Names of treatments that may be two spellings of one. They are offered, never merged.
   *
   * @return pairs, possibly none
   */
  public List<NearTreatment> nearTreatments() {
    return NearNames.of(this);
  }

  /**
   * What was assumed, mended, dropped or filled since the table was read.
   *
   * @return the report
   */
  public ReadReport report() {
    return content.report();
  }

  /**
   * The corrections that were applied, in their order.
   *
   * @return the history, possibly empty
   */
  public CorrectionHistory corrections() {
    return content.corrections();
  }

  /**
   * The design that was declared.
   *
   * @return the design, or empty
   */
  public Optional<TrialDesign> declaredDesign() {
    return content.design();
  }

  /**
   * Recognises the design and holds the data against it, and against the declared design if there
   * is one.
   *
   * @return designs and findings
   */
  public TrialReview review() {
    return TrialReview.of(this);
  }

  /**
   * This trial with a declared design, against which {@link #review()} checks the data.
   *
   * @param design the design
   * @return a new trial
   */
  public FieldTrial withDesign(TrialDesign design) {
    return of(content.withDesign(Optional.of(design)));
  }

  /**
   * This trial with one or more treatments declared to be controls.
   *
   * @param treatments treatments in words, as {@link #treatments()} gives them
   * @return a new trial
   * @throws InputProblem when there is no such treatment
   */
  public FieldTrial withControls(String... treatments) {
    for (var treatment : treatments) {
      if (!treatments().contains(treatment)) {
        throw InputProblem.of("no treatment \"" + treatment + "\" in " + name())
            .expected("one of " + treatments())
            .because("the control is what the others are compared with")
            .mend("write the treatment as it stands in the table");
      }
    }
    return of(content.withControls(List.of(treatments)));
  }

  /**
   * This trial with a level of a factor renamed, so that two spellings become one. The report
   * remembers it.
   *
   * @param from the spelling to replace, exactly as written
   * @param to the spelling to write
   * @return a new trial
   * @throws InputProblem when no factor has such a level
   */
  public FieldTrial withRenamed(String from, String to) {
    return of(Renaming.apply(content, from, to));
  }

  /**
   * This trial with its plots described anew, by site, year and name: how a trial that was scored
   * blind gets its treatments back, and lost plots that have no line come in with missing values.
   *
   * @param plots the plots as they were laid out
   * @return a new trial
   * @throws InputProblem when a plot of the table is not among them
   */
  public FieldTrial withPlotsOf(List<TrialPlot> plots) {
    return of(Describing.apply(content, plots));
  }

  /**
   * This trial with a correction applied; the old value stays in the history.
   *
   * @param correction what to correct
   * @return a new trial
   * @throws InputProblem when there is no such value, or it is not the old value of the correction
   */
  public FieldTrial withCorrection(Correction correction) {
    return of(Correcting.apply(content, correction));
  }

  /**
   * This trial with corrections applied one after the other.
   *
   * @param history the corrections, for example read from a file
   * @return a new trial
   * @throws InputProblem as for {@link #withCorrection}
   */
  public FieldTrial withCorrections(CorrectionHistory history) {
    var corrected = this;
    for (var correction : history.corrections()) {
      corrected = corrected.withCorrection(correction);
    }
    return corrected;
  }

  /**
   * The ways in which the lines describe one plot, with how many lines each.
   *
   * @param plot a plot
   * @return one entry when all lines agree
   */
  public Map<TrialPlot, Integer> descriptionsOf(TrialPlot plot) {
    return register.descriptions(plot);
  }

  TrialPlot plotOf(Assessment assessment) {
    return register.plotOf(assessment);
  }

  void requireOneDescription(TrialPlot plot) {
    var ways = descriptionsOf(plot).keySet();
    if (ways.size() > 1) {
      var words = new ArrayList<String>();
      ways.forEach(way -> words.add(PlotRegister.words(way)));
      throw InputProblem.of(plot.label() + " is written in " + ways.size() + " ways: " + words)
          .expected("one treatment, block and place for a plot in all lines")
          .because("a plot keeps its treatment through the trial")
          .mend(
              "mend the table; for two spellings of one treatment, rename one of them with"
                  + " withRenamed");
    }
  }

  /**
   * The lines in which a plot stands.
   *
   * @param plot a plot
   * @return line numbers in order, none when the trial came from code
   */
  public List<Long> linesOf(TrialPlot plot) {
    return assessments().stream()
        .filter(line -> line.plot().isSamePlot(plot) && line.line() > 0)
        .map(Assessment::line)
        .distinct()
        .sorted()
        .toList();
  }

  /**
   * The number of plots of each treatment.
   *
   * @return treatments in words with their replicates
   */
  public Map<String, Integer> replicates() {
    var counts = new LinkedHashMap<String, Integer>();
    treatments().forEach(treatment -> counts.put(treatment, 0));
    plots().forEach(plot -> counts.merge(plot.treatment(), 1, Integer::sum));
    return counts;
  }

  @Override
  public Presentation presentation() {
    return TrialPage.of(this);
  }

  @Override
  public String toString() {
    return name()
        + ": "
        + plots().size()
        + (plots().size() == 1 ? " plot, " : " plots, ")
        + treatments().size()
        + (treatments().size() == 1 ? " treatment, " : " treatments, ")
        + content.responses().stream().map(TrialResponse::name).toList();
  }
}
