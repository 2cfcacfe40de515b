package agro.units;

/** The unit atoms of UCUM that this library meets, in metre, gram, second and kelvin. */
final class UcumAtoms {

  private static final UcumDimension LENGTH = new UcumDimension(1, 0, 0, 0, 0, 0);
  private static final UcumDimension AREA = new UcumDimension(2, 0, 0, 0, 0, 0);
  private static final UcumDimension VOLUME = new UcumDimension(3, 0, 0, 0, 0, 0);
  private static final UcumDimension MASS = new UcumDimension(0, 1, 0, 0, 0, 0);
  private static final UcumDimension TIME = new UcumDimension(0, 0, 1, 0, 0, 0);
  private static final UcumDimension TEMPERATURE = new UcumDimension(0, 0, 0, 1, 0, 0);
  private static final UcumDimension PRESSURE = new UcumDimension(-1, 1, -2, 0, 0, 0);
  private static final UcumDimension FORCE = new UcumDimension(1, 1, -2, 0, 0, 0);
  private static final UcumDimension LIVING = new UcumDimension(0, 0, 0, 0, 1, 0);
  private static final UcumDimension ACTIVITY = new UcumDimension(0, 0, 0, 0, 0, 1);

  private UcumAtoms() {}

  /** A unit atom. */
  record Atom(ExactFactor factor, UcumDimension dimension, boolean metric) {}

  /** The atom of a code, or null. */
  static Atom find(String code) {
    return switch (code) {
      case "m" -> metric(1, 1, LENGTH);
      case "g" -> metric(1, 1, MASS);
      case "s" -> metric(1, 1, TIME);
      case "K" -> metric(1, 1, TEMPERATURE);
      case "L", "l" -> metric(1, 1000, VOLUME);
      case "ar" -> metric(100, 1, AREA);
      case "t" -> metric(1_000_000, 1, MASS);
      case "bar" -> metric(100_000_000, 1, PRESSURE);
      case "Pa" -> metric(1000, 1, PRESSURE);
      case "N" -> metric(1000, 1, FORCE);
      case "att" -> plain(98_066_500, 1, PRESSURE);
      case "min" -> plain(60, 1, TIME);
      case "h" -> plain(3600, 1, TIME);
      case "d" -> plain(86_400, 1, TIME);
      case "wk" -> plain(604_800, 1, TIME);
      case "%" -> plain(1, 100, UcumDimension.NONE);
      case "[ppth]" -> plain(1, 1000, UcumDimension.NONE);
      case "[ppm]" -> plain(1, 1_000_000, UcumDimension.NONE);
      case "[ppb]" -> plain(1, 1_000_000_000, UcumDimension.NONE);
      case "10*", "10^" -> plain(10, 1, UcumDimension.NONE);
      case "[degR]" -> plain(5, 9, TEMPERATURE);
      case "[CFU]" -> plain(1, 1, LIVING);
      case "[IU]" -> metric(1, 1, ACTIVITY);
      case "[drp]" -> plain(1, 20_000_000, VOLUME);
      case "g%" -> metric(10_000, 1, new UcumDimension(-3, 1, 0, 0, 0, 0));
      default -> code.charAt(0) == '[' ? customary(code) : null;
    };
  }

  private static Atom customary(String code) {
    Unit<?> length = length(code);
    if (length != null) {
      return of(length, LENGTH, 1);
    }
    Unit<?> area = area(code);
    if (area != null) {
      return of(area, AREA, 1);
    }
    Unit<?> volume = volume(code);
    if (volume != null) {
      return new Atom(volume.factor().times(ExactFactor.of(1, 1000)), VOLUME, false);
    }
    if (code.equals("[psi]")) {
      return of(PressureUnit.POUND_PER_SQUARE_INCH, PRESSURE, 1_000_000);
    }
    Unit<?> mass = mass(code);
    return mass == null ? null : of(mass, MASS, 1000);
  }

  private static Atom of(Unit<?> unit, UcumDimension dimension, long scale) {
    return new Atom(unit.factor().times(ExactFactor.of(scale, 1)), dimension, false);
  }

