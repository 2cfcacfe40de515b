package agro.programme;

import agro.dose.ActivePerArea;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.DosePerArea;
import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.Strength;
import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.reading.NearestWord;
import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** The table of label records. Columns that it does not know are kept as they are. */
final class LabelTable {

  private static final List<String> OTHER =
      List.of(
          "product",
          "crop",
          "pests",
          "active",
          "group",
          "content",
          "dose",
          "min_dose",
          "pre_harvest",
          "re_entry",
          "rain_free",
          "bees",
          "bee_hours");

  private LabelTable() {}

  static List<String> columns() {
    var columns = new ArrayList<>(OTHER);
    columns.addAll(LabelColumns.MOST_DOSE.keySet());
    columns.addAll(LabelColumns.MOST_APPLICATIONS.keySet());
    columns.addAll(LabelColumns.INTERVALS.keySet());
    columns.addAll(LabelColumns.BUFFERS.keySet());
    return columns;
  }

  static List<LabelRecord> read(String name, String text) {
    var table = DelimitedText.parse(name, text, DelimitedFormat.COMMA, List.of("product", "crop"));
    table.columns().forEach(column -> refuseMisspelt(table, column));
    return table.lines().stream().map(line -> read(table, line)).toList();
  }

  /** A misspelt column of limits would otherwise be a limit that nobody sees. */
  private static void refuseMisspelt(DelimitedText table, String column) {
    var known = columns();
    var word = column.toLowerCase(Locale.ROOT);
    boolean looksLikeLimit = word.startsWith("max_") || word.startsWith("min_");
    var near = NearestWord.to(word, known);
    if (!known.contains(word) && (looksLikeLimit || near.isPresent())) {
      throw InputProblem.at(
              table.location().column(column), "there is no column of limits called so")
          .expected("one of " + String.join(", ", new TreeSet<>(known)))
          .because("a limit under another name would not be held against anything")
          .mend(
              near.map(other -> "write \"" + other + "\" if that is meant, or another name")
                  .orElse("write one of these, or a name that begins otherwise"));
    }
  }

  private static LabelRecord read(DelimitedText table, DelimitedLine line) {
    var actives = actives(line);
    var limits = new ArrayList<LabelLimit>(LabelColumns.limits(line));
    var caps = new ArrayList<ActiveCap>();
    LabelColumns.MOST_DOSE.forEach(
        (column, scope) -> doses(line, column, scope, actives, limits, caps));
    var use = line.text("product") + " on " + line.text("crop");
    return new LabelRecord(
        line.text("product"),
        line.text("crop"),
        line.optionalText("pests").map(cell -> List.of(cell.split("\\s*;\\s*"))).orElse(List.of()),
        actives,
        line.optionalText("dose")
            .map(
                cell ->
                    LabelColumns.located(
                        line, "dose", () -> LabelColumns.dose(line, "dose", cell))),
        new LabelLimits(use, limits),
        caps,
        stewardship(line),
        further(table, line),
        line.location());
  }

  private static LabelRecord.Stewardship stewardship(DelimitedLine line) {
    return new LabelRecord.Stewardship(
        LabelColumns.entry(line, "rain_free", text -> LabelColumns.time(line, "rain_free", text))
            .orElse(LabelEntry.notRecorded()),
        LabelColumns.entry(line, "bees", text -> line.choice("bees", BeeRule.class))
            .orElse(LabelEntry.notRecorded()),
        LabelColumns.entry(line, "bee_hours", text -> LabelColumns.time(line, "bee_hours", text))
            .orElse(LabelEntry.notRecorded()));
  }

  private static Map<String, String> further(DelimitedText table, DelimitedLine line) {
    var known = columns();
    var cells = new LinkedHashMap<String, String>();
    for (var column : table.columns()) {
      if (!known.contains(column.toLowerCase(Locale.ROOT))) {
        line.optionalText(column).ifPresent(text -> cells.put(column, text));
      }
    }
    return cells;
  }

  /** Maxima of product, and maxima of active ingredient, which other products use up too. */
  private static void doses(
      DelimitedLine line,
      String column,
      LimitScope scope,
      List<LabelActive> actives,
      List<LabelLimit> limits,
      List<ActiveCap> caps) {
    var cell = line.optionalText(column);
    if (cell.isEmpty()) {
      return;
    }
    for (var part : cell.get().split("\\s*;\\s*", -1)) {
      var words = part.split("\\s+of\\s+", 2);
      var entry =
          part.equalsIgnoreCase("none")
              ? LabelEntry.<DosePerArea>none()
              : LabelEntry.stated(
                  LabelColumns.located(
                      line, column, () -> LabelColumns.dose(line, column, words[0])));
      var limit = new DoseLimit(DoseBound.MAXIMUM, entry, scope, Optional.empty());
      boolean ofActive =
          entry instanceof LabelEntry.Stated<DosePerArea> stated
              && stated.value() instanceof ActivePerArea;
      if (ofActive) {
        caps.add(new ActiveCap(activeOf(line, column, part, words, actives), limit));
      } else {
        limits.add(limit);
      }
    }
  }

  private static String activeOf(
      DelimitedLine line, String column, String part, String[] words, List<LabelActive> actives) {
    var names = actives.stream().map(LabelActive::name).toList();
    if (words.length == 1 && names.size() == 1) {
      return names.get(0);
    }
    if (words.length == 2 && names.contains(words[1].strip())) {
      return words[1].strip();
    }
    throw LabelColumns.cell(
        line,
        column,
        part,
        names.isEmpty()
            ? "the name of the active ingredient in the column \"active\""
            : "an amount of one of " + names + ", such as \"1.5 kg ai/ha of " + names.get(0) + "\"",
        "a maximum of active ingredient is added up over all products that hold it");
  }

  private static List<LabelActive> actives(DelimitedLine line) {
    var names = parts(line, "active");
    var groups = parts(line, "group");
    var contents = parts(line, "content");
    requireAsMany(line, "group", names, groups);
    requireAsMany(line, "content", names, contents);
    var actives = new ArrayList<LabelActive>();
    for (int i = 0; i < names.size(); i++) {
      int place = i;
      var content =
          contents.isEmpty()
              ? Optional.<Strength>empty()
              : Optional.of(
                  LabelColumns.located(line, "content", () -> Strength.parse(contents.get(place))));
      var group = groups.isEmpty() ? Optional.<String>empty() : Optional.of(groups.get(i));
      actives.add(new LabelActive(names.get(i), group, content));
    }
    return actives;
  }

  private static List<String> parts(DelimitedLine line, String column) {
    UnaryOperator<String> strip = String::strip;
    return line
        .optionalText(column)
        .map(text -> List.of(text.split("\\s*;\\s*|\\s+\\+\\s+")))
        .orElse(List.of())
        .stream()
        .map(strip)
        .toList();
  }

  private static void requireAsMany(
      DelimitedLine line, String column, List<String> names, List<String> others) {
    if (!others.isEmpty() && others.size() != names.size()) {
      throw LabelColumns.cell(
          line,
          column,
          String.join("; ", others),
          "as many as active ingredients, separated by semicolons: " + String.join("; ", names),
          "it is unknown which of them belongs to which ingredient");
    }
  }
}
