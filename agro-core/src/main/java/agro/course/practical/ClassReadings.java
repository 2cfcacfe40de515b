package agro.course.practical;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import agro.reading.SafeFile;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.working.TextLanguage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;

/**
 * The calibrations of a class from one file, a line for each group. Columns (German headings in
 * brackets): group (gruppe); {@code sprayer} (spritze); {@code course} (strecke) and {@code time}
 * (zeit), or {@code speed} (geschwindigkeit); {@code width} (breite), or {@code nozzles} (düsen)
 * and {@code spacing} (düsenabstand); {@code catches} (auffangmengen) of single nozzles or {@code
 * output} (gesamtmenge) of all, with {@code catch_time} (auffangzeit), or {@code refill}
 * (nachgefüllt); and where known {@code own_result} (eigenes_ergebnis) and {@code target} (soll).
 * Units stand behind the numbers or behind the heading, as in {@code course (m)} or {@code
 * course_m}. Repeated readings are parted by {@code ;}; in {@code catches} a stroke {@code |} parts
 * the nozzles. Further columns are left alone.
 *
 * @param groups what each group measured, in the order of the file
 * @param emptyGroups groups that have measured nothing yet, in the order of the file
 * @param report the lines that were read, and those left out because nothing was measured yet
 */
public record ClassReadings(
    List<GroupReadings> groups, List<String> emptyGroups, ReadReport report) {

  /** Copies the lists. */
  public ClassReadings {
    groups = List.copyOf(groups);
    emptyGroups = List.copyOf(emptyGroups);
    Objects.requireNonNull(report, "report");
  }

  /**
   * Reads a file with commas and decimal points in UTF-8.
   *
   * @param file the file
   * @return the readings
   * @throws InputProblem when a column is missing or a cell cannot be used; the message names line
   *     and column
   */
  public static ClassReadings read(Path file) {
    return read(file, DelimitedFormat.COMMA);
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param format how it is written; with semicolons between the cells, a cell with several
   *     readings stands in double quotes or parts them by {@code |}
   * @return the readings
   * @throws InputProblem when a column is missing or a cell cannot be used
   */
  public static ClassReadings read(Path file, DelimitedFormat format) {
    return of(DelimitedText.read(file, format, List.of()));
  }

  /**
   * Reads text that is in memory.
   *
   * @param text the lines with their heading
   * @return the readings
   * @throws InputProblem when a column is missing, a cell cannot be used, a group stands twice or
   *     no group has readings
   */
  public static ClassReadings of(DelimitedText text) {
    var headings = ReadingHeadings.of(text);
    var report = new ReadReport.Collector(text.name());
    var groups = new ArrayList<GroupReadings>();
    var names = new HashSet<String>();
    var empty = new ArrayList<String>();
    for (var line : text.requireRows().lines()) {
      var cells = new ReadingCells(line, headings, text.format().decimalMark());
      report.countRow();
      var reader = new GroupReader(cells);
      if (!names.add(reader.group())) {
        throw cells.refused(
            ReadingColumn.GROUP,
            "each group once",
            "a group counted twice weighs double in the mean",
            "write repeated readings into one line, with \";\" between them, or rename the group");
      }
      if (reader.isEmpty()) {
        empty.add(reader.group());
        report.add(Deed.DROPPED, line.location(), "group " + reader.group() + " has no readings");
      } else {
        groups.add(reader.readings());
      }
    }
    if (groups.isEmpty()) {
      throw InputProblem.at(text.location(), "no group has readings")
          .expected("at least one line with course, width and catches")
          .because("there is nothing to pool")
          .mend("fill in what the groups measured");
    }
    return new ClassReadings(groups, empty, report.report());
  }

  /**
   * The sprayers of the file.
   *
   * @return names in the order of the file; empty where the file names none
   */
  public List<String> sprayers() {
    var names = new LinkedHashSet<String>();
    groups.stream().map(GroupReadings::sprayer).filter(name -> !name.isEmpty()).forEach(names::add);
    return List.copyOf(names);
  }

  /**
   * The groups that measured one sprayer.
   *
   * @param sprayer name of the sprayer
   * @return fewer readings
   * @throws InputProblem when no group measured it
   */
  public ClassReadings ofSprayer(String sprayer) {
    var some = groups.stream().filter(group -> group.sprayer().equals(sprayer)).toList();
    if (some.isEmpty()) {
      throw InputProblem.of("no group measured \"" + sprayer + "\"")
          .expected("one of " + sprayers())
          .because("there is nothing to pool")
          .mend("write the name as it stands in the file");
    }
    return new ClassReadings(some, List.of(), report);
  }

  /**
   * Pools the calibrations.
   *
   * @param rules how they are judged and printed
   * @return the result
   * @throws InputProblem when they are to be compared with targets and a group has none
   */
  public ClassCalibration pooled(PoolingRules rules) {
    return ClassCalibration.of(this, rules);
  }

  /**
   * An empty file to be filled in, with examples as comments.
   *
   * @param language language of the headings; German files have semicolons and decimal commas
   * @return the text
   */
  public static String template(TextLanguage language) {
    return CalibrationTemplate.text(language);
  }

  /**
   * Writes an empty file to be filled in.
   *
   * @param file the file, which must not exist yet
   * @param language language of the headings
   * @throws InputProblem when the file exists
   */
  public static void writeTemplate(Path file, TextLanguage language) {
    if (Files.exists(file)) {
      throw InputProblem.at(SourceLocation.file(file.toString()), "the file exists")
          .expected("the name of a new file")
          .because("readings that stand in it would be lost")
          .mend("name another file, or move this one away first");
    }
    SafeFile.writeText(file, template(language));
  }

  @Override
  public String toString() {
    return groups.size() + (groups.size() == 1 ? " group" : " groups");
  }
}
