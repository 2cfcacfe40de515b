package agro.course.paper;

import agro.course.CourseSetting;
import agro.course.CourseUnits;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.NearestWord;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.ReadReport.Entry;
import agro.report.SourceLocation;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.TextLanguage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A teacher's own place and units, from a file with the columns {@code key} and {@code value}. Keys
 * are place, fields, crops, pests, currency, units (metric or us) and land_unit; several names in a
 * value stand apart by semicolons or slashes, or in several lines with the same key. What is left
 * out is taken from the invented vale, and the report says so.
 *
 * @param setting the setting
 * @param report what was assumed
 */
public record SettingFile(CourseSetting setting, ReadReport report) implements Presentable {

  private static final List<String> COLUMNS = List.of("key", "value");

  /** What a file may state. */
  private enum Key {
    PLACE,
    FIELDS,
    CROPS,
    PESTS,
    CURRENCY,
    UNITS,
    LAND_UNIT;

    private String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    private boolean isList() {
      return this == FIELDS || this == CROPS || this == PESTS;
    }

    private static Key of(DelimitedLine line) {
      var words = Arrays.stream(values()).map(Key::word).toList();
      var text = line.text("key");
      var plain = text.toLowerCase(Locale.ROOT).replaceAll("[ -]", "_");
      int index = words.indexOf(plain);
      if (index < 0) {
        throw InputProblem.at(line.location("key"), "the key \"" + text + "\" is not known")
            .expected("one of " + String.join(", ", words))
            .because("it would be ignored without a word")
            .mend(
                NearestWord.to(plain, words)
                    .map(near -> "write \"" + near + "\" if that is meant")
                    .orElse("take one of these keys"));
      }
      return values()[index];
    }
  }

  /** A value with its place. */
  private record Stated(List<String> values, SourceLocation location) {}

  /**
   * Reads a setting.
   *
   * @param file the file
   * @param language language of the names that are taken from the vale
   * @return setting and report
   * @throws InputProblem with the line of what cannot be used
   */
  public static SettingFile read(Path file, TextLanguage language) {
    return read(file, DelimitedFormat.COMMA, language);
  }

  /**
   * Reads a setting that is written in some other way.
   *
   * @param file the file
   * @param format how it is written
   * @param language language of the names that are taken from the vale
   * @return setting and report
   * @throws InputProblem with the line of what cannot be used
   */
  public static SettingFile read(Path file, DelimitedFormat format, TextLanguage language) {
    return of(DelimitedText.read(file, format, COLUMNS), language);
  }

  /**
   * Reads a setting from text.
   *
   * @param name name of the text in messages
   * @param text the content of a file
   * @param format how it is written
   * @param language language of the names that are taken from the vale
   * @return setting and report
   * @throws InputProblem with the line of what cannot be used
   */
  public static SettingFile parse(
      String name, String text, DelimitedFormat format, TextLanguage language) {
    return of(DelimitedText.parse(name, text, format, COLUMNS), language);
  }

  private static SettingFile of(DelimitedText table, TextLanguage language) {
    var stated = stated(table.requireRows());
    var vale = CourseSetting.osmereVale(language);
    var entries = new ArrayList<Entry>();
    var place = stated.getOrDefault(Key.PLACE, new Stated(List.of(), table.location()));
    var setting =
        new CourseSetting(
            one(stated, Key.PLACE, vale.place(), place.location(), entries),
            several(stated, Key.FIELDS, vale.fields(), 3, place.location(), entries),
            several(stated, Key.CROPS, vale.crops(), 1, place.location(), entries),
            several(stated, Key.PESTS, vale.pests(), 2, place.location(), entries),
            one(stated, Key.CURRENCY, vale.currency(), place.location(), entries),
            units(stated, entries, table.location()));
    return new SettingFile(
        setting, new ReadReport(table.name(), table.lines().size(), List.copyOf(entries)));
  }

