package agro.units;

import java.util.Optional;

/** The kinds of quantities of this package, each a type of its own. */
public enum QuantityKind {
  /** A length, {@link Length}. */
  LENGTH("a length", null, null, 1),
  /** An area, {@link Area}. */
  AREA("an area", null, null, 1),
  /** A volume, {@link Volume}. */
  VOLUME("a volume", null, null, 1),
  /** A mass, {@link Mass}. */
  MASS("a mass", null, null, 1),
  /** A time, {@link WorkTime}. */
  WORK_TIME("a time", null, null, 1),
  /** A pressure, {@link Pressure}. */
  PRESSURE("a pressure", null, null, 1),
  /** A speed, {@link Speed}. */
  SPEED("a speed", LENGTH, WORK_TIME, 1),
  /** A flow, {@link FlowRate}. */
  FLOW_RATE("a flow", VOLUME, WORK_TIME, 60),
  /** A density, {@link Density}. */
  DENSITY("a density", MASS, VOLUME, 1),
  /** A volume per area, {@link VolumePerArea}. */
  VOLUME_PER_AREA("a volume per area", VOLUME, AREA, 10000),
  /** A mass per area, {@link MassPerArea}. */
  MASS_PER_AREA("a mass per area", MASS, AREA, 10000),
  /** A mass per mass, {@link MassPerMass}. */
  MASS_PER_MASS("a mass per mass", MASS, MASS, 1000),
  /** A mass per volume, {@link MassPerVolume}. */
  MASS_PER_VOLUME("a mass per volume", MASS, VOLUME, 1000),
  /** A volume per volume, {@link VolumePerVolume}. */
  VOLUME_PER_VOLUME("a volume per volume", VOLUME, VOLUME, 1000),
  /** A volume per mass, {@link VolumePerMass}. */
  VOLUME_PER_MASS("a volume per mass", VOLUME, MASS, 1000),
  /** A mass per length, {@link MassPerLength}. */
  MASS_PER_LENGTH("a mass per length", MASS, LENGTH, 1000),
  /** A volume per length, {@link VolumePerLength}. */
  VOLUME_PER_LENGTH("a volume per length", VOLUME, LENGTH, 1000),
  /** A count of living units, spores or international units, {@link Count}. */
  COUNT("a count", null, null, ExactFactor.ONE),
  /** A count per mass, {@link CountPerMass}. */
  COUNT_PER_MASS("a count per mass", COUNT, MASS, ExactFactor.of(1, 1000)),
  /** A count per volume, {@link CountPerVolume}. */
  COUNT_PER_VOLUME("a count per volume", COUNT, VOLUME, ExactFactor.of(1, 1000)),
  /** A count per area, {@link CountPerArea}. */
  COUNT_PER_AREA("a count per area", COUNT, AREA, ExactFactor.of(10_000, 1));

  private final String words;
  private final QuantityKind numerator;
  private final QuantityKind denominator;
  private final ExactFactor perRatio;

  QuantityKind(String words, QuantityKind numerator, QuantityKind denominator, int perRatio) {
    this(words, numerator, denominator, ExactFactor.of(perRatio, 1));
  }

  QuantityKind(
      String words, QuantityKind numerator, QuantityKind denominator, ExactFactor perRatio) {
    this.words = words;
    this.numerator = numerator;
    this.denominator = denominator;
    this.perRatio = perRatio;
  }

  /**
   * The kind in words.
   *
   * @return for example {@code "a volume per area"}
   */
  public String words() {
    return words;
  }

  /**
   * The kind above the line.
   *
   * @return the kind, or nothing if this is no ratio
   */
  public Optional<QuantityKind> numerator() {
    return Optional.ofNullable(numerator);
  }

  /**
   * The kind below the line.
   *
   * @return the kind, or nothing if this is no ratio
   */
  public Optional<QuantityKind> denominator() {
    return Optional.ofNullable(denominator);
  }

  /** Base units of this kind in one base unit above the line per base unit below it. */
  ExactFactor perRatio() {
    return perRatio;
  }

  /** Lets a value through that is finite and not below zero; minus zero becomes zero. */
  double zeroOrMore(double value) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused("finite and zero or more", value);
    }
    return value + 0.0;
  }

  /** Lets a value through that is finite and above zero. */
  double aboveZero(double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw refused("finite and above zero", value);
    }
    return value;
  }

  /** Converts a value to the base unit, refusing what is not finite in its own unit. */
  double baseOf(double value, Unit<?> unit) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException(
          words + " is finite, but got " + value + ' ' + unit.symbol());
    }
    return unit.toBase(value);
  }

  /** A value with its unit, in up to ten significant digits. */
  static String print(double value, Unit<?> unit) {
    return Numbers.plain(value) + " " + unit.symbol();
  }

  private IllegalArgumentException refused(String demand, double value) {
    return new IllegalArgumentException(words + " is " + demand + ", but got " + value);
  }
}
