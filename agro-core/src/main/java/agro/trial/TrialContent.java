package agro.trial;

import agro.report.InputProblem;
import agro.report.ReadReport;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/**
 * What a {@link FieldTrial} is made of.
 *
 * @param name name of the trial
 * @param responses declared variables
 * @param assessments lines
 * @param controls treatments declared to be controls
 * @param design declared design
 * @param corrections corrections applied so far
 * @param report what was done to the data
 */
record TrialContent(
    String name,
    List<TrialResponse> responses,
    List<Assessment> assessments,
    List<String> controls,
    Optional<TrialDesign> design,
    CorrectionHistory corrections,
    ReadReport report) {

  TrialContent {
    responses = List.copyOf(responses);
    assessments = List.copyOf(assessments);
    controls = List.copyOf(controls);
  }

  static TrialContent fresh(
      String name, List<TrialResponse> responses, List<Assessment> lines, ReadReport report) {
    if (lines.isEmpty()) {
      throw InputProblem.of("the trial " + name + " has no assessments")
          .expected("at least one line")
          .because("there is nothing to analyse")
          .mend("give the plots with their values");
    }
    var declared = new HashSet<String>();
    responses.forEach(response -> declared.add(response.name()));
    var factors = lines.get(0).plot().levels().keySet();
    for (var line : lines) {
      if (!declared.contains(line.variable())) {
        throw InputProblem.of(line.where() + ": the variable \"" + line.variable() + "\"")
            .expected("one of the declared variables " + declared)
            .because("its kind decides which values can be")
            .mend("declare the variable, or leave its values out");
      }
      if (!line.plot().levels().keySet().equals(factors)) {
        throw InputProblem.of(line.where() + ": the factors " + line.plot().levels().keySet())
            .expected("the factors " + factors + " as in the first line")
            .because("all plots of a trial have a level of each factor")
            .mend("give each plot a level of each factor");
      }
    }
    return new TrialContent(
        name, responses, lines, List.of(), Optional.empty(), CorrectionHistory.none(), report);
  }

  TrialContent withDesign(Optional<TrialDesign> newDesign) {
    return new TrialContent(name, responses, assessments, controls, newDesign, corrections, report);
  }

  TrialContent withControls(List<String> newControls) {
    return new TrialContent(name, responses, assessments, newControls, design, corrections, report);
  }

  TrialContent withAssessments(List<Assessment> lines, ReadReport newReport) {
    return new TrialContent(name, responses, lines, controls, design, corrections, newReport);
  }

  TrialContent corrected(List<Assessment> lines, CorrectionHistory history) {
    return new TrialContent(name, responses, lines, controls, design, history, report);
  }
}
