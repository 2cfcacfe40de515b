package agro.trial.analysis;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.trial.FieldTrial;
import agro.trial.TrialVariable;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.efficacy.EfficacyEvaluation;
import agro.trial.load.PestLoad;
import agro.trial.load.TrialLoad;
import agro.working.Presentable;
import agro.working.Presentation;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The report of a whole trial on one page: what it was, what was found in its data and corrected,
 * the analysis of one variable day by day, and where wanted efficacy over the days and the load.
 *
 * @param trial the trial
 * @param course the analysis of each day
 * @param efficacy efficacy over the days, if it was asked for
 * @param load load of the plots, if it was asked for
 */
public record TrialReport(
    FieldTrial trial,
    AnalysisCourse course,
    Optional<EfficacyCourse> efficacy,
    Optional<TrialLoad> load)
    implements Presentable {

  /** Refuses null. */
  public TrialReport {
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(course, "course");
    Objects.requireNonNull(efficacy, "efficacy");
    Objects.requireNonNull(load, "load");
  }

  /**
   * The report of an analysis: of the day that it names, else of all days.
   *
   * @param analysis variable and settings
   * @return the report, without efficacy and load
   * @throws InputProblem as for {@link TrialAnalysis#evaluate()}
   */
  public static TrialReport of(TrialAnalysis analysis) {
    return new TrialReport(
        analysis.variable().trial(), analysis.course(), Optional.empty(), Optional.empty());
  }

  /**
   * The report of a variable with the usual analysis.
   *
   * @param variable the variable
   * @return the report, without efficacy and load
   */
  public static TrialReport of(TrialVariable variable) {
    return of(TrialAnalysis.of(variable));
  }

  /** Name of the variable that was analysed. */
  private String variable() {
    return course.days().get(0).subject().values().response().name();
  }

  /**
   * With efficacy against the declared control on each day after a treatment.
   *
   * @param treated day of the treatment
   * @return a new report
   * @throws InputProblem when the trial has no single control, or no count after that day
   */
  public TrialReport treatedOn(LocalDate treated) {
    return treatedOn(treated, EfficacyEvaluation.withDefaults());
  }

  /**
   * With efficacy against the declared control on each day after a treatment.
   *
   * @param treated day of the treatment
   * @param settings formula and limits
   * @return a new report
   * @throws InputProblem when the trial has no single control, or no count after that day
   */
  public TrialReport treatedOn(LocalDate treated, EfficacyEvaluation settings) {
    var found = EfficacyCourse.of(trial, variable(), treated, settings);
    return new TrialReport(trial, course, Optional.of(found), load);
  }

  /**
   * With the load of the plots over the days.
   *
   * @param settings how the load is summed
   * @return a new report
   * @throws InputProblem when there is one day only
   */
  public TrialReport with(PestLoad settings) {
    return new TrialReport(
        trial, course, efficacy, Optional.of(settings.evaluate(trial, variable())));
  }

  @Override
  public Presentation presentation() {
    var page = Presentation.titled(trial.name());
    var review = trial.review();
    page.fact("Variable", trial.variable(variable()).toString());
    page.fact("Design", course.days().get(0).subject().design().words());
    page.fact("Plots", Integer.toString(trial.plots().size()));
    page.fact("Treatments", String.join("; ", trial.treatments()));
    if (!trial.controls().isEmpty()) {
      page.fact("Control", String.join("; ", trial.controls()));
    }
    page.part(review.presentation());
    page.part(trial.corrections().presentation());
    for (var day : course.days()) {
      page.part(AnalysisPage.withoutSources(day));
    }
    if (course.days().size() > 1) {
      page.part(CourseTables.withoutSources(course));
    }
    efficacy.ifPresent(found -> page.part(found.presentation()));
    load.ifPresent(found -> page.part(found.presentation()));
    var sources = new LinkedHashSet<Reference>();
    course.days().forEach(day -> sources.addAll(day.sources()));
    return page.sources(List.copyOf(sources)).build();
  }

  /**
   * The results in sentences, for a summary.
   *
   * @return one sentence for each day
   */
  public List<String> sentences() {
    var sentences = new ArrayList<String>();
    for (var day : course.days()) {
      sentences.add(day.subject().title() + ": " + AnalysisPage.sentenceOf(day));
    }
    return sentences;
  }

  @Override
  public String toString() {
    return trial.name() + "\n" + String.join("\n", sentences());
  }
}
