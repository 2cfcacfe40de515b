package agro.trial.bioassay;

/** What the straight line is drawn on. */
public enum DoseScale {
  /** Common logarithm of the dose. */
  LOG10("log10 dose") {
    @Override
    double of(double dose) {
      return Math.log10(dose);
    }

    @Override
    double dose(double x) {
      return Math.pow(10, x);
    }
  },
  /** Natural logarithm of the dose. */
  LN("ln dose") {
    @Override
    double of(double dose) {
      return Math.log(dose);
    }

    @Override
    double dose(double x) {
      return Math.exp(x);
    }
  },
  /** Binary logarithm of the dose: one step for each doubling. */
  LOG2("log2 dose") {
    @Override
    double of(double dose) {
      return Math.log(dose) / LN_TWO;
    }

    @Override
    double dose(double x) {
      return Math.pow(2, x);
    }
  },
  /** The dose itself. A dose of 0 is a dose like any other unless natural mortality is modelled. */
  PLAIN("dose") {
    @Override
    double of(double dose) {
      return dose;
    }

    @Override
    double dose(double x) {
      return x;
    }
  };

  private static final double LN_TWO = Math.log(2);

  private final String words;

  DoseScale(String words) {
    this.words = words;
  }

  /** Place of a dose on the scale. */
  abstract double of(double dose);

  /** Dose at a place on the scale. */
  abstract double dose(double x);

  /**
   * Whether the scale is a logarithm, so that ratios of doses have a meaning.
   *
   * @return false for the plain dose
   */
  public boolean isLogarithm() {
    return this != PLAIN;
  }

  /**
   * The scale in words.
   *
   * @return for example {@code "log10 dose"}
   */
  public String words() {
    return words;
  }
}
