package agro.course.topic.injury;

import agro.course.CourseWords;
import agro.course.ExerciseDraw;
import agro.course.Givens;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.CropLoss;
import agro.sampling.injury.InjuryLevel;
import agro.sampling.injury.MoneyPerMass;
import agro.sampling.injury.PestMeasure;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;

/**
 * Cost of a treatment, price of the produce, loss for one pest on each plant, and the share of the
 * loss that the treatment prevents.
 *
 * @param money units of the class
 * @param cost cost for a unit of land
 * @param price price of a bulk unit of produce
 * @param loss produce lost for each pest per plant
 * @param control share of the loss that is prevented, in per cent
 */
record TreatmentTerms(
    CourseMoney money, double cost, double price, MassPerArea loss, double control) {

  static final double PER_CENT = 100;
  private static final double LOWEST_LEVEL = 0.4;
  private static final double HIGHEST_LEVEL = 9;

  /** Terms whose level is one that plants can carry and people can count. */
  static TreatmentTerms draw(ExerciseDraw draw, CourseMoney money) {
    while (true) {
      var terms =
          new TreatmentTerms(
              money,
              money.drawPerLand(draw, 40, 150),
              money.drawPrice(draw, 150, 700),
              money.drawMass(draw, 30, 300),
              draw.step(60, 95, 5));
      double level = terms.level().level();
      if (level > LOWEST_LEVEL && level < HIGHEST_LEVEL) {
        return terms;
      }
    }
  }

  Givens givens() {
    return Givens.none()
        .withNumber("cost", cost)
        .withNumber("price", price)
        .withQuantity("loss", loss)
        .withNumber("control", control);
  }

  double share() {
    return control / PER_CENT;
  }

  /** Price of a unit of harvest, such as a kilogram. */
  double unitPrice() {
    return price / money.harvestInBulk();
  }

  /** Loss for a pest in units of harvest on a unit of land. */
  double lossNumber() {
    return loss.in(money.massPerLand());
  }

  CropLoss cropLoss() {
    return CropLoss.produce(loss, money.perBulk(price));
  }

  /** What the adviser computes. */
  InjuryLevel level() {
    return InjuryLevel.of(
        money.perLand(cost),
        cropLoss(),
        share(),
        PestMeasure.pestsPer(SamplingUnit.of(SamplingUnit.Kind.PLANT)));
  }

  /** The level from what one pest is taken to cost on a unit of land. */
  double level(double moneyPerPest) {
    var perTonne = money.perLand(moneyPerPest).perHectare();
    var one =
        CropLoss.produce(
            MassPerArea.of(1, MassPerAreaUnit.TONNE_PER_HECTARE),
            new MoneyPerMass(perTonne, money.perLand(cost).currency()));
    return InjuryLevel.of(money.perLand(cost), one, share(), level().measure()).level();
  }

  String story(CourseWords words, String pest, String crop) {
    return words.say(
        "terms.story",
        "pest",
        pest,
        "crop",
        crop,
        "cost",
        money.exactPerLand(cost, words),
        "price",
        money.givenPrice(price, words),
        "loss",
        money.exact(loss, words),
        "control",
        words.exact(control));
  }
}
