package agro.units;

/** Codes that look like a unit of the trade and are none, or another one, in UCUM. */
final class UcumTraps {

  private UcumTraps() {}

  /** A trap: what UCUM makes of the code, and what to write. */
  record Trap(String reading, String right) {}

  /** What is wrong with a code, or null if it is no known trap. */
  static Trap find(String code) {
    var lookAlike = lookAlike(code);
    return lookAlike != null ? lookAlike : invalid(code);
  }

  private static Trap lookAlike(String code) {
    return switch (code) {
      case "ft" -> new Trap("the femtotonne", "[ft_i] for the foot, ng for the femtotonne");
      case "pt" ->
          new Trap("the picotonne", "[pt_us] or [pt_br] for the pint, ug for the picotonne");
      case "mph" -> new Trap("the milliphot", "[mi_i]/h for the mile per hour");
      case "mu" -> new Trap("the millidalton", "an expression in m2 for the land unit");
      case "Gal" -> new Trap("the gal, 1 cm/s2", "[gal_us] or [gal_br] for the gallon");
      case "T" -> new Trap("the tesla", "t for the tonne");
      case "R" -> new Trap("the roentgen", "[degR] for the degree Rankine");
      case "F" -> new Trap("the farad", "[degF] for the degree Fahrenheit");
      case "C" -> new Trap("the coulomb", "Cel for the degree Celsius");
      case "Pt" -> new Trap("the petatonne", "[pt_us] or [pt_br] for the pint");
      case "nM", "M" -> new Trap("no unit", "m for the metre, mol/L for molar");
      case "a" -> new Trap("the year", "ar for the are, har for the hectare");
      case "u" -> new Trap("the dalton", "u only as a prefix, as in uL");
      case "mg%" -> new Trap("10 mg/L", "mg/dL or g/L");
      default -> null;
    };
  }

  private static Trap invalid(String code) {
    return switch (code) {
      case "ha", "HA", "hectare" -> none("har");
      case "acre", "ac", "[acr_i]", "acr" ->
          none("43560.[sft_i] for the international acre, [acr_us] for the US survey acre");
      case "gal", "gallon" -> none("[gal_us] or [gal_br]");
      case "oz", "ounce" ->
          none("[oz_av] for the dry ounce, [foz_us] or [foz_br] for the fluid one");
      case "floz", "fl oz" -> none("[foz_us] or [foz_br]");
      case "qt" -> none("[qt_us] or [qt_br]");
      case "lb", "lbs" -> none("[lb_av]");
      case "psi", "PSI" -> none("[psi]");
      case "ppm" -> none("[ppm]");
      case "ppb" -> none("[ppb]");
      case "degC", "\u00b0C" -> none("Cel");
      case "degF", "\u00b0F" -> none("[degF]");
      case "ton" -> none("t for the tonne, [ston_av] or [lton_av] for the others");
      case "cc" -> none("cm3 or mL");
      case "cwt" -> none("[scwt_av] or [lcwt_av]");
      case "hr", "hrs" -> none("h");
      case "sec" -> none("s");
      case "gpa", "GPA" -> none("[gal_us]/[acr_us], or [gal_us]/(43560.[sft_i])");
      case "gpm", "GPM" -> none("[gal_us]/min");
      case "in" -> none("[in_i]");
      case "yd" -> none("[yd_i]");
      case "mi" -> none("[mi_i]");
      case "CFU", "cfu" -> none("[CFU]");
      case "IU" -> none("[IU]");
      case "tsp" -> none("[tsp_us] or [tsp_m]");
      case "tbsp" -> none("[tbs_us] or [tbs_m]");
      case "cup" -> none("[cup_us] or [cup_m]");
      case "gr" -> none("g for the gram, [gr] for the grain");
      case "kmh", "kph" -> none("km/h");
      case "ltr" -> none("L");
      default -> null;
    };
  }

  private static Trap none(String right) {
    return new Trap("no unit", right);
  }
}
