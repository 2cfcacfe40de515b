package agro.dose.tank;

import static agro.dose.tank.MeasuringVessel.GraduatedKind.CUP;
import static agro.dose.tank.MeasuringVessel.GraduatedKind.CYLINDER;
import static agro.dose.tank.MeasuringVessel.GraduatedKind.SYRINGE;

import agro.dose.ProductAmount;
import agro.dose.tank.MeasuringVessel.Graduated;
import agro.dose.tank.MeasuringVessel.GraduatedKind;
import agro.dose.tank.MeasuringVessel.Scale;
import agro.units.Density;
import agro.units.Mass;
import agro.units.Volume;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The vessels and scales at hand, and the largest error of measuring that is accepted. Liquids are
 * measured by volume and solids by mass.
 *
 * @param vessels what is at hand
 * @param largestError share of the amount, above 0 and at most 0.5
 */
public record MeasuringKit(List<MeasuringVessel> vessels, double largestError) {

  /** The largest error that is accepted where nothing else is said. */
  public static final double USUAL_ERROR = 0.05;

  /** Nobody counts more fillings than this without losing one. */
  private static final long MOST_FILLINGS = 20;

  private static final Comparator<VesselReading> BEST =
      Comparator.comparingLong(VesselReading::fillings).thenComparingDouble(VesselReading::error);

  /** Copies the list and refuses a share that limits nothing. */
  public MeasuringKit {
    vessels = List.copyOf(vessels);
    if (!(largestError > 0 && largestError <= 0.5)) {
      throw VesselRefusals.limit(largestError);
    }
  }

  /**
   * A kit with the usual largest error of 5 %.
   *
   * @param vessels what is at hand
   * @return the kit
   */
  public static MeasuringKit of(MeasuringVessel... vessels) {
    return new MeasuringKit(List.of(vessels), USUAL_ERROR);
  }

  /**
   * Syringes of 1 to 60 mL, cylinders of 100 mL to 1 L, cups of 2 and 5 L, and three scales; sizes
   * and marks after common practice, without a source.
   *
   * @return the kit, with the usual largest error
   */
  public static MeasuringKit usual() {
    return of(
        millilitres(SYRINGE, 1, 0.01),
        millilitres(SYRINGE, 5, 0.2),
        millilitres(SYRINGE, 10, 0.5),
        millilitres(SYRINGE, 20, 1),
        millilitres(SYRINGE, 60, 1),
        millilitres(CYLINDER, 100, 1),
        millilitres(CYLINDER, 250, 2),
        millilitres(CYLINDER, 500, 5),
        millilitres(CYLINDER, 1000, 10),
        millilitres(CUP, 2000, 50),
        millilitres(CUP, 5000, 100),
        grams(200, 0.01),
        grams(2000, 1),
        grams(10_000, 10));
  }

  /**
   * The same kit with another largest error.
   *
   * @param share share of the amount, above 0 and at most 0.5
   * @return the kit
   */
  public MeasuringKit within(double share) {
    return new MeasuringKit(vessels, share);
  }

  /**
   * The vessel that suits an amount best: with the fewest fillings, then with the smallest error.
   *
   * @param amount a liquid or a solid
   * @return a vessel, or why none will do
   */
  public VesselSuggestion suggest(ProductAmount amount) {
    return suggest(amount, Optional.empty());
  }

  /**
   * The vessel that suits an amount best, where the bulk density of a powder may be known. A scale
   * is preferred even then.
   *
   * @param amount a liquid or a solid
   * @param bulkDensity measured mass per volume of the loose powder, or nothing
   * @return a vessel, or why none will do
   */
  public VesselSuggestion suggest(ProductAmount amount, Optional<Density> bulkDensity) {
    if (amount instanceof ProductAmount.Solid solid) {
      var weighed = best(amount, weighing(solid));
      return weighed instanceof VesselSuggestion.Suits || bulkDensity.isEmpty()
          ? weighed
          : best(
              amount,
              vessels.stream()
                  .filter(v -> !isOtherSachet(v, solid))
                  .map(v -> VesselArithmetic.powder(solid, v, bulkDensity.get())));
    }
    if (amount instanceof ProductAmount.Liquid liquid) {
      var readings =
          vessels.stream()
              .filter(v -> !(v instanceof Scale) && !isOtherSachet(v, liquid))
              .map(v -> VesselArithmetic.liquid(liquid, v));
      return best(amount, readings);
    }
    return new VesselSuggestion.NoneSuits(
        amount, "Living units are not measured out; turn them into product first.");
  }

