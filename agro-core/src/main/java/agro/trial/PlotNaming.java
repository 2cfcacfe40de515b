package agro.trial;

import agro.reading.DelimitedLine;
import agro.reading.DelimitedText;
import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.trial.PlotColumns.Role;
import agro.units.Area;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds out what tells the plots of a table apart. */
final class PlotNaming {

  private enum Way {
    NAME,
    NAME_WITHIN_BLOCK,
    PLACE,
    EACH_LINE,
    BLOCK_AND_TREATMENT
  }

  private final PlotColumns columns;
  private final Way way;
  private int linesNamed;

  private PlotNaming(PlotColumns columns, Way way) {
    this.columns = columns;
    this.way = way;
  }

  static PlotNaming of(DelimitedText text, PlotColumns columns, ReadReport.Collector report) {
    var way = way(text, columns);
    var words =
        switch (way) {
          case NAME -> "";
          case NAME_WITHIN_BLOCK ->
              "the same names of plots stand in several blocks, so plots are told apart by block"
                  + " and name";
          case PLACE -> "there is no column of plots, so plots are told apart by row and column";
          case EACH_LINE -> "each line was declared to be a plot of its own";
          case BLOCK_AND_TREATMENT ->
              "there is no column of plots, so a treatment in a block is one plot; its repeated"
                  + " lines on one day are sub-samples and no replicates";
        };
    if (!words.isEmpty()) {
      report.add(ReadReport.Deed.ASSUMED, text.location(), words);
    }
    return new PlotNaming(columns, way);
  }

  private static Way way(DelimitedText text, PlotColumns columns) {
    var plot = columns.nameOf(Role.PLOT);
    if (text.hasColumn(plot)) {
      return startsAnewInBlocks(text, columns, plot) ? Way.NAME_WITHIN_BLOCK : Way.NAME;
    }
    if (columns.eachLineAPlot()) {
      requireOneDay(text, columns);
      return Way.EACH_LINE;
    }
    if (text.hasColumn(columns.nameOf(Role.ROW)) && text.hasColumn(columns.nameOf(Role.COLUMN))) {
      return Way.PLACE;
    }
    if (text.hasColumn(columns.nameOf(Role.BLOCK))) {
      return Way.BLOCK_AND_TREATMENT;
    }
    throw InputProblem.at(text.location(), "neither plots, nor places, nor blocks in the table")
        .expected("a column \"plot\", or \"row\" and \"column\", or \"block\"")
        .because(
            "without them repeated lines of a treatment may be plots or plants within a plot, and"
                + " plants are no replicates")
        .mend("add the column, or declare withEachLineAPlot() if each line is a plot of its own");
  }

  private static boolean startsAnewInBlocks(DelimitedText text, PlotColumns columns, String plot) {
    var block = columns.nameOf(Role.BLOCK);
    if (!text.hasColumn(block)) {
      return false;
    }
    Map<String, Set<String>> blocks = new HashMap<>();
    for (var line : text.lines()) {
      var name =
          line.optionalText(columns.nameOf(Role.SITE)).orElse("")
              + "\n"
              + line.optionalText(columns.nameOf(Role.YEAR)).orElse("")
              + "\n"
              + line.text(plot);
      blocks.computeIfAbsent(name, key -> new HashSet<>()).add(line.optionalText(block).orElse(""));
    }
    long several = blocks.values().stream().filter(set -> set.size() > 1).count();
    return 2 * several > blocks.size();
  }

  private static void requireOneDay(DelimitedText text, PlotColumns columns) {
    var date = columns.nameOf(Role.DATE);
    if (columns.wide() || !text.hasColumn(date)) {
      return;
    }
    var days = new HashSet<String>();
    text.lines().forEach(line -> days.add(line.text(date)));
    if (days.size() > 1) {
      throw InputProblem.at(
              text.location().column(date),
              "each line a plot of its own, and " + days.size() + " days")
          .expected("one day, or a column that names the plots")
          .because("a plot that was looked at twice would count as two replicates")
          .mend("add a column \"plot\"");
    }
  }

  String nameOf(DelimitedLine line, Map<String, String> levels) {
    linesNamed++;
    return switch (way) {
      case NAME -> TableText.asWritten(line.text(columns.nameOf(Role.PLOT)));
      case NAME_WITHIN_BLOCK -> block(line) + "/" + line.text(columns.nameOf(Role.PLOT));
      case PLACE ->
          line.text(columns.nameOf(Role.ROW)) + "/" + line.text(columns.nameOf(Role.COLUMN));
      case EACH_LINE -> Integer.toString(linesNamed);
      case BLOCK_AND_TREATMENT -> block(line) + "/" + String.join("/", levels.values());
    };
  }

  private String block(DelimitedLine line) {
    return line.text(columns.nameOf(Role.BLOCK));
  }

  Optional<Area> area(DelimitedLine line) {
    var column = columns.nameOf(Role.AREA);
    var number = line.optionalNumber(column);
    if (number.isEmpty()) {
      return Optional.empty();
    }
    if (!(number.getAsDouble() > 0)) {
      throw InputProblem.at(line.location(column), "an area of " + number.getAsDouble())
          .expected("more than 0")
          .because("a plot covers ground")
          .mend("write the area, or leave the cell empty");
    }
    return Optional.of(Area.of(number.getAsDouble(), columns.areaUnit()));
  }
}
