package agro.units;

/** The usual units of volume per area. {@link VolumePerArea#unit} puts together any other. */
public enum VolumePerAreaUnit implements Unit<VolumePerArea> {
  /** Litre per hectare. */
  LITRE_PER_HECTARE(VolumeUnit.LITRE, AreaUnit.HECTARE),
  /** Millilitre per hectare. */
  MILLILITRE_PER_HECTARE(VolumeUnit.MILLILITRE, AreaUnit.HECTARE),
  /** Litre per acre. */
  LITRE_PER_ACRE(VolumeUnit.LITRE, AreaUnit.ACRE),
  /** Millilitre per acre. */
  MILLILITRE_PER_ACRE(VolumeUnit.MILLILITRE, AreaUnit.ACRE),
  /** US gallon per acre. */
  US_GALLON_PER_ACRE(VolumeUnit.US_GALLON, AreaUnit.ACRE),
  /** US quart per acre. */
  US_QUART_PER_ACRE(VolumeUnit.US_QUART, AreaUnit.ACRE),
  /** US pint per acre. */
  US_PINT_PER_ACRE(VolumeUnit.US_PINT, AreaUnit.ACRE),
  /** US fluid ounce per acre. */
  US_FLUID_OUNCE_PER_ACRE(VolumeUnit.US_FLUID_OUNCE, AreaUnit.ACRE),
  /** Imperial gallon per acre. */
  IMPERIAL_GALLON_PER_ACRE(VolumeUnit.IMPERIAL_GALLON, AreaUnit.ACRE),
  /** Imperial pint per acre. */
  IMPERIAL_PINT_PER_ACRE(VolumeUnit.IMPERIAL_PINT, AreaUnit.ACRE),
  /** Imperial fluid ounce per acre. */
  IMPERIAL_FLUID_OUNCE_PER_ACRE(VolumeUnit.IMPERIAL_FLUID_OUNCE, AreaUnit.ACRE),
  /** Litre per square metre. */
  LITRE_PER_SQUARE_METRE(VolumeUnit.LITRE, AreaUnit.SQUARE_METRE),
  /** Millilitre per square metre. */
  MILLILITRE_PER_SQUARE_METRE(VolumeUnit.MILLILITRE, AreaUnit.SQUARE_METRE),
  /** US gallon per 1000 square feet. */
  US_GALLON_PER_1000_SQUARE_FEET(VolumeUnit.US_GALLON, UnitMultiple.of(1000, AreaUnit.SQUARE_FOOT)),
  /** US fluid ounce per 1000 square feet. */
  US_FLUID_OUNCE_PER_1000_SQUARE_FEET(
      VolumeUnit.US_FLUID_OUNCE, UnitMultiple.of(1000, AreaUnit.SQUARE_FOOT));

  private final Unit<Volume> numerator;
  private final Unit<Area> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  VolumePerAreaUnit(Unit<Volume> numerator, Unit<Area> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.VOLUME_PER_AREA;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.VOLUME_PER_AREA, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
