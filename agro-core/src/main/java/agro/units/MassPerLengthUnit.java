package agro.units;

/** The usual units of mass per length. {@link MassPerLength#unit} puts together any other. */
public enum MassPerLengthUnit implements Unit<MassPerLength> {
  /** Gram per metre. */
  GRAM_PER_METRE(MassUnit.GRAM, LengthUnit.METRE),
  /** Ounce per 1000 feet. */
  OUNCE_PER_1000_FEET(MassUnit.OUNCE, UnitMultiple.of(1000, LengthUnit.FOOT));

  private final Unit<Mass> numerator;
  private final Unit<Length> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  MassPerLengthUnit(Unit<Mass> numerator, Unit<Length> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.MASS_PER_LENGTH;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.MASS_PER_LENGTH, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
