package agro.units;

/** The usual units of volume per volume. {@link VolumePerVolume#unit} puts together any other. */
public enum VolumePerVolumeUnit implements Unit<VolumePerVolume> {
  /** Millilitre per litre. */
  MILLILITRE_PER_LITRE(VolumeUnit.MILLILITRE, VolumeUnit.LITRE),
  /** Litre per 1000 cubic metres. */
  LITRE_PER_1000_CUBIC_METRES(VolumeUnit.LITRE, UnitMultiple.of(1000, VolumeUnit.CUBIC_METRE)),
  /** Millilitre per 100 litres. */
  MILLILITRE_PER_100_LITRES(VolumeUnit.MILLILITRE, UnitMultiple.of(100, VolumeUnit.LITRE)),
  /** US fluid ounce per US gallon. */
  US_FLUID_OUNCE_PER_US_GALLON(VolumeUnit.US_FLUID_OUNCE, VolumeUnit.US_GALLON),
  /** US pint per 100 US gallons. */
  US_PINT_PER_100_US_GALLONS(VolumeUnit.US_PINT, UnitMultiple.of(100, VolumeUnit.US_GALLON)),
  /** US tablespoon per US gallon. */
  US_TABLESPOON_PER_US_GALLON(VolumeUnit.US_TABLESPOON, VolumeUnit.US_GALLON),
  /** US teaspoon per US gallon. */
  US_TEASPOON_PER_US_GALLON(VolumeUnit.US_TEASPOON, VolumeUnit.US_GALLON),
  /** Imperial fluid ounce per imperial gallon. */
  IMPERIAL_FLUID_OUNCE_PER_IMPERIAL_GALLON(
      VolumeUnit.IMPERIAL_FLUID_OUNCE, VolumeUnit.IMPERIAL_GALLON),
  /** Imperial pint per 100 imperial gallons. */
  IMPERIAL_PINT_PER_100_IMPERIAL_GALLONS(
      VolumeUnit.IMPERIAL_PINT, UnitMultiple.of(100, VolumeUnit.IMPERIAL_GALLON)),
  /** One per cent by volume, 10 mL/L. */
  PERCENT(new UnitDefinition("% v/v", "percent by volume", "%", ExactFactor.of(10, 1))),
  /** One part per million by volume, 1 µL/L. */
  PART_PER_MILLION(
      new UnitDefinition(
          "ppm v/v", "part per million by volume", "[ppm]", ExactFactor.of(1, 1000)));

  private final Unit<Volume> numerator;
  private final Unit<Volume> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  VolumePerVolumeUnit(Unit<Volume> numerator, Unit<Volume> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  VolumePerVolumeUnit(UnitDefinition definition) {
    this.numerator = null;
    this.denominator = null;
    this.definition = definition;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.VOLUME_PER_VOLUME;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.VOLUME_PER_VOLUME, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
