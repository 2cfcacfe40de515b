package agro.weather.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What the words of a heading mean, English first, with the common words of other languages. */
final class HeadingWords {

  private static final Set<String> TEMPERATURE =
      Set.of(
          "temp",
          "temps",
          "temperature",
          "temperatures",
          "temperatur",
          "température",
          "temperature1",
          "temperatura",
          "temperatuur",
          "tair",
          "ta",
          "tmp",
          "tmpc",
          "tmpf",
          "atmp",
          "t2m",
          "thermometer",
          "lufttemperatur",
          "celsius",
          "fahrenheit",
          "kelvin",
          "degc",
          "degf",
          "tempc",
          "tempf",
          "airtemp",
          "temperaturec",
          "temperaturef",
          "tsoil",
          "soiltemp",
          "bodentemperatur");
  private static final Set<String> MINIMUM =
      Set.of(
          "min",
          "minimum",
          "tmin",
          "tn",
          "tnn",
          "low",
          "lowest",
          "tempmin",
          "mintemp",
          "minima",
          "minimale",
          "minimal",
          "minimalna",
          "minimo",
          "mínimo",
          "mín",
          "mini",
          "minimumtemperatur",
          "minimumtemperatuur",
          "mintemperatur",
          "tiefstwert",
          "tiefsttemperatur",
          "mintemperature",
          "mínima",
          "tminc",
          "tminf",
          "coldest");
  private static final Set<String> MAXIMUM =
      Set.of(
          "max",
          "maximum",
          "tmax",
          "tx",
          "txx",
          "high",
          "highest",
          "tempmax",
          "maxtemp",
          "maxima",
          "maximale",
          "maximal",
          "maksimum",
          "maksymalna",
          "massima",
          "massimo",
          "máximo",
          "máx",
          "maxi",
          "maximumtemperatur",
          "maximumtemperatuur",
          "maxtemperatur",
          "höchstwert",
          "höchsttemperatur",
          "maxtemperature",
          "máxima",
          "tmaxc",
          "tmaxf",
          "hi",
          "warmest");
  private static final Set<String> MEAN =
      Set.of("mean", "avg", "average", "tavg", "tmean", "tg", "mittel", "moyenne", "media", "ave");
  private static final Set<String> COMPUTED =
      Set.of(
          "dew",
          "dewpoint",
          "wet",
          "wetbulb",
          "bulb",
          "chill",
          "feels",
          "apparent",
          "taupunkt",
          "battery",
          "batt",
          "panel",
          "ptemp",
          "board",
          "internal",
          "logger",
          "cpu",
          "heat",
          "thw",
          "thsw",
          "range",
          "difference",
          "virtual",
          "degree");
  private static final Set<String> QUANTITY =
      Set.of(
          "humidity",
          "humid",
          "hum",
          "rh",
          "relhum",
          "moisture",
          "wetness",
          "pressure",
          "baro",
          "hpa",
          "kpa",
          "mbar",
          "rain",
          "rainfall",
          "precip",
          "precipitation",
          "prcp",
          "wind",
          "gust",
          "speed",
          "direction",
          "solar",
          "radiation",
          "rad",
          "par",
          "lux",
          "uv",
          "co2",
          "vpd",
          "snow",
          "sunshine",
          "cloud",
          "conductivity",
          "feuchte",
          "luftfeuchte",
          "niederschlag",
          "humedad",
          "humidité",
          "umidità",
          "umidade",
          "pluie",
          "lluvia",
          "chuva",
          "pioggia",
          "viento",
          "vento",
          "regen",
          "battery",
          "batt",
          "bat",
          "volt",
          "volts",
          "voltage",
          "mv",
          "rssi",
          "signal",
          "light",
          "evaporation",
          "et0",
          "vbat");
  private static final Set<String> LABEL =
      Set.of(
          "no",
          "nr",
          "number",
          "record",
          "rec",
          "recnbr",
          "row",
          "id",
          "serial",
          "index",
          "count",
          "station",
          "site",
          "plot",
          "block",
          "lat",
          "latitude",
          "lon",
          "longitude",
          "elev",
          "elevation",
          "altitude",
          "flag",
          "quality",
          "qc",
          "code",
          "status",
          "error",
          "event",
          "seq",
          "sequence",
          "sample",
          "name",
          "channel",
          "remark",
          "note",
          "comment",
          "hash");
  private static final Set<String> TIME =
      Set.of(
          "date",
          "time",
          "datetime",
          "timestamp",
          "datum",
          "zeit",
          "uhrzeit",
          "fecha",
          "hora",
          "heure",
          "data",
          "ora",
          "timestamputc",
          "tm",
          "when",
          "zeitpunkt",
          "valid",
          "observed",
          "clock",
          "ampm",
          "utc",
          "gmt");

