package agro.course.marking;

import agro.units.TemperatureUnit;
import agro.units.ThermalTimeUnit;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Words of two languages for units, in the words that the reader of quantities knows. */
final class UnitWords {

  private static final Pattern WORD = Pattern.compile("\\p{L}+\\.?");
  private static final Pattern PERCENT =
      Pattern.compile(
          "(?:%|percent|per cent|pct\\.?|prozent|v\\.? ?h\\.?)(?: ?\\(?[vwm]/[vwm]\\)?)?(?: .*)?",
          Pattern.CASE_INSENSITIVE);

  private static final Map<String, String> GERMAN =
      Map.ofEntries(
          Map.entry("liter", "L"),
          Map.entry("litern", "L"),
          Map.entry("milliliter", "mL"),
          Map.entry("millilitern", "mL"),
          Map.entry("mls", "mL"),
          Map.entry("ccm", "mL"),
          Map.entry("kubikzentimeter", "mL"),
          Map.entry("zentiliter", "cL"),
          Map.entry("deziliter", "dL"),
          Map.entry("hektoliter", "hL"),
          Map.entry("mikroliter", "µL"),
          Map.entry("kubikmeter", "m³"),
          Map.entry("cbm", "m³"),
          Map.entry("hektar", "ha"),
          Map.entry("hektare", "ha"),
          Map.entry("hektaren", "ha"),
          Map.entry("quadratmeter", "m²"),
          Map.entry("quadratmetern", "m²"),
          Map.entry("qm", "m²"),
          Map.entry("quadratkilometer", "km²"),
          Map.entry("quadratzentimeter", "cm²"),
          Map.entry("gramm", "g"),
          Map.entry("kilogramm", "kg"),
          Map.entry("milligramm", "mg"),
          Map.entry("mikrogramm", "µg"),
          Map.entry("tonnen", "t"),
          Map.entry("dezitonne", "q"),
          Map.entry("dezitonnen", "q"),
          Map.entry("dt", "q"),
          Map.entry("doppelzentner", "q"),
          Map.entry("metern", "m"),
          Map.entry("zentimeter", "cm"),
          Map.entry("zentimetern", "cm"),
          Map.entry("millimeter", "mm"),
          Map.entry("millimetern", "mm"),
          Map.entry("kilometer", "km"),
          Map.entry("kilometern", "km"),
          Map.entry("sekunde", "s"),
          Map.entry("sekunden", "s"),
          Map.entry("sek", "s"),
          Map.entry("minute", "min"),
          Map.entry("minuten", "min"),
          Map.entry("stunde", "h"),
          Map.entry("stunden", "h"),
          Map.entry("std", "h"),
          Map.entry("tag", "d"),
          Map.entry("tage", "d"),
          Map.entry("tagen", "d"),
          Map.entry("kmh", "km/h"),
          Map.entry("kph", "km/h"),
          Map.entry("stundenkilometer", "km/h"),
          Map.entry("unze", "oz"),
          Map.entry("unzen", "oz"),
          Map.entry("esslöffel", "tbsp"),
          Map.entry("el", "tbsp"),
          Map.entry("teelöffel", "tsp"),
          Map.entry("tl", "tsp"),
          Map.entry("metrisch", "metric"),
          Map.entry("flüssigunze", "fl oz"),
          Map.entry("flüssigunzen", "fl oz"),
          Map.entry("gallone", "gal"),
          Map.entry("gallonen", "gal"),
          Map.entry("fuß", "ft"),
          Map.entry("fuss", "ft"),
          Map.entry("zoll", "in"),
          Map.entry("meile", "mi"),
          Map.entry("meilen", "mi"),
          Map.entry("sporen", "spores"),
          Map.entry("konidien", "conidia"),
          Map.entry("kbe", "CFU"),
          Map.entry("pflanze", "plant"),
          Map.entry("pflanzen", "plants"),
          Map.entry("baum", "tree"),
          Map.entry("bäume", "trees"),
          Map.entry("pumpe", "pump"),
          Map.entry("pumpen", "pumps"),
          Map.entry("falle", "trap"),
          Map.entry("fallen", "traps"),
          Map.entry("wasser", "water"),
          Map.entry("mittel", "product"),
          Map.entry("produkt", "product"),
          Map.entry("präparat", "product"),
          Map.entry("wirkstoff", "ai"),
          Map.entry("prozent", "%"),
          Map.entry("pro", "per"),
          Map.entry("je", "per"),
          Map.entry("auf", "per"));

