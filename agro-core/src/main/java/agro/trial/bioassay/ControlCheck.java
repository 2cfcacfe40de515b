package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;
import java.util.Optional;

/** Whether the controls allow an assay to be used. */
final class ControlCheck {

  private static final double TOLD = 0.05;

  private ControlCheck() {}

  static void require(DoseResponse choices, BioassayData data) {
    int responded = 0;
    int exposed = 0;
    for (var group : data.groups()) {
      if (group.isControl()) {
        responded += group.responded();
        exposed += group.exposed();
      }
    }
    if (responded > choices.controlCeiling() * exposed || (exposed > 0 && responded == exposed)) {
      throw refusal(choices, data, new ShareCount(responded, exposed));
    }
  }

  private static InputProblem refusal(DoseResponse choices, BioassayData data, ShareCount count) {
    var ceiling = Numbers.plain(100 * choices.controlCeiling());
    var read =
        (data.title().isEmpty() ? "" : data.title() + ": ") + count + " of the controls responded";
    if (count.responded() == count.exposed()) {
      return InputProblem.of(read)
          .expected("at most " + ceiling + " %")
          .because("where all animals die without the dose, the dose cannot show an effect")
          .mend("repeat the assay with healthy animals");
    }
    return InputProblem.of(read)
        .expected("at most " + ceiling + " % (a ceiling of 20 % is common practice, no source)")
        .because(
            "animals that die without the dose are weak, dirty or badly kept, and such animals also"
                + " respond otherwise to the dose; no correction mends that")
        .mend(
            "repeat the assay; if the control belongs to the species, state a higher ceiling with"
                + " withControlCeiling");
  }

  /** What the reader should know about controls that are good enough. */
  static Optional<String> told(BioassayData data) {
    var count = data.controlCount();
    if (count.isEmpty()) {
      return Optional.of(
          "There was no control: whether animals respond without the dose is not known.");
    }
    return count.get().share() > TOLD
        ? Optional.of(
            "Of the controls, " + count.get() + " responded, more than 5 %: look at the rearing.")
        : Optional.empty();
  }
}
