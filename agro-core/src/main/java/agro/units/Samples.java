package agro.units;

/** A unit of each kind to name in a message, without loading all units. */
final class Samples {

  private Samples() {}

  static String of(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> "m";
      case AREA -> "ha";
      case VOLUME -> "L";
      case MASS -> "kg";
      case WORK_TIME -> "min";
      case PRESSURE -> "bar";
      case SPEED -> "km/h";
      case FLOW_RATE -> "L/min";
      case DENSITY -> "kg/L";
      case VOLUME_PER_AREA -> "L/ha";
      case MASS_PER_AREA -> "kg/ha";
      case MASS_PER_MASS -> "g/kg";
      case MASS_PER_VOLUME -> "g/L";
      case VOLUME_PER_VOLUME -> "mL/L";
      case VOLUME_PER_MASS -> "mL/kg";
      case MASS_PER_LENGTH -> "g/m";
      case VOLUME_PER_LENGTH -> "mL/m";
      case COUNT -> "CFU";
      case COUNT_PER_MASS -> "CFU/g";
      case COUNT_PER_VOLUME -> "CFU/mL";
      case COUNT_PER_AREA -> "CFU/ha";
    };
  }

  /** The symbol of the unit in which a kind is held. */
  static String baseSymbol(QuantityKind kind) {
    return switch (kind) {
      case AREA -> "m\u00b2";
      case WORK_TIME -> "s";
      case PRESSURE -> "kPa";
      case SPEED -> "m/s";
      default -> of(kind);
    };
  }
}
