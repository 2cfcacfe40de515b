package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.Quantity;

/** What measuring refuses. */
final class VesselRefusals {

  private VesselRefusals() {}

  static <Q extends Quantity<Q>> void requireMarks(String name, Q capacity, Q mark) {
    if (!(mark.inBaseUnit() > 0) || mark.compareTo(capacity) > 0) {
      throw InputProblem.of("a " + name + " of " + capacity + " with marks every " + mark)
          .expected("marks above zero and not further apart than the capacity")
          .because("the error of a measured amount comes from the marks")
          .mend("read the distance of two marks, or the last digit that a scale shows");
    }
  }

  static InputProblem powderByVolume(ProductAmount amount, MeasuringVessel vessel) {
    return InputProblem.of(amount + " of a solid product in a " + vessel.print())
        .expected("a scale, or the bulk density of this powder beside the vessel")
        .because(
            "powders weigh 0.3 to 1 g per mL, so that millilitres taken for grams give up to two"
                + " thirds too little")
        .mend("weigh it, or weigh one level vessel of it once and state the bulk density");
  }

  static InputProblem liquidOnScale(ProductAmount amount, MeasuringVessel vessel) {
    return InputProblem.of(amount + " of a liquid product on a " + vessel.print())
        .expected("a vessel for volumes")
        .because("a volume becomes a mass only through a density, which is never guessed")
        .mend("measure liquids in a syringe, cylinder or cup");
  }

  static InputProblem living(ProductAmount amount) {
    return InputProblem.of(amount + " is to be measured out")
        .expected("a volume or a mass of the product")
        .because("living units are counted in a laboratory and not at the tank")
        .mend("turn it into product with the strength on the label and its tested viability");
  }

  static InputProblem otherSachet(ProductAmount amount, MeasuringVessel vessel) {
    return InputProblem.of(amount + " from a " + vessel.print())
        .expected("sachets that are measured as the product is dosed")
        .because("a mass becomes a volume only through a density, which is never guessed")
        .mend("copy the content of the sachet in the measure of the rate");
  }

  static InputProblem tooCoarse(VesselReading reading, double limit) {
    return InputProblem.of(
            reading.target()
                + " in a "
                + reading.vessel().print()
                + " is wrong by up to "
                + percent(reading.error()))
        .expected("an error of at most " + percent(limit))
        .because("the error goes into the dose as it is")
        .mend(
            "take a vessel with finer marks, or measure for several loads at once and share it out"
                + " as a stock solution");
  }

  static InputProblem limit(double limit) {
    return InputProblem.of("a largest error of measuring of " + limit)
        .expected("a share above 0 and at most 0.5, such as 0.05 for 5 %")
        .because("without a limit a bucket would be offered for a millilitre")
        .mend("write per cent as a share");
  }

  static String percent(double share) {
    return Numbers.significant(100 * share, 3) + " %";
  }
}
