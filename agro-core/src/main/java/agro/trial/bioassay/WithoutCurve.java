package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.List;
import java.util.Objects;

/**
 * Data without a rising dose-response curve, and what they say all the same.
 *
 * @param data the assay
 * @param reason why there is no curve
 * @param found what was found, as a sentence without a full stop
 * @param stillKnown what can be said without a curve, as a sentence without a full stop
 * @param medianDose where the dose that half of the animals respond to lies, if response rises with
 *     dose
 */
public record WithoutCurve(
    BioassayData data, NoCurveReason reason, String found, String stillKnown, DoseLimits medianDose)
    implements Presentable {

  /** Refuses nulls. */
  public WithoutCurve {
    Objects.requireNonNull(data, "data");
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(found, "found");
    Objects.requireNonNull(stillKnown, "stillKnown");
    Objects.requireNonNull(medianDose, "medianDose");
  }

  /**
   * The refusal of a fit.
   *
   * @return a problem whose message holds what is still known
   */
  public InputProblem problem() {
    return InputProblem.of((data.title().isEmpty() ? "" : data.title() + ": ") + found)
        .expected(reason.expected())
        .because(reason.why() + ". Without a curve: " + stillKnown)
        .mend(reason.cure());
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled(
            "No dose-response curve" + (data.title().isEmpty() ? "" : ": " + data.title()))
        .fact("Found", found)
        .fact("Why there is no curve", reason.why())
        .fact("What can be said", stillKnown)
        .fact("To get a curve", reason.cure())
        .fact("End point", data.endPoint().words())
        .table(PointTable.of(data, 0.95))
        .cautions(Caution.all())
        .sources(List.of(BioassaySources.CLOPPER_PEARSON_1934))
        .build();
  }

  /** What all or none of the animals at an outermost dose say about the dose for one half. */
  static String outermost(
      BioassayData data, double dose, ShareCount count, double confidence, boolean all) {
    var limits = count.limits(confidence);
    double bound = all ? limits.low() : limits.high();
    boolean refuted = all ? bound > 0.5 : bound < 0.5;
    return "at the "
        + (all ? "lowest" : "highest")
        + " dose, "
        + data.axis().print(dose)
        + ", "
        + count
        + " responded, exact limits "
        + Numbers.fixed(100 * limits.low(), 1)
        + " to "
        + Numbers.fixed(100 * limits.high(), 1)
        + " %; "
        + (refuted
            ? "the dose for one half lies " + (all ? "below" : "above") + " it"
            : "with so few animals a share of one half at this dose is not refuted");
  }
}
