package agro.trial.bioassay;

/** A fit, or the reason why there is none. */
record Attempt(DoseResponseFit fit, WithoutCurve none) {

  static Attempt of(DoseResponseFit fit) {
    return new Attempt(fit, null);
  }

  static Attempt of(WithoutCurve none) {
    return new Attempt(null, none);
  }

  DoseResponseFit orThrow() {
    if (none != null) {
      throw none.problem();
    }
    return fit;
  }
}
