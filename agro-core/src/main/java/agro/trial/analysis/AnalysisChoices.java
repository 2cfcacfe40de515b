package agro.trial.analysis;

import agro.stats.linear.Contrast;
import agro.stats.linear.SumsOfSquares;
import agro.stats.multiple.ComparisonMethod;
import agro.stats.multiple.LetterOrder;
import agro.trial.TrialDesign;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The choices of an analysis; empty ones are made when the data are known. */
record AnalysisChoices(
    Optional<LocalDate> date,
    Optional<String> environment,
    Optional<TrialDesign> design,
    Optional<AnalysisRoute> route,
    Transformation transformation,
    SumsOfSquares squares,
    Optional<ComparisonMethod> method,
    Optional<String> control,
    double level,
    LetterOrder letters,
    List<Contrast> contrasts) {

  private static final double USUAL_LEVEL = 0.05;

  static AnalysisChoices usual() {
    return new AnalysisChoices(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Transformation.none(),
        SumsOfSquares.HIERARCHICAL,
        Optional.empty(),
        Optional.empty(),
        USUAL_LEVEL,
        LetterOrder.LARGEST_FIRST,
        List.of());
  }

  AnalysisChoices withDate(Optional<LocalDate> other) {
    return new AnalysisChoices(
        other,
        environment,
        design,
        route,
        transformation,
        squares,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withEnvironment(Optional<String> other) {
    return new AnalysisChoices(
        date,
        other,
        design,
        route,
        transformation,
        squares,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withDesign(Optional<TrialDesign> other) {
    return new AnalysisChoices(
        date,
        environment,
        other,
        route,
        transformation,
        squares,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withRoute(Optional<AnalysisRoute> other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        other,
        transformation,
        squares,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withTransformation(Transformation other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        other,
        squares,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withSquares(SumsOfSquares other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        other,
        method,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withMethod(Optional<ComparisonMethod> other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        squares,
        other,
        control,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withControl(Optional<String> other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        squares,
        method,
        other,
        level,
        letters,
        contrasts);
  }

  AnalysisChoices withLevel(double other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        squares,
        method,
        control,
        other,
        letters,
        contrasts);
  }

  AnalysisChoices withLetters(LetterOrder other) {
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        squares,
        method,
        control,
        level,
        other,
        contrasts);
  }

  AnalysisChoices withContrast(Contrast contrast) {
    var more = new ArrayList<>(contrasts);
    more.add(contrast);
    return new AnalysisChoices(
        date,
        environment,
        design,
        route,
        transformation,
        squares,
        method,
        control,
        level,
        letters,
        List.copyOf(more));
  }
}
