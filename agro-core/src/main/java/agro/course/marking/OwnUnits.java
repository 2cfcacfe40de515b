package agro.course.marking;

import agro.course.CourseUnits;
import agro.units.AreaUnit;
import agro.units.LengthUnit;
import agro.units.MassUnit;
import agro.units.ParsedQuantity;
import agro.units.QuantityKind;
import agro.units.RatioUnit;
import agro.units.Unit;
import agro.units.VolumeUnit;
import agro.units.WorkTimeUnit;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The units that an exercise itself uses, which settle what a word of several sizes means.
 *
 * @param units units of the class and of the answer
 */
record OwnUnits(Set<Unit<?>> units) {

  private static final String US = "(US)";
  private static final String IMPERIAL = "(imp)";

  OwnUnits {
    units = Set.copyOf(units);
  }

  static OwnUnits of(CourseUnits course, Unit<?> asked) {
    var all = new LinkedHashSet<Unit<?>>(List.of(course.land(), course.water(), course.measure()));
    all.add(course.powder());
    all.add(course.yield());
    all.add(asked);
    if (asked instanceof RatioUnit<?> ratio) {
      all.add(ratio.numerator());
      all.add(ratio.denominator());
    }
    return new OwnUnits(all);
  }

  /** Whether all units of a reading are among these. */
  boolean holdsAll(ParsedQuantity reading) {
    return units.containsAll(UnitCandidates.parts(reading));
  }

  /** Whether a reading is in the system of these units. */
  boolean suits(ParsedQuantity reading) {
    return UnitCandidates.parts(reading).stream()
        .allMatch(unit -> units.contains(unit) || system(unit.symbol()).equals(system()));
  }

  private String system() {
    if (uses(US)) {
      return US;
    }
    return uses(IMPERIAL) ? IMPERIAL : "";
  }

  private boolean uses(String mark) {
    return units.stream().anyMatch(unit -> unit.symbol().contains(mark));
  }

  private String system(String symbol) {
    if (symbol.contains(US) || symbol.startsWith("short ")) {
      return US;
    }
    if (symbol.contains(IMPERIAL) || symbol.startsWith("long ")) {
      return IMPERIAL;
    }
    if (symbol.equals(MassUnit.TONNE.symbol())) {
      return "";
    }
    // Acres, feet and pounds belong to both systems; cups of 250 mL to neither.
    return symbol.contains("(") ? "other" : system();
  }

  /** Units in which somebody may have answered without saying so. */
  static List<Unit<?>> usual(QuantityKind kind, CourseUnits course) {
    return switch (kind) {
      case VOLUME ->
          List.of(course.measure(), course.water(), VolumeUnit.MILLILITRE, VolumeUnit.LITRE);
      case MASS ->
          List.of(
              course.powder(),
              course.yield(),
              MassUnit.GRAM,
              MassUnit.KILOGRAM,
              MassUnit.TONNE,
              MassUnit.MILLIGRAM);
      case AREA -> List.of(course.land(), AreaUnit.SQUARE_METRE, AreaUnit.HECTARE);
      case LENGTH ->
          List.of(course.course(), LengthUnit.METRE, LengthUnit.CENTIMETRE, LengthUnit.KILOMETRE);
      case WORK_TIME -> List.of(WorkTimeUnit.values());
      case SPEED -> List.of(course.speed());
      default -> List.of();
    };
  }
}