  private static Unit<?> length(String code) {
    return switch (code) {
      case "[in_i]" -> LengthUnit.INCH;
      case "[ft_i]" -> LengthUnit.FOOT;
      case "[yd_i]" -> LengthUnit.YARD;
      case "[mi_i]" -> LengthUnit.MILE;
      case "[ft_us]" -> LengthUnit.US_SURVEY_FOOT;
      default -> null;
    };
  }

  private static Unit<?> area(String code) {
    return switch (code) {
      case "[sin_i]" -> AreaUnit.SQUARE_INCH;
      case "[sft_i]" -> AreaUnit.SQUARE_FOOT;
      case "[syd_i]" -> AreaUnit.SQUARE_YARD;
      case "[acr_us]" -> AreaUnit.US_SURVEY_ACRE;
      case "[acr_br]" -> AreaUnit.OLD_BRITISH_ACRE;
      default -> null;
    };
  }

  private static Unit<?> mass(String code) {
    return switch (code) {
      case "[gr]" -> MassUnit.GRAIN;
      case "[oz_av]" -> MassUnit.OUNCE;
      case "[lb_av]" -> MassUnit.POUND;
      case "[scwt_av]" -> MassUnit.SHORT_HUNDREDWEIGHT;
      case "[lcwt_av]" -> MassUnit.LONG_HUNDREDWEIGHT;
      case "[ston_av]" -> MassUnit.SHORT_TON;
      case "[lton_av]" -> MassUnit.LONG_TON;
      default -> null;
    };
  }

  private static Unit<?> volume(String code) {
    return switch (code) {
      case "[cin_i]" -> VolumeUnit.CUBIC_INCH;
      case "[cft_i]" -> VolumeUnit.CUBIC_FOOT;
      case "[gal_us]" -> VolumeUnit.US_GALLON;
      case "[qt_us]" -> VolumeUnit.US_QUART;
      case "[pt_us]" -> VolumeUnit.US_PINT;
      case "[gil_us]" -> VolumeUnit.US_GILL;
      case "[foz_us]" -> VolumeUnit.US_FLUID_OUNCE;
      case "[cup_us]" -> VolumeUnit.US_CUP;
      case "[tbs_us]" -> VolumeUnit.US_TABLESPOON;
      case "[tsp_us]" -> VolumeUnit.US_TEASPOON;
      case "[gal_br]" -> VolumeUnit.IMPERIAL_GALLON;
      case "[qt_br]" -> VolumeUnit.IMPERIAL_QUART;
      case "[pt_br]" -> VolumeUnit.IMPERIAL_PINT;
      case "[gil_br]" -> VolumeUnit.IMPERIAL_GILL;
      case "[foz_br]" -> VolumeUnit.IMPERIAL_FLUID_OUNCE;
      case "[cup_m]" -> VolumeUnit.METRIC_CUP;
      case "[tbs_m]" -> VolumeUnit.METRIC_TABLESPOON;
      case "[tsp_m]" -> VolumeUnit.METRIC_TEASPOON;
      case "[foz_m]" -> VolumeUnit.METRIC_FLUID_OUNCE;
      default -> null;
    };
  }

  /** The factor of a prefix, or null. */
  static ExactFactor prefix(String prefix) {
    return switch (prefix) {
      case "G" -> ExactFactor.of(1_000_000_000, 1);
      case "M" -> ExactFactor.of(1_000_000, 1);
      case "k" -> ExactFactor.of(1000, 1);
      case "h" -> ExactFactor.of(100, 1);
      case "da" -> ExactFactor.of(10, 1);
      case "d" -> ExactFactor.of(1, 10);
      case "c" -> ExactFactor.of(1, 100);
      case "m" -> ExactFactor.of(1, 1000);
      case "u" -> ExactFactor.of(1, 1_000_000);
      case "n" -> ExactFactor.of(1, 1_000_000_000);
      case "p" -> ExactFactor.of(1, 1_000_000_000_000L);
      case "f" -> ExactFactor.of(1, 1_000_000_000_000_000L);
      default -> null;
    };
  }

  private static Atom metric(long numerator, long denominator, UcumDimension dimension) {
    return new Atom(ExactFactor.of(numerator, denominator), dimension, true);
  }

  private static Atom plain(long numerator, long denominator, UcumDimension dimension) {
    return new Atom(ExactFactor.of(numerator, denominator), dimension, false);
  }
}
