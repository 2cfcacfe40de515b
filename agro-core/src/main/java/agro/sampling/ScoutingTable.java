package agro.sampling;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/**
 * Scouting counts from a file with one line for each unit that was looked at. Columns: {@code
 * field}, {@code date} (year-month-day), {@code unit} (plant, leaf, sweep …), {@code pest} and
 * {@code count}; and, where known, {@code units} (how many were counted together, 1 when left out),
 * {@code part} (edge, middle) and {@code parasitised} (those among the count). Further columns are
 * left alone.
 *
 * @param lines the lines in the order of the file
 */
public record ScoutingTable(List<Looked> lines) {

  private static final List<String> REQUIRED = List.of("field", "date", "unit", "pest", "count");

  /**
   * One unit that was looked at.
   *
   * @param field the field
   * @param date the day
   * @param part part of the field, empty when it has none
   * @param unit what was looked at
   * @param pest what was counted
   * @param count animals, 0 or more
   * @param parasitised parasitised ones among them, nothing when they were not looked for
   */
  public record Looked(
      String field,
      LocalDate date,
      String part,
      SamplingUnit unit,
      String pest,
      int count,
      Optional<Integer> parasitised) {}

  /** Makes the list immutable. */
  public ScoutingTable {
    lines = List.copyOf(lines);
  }

  /**
   * Reads a file with commas and decimal points in UTF-8.
   *
   * @param file the file
   * @return the table
   * @throws InputProblem when a column is missing or a cell cannot be used; the message names line
   *     and column
   */
  public static ScoutingTable read(Path file) {
    return read(file, DelimitedFormat.COMMA);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param format how it is written
   * @return the table
   * @throws InputProblem when a column is missing or a cell cannot be used
   */
  public static ScoutingTable read(Path file, DelimitedFormat format) {
    return of(DelimitedText.read(file, format, REQUIRED));
  }

  /**
   * Reads text that is in memory.
   *
   * @param text the lines with their heading
   * @return the table
   * @throws InputProblem when a column is missing or a cell cannot be used
   */
  public static ScoutingTable of(DelimitedText text) {
    var lines = new ArrayList<Looked>();
    for (var line : text.requireRows().lines()) {
      lines.add(looked(line));
    }
    return new ScoutingTable(lines);
  }

  private static Looked looked(DelimitedLine line) {
    int count = line.count("count");
    Optional<Integer> parasitised =
        line.optionalCount("parasitised").isPresent()
            ? Optional.of(line.count("parasitised"))
            : Optional.empty();
    if (parasitised.isPresent() && parasitised.get() > count) {
      throw InputProblem.at(
              line.location("parasitised"), parasitised.get() + " parasitised of " + count)
          .expected("no more than the count")
          .because("the parasitised ones are counted among all")
          .mend("write living and parasitised ones together into the column count");
    }
    return new Looked(
        line.text("field"),
        line.date("date"),
        line.optionalText("part").orElse(""),
        unit(line),
        line.text("pest"),
        count,
        parasitised);
  }

  private static SamplingUnit unit(DelimitedLine line) {
    var kind = line.choice("unit", SamplingUnit.Kind.class);
    int number = line.optionalCount("units").orElse(1);
    if (number < 1) {
      throw InputProblem.at(line.location("units"), "the number of units is " + number)
          .expected("1 or more")
          .because("a count belongs to something that was looked at")
          .mend("write how many were counted together, or leave the cell empty for one");
    }
    return new SamplingUnit(kind, number);
  }

  /**
   * The pests of the table.
   *
   * @return names in the order of the file
   */
  public List<String> pests() {
    var names = new LinkedHashSet<String>();
    lines.forEach(line -> names.add(line.pest()));
    return List.copyOf(names);
  }

  /**
   * The lines of one pest.
   *
   * @param pest name of the pest
   * @return a smaller table
   * @throws InputProblem when the pest is not in the table
   */
  public ScoutingTable ofPest(String pest) {
    return some(lines.stream().filter(line -> line.pest().equals(pest)).toList(), pest, pests());
  }

  /**
   * The lines of one field, of all days.
   *
   * @param field name of the field
   * @return a smaller table
   * @throws InputProblem when the field is not in the table
   */
  public ScoutingTable inField(String field) {
    var names = new LinkedHashSet<String>();
    lines.forEach(line -> names.add(line.field()));
    return some(
        lines.stream().filter(line -> line.field().equals(field)).toList(),
        field,
        List.copyOf(names));
  }

  private static ScoutingTable some(List<Looked> found, String name, List<String> names) {
    if (found.isEmpty()) {
      throw InputProblem.of("no line for \"" + name + "\"")
          .expected("one of " + names)
          .because("there is nothing to count")
          .mend("write the name as it stands in the table");
    }
    return new ScoutingTable(found);
  }

  /**
   * The counts, a sample for each field and day in the order of the file. A table of several pests
   * has to be narrowed to one of them first.
   *
   * @return the samples
   * @throws InputProblem when there are several pests, when units of one sample differ, or a sample
   *     has one unit only
   */
  public List<CountSample> samples() {
    requireOnePest();
    return samples(line -> line.field() + ", " + line.date(), Looked::count);
  }

  /**
   * The counts by part of the field, a sample for each field, day and part.
   *
   * @return the samples, named by field, day and part
   * @throws InputProblem as for {@link #samples}
   */
  public List<CountSample> samplesByPart() {
    requireOnePest();
    return samples(
        line ->
            line.field() + ", " + line.date() + (line.part().isEmpty() ? "" : ", " + line.part()),
        Looked::count);
  }

  /**
   * The parasitised animals, a sample for each field and day beside those of {@link #samples}.
   *
   * @return the samples
   * @throws InputProblem when they were not counted on every unit, and as for {@link #samples}
   */
  public List<CountSample> parasitised() {
    requireOnePest();
    var open = lines.stream().filter(line -> line.parasitised().isEmpty()).findFirst();
    if (open.isPresent()) {
      throw InputProblem.of(
              open.get().field()
                  + ", "
                  + open.get().date()
                  + ": a unit without a parasitised count")
          .expected("parasitised animals on every unit, zero where there was none")
          .because("not looked for is not the same as none")
          .mend("fill in the column \"parasitised\", or narrow the table to fields that have it");
    }
    return samples(
        line -> line.field() + ", " + line.date(), line -> line.parasitised().orElseThrow());
  }

  private void requireOnePest() {
    if (pests().size() > 1) {
      throw InputProblem.of("counts of " + pests())
          .expected("one pest")
          .because("animals of two kinds do not add up to one density")
          .mend("narrow the table with ofPest first");
    }
  }

  private List<CountSample> samples(Function<Looked, String> label, ToIntFunction<Looked> value) {
    Map<String, List<Looked>> groups = new LinkedHashMap<>();
    for (var line : lines) {
      groups.computeIfAbsent(label.apply(line), any -> new ArrayList<>()).add(line);
    }
    var samples = new ArrayList<CountSample>();
    groups.forEach(
        (name, group) -> {
          var unit = group.get(0).unit();
          group.forEach(line -> unit.requireSame(line.unit(), name));
          samples.add(
              new CountSample(
                  name,
                  unit,
                  group.stream().map(value::applyAsInt).map(Integer::valueOf).toList()));
        });
    return List.copyOf(samples);
  }

  @Override
  public String toString() {
    return lines.size() + " units looked at, pests " + Objects.toString(pests());
  }
}