  private static Map<Key, Stated> stated(DelimitedText table) {
    var stated = new EnumMap<Key, Stated>(Key.class);
    for (var line : table.lines()) {
      var key = Key.of(line);
      var text = line.text("value");
      var values = key.isList() ? List.of(text.split("\\s*[;/|]\\s*", -1)) : List.of(text);
      var earlier = stated.get(key);
      if (earlier != null && !key.isList()) {
        throw InputProblem.at(line.location("key"), key.word() + " is stated twice")
            .expected("each key once")
            .because("it is not clear which value is meant")
            .mend("remove one of the two lines");
      }
      var all = new ArrayList<String>(earlier == null ? List.of() : earlier.values());
      values.stream().filter(value -> !value.isBlank()).forEach(value -> all.add(value.strip()));
      stated.put(key, new Stated(List.copyOf(all), line.location("value")));
    }
    return stated;
  }

  private static String one(
      Map<Key, Stated> stated,
      Key key,
      String otherwise,
      SourceLocation file,
      List<Entry> entries) {
    if (stated.containsKey(key)) {
      return stated.get(key).values().get(0);
    }
    assumed(key, otherwise, file, entries);
    return otherwise;
  }

  private static List<String> several(
      Map<Key, Stated> stated,
      Key key,
      List<String> otherwise,
      int fewest,
      SourceLocation file,
      List<Entry> entries) {
    if (!stated.containsKey(key)) {
      assumed(key, String.join("; ", otherwise), file, entries);
      return otherwise;
    }
    var values = stated.get(key).values().stream().distinct().toList();
    if (values.size() < fewest) {
      throw InputProblem.at(
              stated.get(key).location(), values.size() + " " + key.word() + ": " + values)
          .expected("at least " + fewest + " different ones")
          .because("some exercises tell of several")
          .mend("add names, apart by semicolons, or leave out the line");
    }
    return values;
  }

  private static void assumed(Key key, String value, SourceLocation file, List<Entry> entries) {
    entries.add(new Entry(Deed.ASSUMED, file, key.word() + " is not stated; taken: " + value));
  }

  private static CourseUnits units(
      Map<Key, Stated> stated, List<Entry> entries, SourceLocation file) {
    var units = CourseUnits.METRIC;
    if (stated.containsKey(Key.UNITS)) {
      units = system(stated.get(Key.UNITS));
    } else {
      assumed(Key.UNITS, "metric", file, entries);
    }
    if (!stated.containsKey(Key.LAND_UNIT)) {
      assumed(Key.LAND_UNIT, units.land().words(), file, entries);
      return units;
    }
    var land = stated.get(Key.LAND_UNIT);
    var unit = LandUnitText.read(land.values().get(0), land.location());
    entries.add(
        new Entry(
            Deed.NOTED,
            land.location(),
            "1 " + unit.symbol() + " is " + Numbers.plain(unit.toBase(1)) + " m²"));
    return units.withLand(unit);
  }

  private static CourseUnits system(Stated stated) {
    return switch (stated.values().get(0).toLowerCase(Locale.ROOT)) {
      case "metric" -> CourseUnits.METRIC;
      case "us" -> CourseUnits.US;
      default ->
          throw InputProblem.at(stated.location(), "units are " + stated.values().get(0))
              .expected("metric or us")
              .because("all numbers of the exercises are drawn in these units")
              .mend("write metric or us; give another unit of fields as land_unit");
    };
  }

  /** The setting and what was assumed. */
  @Override
  public Presentation presentation() {
    return Presentation.titled("Place and units of the course")
        .fact("place", setting.place())
        .fact("fields", String.join("; ", setting.fields()))
        .fact("crops", String.join("; ", setting.crops()))
        .fact("pests", String.join("; ", setting.pests()))
        .fact("currency", setting.currency())
        .fact("unit of fields", setting.units().land().symbol())
        .part(Presentation.of(report))
        .build();
  }
}
