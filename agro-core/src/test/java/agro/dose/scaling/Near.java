package agro.dose.scaling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.dose.ProductAmount;
import agro.units.Quantity;
import agro.working.Caution;

/** Assertions with a tolerance as a share of the value. */
final class Near {

  private Near() {}

  static void number(String what, double actual, double expected, double tolerance) {
    assertThat(actual).as(what).isCloseTo(expected, within(Math.abs(expected) * tolerance + 1e-12));
  }

  static <Q extends Quantity<Q>> void quantity(
      String what, Q actual, Q expected, double tolerance) {
    number(what, actual.inBaseUnit(), expected.inBaseUnit(), tolerance);
  }

  static void amount(String what, ProductAmount actual, String expected, double tolerance) {
    var wanted = ProductAmount.parse(expected);
    assertThat(actual.isLike(wanted)).as(what + ": " + actual + " like " + wanted).isTrue();
    number(what + ", low", actual.lowNumber(), wanted.lowNumber(), tolerance);
    number(what + ", high", actual.highNumber(), wanted.highNumber(), tolerance);
  }

  /** Every result shows steps with their formulas in all forms, and all cautions. */
  static void presented(ScalingResult result) {
    var working = result.working();
    assertThat(working.steps()).isNotEmpty();
    assertThat(working.cautions()).isEqualTo(Caution.all());
    assertThat(working.references()).isNotEmpty();
    var text = result.presentation().toText();
    assertThat(text).contains(working.title(), Caution.LABEL_FIRST.line());
    result.findings().forEach(f -> assertThat(result.presentation().toHtml()).contains(f.rule()));
    // LaTeX without further packages prints letters of western Europe and what is replaced.
    assertThat(working.toLatex()).matches("(?s)[\\x00-\\x{17f}]+");
    assertThat(result.presentation().toMarkdown()).contains(working.title());
    assertThat(text).doesNotContain("NaN").doesNotContain("Optional").doesNotContain("not known");
  }
}
