package agro.trial.bioassay;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * How animals that respond without the dose are allowed for.
 *
 * @param way the way
 * @param fixedShare the share that is taken as known, 0 for the other ways
 */
public record NaturalMortality(Way way, double fixedShare) {

  /** The ways of allowing for natural mortality. */
  public enum Way {
    /** No animal responds without the dose; controls are left out of the line. */
    NONE,
    /** Responses corrected with the share of the controls, which then counts as known. */
    ABBOTT,
    /** A parameter of the curve, estimated with the controls by maximum likelihood. */
    IN_MODEL,
    /** A share that is known from elsewhere. */
    FIXED,
    /** In the model when a control responded, none otherwise. */
    IF_CONTROLS_RESPONDED
  }

  /** Refuses shares that leave nothing to be killed. */
  public NaturalMortality {
    if (!(fixedShare >= 0 && fixedShare < 1)) {
      throw InputProblem.of("a natural mortality of " + fixedShare)
          .expected("a share from 0 to below 1")
          .because("where all animals die without the dose, the dose cannot show an effect")
          .mend("write 5 % as 0.05");
    }
  }

  /**
   * No natural mortality.
   *
   * @return the way
   */
  public static NaturalMortality none() {
    return new NaturalMortality(Way.NONE, 0);
  }

  /**
   * Abbott's correction before the fit. The error of the control's share does not enter the limits,
   * which come out too narrow; {@link #inModel} has not this fault.
   *
   * @return the way
   */
  public static NaturalMortality abbott() {
    return new NaturalMortality(Way.ABBOTT, 0);
  }

  /**
   * Natural mortality as a parameter of the curve.
   *
   * @return the way
   */
  public static NaturalMortality inModel() {
    return new NaturalMortality(Way.IN_MODEL, 0);
  }

  /**
   * A known share.
   *
   * @param share 0 to below 1
   * @return the way
   * @throws InputProblem when the share is out of range
   */
  public static NaturalMortality fixed(double share) {
    return new NaturalMortality(Way.FIXED, share);
  }

  /**
   * In the model when a control responded, none otherwise.
   *
   * @return the way
   */
  public static NaturalMortality ifControlsResponded() {
    return new NaturalMortality(Way.IF_CONTROLS_RESPONDED, 0);
  }

  /** The way that applies to data. */
  NaturalMortality settled(BioassayData data) {
    if (way != Way.IF_CONTROLS_RESPONDED) {
      return this;
    }
    for (var group : data.groups()) {
      if (group.isControl() && group.responded() > 0) {
        return inModel();
      }
    }
    return none();
  }

  /**
   * The way in words.
   *
   * @return a phrase for print
   */
  public String words() {
    return switch (way) {
      case NONE -> "none";
      case ABBOTT -> "Abbott's correction with the share of the controls";
      case IN_MODEL -> "estimated in the model, with the controls";
      case FIXED -> "taken as known, " + Numbers.plain(100 * fixedShare) + " %";
      case IF_CONTROLS_RESPONDED -> "in the model if a control responded";
    };
  }
}
