package agro.notebook.page;

import agro.trial.FieldTrial;
import agro.trial.analysis.AnalysedTrial;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.TrialLoad;
import agro.trial.load.TrialValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a page of a trial is made of. */
record TrialParts(
    FieldTrial trial,
    String title,
    List<AnalysedTrial> analyses,
    Optional<EfficacyCourse> course,
    Optional<TrialLoad> load,
    Optional<LoadYieldLine> line,
    Optional<TrialValue> value,
    List<String> remarks) {

  TrialParts {
    Objects.requireNonNull(trial, "trial");
    Objects.requireNonNull(title, "title");
    analyses = List.copyOf(analyses);
    remarks = List.copyOf(remarks);
  }

  static TrialParts of(FieldTrial trial) {
    return new TrialParts(
        trial,
        trial.name(),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of());
  }

  TrialParts titled(String newTitle) {
    return new TrialParts(trial, newTitle, analyses, course, load, line, value, remarks);
  }

  TrialParts with(AnalysedTrial analysed) {
    return new TrialParts(
        trial, title, more(analyses, analysed), course, load, line, value, remarks);
  }

  TrialParts with(EfficacyCourse newCourse) {
    return new TrialParts(
        trial, title, analyses, Optional.of(newCourse), load, line, value, remarks);
  }

  TrialParts with(TrialLoad newLoad) {
    return new TrialParts(
        trial, title, analyses, course, Optional.of(newLoad), line, value, remarks);
  }

  TrialParts with(LoadYieldLine newLine) {
    return new TrialParts(
        trial, title, analyses, course, load, Optional.of(newLine), value, remarks);
  }

  TrialParts with(TrialValue newValue) {
    return new TrialParts(
        trial, title, analyses, course, load, line, Optional.of(newValue), remarks);
  }

  TrialParts withRemark(String text) {
    return new TrialParts(trial, title, analyses, course, load, line, value, more(remarks, text));
  }

  private static <T> List<T> more(List<T> list, T one) {
    var longer = new ArrayList<>(list);
    longer.add(Objects.requireNonNull(one));
    return longer;
  }

  /** The analysis on the front sheet. */
  Optional<AnalysedTrial> first() {
    return analyses.stream().findFirst();
  }

  String contents() {
    var words = new ArrayList<String>(List.of("design", "findings", "corrections"));
    analyses.forEach(one -> words.add("analysis of " + one.subject().title()));
    course.ifPresent(one -> words.add("efficacy"));
    load.ifPresent(one -> words.add("pest load"));
    line.ifPresent(one -> words.add("yield on load"));
    value.ifPresent(one -> words.add("value"));
    return String.join(", ", words);
  }
}
