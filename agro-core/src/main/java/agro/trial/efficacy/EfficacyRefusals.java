package agro.trial.efficacy;

import agro.report.InputProblem;

/** The cases in which an efficacy has no value, each in a sentence. */
final class EfficacyRefusals {

  private EfficacyRefusals() {}

  static InputProblem cleanControl() {
    return InputProblem.of("no live pest on the control after the treatment")
        .expected("at least one")
        .because("efficacy is what the control still shows and the treated does not")
        .mend("take the sums over blocks or another date, or print the counts themselves");
  }

  static InputProblem noneBefore(String which) {
    return InputProblem.of("no live pest on the " + which + " before the treatment")
        .expected("at least one")
        .because("the change since then is a share of the number before")
        .mend("take the sums over blocks, or Abbott's formula, which needs no count before");
  }

  static InputProblem allDead() {
    return InputProblem.of("a control mortality of 100 %")
        .expected("survivors on the control")
        .because("where all die untreated, nothing can be told of the treatment")
        .mend("repeat the test; look for what killed the control");
  }

  static InputProblem wrongMeasure(EfficacyFormula formula, String given) {
    return InputProblem.of(given + " for the formula of " + formula.title())
        .expected(formula.measure().words())
        .because("the formula is " + formula.form())
        .mend("take a formula that fits; EfficacyAdvice names it with its reason");
  }

  static InputProblem lacksBefore(EfficacyFormula formula) {
    return InputProblem.of("no counts before the treatment for " + formula.title())
        .expected("counts before and after, on treated and control")
        .because("the formula is " + formula.form())
        .mend("give the counts before, or take Abbott's formula if the pest stood evenly");
  }
}
