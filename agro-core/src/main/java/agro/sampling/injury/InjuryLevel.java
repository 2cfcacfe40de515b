package agro.sampling.injury;

import agro.report.InputProblem;
import agro.source.Reference;
import agro.source.SamplingBibliography;
import agro.units.MassPerArea;
import agro.units.MassPerAreaUnit;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The economic injury level: the pests at which the damage that a treatment prevents is worth what
 * the treatment costs, EIL = C / (V · I · D · K). With a cost to the environment, EIL = (C + EC) /
 * (V · I · D · K).
 *
 * @param cost C, cost of the treatment and of bringing it out
 * @param environmentalCost EC, cost to the environment that is to be counted; zero when none is
 * @param loss V, I and D: what one pest costs when nothing is done
 * @param sharePrevented K, share of the loss that the treatment prevents, above 0 and at most 1
 * @param measure what the level is stated in
 */
public record InjuryLevel(
    MoneyPerArea cost,
    MoneyPerArea environmentalCost,
    CropLoss loss,
    double sharePrevented,
    PestMeasure measure)
    implements Presentable {

  /**
   * Checks share and currencies.
   *
   * @throws InputProblem when the share is not above 0 and at most 1, or currencies differ
   */
  public InjuryLevel {
    Objects.requireNonNull(measure, "measure");
    CurrencyCodes.requireSame(cost.currency(), loss.currency(), "cost and value");
    CurrencyCodes.requireSame(
        cost.currency(), environmentalCost.currency(), "cost and environmental cost");
    if (!(sharePrevented > 0 && sharePrevented <= 1)) {
      throw InputProblem.of("a prevented share of the loss of " + sharePrevented)
          .expected("a share above 0 and at most 1")
          .because("a treatment that prevents nothing never pays, at any number of pests")
          .mend("state the share of the loss that the treatment prevents, such as 0.85");
    }
  }

  /**
   * The injury level of a treatment.
   *
   * @param cost cost of the treatment and of bringing it out
   * @param loss what one pest costs when nothing is done
   * @param sharePrevented share of the loss that the treatment prevents, above 0 and at most 1
   * @param measure what the level is stated in
   * @return the level
   * @throws InputProblem when the share is out of range, or currencies differ
   */
  public static InjuryLevel of(
      MoneyPerArea cost, CropLoss loss, double sharePrevented, PestMeasure measure) {
    return new InjuryLevel(
        cost, new MoneyPerArea(0, cost.currency()), loss, sharePrevented, measure);
  }

  /**
   * Counts a cost to the environment on top of the cost of the treatment.
   *
   * @param money EC
   * @return a new level
   * @throws InputProblem when the currency differs
   */
  public InjuryLevel withEnvironmentalCost(MoneyPerArea money) {
    return new InjuryLevel(cost, money, loss, sharePrevented, measure);
  }

  /**
   * Cost of the treatment with the environmental cost.
   *
   * @return C + EC
   */
  public MoneyPerArea fullCost() {
    return cost.plus(environmentalCost);
  }

  /**
   * The injury level.
   *
   * @return pests or pest-days for each sampling unit
   */
  public double level() {
    return fullCost().perHectare() / (loss.perPest().perHectare() * sharePrevented);
  }

  /**
   * Gain threshold of a loss of produce: the produce that pays the treatment, C / V.
   *
   * @return mass of produce per area; nothing when the loss is a share of the crop
   */
  public Optional<MassPerArea> gainThreshold() {
    return loss instanceof CropLoss.OfProduce produce
        ? Optional.of(
            MassPerArea.of(
                fullCost().perHectare() / produce.price().perTonne(),
                MassPerAreaUnit.TONNE_PER_HECTARE))
        : Optional.empty();
  }

  /**
   * Gain threshold of a loss of a share of the crop: the share that pays the treatment.
   *
   * @return share of the value of the crop; nothing when the loss is one of produce
   */
  public OptionalDouble gainThresholdShare() {
    return loss instanceof CropLoss.OfCropValue share
        ? OptionalDouble.of(fullCost().perHectare() / share.cropValue().perHectare())
        : OptionalDouble.empty();
  }

  /**
   * What treating gains, after its cost.
   *
   * @param pests pests or pest-days for each sampling unit, 0 or more
   * @return money for each hectare, below zero when treating loses
   * @throws InputProblem when the number of pests is below zero
   */
  public double gainPerHectare(double pests) {
    if (!(pests >= 0)) {
      throw InputProblem.of(pests + " " + measure.words())
          .expected("0 or more")
          .because("there are never fewer than no pests")
          .mend("correct the density");
    }
    return loss.perPest().perHectare() * pests * sharePrevented - fullCost().perHectare();
  }

  /**
   * Whether the level lies beyond what the crop can lose, so that treating never pays.
   *
   * @return true when the loss is a share of the crop that reaches 1 below the level
   */
  public boolean isBeyondTheCrop() {
    return loss instanceof CropLoss.OfCropValue share && level() * share.shareLostPerPest() > 1;
  }

  /**
   * The steps, as on a blackboard.
   *
   * @return money lost for each pest, prevented share, level, gain threshold
   */
  public Working working() {
    boolean environment = environmentalCost.perHectare() > 0;
    var working = loss.explain(Working.of("Economic injury level"));
    if (environment) {
      working =
          working.step(
              "cost with the environmental cost",
              "C + EC",
              cost + " + " + environmentalCost,
              fullCost().toString());
    }
    working =
        working.step(
            "injury level",
            environment ? "EIL = (C + EC) / (V · I · D · K)" : "EIL = C / (V · I · D · K)",
            fullCost() + " / (" + loss.perPest() + " · " + Numbers.plain(sharePrevented) + ")",
            Numbers.significant(level(), 6) + " " + measure.words(),
            sources().toArray(Reference[]::new));
    return gainStep(working);
  }

  private Working gainStep(Working working) {
    var mass = gainThreshold();
    if (loss instanceof CropLoss.OfProduce produce && mass.isPresent()) {
      return working.step(
          "gain threshold, the produce that pays the treatment",
          "GT = C / V",
          fullCost() + " / " + produce.price(),
          Numbers.significant(mass.get().in(MassPerAreaUnit.TONNE_PER_HECTARE), 4) + " t/ha",
          SamplingBibliography.STONE_PEDIGO_1972);
    }
    return working.step(
        "gain threshold, the share of the crop that pays the treatment",
        "GT = C / V",
        "",
        Numbers.significant(100 * gainThresholdShare().orElseThrow(), 4) + " % of the crop",
        SamplingBibliography.STONE_PEDIGO_1972);
  }

  private List<Reference> sources() {
    return environmentalCost.perHectare() > 0
        ? List.of(SamplingBibliography.PEDIGO_1986, SamplingBibliography.HIGLEY_WINTERSTEEN_1992)
        : List.of(SamplingBibliography.PEDIGO_1986);
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Economic injury level")
            .fact("Injury level", Numbers.significant(level(), 4) + " " + measure.words())
            .fact("Cost of treating", fullCost().toString())
            .fact("Loss", loss.words())
            .fact("Share of the loss prevented", Numbers.plain(sharePrevented));
    if (isBeyondTheCrop()) {
      page.paragraph(
          "The level lies beyond the loss of the whole crop: this treatment costs more than it can"
              + " ever save.");
    }
    return page.paragraph(
            "The level holds while loss goes straight with pests. Below it treating costs more than"
                + " it saves; the threshold at which to act lies below it by the time that a"
                + " treatment needs.")
        .working(working())
        .cautions(Caution.all())
        .build();
  }
}
