package agro.course.practical;

import agro.reading.DelimitedLine;
import agro.report.InputProblem;
import agro.units.Quantity;
import agro.units.UnreadableQuantity;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * The cells of one group. A number takes the unit that stands behind it, else the one behind the
 * last number of its cell, else the one of the heading; without any it is refused.
 */
final class ReadingCells {

  private static final Pattern NUMBER = Pattern.compile("([0-9.,][0-9.,']*)\\s*(.*)");
  private static final Pattern BETWEEN_NOZZLES = Pattern.compile("\\s*\\|\\s*");
  private static final Pattern BETWEEN_REPEATS = Pattern.compile("\\s*;\\s*");
  private static final Pattern BETWEEN_ANY = Pattern.compile("\\s*[;|]\\s*");

  private final DelimitedLine line;
  private final ReadingHeadings headings;
  private final char decimalMark;

  ReadingCells(DelimitedLine line, ReadingHeadings headings, char decimalMark) {
    this.line = line;
    this.headings = headings;
    this.decimalMark = decimalMark;
  }

  DelimitedLine line() {
    return line;
  }

  Optional<String> text(ReadingColumn column) {
    return headings.has(column) ? line.optionalText(headings.heading(column)) : Optional.empty();
  }

  boolean has(ReadingColumn column) {
    return text(column).isPresent();
  }

  /** A whole number of things, 1 or more. */
  Optional<Integer> count(ReadingColumn column) {
    if (!has(column)) {
      return Optional.empty();
    }
    int count = line.count(headings.heading(column));
    if (count < 1) {
      throw refused(
          column, "1 or more", "a sprayer without nozzles puts out nothing", "count them");
    }
    return Optional.of(count);
  }

  <Q extends Quantity<Q>> Optional<Q> one(ReadingColumn column, Function<String, Q> reader) {
    if (!has(column)) {
      return Optional.empty();
    }
    var all = several(column, reader);
    if (all.size() > 1) {
      throw refused(
          column,
          "one value with its unit",
          "only times, catches, outputs and refills are repeated",
          "write the value that holds for all runs");
    }
    return Optional.of(positive(column, all.get(0)));
  }

  <Q extends Quantity<Q>> List<Q> several(ReadingColumn column, Function<String, Q> reader) {
    var parts = BETWEEN_ANY.split(text(column).orElse(""), -1);
    var read = new ArrayList<Q>();
    for (var part : parts) {
      read.add(read(column, part, parts[parts.length - 1], reader));
    }
    return List.copyOf(read);
  }

  /** Readings by nozzle where strokes part the nozzles and semicolons the repeats. */
  <Q extends Quantity<Q>> List<List<Q>> byNozzle(ReadingColumn column, Function<String, Q> reader) {
    var nozzles = BETWEEN_NOZZLES.split(text(column).orElse(""), -1);
    var last = BETWEEN_ANY.split(text(column).orElse(""), -1);
    var read = new ArrayList<List<Q>>();
    for (var nozzle : nozzles) {
      var repeats = new ArrayList<Q>();
      for (var part : BETWEEN_REPEATS.split(nozzle, -1)) {
        repeats.add(read(column, part, last[last.length - 1], reader));
      }
      read.add(List.copyOf(repeats));
    }
    return List.copyOf(read);
  }

  private <Q extends Quantity<Q>> Q read(
      ReadingColumn column, String part, String last, Function<String, Q> reader) {
    var number = NUMBER.matcher(part);
    if (!number.matches()) {
      throw refused(
          column,
          "numbers with their unit, with \";\" or \"|\" between repeated ones",
          "\"" + part + "\" is no number",
          "write for example 31.2 s; 30.8 s, or leave the cell empty");
    }
    var unit = number.group(2);
    if (unit.isEmpty()) {
      var end = NUMBER.matcher(last);
      unit = end.matches() ? end.group(2) : "";
    }
    if (unit.isEmpty()) {
      unit = headings.unit(column);
    }
    if (unit.isEmpty()) {
      throw refused(
          column,
          "a number with its unit",
          "a number alone may be metres or feet, litres or millilitres",
          "write the unit behind the number, or in brackets behind the heading");
    }
    try {
      return reader.apply(pointed(column, number.group(1)) + " " + unit);
    } catch (UnreadableQuantity | InputProblem problem) {
      throw refused(
          column,
          "a value with its unit",
          "the calibration is worked out from it: " + problem.getMessage(),
          "write the number and its unit, for example 25 m, 31.2 s, 450 mL or 300 L/ha");
    }
  }

  private String pointed(ReadingColumn column, String number) {
    if (decimalMark == '.') {
      return number;
    }
    if (number.indexOf('.') >= 0) {
      throw refused(
          column,
          "a decimal comma, as declared for this file",
          "a point may be a decimal sign or part thousands from hundreds",
          "write a comma, or declare a decimal point for the file");
    }
    return number.replace(',', '.');
  }

  <Q extends Quantity<Q>> Q positive(ReadingColumn column, Q value) {
    if (!(value.inBaseUnit() > 0)) {
      throw refused(
          column,
          "more than zero",
          "the volume per area is a quotient of the readings",
          "write what was measured, or leave the cell empty");
    }
    return value;
  }

  /** A problem with a cell that is not empty, or that should not be. */
  InputProblem refused(ReadingColumn column, String expected, String why, String cure) {
    var place = headings.has(column) ? line.location(headings.heading(column)) : line.location();
    var found =
        text(column)
            .map(text -> "the cell reads \"" + text + "\"")
            .orElse("there is nothing for \"" + column.heading(TextLanguage.ENGLISH) + "\"");
    return InputProblem.at(place, found).expected(expected).because(why).mend(cure);
  }
}
