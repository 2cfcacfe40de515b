package agro.course.paper;

import agro.units.Area;
import agro.units.ExactFactor;
import agro.units.Numbers;
import agro.units.QuantityKind;
import agro.units.Unit;
import agro.units.UnitDefinition;

/**
 * A unit of land with the size that a teacher gives it.
 *
 * @param definition name and size
 */
record OwnLandUnit(UnitDefinition definition) implements Unit<Area> {

  static OwnLandUnit of(String name, Area size) {
    var squareMetres = Numbers.plain(size.inBaseUnit());
    return new OwnLandUnit(
        new UnitDefinition(name, name, squareMetres + ".m2", ExactFactor.decimal(squareMetres)));
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.AREA;
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
