package agro.dose.tank;

import agro.dose.TreatedShare;
import agro.report.InputProblem;
import agro.units.Area;
import agro.units.AreaUnit;
import agro.units.Length;
import agro.units.Numbers;
import agro.units.ParsedAmount;
import agro.units.ParsedQuantity;
import agro.units.QuantityKind;
import agro.units.QuantityStyle;
import agro.units.QuantityText;
import agro.units.Unit;
import java.util.Objects;
import java.util.Optional;

/**
 * A field that is to be sprayed, with the unit of land in which its owner counts.
 *
 * @param name name of the field
 * @param area ground area, above zero
 * @param land unit of land for print, for example {@link AreaUnit#ACRE} or a unit with its place
 * @param treated share that gets wet where bands or spots are sprayed; nothing where it was not
 *     stated, which is a treatment of all ground
 */
public record SprayedField(
    String name, Area area, Unit<Area> land, Optional<TreatedShare> treated) {

  /** Refuses a field without a name or without land. */
  public SprayedField {
    Objects.requireNonNull(land, "land");
    Objects.requireNonNull(treated, "treated");
    if (name.isBlank()) {
      throw InputProblem.of("a field of " + area + " without a name")
          .expected("the name that the farm uses")
          .because("a sheet that is taken to the sprayer has to say for which field it is")
          .mend("name the field");
    }
    if (!(area.squareMetres() > 0)) {
      throw InputProblem.of("the field \"" + name + "\" has an area of " + area)
          .expected("an area above zero")
          .because("spray and product are counted on the area")
          .mend("measure the field, or copy its area with the unit from the plan");
    }
  }

  /**
   * A field of which all ground is sprayed.
   *
   * @param name name of the field
   * @param area ground area, above zero
   * @param land unit of land for print
   */
  public SprayedField(String name, Area area, Unit<Area> land) {
    this(name, area, land, Optional.empty());
  }

  /**
   * A field with its area in a unit of land.
   *
   * @param name name of the field
   * @param number area in the unit, finite and above zero
   * @param land the unit
   * @return the field
   */
  public static SprayedField of(String name, double number, Unit<Area> land) {
    if (!(number > 0 && number < Double.POSITIVE_INFINITY)) {
      throw InputProblem.of("the field \"" + name + "\" has an area of " + number)
          .expected("a number above zero, in " + land.symbol())
          .because("spray and product are counted on the area")
          .mend("measure the field, or copy its area with the unit from the plan");
    }
    return new SprayedField(name, Area.of(number, land), land);
  }

  /**
   * A field with its area as people write it, printed in the unit that was written.
   *
   * @param name name of the field
   * @param area for example {@code "3.7 ha"} or {@code "2 bigha (West Bengal)"}
   * @return the field
   * @throws agro.units.UnreadableQuantity if the area is not clear
   */
  public static SprayedField parse(String name, String area) {
    return new SprayedField(name, Area.parse(area), unitOf(QuantityText.parse(area)));
  }

  @SuppressWarnings("unchecked") // a unit whose kind is area is a unit of area
  private static Unit<Area> unitOf(ParsedQuantity parsed) {
    return parsed instanceof ParsedAmount amount && amount.unit().kind() == QuantityKind.AREA
        ? (Unit<Area>) amount.unit()
        : AreaUnit.HECTARE;
  }

  /**
   * The same field, printed in another unit of land.
   *
   * @param unit the unit
   * @return the field
   */
  public SprayedField in(Unit<Area> unit) {
    return new SprayedField(name, area, unit, treated);
  }

  /**
   * The same field, sprayed in bands over the rows.
   *
   * @param bandWidth width that gets wet
   * @param rowSpacing distance from row to row
   * @return the field; its treated share is band width over row spacing
   * @throws InputProblem if a width is not above zero or the bands overlap
   */
  public SprayedField inBands(Length bandWidth, Length rowSpacing) {
    return treating(TreatedShare.ofBands(bandWidth, rowSpacing));
  }

  /**
   * The same field, sprayed on spots or patches.
   *
   * @param ground ground that gets wet, all spots together
   * @return the field; its treated share is that ground over the field
   * @throws InputProblem if the ground is not above zero or is larger than the field
   */
  public SprayedField treating(Area ground) {
    return treating(TreatedShare.ofArea(ground, area));
  }

  /**
   * The same field, of which a share gets wet.
   *
   * @param share the share
   * @return the field
   */
  public SprayedField treating(TreatedShare share) {
    return new SprayedField(name, area, land, Optional.of(share));
  }

  /**
   * The ground that gets wet.
   *
   * @return area × treated share; the whole area where no share was stated
   */
  public Area treatedArea() {
    return treated.map(share -> area.times(share.number())).orElse(area);
  }

  /**
   * The area in the unit of its owner, and in hectares or acres beside it where that is another.
   *
   * @param style family of units and digits
   * @return for example {@code "3 bigha (West Bengal), 0.4013 ha"}
   */
  public String printArea(QuantityStyle style) {
    var own = Numbers.significant(area.in(land), style.digits()) + " " + land.symbol();
    return land.equals(style.land()) ? own : own + ", " + style.print(area);
  }
}