  private static final Set<String> CELSIUS_DAYS =
      Set.of(
          "°cd",
          "cd",
          "°ctag",
          "°ctage",
          "°cday",
          "°cdays",
          "cdays",
          "degreedaysc",
          "degreedays°c",
          "degreedaycelsius",
          "degreedayscelsius",
          "celsiusdegreedays",
          "ddc",
          "dd°c",
          "gradtagec",
          "gradtage°c",
          "gradcelsiustage",
          "gradctage",
          "kd",
          "kelvindays",
          "kelvintage",
          "daydegreesc",
          "daydegreescelsius");
  private static final Set<String> FAHRENHEIT_DAYS =
      Set.of(
          "°fd",
          "fd",
          "°ftage",
          "°fday",
          "°fdays",
          "fdays",
          "degreedaysf",
          "degreedays°f",
          "degreedaysfahrenheit",
          "fahrenheitdegreedays",
          "ddf",
          "dd°f",
          "gradtagef",
          "gradtage°f",
          "daydegreesf",
          "daydegreesfahrenheit");
  private static final Set<String> DAYS =
      Set.of(
          "degreeday",
          "degreedays",
          "growingdegreedays",
          "daydegree",
          "daydegrees",
          "dd",
          "gdd",
          "gradtag",
          "gradtage",
          "gradtagen",
          "tagesgrad",
          "tagesgrade",
          "gt",
          "°d",
          "°days",
          "°tage");
  private static final Set<String> HOURS =
      Set.of(
          "°ch",
          "°chours",
          "°cstunden",
          "kh",
          "degreehour",
          "degreehours",
          "gradstunde",
          "gradstunden");

  private UnitWords() {}

  /** The text with German words, some abbreviations and signs in their English form. */
  static String english(String unit) {
    var signs = unit.replace('*', '·').replace("^-1", "-1").replace("^(-1)", "-1");
    return WORD.matcher(signs)
        .replaceAll(
            word -> {
              var bare = word.group().replace(".", "").toLowerCase(Locale.ROOT);
              return java.util.regex.Matcher.quoteReplacement(
                  GERMAN.getOrDefault(bare, word.group()));
            })
        .strip();
  }

  static boolean isPercent(String unit) {
    return PERCENT.matcher(unit).matches();
  }

  /** The unit of degree-days; without a scale it is the one that is expected. */
  static Optional<ThermalTimeUnit> thermalTime(String unit, ThermalTimeUnit expected) {
    var word = joined(unit);
    if (CELSIUS_DAYS.contains(word)) {
      return Optional.of(ThermalTimeUnit.CELSIUS_DAY);
    }
    if (FAHRENHEIT_DAYS.contains(word)) {
      return Optional.of(ThermalTimeUnit.FAHRENHEIT_DAY);
    }
    if (HOURS.contains(word)) {
      return Optional.of(ThermalTimeUnit.CELSIUS_HOUR);
    }
    return DAYS.contains(word) ? Optional.of(expected) : Optional.empty();
  }

  /** The unit of a temperature; without a scale it is the one that is expected. */
  static Optional<TemperatureUnit> temperature(String unit, TemperatureUnit expected) {
    return switch (joined(unit)) {
      case "°c", "c", "celsius", "gradcelsius", "gradc", "degc", "degreesc", "degreec" ->
          Optional.of(TemperatureUnit.CELSIUS);
      case "degreescelsius", "degreecelsius", "°celsius" -> Optional.of(TemperatureUnit.CELSIUS);
      case "°f", "f", "fahrenheit", "gradfahrenheit", "gradf", "degf", "degreesf", "degreef" ->
          Optional.of(TemperatureUnit.FAHRENHEIT);
      case "degreesfahrenheit", "degreefahrenheit", "°fahrenheit" ->
          Optional.of(TemperatureUnit.FAHRENHEIT);
      case "k", "kelvin", "°k" -> Optional.of(TemperatureUnit.KELVIN);
      case "°", "grad", "deg", "degree", "degrees" -> Optional.of(expected);
      default -> Optional.empty();
    };
  }

  private static String joined(String unit) {
    return unit.toLowerCase(Locale.ROOT).replaceAll("[ .·*×()-]", "");
  }
}
