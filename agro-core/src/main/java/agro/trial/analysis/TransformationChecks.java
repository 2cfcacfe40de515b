package agro.trial.analysis;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.OptionalInt;

/** What transformations refuse. */
final class TransformationChecks {

  private TransformationChecks() {}

  static void constant(double added) {
    if (!(added >= 0) || Double.isInfinite(added)) {
      throw InputProblem.of("an added constant of " + added)
          .expected("zero or a positive number")
          .because("the constant is added to every value before it is transformed")
          .mend("state a constant such as 0.5 or 1, or none");
    }
  }

  static void refuse(Transformation transformation, double value, OptionalInt outOf) {
    var reason = transformation.refusal(value, outOf);
    if (reason.isPresent()) {
      throw InputProblem.of("the value " + Numbers.plain(value))
          .expected("a value with a " + transformation.words())
          .because(reason.get())
          .mend(transformation.cure());
    }
  }
}
