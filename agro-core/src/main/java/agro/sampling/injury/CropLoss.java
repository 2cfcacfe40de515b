package agro.sampling.injury;

import agro.report.InputProblem;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.Numbers;
import agro.working.Working;
import java.util.Currency;

/** What one pest for each sampling unit costs the crop when nothing is done. */
public sealed interface CropLoss {

  /**
   * Money lost for each pest, the product of the terms V, I and D.
   *
   * @return money per area and pest, above zero
   */
  MoneyPerArea perPest();

  /**
   * The terms of the loss in words and numbers.
   *
   * @return one line
   */
  String words();

  /**
   * Adds the steps that lead to the money lost for each pest.
   *
   * @param working steps so far
   * @return the longer working
   */
  Working explain(Working working);

  /**
   * Currency of the value.
   *
   * @return the currency
   */
  default Currency currency() {
    return perPest().currency();
  }

  /**
   * A straight loss of produce for each pest.
   *
   * @param lossPerPest produce lost per area for each pest, the slope b, above zero
   * @param price value of the produce, above zero
   * @return the loss
   * @throws InputProblem when a term is not above zero
   */
  static CropLoss produce(MassPerArea lossPerPest, MoneyPerMass price) {
    return new OfProduce(1, lossPerPest, price);
  }

  /**
   * A straight loss of a share of the crop for each pest.
   *
   * @param sharePerPest share of the crop lost for each pest, above 0
   * @param cropValue value of the whole crop, above zero
   * @return the loss
   * @throws InputProblem when a term is not above zero
   */
  static CropLoss share(double sharePerPest, MoneyPerArea cropValue) {
    return new OfCropValue(1, sharePerPest, cropValue);
  }

  /**
   * Loss as a mass of produce.
   *
   * @param injuryPerPest I, injury by one pest in the unit of injury that the next term uses, above
   *     0; 1 when the loss is stated for a pest
   * @param lossPerInjury D, produce lost per area for each unit of injury, above zero
   * @param price V, value of the produce, above zero
   */
  record OfProduce(double injuryPerPest, MassPerArea lossPerInjury, MoneyPerMass price)
      implements CropLoss {

    /** Checks that all terms are above zero. */
    public OfProduce {
      requirePositive(injuryPerPest, "injury per pest I");
      requirePositive(lossPerInjury.kilogramsPerHectare(), "loss per injury D in kg/ha");
      requirePositive(price.perTonne(), "value of produce V per tonne");
    }

    /**
     * Produce lost for each pest, I·D.
     *
     * @return mass per area
     */
    public MassPerArea produceLostPerPest() {
      return lossPerInjury.times(injuryPerPest);
    }

    @Override
    public MoneyPerArea perPest() {
      return price.times(produceLostPerPest());
    }

    @Override
    public String words() {
      return tonnes(produceLostPerPest()) + " for each pest, at " + price;
    }

    @Override
    public Working explain(Working working) {
      var longer = working;
      if (injuryPerPest != 1) {
        longer =
            longer.step(
                "produce lost for each pest",
                "b = I · D",
                Numbers.plain(injuryPerPest) + " · " + tonnes(lossPerInjury),
                tonnes(produceLostPerPest()));
      }
      return longer.step(
          "money lost for each pest",
          "V · b",
          price + " · " + tonnes(produceLostPerPest()),
          perPest().toString());
    }

    private static String tonnes(MassPerArea mass) {
      return Numbers.significant(mass.in(MassPerAreaUnit.TONNE_PER_HECTARE), 6) + " t/ha";
    }
  }

  /**
   * Loss as a share of the value of the crop: yield, quality or whole pieces.
   *
   * @param injuryPerPest I, injury by one pest, above 0; 1 when the loss is stated for a pest
   * @param shareLostPerInjury D, share of the crop lost for each unit of injury, above 0
   * @param cropValue V, value of the whole crop, above zero
   */
  record OfCropValue(double injuryPerPest, double shareLostPerInjury, MoneyPerArea cropValue)
      implements CropLoss {

    /** Checks that all terms are above zero, and that one pest does not eat more than the crop. */
    public OfCropValue {
      requirePositive(injuryPerPest, "injury per pest I");
      requirePositive(shareLostPerInjury, "share lost per injury D");
      requirePositive(cropValue.perHectare(), "value of the crop V per hectare");
      if (injuryPerPest * shareLostPerInjury > 1) {
        throw InputProblem.of(
                "a loss of " + injuryPerPest * shareLostPerInjury + " of the crop for each pest")
            .expected("a share, such as 0.04 for 4 %")
            .because("one pest for each unit cannot take more than the whole crop")
            .mend("divide per cent by 100");
      }
    }

    /**
     * Share of the crop lost for each pest, I·D.
     *
     * @return the share
     */
    public double shareLostPerPest() {
      return injuryPerPest * shareLostPerInjury;
    }

    @Override
    public MoneyPerArea perPest() {
      return cropValue.times(shareLostPerPest());
    }

    @Override
    public String words() {
      return Numbers.plain(100 * shareLostPerPest()) + " % of a crop worth " + cropValue;
    }

    @Override
    public Working explain(Working working) {
      return working.step(
          "money lost for each pest",
          injuryPerPest == 1 ? "V · D" : "V · I · D",
          cropValue
              + (injuryPerPest == 1 ? "" : " · " + Numbers.plain(injuryPerPest))
              + " · "
              + Numbers.plain(shareLostPerInjury),
          perPest().toString());
    }
  }

  private static void requirePositive(double value, String what) {
    if (!(value > 0 && Double.isFinite(value))) {
      throw InputProblem.of("a " + what + " of " + value)
          .expected("a finite number above 0")
          .because("pests that cost nothing have no injury level")
          .mend("state what the pest costs the crop, from a trial or a publication");
    }
  }
}
