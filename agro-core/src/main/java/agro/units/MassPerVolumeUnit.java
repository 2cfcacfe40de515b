package agro.units;

/**
 * The usual units of mass per volume (concentration). {@link MassPerVolume#unit} puts together any
 * other.
 */
public enum MassPerVolumeUnit implements Unit<MassPerVolume> {
  /** Gram per litre. */
  GRAM_PER_LITRE(MassUnit.GRAM, VolumeUnit.LITRE),
  /** Milligram per litre. */
  MILLIGRAM_PER_LITRE(MassUnit.MILLIGRAM, VolumeUnit.LITRE),
  /** Kilogram per litre. */
  KILOGRAM_PER_LITRE(MassUnit.KILOGRAM, VolumeUnit.LITRE),
  /** Gram per 100 litres. */
  GRAM_PER_100_LITRES(MassUnit.GRAM, UnitMultiple.of(100, VolumeUnit.LITRE)),
  /** Pound per US gallon. */
  POUND_PER_US_GALLON(MassUnit.POUND, VolumeUnit.US_GALLON),
  /** Pound per imperial gallon. */
  POUND_PER_IMPERIAL_GALLON(MassUnit.POUND, VolumeUnit.IMPERIAL_GALLON),
  /** Pound per 100 US gallons. */
  POUND_PER_100_US_GALLONS(MassUnit.POUND, UnitMultiple.of(100, VolumeUnit.US_GALLON)),
  /** Ounce per US gallon. */
  OUNCE_PER_US_GALLON(MassUnit.OUNCE, VolumeUnit.US_GALLON),
  /** One per cent mass by volume, 1 g in 100 mL, 10 g/L. */
  PERCENT(new UnitDefinition("% w/v", "percent mass by volume", "g%", ExactFactor.of(10, 1))),
  /** One part per million mass by volume, 1 mg/L. */
  PART_PER_MILLION(
      new UnitDefinition(
          "ppm w/v", "part per million mass by volume", "mg/L", ExactFactor.of(1, 1000))),
  /** One part per billion (10⁹) mass by volume, 1 µg/L. */
  PART_PER_BILLION(
      new UnitDefinition(
          "ppb w/v", "part per billion mass by volume", "ug/L", ExactFactor.of(1, 1_000_000)));

  private final Unit<Mass> numerator;
  private final Unit<Volume> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  MassPerVolumeUnit(Unit<Mass> numerator, Unit<Volume> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  MassPerVolumeUnit(UnitDefinition definition) {
    this.numerator = null;
    this.denominator = null;
    this.definition = definition;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.MASS_PER_VOLUME;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.MASS_PER_VOLUME, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
