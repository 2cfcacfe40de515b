package agro.trial.bioassay;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Reads an assay from delimited text with one line for each group. Columns: {@code dose} (0 for the
 * control) and either {@code dead}, {@code moribund}, {@code alive}, or {@code n} with {@code
 * responded} or {@code dead}; and, where there are several, {@code series} and {@code day}. Further
 * columns are left alone.
 */
public final class BioassayReader {

  private final String title;
  private final DoseAxis axis;
  private final EndPoint endPoint;

  private BioassayReader(String title, DoseAxis axis, EndPoint endPoint) {
    this.title = title;
    this.axis = axis;
    this.endPoint = endPoint;
  }

  /**
   * Reads a file.
   *
   * @param file the file
   * @param format how it is written
   * @param title what was tested on what
   * @param axis what the column {@code dose} measures
   * @param endPoint whether moribund animals count as responding; has to be stated
   * @return the assay with a report of what was assumed or left out
   * @throws InputProblem when a column is missing, a cell cannot be used or the end point is open
   */
  public static BioassayData read(
      Path file, DelimitedFormat format, String title, DoseAxis axis, EndPoint endPoint) {
    EndPoints.stated(endPoint);
    return of(DelimitedText.read(file, format, List.of("dose")), title, axis, endPoint);
  }

  /**
   * Reads text that is in memory.
   *
   * @param text the lines with their heading
   * @param title what was tested on what
   * @param axis what the column {@code dose} measures
   * @param endPoint whether moribund animals count as responding; has to be stated
   * @return the assay with a report of what was assumed or left out
   * @throws InputProblem when a column is missing, a cell cannot be used or the end point is open
   */
  public static BioassayData of(
      DelimitedText text, String title, DoseAxis axis, EndPoint endPoint) {
    return new BioassayReader(title, axis, EndPoints.stated(endPoint)).read(text.requireRows());
  }

  private BioassayData read(DelimitedText text) {
    requireCounts(text);
    var report = new ReadReport.Collector(text.name());
    if (text.hasColumn("moribund") && endPoint == EndPoint.AS_COUNTED) {
      throw EndPoints.open("a column \"moribund\" in " + text.name());
    }
    if (!text.hasColumn("moribund") && endPoint == EndPoint.DEAD_OR_MORIBUND) {
      report.add(
          Deed.ASSUMED,
          text.location(),
          "the file does not tell moribund animals apart; they are taken to be among those that"
              + " responded");
    }
    var groups = new ArrayList<DoseGroup>();
    for (var line : text.lines()) {
      report.countRow();
      add(line, text, groups, report);
    }
    return new BioassayData(title, axis, endPoint, groups, report.report());
  }

  private static void requireCounts(DelimitedText text) {
    boolean byCondition = text.hasColumn("dead") && text.hasColumn("alive");
    boolean byNumber =
        text.hasColumn("n") && (text.hasColumn("responded") || text.hasColumn("dead"));
    if (!byCondition && !byNumber) {
      throw InputProblem.at(text.location(), "columns " + text.columns())
          .expected("dead, moribund and alive; or n with responded")
          .because("a share needs the animals that responded and all that were exposed")
          .mend("add the missing column");
    }
  }

  private void add(
      DelimitedLine line, DelimitedText text, List<DoseGroup> groups, ReadReport.Collector report) {
    double dose = line.number("dose");
    int exposed;
    int responded;
    if (text.hasColumn("alive")) {
      var moribund = text.hasColumn("moribund") ? line.count("moribund") : 0;
      var counts = new ConditionCounts(line.count("dead"), moribund, line.count("alive"));
      exposed = counts.exposed();
      responded = endPoint == EndPoint.AS_COUNTED ? counts.dead() : counts.responded(endPoint);
    } else {
      exposed = line.count("n");
      responded = text.hasColumn("responded") ? line.count("responded") : dead(line, text);
    }
    if (exposed == 0) {
      report.add(Deed.DROPPED, line.location(), "a group without animals is left out");
      return;
    }
    if (responded > exposed) {
      throw InputProblem.at(line.location(), responded + " responding of " + exposed + " animals")
          .expected("a number from 0 to " + exposed)
          .because("no more animals can respond than were exposed")
          .mend("look the two counts up; perhaps the columns are swapped");
    }
    groups.add(
        new DoseGroup(
            dose, exposed, responded, name(line, text, "series"), name(line, text, "day")));
  }

  private int dead(DelimitedLine line, DelimitedText text) {
    OptionalInt moribund =
        text.hasColumn("moribund") ? line.optionalCount("moribund") : OptionalInt.empty();
    return line.count("dead") + (endPoint == EndPoint.DEAD_OR_MORIBUND ? moribund.orElse(0) : 0);
  }

  private static String name(DelimitedLine line, DelimitedText text, String column) {
    return text.hasColumn(column) ? line.optionalText(column).orElse("") : "";
  }
}