  private HeadingWords() {}

  /** The words of a heading in lower case, parted at blanks, signs and changes of case. */
  static List<String> words(String heading) {
    var words = new ArrayList<String>();
    var word = new StringBuilder();
    for (int i = 0; i < heading.length(); i++) {
      char c = heading.charAt(i);
      boolean part = Character.isLetterOrDigit(c);
      boolean hump =
          Character.isUpperCase(c) && i > 0 && Character.isLowerCase(heading.charAt(i - 1));
      if ((!part || hump) && !word.isEmpty()) {
        words.add(word.toString().toLowerCase(Locale.ROOT));
        word.setLength(0);
      }
      if (part) {
        word.append(c);
      }
    }
    if (!word.isEmpty()) {
      words.add(word.toString().toLowerCase(Locale.ROOT));
    }
    return words;
  }

  static ColumnKind kind(String heading) {
    var words = words(heading);
    if (words.isEmpty()) {
      return heading.contains("%") ? ColumnKind.OTHER_QUANTITY : ColumnKind.UNKNOWN;
    }
    var part = timePart(words);
    if (part != ColumnKind.UNKNOWN) {
      return part;
    }
    boolean warm = any(words, TEMPERATURE) || isBareUnit(heading, words);
    boolean quantity = any(words, QUANTITY) || heading.contains("%");
    if (any(words, COMPUTED) && (warm || !quantity)) {
      return ColumnKind.OTHER_TEMPERATURE;
    }
    if (quantity && (!warm || words.contains("index"))) {
      return ColumnKind.OTHER_QUANTITY;
    }
    if (words.contains("unit") || words.contains("units")) {
      return ColumnKind.UNIT;
    }
    return ofTemperature(words, warm);
  }

  private static ColumnKind ofTemperature(List<String> words, boolean warm) {
    if (any(words, MINIMUM)) {
      return ColumnKind.MINIMUM;
    }
    if (any(words, MAXIMUM)) {
      return ColumnKind.MAXIMUM;
    }
    if (any(words, MEAN)) {
      return ColumnKind.MEAN;
    }
    if (warm) {
      return ColumnKind.TEMPERATURE;
    }
    if (any(words, TIME)) {
      return ColumnKind.TIME;
    }
    return any(words, LABEL) ? ColumnKind.OTHER_QUANTITY : ColumnKind.UNKNOWN;
  }

  private static boolean isBareUnit(String heading, List<String> words) {
    return UnitWords.ofHeading(heading).isPresent() && !any(words, TIME);
  }

  private static ColumnKind timePart(List<String> words) {
    var joined = String.join("", words);
    return switch (joined) {
      case "year", "yr", "yyyy", "yy", "jahr", "année", "año", "y" -> ColumnKind.YEAR;
      case "month", "mo", "mon", "monat", "mois", "mes", "mm" -> ColumnKind.MONTH;
      case "day", "dd", "dom", "dayofmonth", "tag", "jour", "día", "dy", "d" -> ColumnKind.DAY;
      case "doy", "dayofyear", "jday", "julian", "julianday", "yday", "jd" ->
          ColumnKind.DAY_OF_YEAR;
      case "hour", "hr", "hrs", "hh", "hours", "stunde", "h", "hhmm" -> ColumnKind.HOUR;
      case "minute", "minutes", "mins", "mi", "mn", "minuten" -> ColumnKind.MINUTE;
      default -> ColumnKind.UNKNOWN;
    };
  }

  private static boolean any(List<String> words, Set<String> known) {
    for (var word : words) {
      if (known.contains(word)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a cell is the name of a unit or of a kind of summary, as in rows below the heading. */
  static boolean isDescription(String cell) {
    return cell.isEmpty() || NumberCell.of(cell).isEmpty();
  }
}
