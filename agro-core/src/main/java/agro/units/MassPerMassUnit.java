package agro.units;

/** The usual units of mass per mass. {@link MassPerMass#unit} puts together any other. */
public enum MassPerMassUnit implements Unit<MassPerMass> {
  /** Gram per kilogram. */
  GRAM_PER_KILOGRAM(MassUnit.GRAM, MassUnit.KILOGRAM),
  /** Milligram per kilogram. */
  MILLIGRAM_PER_KILOGRAM(MassUnit.MILLIGRAM, MassUnit.KILOGRAM),
  /** Gram per tonne. */
  GRAM_PER_TONNE(MassUnit.GRAM, MassUnit.TONNE),
  /** Kilogram per tonne. */
  KILOGRAM_PER_TONNE(MassUnit.KILOGRAM, MassUnit.TONNE),
  /** Ounce per short hundredweight. */
  OUNCE_PER_SHORT_HUNDREDWEIGHT(MassUnit.OUNCE, MassUnit.SHORT_HUNDREDWEIGHT),
  /** Gram per 100 kilograms. */
  GRAM_PER_100_KILOGRAMS(MassUnit.GRAM, UnitMultiple.of(100, MassUnit.KILOGRAM)),
  /** One per cent by mass, 10 g/kg. */
  PERCENT(new UnitDefinition("% w/w", "percent by mass", "%", ExactFactor.of(10, 1))),
  /** One part per million by mass, 1 mg/kg. */
  PART_PER_MILLION(
      new UnitDefinition("ppm w/w", "part per million by mass", "[ppm]", ExactFactor.of(1, 1000))),
  /** One part per billion (10⁹) by mass, 1 µg/kg. */
  PART_PER_BILLION(
      new UnitDefinition(
          "ppb w/w", "part per billion by mass", "[ppb]", ExactFactor.of(1, 1_000_000)));

  private final Unit<Mass> numerator;
  private final Unit<Mass> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  MassPerMassUnit(Unit<Mass> numerator, Unit<Mass> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  MassPerMassUnit(UnitDefinition definition) {
    this.numerator = null;
    this.denominator = null;
    this.definition = definition;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.MASS_PER_MASS;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.MASS_PER_MASS, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
