package agro.units;

import java.util.ArrayList;
import java.util.List;

/** All units of this package, and conversions between texts for tests that read tables. */
final class UnitSamples {

  private UnitSamples() {}

  /** Every constant of every enum of units. */
  static List<Unit<?>> all() {
    var units = new ArrayList<Unit<?>>();
    units.addAll(List.of(LengthUnit.values()));
    units.addAll(List.of(AreaUnit.values()));
    units.addAll(List.of(LandUnit.values()));
    units.addAll(List.of(VolumeUnit.values()));
    units.addAll(List.of(MassUnit.values()));
    units.addAll(List.of(WorkTimeUnit.values()));
    units.addAll(List.of(PressureUnit.values()));
    units.addAll(List.of(SpeedUnit.values()));
    units.addAll(List.of(FlowRateUnit.values()));
    units.addAll(List.of(DensityUnit.values()));
    units.addAll(List.of(VolumePerAreaUnit.values()));
    units.addAll(List.of(MassPerAreaUnit.values()));
    units.addAll(List.of(MassPerMassUnit.values()));
    units.addAll(List.of(MassPerVolumeUnit.values()));
    units.addAll(List.of(VolumePerVolumeUnit.values()));
    units.addAll(List.of(VolumePerMassUnit.values()));
    units.addAll(List.of(MassPerLengthUnit.values()));
    units.addAll(List.of(VolumePerLengthUnit.values()));
    units.addAll(List.of(Counted.values()));
    return units;
  }

  /** The unit of a kind and constant as named in a table. */
  static Unit<?> named(String kind, String constant) {
    for (var unit : all()) {
      boolean sameKind = unit.getClass().getSimpleName().equals(kind + "Unit");
      if (sameKind && ((Enum<?>) unit).name().equals(constant)) {
        return unit;
      }
    }
    throw new AssertionError("no unit " + kind + " " + constant);
  }

  /** A text converted into the unit of another text. */
  static double converted(String text, String unit) {
    var parsed = QuantityText.parse(text);
    var target = QuantityText.parse("1 " + unit);
    var kind = parsed.kind().orElseThrow();
    return TypedReading.single(parsed, kind) / TypedReading.single(target, kind);
  }

  /** The number of the base unit that a text holds. */
  static double base(String text) {
    var parsed = QuantityText.parse(text);
    return TypedReading.single(parsed, parsed.kind().orElseThrow());
  }
}
