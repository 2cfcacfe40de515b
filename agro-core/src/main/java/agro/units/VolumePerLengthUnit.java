package agro.units;

/** The usual units of volume per length. {@link VolumePerLength#unit} puts together any other. */
public enum VolumePerLengthUnit implements Unit<VolumePerLength> {
  /** Millilitre per metre. */
  MILLILITRE_PER_METRE(VolumeUnit.MILLILITRE, LengthUnit.METRE),
  /** Litre per metre. */
  LITRE_PER_METRE(VolumeUnit.LITRE, LengthUnit.METRE),
  /** Litre per 100 metres. */
  LITRE_PER_100_METRES(VolumeUnit.LITRE, UnitMultiple.of(100, LengthUnit.METRE)),
  /** US fluid ounce per 1000 feet. */
  US_FLUID_OUNCE_PER_1000_FEET(VolumeUnit.US_FLUID_OUNCE, UnitMultiple.of(1000, LengthUnit.FOOT));

  private final Unit<Volume> numerator;
  private final Unit<Length> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  VolumePerLengthUnit(Unit<Volume> numerator, Unit<Length> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.VOLUME_PER_LENGTH;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.VOLUME_PER_LENGTH, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