  /**
   * An amount in a vessel of one's own choice.
   *
   * @param amount a liquid or a solid
   * @param vessel the vessel
   * @return how it is read off
   * @throws agro.report.InputProblem if the vessel is too coarse, if a solid is to be measured by
   *     volume without its bulk density, or a liquid to be weighed
   */
  public VesselReading measure(ProductAmount amount, MeasuringVessel vessel) {
    if (amount instanceof ProductAmount.Liquid liquid) {
      return accepted(VesselArithmetic.liquid(liquid, vessel));
    }
    if (amount instanceof ProductAmount.Solid solid) {
      return accepted(VesselArithmetic.solid(solid, vessel));
    }
    throw VesselRefusals.living(amount);
  }

  /**
   * A powder measured by volume with its bulk density.
   *
   * @param amount a solid
   * @param vessel a vessel for volumes
   * @param bulkDensity measured mass per volume of the loose powder
   * @return how it is read off
   * @throws agro.report.InputProblem if the vessel is too coarse
   */
  public VesselReading measurePowder(
      ProductAmount.Solid amount, MeasuringVessel vessel, Density bulkDensity) {
    Objects.requireNonNull(bulkDensity, "bulkDensity");
    return accepted(VesselArithmetic.powder(amount, vessel, bulkDensity));
  }

  private VesselReading accepted(VesselReading reading) {
    if (!(reading.error() <= largestError)) {
      throw VesselRefusals.tooCoarse(reading, largestError);
    }
    return reading;
  }

  private Stream<VesselReading> weighing(ProductAmount.Solid solid) {
    return vessels.stream()
        .filter(v -> v instanceof Scale || v instanceof MeasuringVessel.Sachet)
        .filter(v -> !isOtherSachet(v, solid))
        .map(vessel -> VesselArithmetic.solid(solid, vessel));
  }

  private static boolean isOtherSachet(MeasuringVessel vessel, ProductAmount amount) {
    return vessel instanceof MeasuringVessel.Sachet sachet && !sachet.content().isLike(amount);
  }

  private VesselSuggestion best(ProductAmount amount, Stream<VesselReading> readings) {
    var all = readings.toList();
    var fit =
        all.stream()
            .filter(r -> r.error() <= largestError && r.fillings() <= MOST_FILLINGS)
            .min(BEST);
    return fit.<VesselSuggestion>map(VesselSuggestion.Suits::new)
        .orElseGet(() -> new VesselSuggestion.NoneSuits(amount, why(amount, all)));
  }

  private String why(ProductAmount amount, List<VesselReading> readings) {
    var nearest =
        readings.stream()
            .filter(r -> r.fillings() <= MOST_FILLINGS)
            .min(Comparator.comparingDouble(VesselReading::error));
    var advice =
        "; take a finer vessel, or measure for several loads at once and share it out as a stock"
            + " solution.";
    return nearest
        .map(
            reading ->
                "The best vessel at hand, a "
                    + reading.vessel().print()
                    + ", is wrong by up to "
                    + VesselRefusals.percent(reading.error())
                    + ", more than "
                    + VesselRefusals.percent(largestError)
                    + advice)
        .orElse("No vessel at hand measures " + amount.words() + " of this size" + advice);
  }

  private static Graduated millilitres(GraduatedKind kind, double capacity, double mark) {
    return new Graduated(kind, new Volume(capacity / 1000), new Volume(mark / 1000));
  }

  private static Scale grams(double capacity, double resolution) {
    return new Scale(new Mass(capacity / 1000), new Mass(resolution / 1000));
  }
}
