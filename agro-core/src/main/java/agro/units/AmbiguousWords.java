package agro.units;

import java.util.List;

/** Words that stand for units of several sizes, with the marks that tell them apart. */
final class AmbiguousWords {

  private static final List<String> AVOIRDUPOIS =
      List.of("av", "avoirdupois", "avdp", "dry", "wt", "weight", "by weight");
  private static final List<String> BY_MASS =
      List.of("w/w", "m/m", "by weight", "by mass", "weight", "mass");
  private static final List<String> MASS_BY_VOLUME = List.of("w/v", "m/v");
  private static final List<String> BY_VOLUME = List.of("v/v", "by volume", "vol", "volume");

  private AmbiguousWords() {}

  /** Words that a slip of the pen may have been meant for. */
  static List<String> all() {
    return List.of(
        "gal",
        "gallon",
        "gallons",
        "qt",
        "quart",
        "quarts",
        "pt",
        "pint",
        "pints",
        "cup",
        "cups",
        "gill",
        "fl oz",
        "fluid ounce",
        "fluid ounces",
        "tbsp",
        "tablespoon",
        "tablespoons",
        "tsp",
        "teaspoon",
        "teaspoons",
        "oz",
        "ounce",
        "ounces",
        "ton",
        "tons",
        "cwt",
        "hundredweight",
        "percent",
        "ppm",
        "ppb");
  }

  /** What a lower-case word may stand for, or null if it is none of these words. */
  static UnitWord find(String word) {
    return switch (word) {
      case "gal", "gals", "gallon", "gallons", "gl" ->
          usOrImperial(word, VolumeUnit.US_GALLON, VolumeUnit.IMPERIAL_GALLON);
      case "qt", "qts", "quart", "quarts" ->
          usOrImperial(word, VolumeUnit.US_QUART, VolumeUnit.IMPERIAL_QUART);
      case "pt", "pts", "pint", "pints" ->
          usOrImperial(word, VolumeUnit.US_PINT, VolumeUnit.IMPERIAL_PINT);
      case "gill", "gills" -> usOrImperial(word, VolumeUnit.US_GILL, VolumeUnit.IMPERIAL_GILL);
      case "fl oz", "floz", "fl ozs", "fluid ounce", "fluid ounces", "fl ounce", "fl ounces" ->
          fluidOunce(word);
      case "cup", "cups" ->
          new UnitWord(
              word,
              List.of(VolumeUnit.US_CUP, VolumeUnit.METRIC_CUP, VolumeUnit.AUSTRALIAN_CUP),
              List.of(List.of("us"), List.of("240 ml"), List.of("au", "250 ml")));
      case "tbsp", "tbsps", "tbs", "tablespoon", "tablespoons" ->
          new UnitWord(
              word,
              List.of(
                  VolumeUnit.US_TABLESPOON,
                  VolumeUnit.METRIC_TABLESPOON,
                  VolumeUnit.AUSTRALIAN_TABLESPOON),
              List.of(List.of("us"), List.of("metric", "15 ml"), List.of("au", "20 ml")));
      case "tsp", "tsps", "teaspoon", "teaspoons" ->
          new UnitWord(
              word,
              List.of(VolumeUnit.US_TEASPOON, VolumeUnit.METRIC_TEASPOON),
              List.of(List.of("us"), List.of("metric", "5 ml")));
      case "%", "percent", "per cent", "pct" -> percent();
      default -> massOrTrace(word);
    };
  }

  private static UnitWord massOrTrace(String word) {
    return switch (word) {
      case "oz", "ozs", "ounce", "ounces" ->
          new UnitWord(
              word,
              List.of(MassUnit.OUNCE, VolumeUnit.US_FLUID_OUNCE, VolumeUnit.IMPERIAL_FLUID_OUNCE),
              List.of(AVOIRDUPOIS, List.of(), List.of()));
      case "ton", "tons" ->
          new UnitWord(
              word,
              List.of(MassUnit.TONNE, MassUnit.SHORT_TON, MassUnit.LONG_TON),
              List.of(List.of("metric"), List.of("short", "us"), List.of("long", "imp")));
      case "cwt", "cwts", "hundredweight", "hundredweights" ->
          new UnitWord(
              word,
              List.of(MassUnit.SHORT_HUNDREDWEIGHT, MassUnit.LONG_HUNDREDWEIGHT),
              List.of(List.of("short", "us"), List.of("long", "imp")));
      case "ppm" ->
          new UnitWord(
              word,
              List.of(
                  MassPerMassUnit.PART_PER_MILLION,
                  MassPerVolumeUnit.PART_PER_MILLION,
                  VolumePerVolumeUnit.PART_PER_MILLION),
              List.of(BY_MASS, MASS_BY_VOLUME, BY_VOLUME));
      case "ppb" ->
          new UnitWord(
              word,
              List.of(MassPerMassUnit.PART_PER_BILLION, MassPerVolumeUnit.PART_PER_BILLION),
              List.of(BY_MASS, MASS_BY_VOLUME));
      default -> null;
    };
  }

  /** Words whose capitals change their size, or null if the capitals do no harm. */
  static UnitWord capitals(String word) {
    return switch (word) {
      case "M" -> trap(word, "a capital M alone is no unit", LengthUnit.METRE, WorkTimeUnit.MINUTE);
      case "ML", "Ml" ->
          trap(word, word + " is a megalitre, a million litres", VolumeUnit.MILLILITRE);
      case "MG", "Mg" ->
          trap(
              word,
              word + " is a megagram, which is a tonne, or a slip for the milligram",
              MassUnit.MILLIGRAM,
              MassUnit.TONNE);
      case "G" -> trap(word, "a capital G alone is no unit", MassUnit.GRAM);
      case "T" -> trap(word, "a capital T alone is no unit of mass", MassUnit.TONNE);
      case "Mm", "MM" ->
          trap(word, word + " is a megametre, or a slip for it", LengthUnit.MILLIMETRE);
      case "mPa" -> trap(word, "mPa is a millipascal", PressureUnit.MEGAPASCAL);
      default -> null;
    };
  }

  private static UnitWord trap(String word, String why, Unit<?>... units) {
    return new UnitWord(word, List.of(units), List.of(), "", why);
  }

  private static UnitWord usOrImperial(String word, Unit<?> us, Unit<?> imperial) {
    return new UnitWord(word, List.of(us, imperial), List.of(List.of("us"), List.of("imp")));
  }

  private static UnitWord fluidOunce(String word) {
    return new UnitWord(
        word,
        List.of(
            VolumeUnit.US_FLUID_OUNCE,
            VolumeUnit.IMPERIAL_FLUID_OUNCE,
            VolumeUnit.METRIC_FLUID_OUNCE),
        List.of(List.of("us"), List.of("imp"), List.of("30 ml")));
  }

  private static UnitWord percent() {
    return new UnitWord(
        "%",
        List.of(MassPerMassUnit.PERCENT, MassPerVolumeUnit.PERCENT, VolumePerVolumeUnit.PERCENT),
        List.of(BY_MASS, MASS_BY_VOLUME, BY_VOLUME));
  }
}
