package agro.dose.sprayer;

import agro.dose.SprayVolume;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;

/**
 * The volume of water per area for which nozzles are chosen so that another liquid comes out as
 * wanted.
 *
 * @param waterEquivalent volume of water per area to look up
 * @param uncorrected volume of the liquid that comes out if the density is ignored
 * @param working the steps, with cautions
 */
public record DensityCorrection(
    SprayVolume waterEquivalent, SprayVolume uncorrected, Working working) implements Presentable {

  /**
   * The correction in the units of a reader.
   *
   * @param liquid the liquid
   * @param wanted volume of the liquid per area
   * @param units units of print
   * @return the correction
   */
  public static DensityCorrection of(LiquidDensity liquid, SprayVolume wanted, SprayUnits units) {
    var water = new SprayVolume(wanted.perArea().times(liquid.factor()));
    var uncorrected = new SprayVolume(wanted.perArea().dividedBy(liquid.factor()));
    double off = 100 * (1 / liquid.factor() - 1);
    var working =
        Working.of("Nozzles for a liquid that is not water")
            .step(
                "specific gravity",
                "SG = density / density of water",
                liquid.density() + " / " + LiquidDensity.WATER,
                Numbers.significant(liquid.specificGravity(), 4),
                SprayerSources.LIQUID_DENSITY)
            .step(
                "volume of water to choose nozzles for",
                "wanted volume × √SG",
                units.volume(wanted.perArea()) + " × " + Numbers.significant(liquid.factor(), 4),
                units.volume(water.perArea()),
                SprayerSources.LIQUID_DENSITY)
            .step(
                "without the correction",
                "wanted volume / √SG",
                units.volume(wanted.perArea()) + " / " + Numbers.significant(liquid.factor(), 4),
                units.volume(uncorrected.perArea())
                    + ", "
                    + Numbers.significant(Math.abs(off), 3)
                    + (off < 0 ? " % too little" : " % too much"))
            .withCautions(Caution.all());
    return new DensityCorrection(water, uncorrected, working);
  }

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
