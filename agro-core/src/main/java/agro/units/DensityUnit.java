package agro.units;

/** The usual units of density. {@link Density#unit} puts together any other. */
public enum DensityUnit implements Unit<Density> {
  /** Kilogram per litre. */
  KILOGRAM_PER_LITRE(MassUnit.KILOGRAM, VolumeUnit.LITRE),
  /** Gram per millilitre. */
  GRAM_PER_MILLILITRE(MassUnit.GRAM, VolumeUnit.MILLILITRE),
  /** Kilogram per cubic metre. */
  KILOGRAM_PER_CUBIC_METRE(MassUnit.KILOGRAM, VolumeUnit.CUBIC_METRE),
  /** Pound per US gallon. */
  POUND_PER_US_GALLON(MassUnit.POUND, VolumeUnit.US_GALLON),
  /** Pound per imperial gallon. */
  POUND_PER_IMPERIAL_GALLON(MassUnit.POUND, VolumeUnit.IMPERIAL_GALLON);

  private final Unit<Mass> numerator;
  private final Unit<Volume> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  DensityUnit(Unit<Mass> numerator, Unit<Volume> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.DENSITY;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.DENSITY, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
