package agro.units;

/** The usual units of speed. {@link Speed#unit} puts together any other. */
public enum SpeedUnit implements Unit<Speed> {
  /** Metre per second. */
  METRE_PER_SECOND(LengthUnit.METRE, WorkTimeUnit.SECOND),
  /** Metre per minute. */
  METRE_PER_MINUTE(LengthUnit.METRE, WorkTimeUnit.MINUTE),
  /** Kilometre per hour. */
  KILOMETRE_PER_HOUR(LengthUnit.KILOMETRE, WorkTimeUnit.HOUR),
  /** Mile per hour. */
  MILE_PER_HOUR(LengthUnit.MILE, WorkTimeUnit.HOUR),
  /** Foot per minute. */
  FOOT_PER_MINUTE(LengthUnit.FOOT, WorkTimeUnit.MINUTE),
  /** Foot per second. */
  FOOT_PER_SECOND(LengthUnit.FOOT, WorkTimeUnit.SECOND);

  private final Unit<Length> numerator;
  private final Unit<WorkTime> denominator;

  /** Made when it is first asked for: a program uses few of these units. */
  private UnitDefinition definition;

  SpeedUnit(Unit<Length> numerator, Unit<WorkTime> denominator) {
    this.numerator = numerator;
    this.denominator = denominator;
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.SPEED;
  }

  @Override
  public UnitDefinition definition() {
    var known = definition;
    if (known == null) {
      known = RatioUnit.define(QuantityKind.SPEED, numerator, denominator);
      definition = known;
    }
    return known;
  }

  @Override
  public String toString() {
    return definition().symbol();
  }
}
