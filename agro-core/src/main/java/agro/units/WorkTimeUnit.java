package agro.units;

import java.util.List;

/** Units of working time. */
public enum WorkTimeUnit implements Unit<WorkTime> {
  /** Second. */
  SECOND("s", "second", "s", 1, 1, "seconds", "sec", "secs"),
  /** Minute. */
  MINUTE("min", "minute", "min", 60, 1, "minutes", "mins"),
  /** Hour. */
  HOUR("h", "hour", "h", 3600, 1, "hours", "hr", "hrs"),
  /** Day of 24 hours. */
  DAY("d", "day", "d", 86400, 1, "days");

  private final UnitDefinition definition;
  private final List<String> spellings;

  WorkTimeUnit(
      String symbol,
      String words,
      String ucum,
      long numerator,
      long denominator,
      String... spellings) {
    this.definition =
        new UnitDefinition(symbol, words, ucum, ExactFactor.of(numerator, denominator));
    this.spellings = List.of(spellings);
  }

  @Override
  public QuantityKind kind() {
    return QuantityKind.WORK_TIME;
  }

  @Override
  public UnitDefinition definition() {
    return definition;
  }

  /** What else people write for this unit, beside its symbol and its name. */
  List<String> spellings() {
    return spellings;
  }

  @Override
  public String toString() {
    return definition.symbol();
  }
}
