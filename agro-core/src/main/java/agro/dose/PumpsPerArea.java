package agro.dose;

import agro.report.InputProblem;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.Unit;
import agro.units.Volume;
import java.util.Objects;

/**
 * How many pumps of a knapsack go onto an area, as growers count: 12 pumps a hectare, 5 pumps a
 * bigha.
 *
 * @param number pumps, above zero, not always whole
 * @param per area that they cover
 */
public record PumpsPerArea(double number, WrittenAmount<Area> per) {

  /** Refuses a number by which nothing can be divided. */
  public PumpsPerArea {
    Objects.requireNonNull(per, "per");
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of(number + " pumps per " + per)
          .expected("a number of pumps above zero")
          .because("the dose per pump is the dose per area divided by the pumps")
          .mend("count the pumps that a measured piece of land takes");
    }
  }

  /**
   * Pumps per unit of land, as counted in the field.
   *
   * @param number pumps, above zero
   * @param land unit of land, with its place where it has several sizes
   * @return the pumps
   */
  public static PumpsPerArea of(double number, Unit<Area> land) {
    return new PumpsPerArea(number, WrittenAmount.one(land));
  }

  /**
   * Pumps per unit of land from spray volume and pump: spray volume × unit of land ÷ what a pump
   * brings out.
   *
   * @param spray spray volume
   * @param perPump spray that one pump brings out, above zero
   * @param land unit of land
   * @return the pumps, not rounded
   * @throws InputProblem if a pump brings nothing out
   */
  public static PumpsPerArea from(SprayVolume spray, Volume perPump, Unit<Area> land) {
    requirePump(perPump);
    var one = WrittenAmount.one(land);
    var volume = spray.on(new Area(one.inBaseUnit()));
    return new PumpsPerArea(volume.ratioTo(perPump), one);
  }

  /**
   * Pumps for an area.
   *
   * @param area the area
   * @return the number, not rounded
   */
  public double on(Area area) {
    return number * area.squareMetres() / per.inBaseUnit();
  }

  /**
   * Area that one pump covers.
   *
   * @return the area
   */
  public Area areaPerPump() {
    return new Area(per.inBaseUnit() / number);
  }

  /**
   * The dose that goes into each pump: dose per area × area per pump.
   *
   * @param dose product per area
   * @return low and high amount
   */
  public ProductAmount dosePerPump(ProductPerArea dose) {
    return dose.on(areaPerPump());
  }

  /**
   * The spray volume that the pumps come to.
   *
   * @param perPump spray that one pump brings out, above zero
   * @return what the pumps bring out divided by the area
   * @throws InputProblem if a pump brings nothing out
   */
  public SprayVolume sprayVolume(Volume perPump) {
    requirePump(perPump);
    return new SprayVolume(perPump.dividedBy(areaPerPump()));
  }

  private static void requirePump(Volume perPump) {
    if (!(perPump.litres() > 0)) {
      throw InputProblem.of("a pump that brings out " + perPump)
          .expected("a volume above zero")
          .because("the spray volume is pumps times what each brings out")
          .mend("fill the tank to its mark with a measuring jug");
    }
  }

  @Override
  public String toString() {
    return Numbers.significant(number, 4) + " pumps/" + per;
  }
}
