package agro.weather.log;

/** What the heading of a column says about it. */
enum ColumnKind {
  TIME,
  YEAR,
  MONTH,
  DAY,
  DAY_OF_YEAR,
  HOUR,
  MINUTE,
  TEMPERATURE,
  MINIMUM,
  MAXIMUM,
  MEAN,
  UNIT,
  /** Computed from a temperature, or of the logger itself. */
  OTHER_TEMPERATURE,
  /** Humidity, battery, number of the record and so on. */
  OTHER_QUANTITY,
  UNKNOWN;

  boolean isTemperature() {
    return this == TEMPERATURE || this == MINIMUM || this == MAXIMUM || this == MEAN;
  }

  boolean isTime() {
    return switch (this) {
      case TIME, YEAR, MONTH, DAY, DAY_OF_YEAR, HOUR, MINUTE -> true;
      default -> false;
    };
  }
}
