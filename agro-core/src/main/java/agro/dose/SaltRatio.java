package agro.dose;

import agro.report.InputProblem;
import agro.units.MassPerVolume;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Working;

/**
 * How much acid a salt or ester holds, from the two strengths that a label states.
 *
 * @param acidPerSalt mass of acid in one mass of salt, above 0 and below 1
 */
public record SaltRatio(double acidPerSalt) {

  /** Refuses shares that no salt has. */
  public SaltRatio {
    if (!(acidPerSalt > 0 && acidPerSalt < 1)) {
      throw InputProblem.of("a salt that holds " + acidPerSalt + " of its mass as acid")
          .expected("a share above 0 and below 1, for example 0.75")
          .because("a salt weighs more than the acid in it")
          .mend("divide the acid equivalent of the label by the salt, not the other way round");
    }
  }

  /**
   * The ratio of the two strengths of one label.
   *
   * @param acid strength as acid equivalent, for example 360 g/L
   * @param salt strength as salt, for example 480 g/L
   * @return the ratio
   * @throws InputProblem if the acid is not the smaller one
   */
  public static SaltRatio of(MassPerVolume acid, MassPerVolume salt) {
    return new SaltRatio(acid.ratioTo(salt));
  }

  /**
   * An amount on another basis.
   *
   * @param amount acid equivalent or salt
   * @param basis what is wanted: acid equivalent or salt
   * @return the amount on that basis
   * @throws InputProblem if the label says only "active ingredient", which may be either
   */
  public ActiveAmount convert(ActiveAmount amount, ActiveBasis basis) {
    requireKnown(amount.basis());
    requireKnown(basis);
    if (amount.basis() == basis) {
      return amount;
    }
    double factor = basis == ActiveBasis.SALT ? 1 / acidPerSalt : acidPerSalt;
    return amount.times(factor).as(basis);
  }

  /**
   * The conversion of an amount with its steps.
   *
   * @param amount acid equivalent or salt
   * @param basis what is wanted: acid equivalent or salt
   * @return the steps, with cautions
   * @throws InputProblem if the label says only "active ingredient", which may be either
   */
  public Working working(ActiveAmount amount, ActiveBasis basis) {
    boolean toSalt = basis == ActiveBasis.SALT;
    return Working.of(amount + " as " + basis.words())
        .step(
            RateConversion.capital(basis.words()),
            toSalt ? "salt = acid ÷ acid in salt" : "acid = salt × acid in salt",
            amount + (toSalt ? " ÷ " : " × ") + Numbers.significant(acidPerSalt, 5),
            convert(amount, basis).toString(),
            DoseSources.ACID_IN_SALT)
        .withCautions(Caution.all());
  }

  private static void requireKnown(ActiveBasis basis) {
    if (basis == ActiveBasis.ACTIVE_INGREDIENT) {
      throw InputProblem.of("\"active ingredient\" was converted between acid and salt")
          .expected("acid equivalent or salt")
          .because("labels call either of the two the active ingredient")
          .mend("look up on the label which one is weighed, and state it with as(...)");
    }
  }

  @Override
  public String toString() {
    return Numbers.plain(acidPerSalt) + " acid in salt";
  }
}
