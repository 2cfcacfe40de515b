package agro.dose.sprayer;

import agro.dose.DoseSources;
import agro.dose.ProductPerArea;
import agro.dose.SprayVolume;
import agro.units.Numbers;
import agro.working.Caution;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.Working;

/**
 * The dose that comes out when the tank was mixed for another spray volume than the sprayer puts
 * out.
 *
 * @param dose dose per area of field that comes out; a range stays a range
 * @param timesIntended dose that comes out ÷ intended dose
 * @param working the steps, with cautions
 */
public record MismatchedDose(ProductPerArea dose, double timesIntended, Working working)
    implements Presentable {

  /** Differences below this share are rounding. */
  private static final double ROUNDING = 1e-9;

  static MismatchedDose of(
      CalibratedVolume sprayer, ProductPerArea intended, SprayVolume mixedFor) {
    double ratio = sprayer.perFieldArea().perArea().ratioTo(mixedFor.perArea());
    var dose = intended.withAmount(intended.amount().times(ratio));
    var units = sprayer.units();
    var working =
        Working.of("Dose of a tank that was mixed for another spray volume")
            .step(
                "dose that comes out",
                "intended dose × volume of the sprayer / volume mixed for",
                intended
                    + " × "
                    + units.volume(sprayer.perFieldArea().perArea())
                    + " / "
                    + units.volume(mixedFor.perArea()),
                dose + ", " + departure(ratio),
                DoseSources.DOSE_AND_VOLUME)
            .withCautions(Caution.all());
    return new MismatchedDose(dose, ratio, working);
  }

  private static String departure(double ratio) {
    if (Math.abs(ratio - 1) < ROUNDING) {
      return "as intended";
    }
    return Numbers.significant(100 * Math.abs(ratio - 1), 3)
        + (ratio > 1 ? " % above what was intended" : " % below what was intended");
  }

  @Override
  public Presentation presentation() {
    return working.presentation();
  }
}
