package agro.dose.scaling;

import agro.dose.PumpsPerArea;
import agro.dose.SprayVolume;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.LandUnit;
import agro.units.Numbers;
import agro.units.QuantityStyle;
import agro.units.Unit;
import agro.units.Volume;
import agro.working.Caution;
import agro.working.Working;
import java.util.Objects;

/**
 * Spray volume as knapsack loads ("pumps") per local unit of land: spray volume = pumps × tank /
 * area of the unit.
 *
 * @param pumps loads for a unit of land
 * @param tank spray in one load, above zero
 */
public record PumpedSpray(PumpsPerArea pumps, Volume tank) {

  /** Refuses empty loads. */
  public PumpedSpray {
    Objects.requireNonNull(pumps, "pumps");
    ScalingChecks.aboveZero(
        tank,
        "content of a pump",
        "the spray volume is pumps times their content",
        "fill the tank to its mark with a measuring jug");
  }

  /**
   * Loads of a stated size for one unit of land.
   *
   * @param pumps loads for one unit of land, above zero
   * @param tank spray in one load, above zero
   * @param land unit of land with its place
   * @return the pumps
   */
  public static PumpedSpray of(double pumps, Volume tank, Unit<Area> land) {
    return new PumpedSpray(PumpsPerArea.of(pumps, land), tank);
  }

  /**
   * The pumps that a spray volume takes: pumps = spray volume × area of the unit / tank.
   *
   * @param spray spray volume per area of field
   * @param tank spray in one load, above zero
   * @param land unit of land with its place
   * @return the pumps, not rounded
   */
  public static PumpedSpray of(SprayVolume spray, Volume tank, Unit<Area> land) {
    return new PumpedSpray(PumpsPerArea.from(spray, tank, land), tank);
  }

  /**
   * The spray volume.
   *
   * @return spray per area of field
   */
  public SprayVolume spray() {
    return pumps.sprayVolume(tank);
  }

  /**
   * Works out both ways of telling it, printed in metric units.
   *
   * @return spray volume, pumps per hectare, area of a pump and the steps
   */
  public PumpedSprayResult evaluate() {
    return evaluate(QuantityStyle.METRIC);
  }

  /**
   * Works out both ways of telling it.
   *
   * @param style units of print
   * @return spray volume, pumps per hectare, area of a pump and the steps
   */
  public PumpedSprayResult evaluate(QuantityStyle style) {
    var land = pumps.per();
    var area = pumps.areaPerPump();
    double perHectare = 10_000 / area.squareMetres();
    var number = Numbers.significant(pumps.number(), 5);
    var size = Numbers.significant(land.inBaseUnit(), 7) + " m²";
    var sprayed = style.print(tank.times(pumps.number()));
    var name = "size of " + (land.number() == 1 ? "1 " : "") + land;
    var working = Working.of("Pumps per " + land);
    working =
        land.unit() instanceof LandUnit place
            ? working.step(name, "", "", size, place.source())
            : working.step(name, "", "", size);
    working =
        working
            .step(
                "spray per " + land,
                "pumps × content of a pump",
                number + " pumps × " + style.print(tank),
                sprayed,
                ScalingSources.UNITS_ALONE)
            .step(
                "spray volume",
                "spray / area",
                sprayed + " / " + size,
                spray().print(style.per(AreaUnit.HECTARE)))
            .step(
                "pumps per hectare",
                "10 000 m² / area of a pump",
                "10000 m² / (" + size + " / " + number + ")",
                Numbers.significant(perHectare, 5) + " pumps/ha")
            .withCautions(Caution.all());
    return new PumpedSprayResult(pumps, spray(), perHectare, working);
  }
}
