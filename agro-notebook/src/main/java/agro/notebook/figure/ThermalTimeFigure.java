package agro.notebook.figure;

import agro.development.Reached;
import agro.development.ThermalTimeScale;
import agro.report.InputProblem;
import agro.units.Numbers;
import agro.units.ThermalTime;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How the sums of degree-days of several logs, sitings or methods grow side by side. */
public final class ThermalTimeFigure {

  private ThermalTimeFigure() {}

  /**
   * One growing sum.
   *
   * @param name what it is called in the figure
   * @param scale the sums
   */
  record NamedSum(String name, ThermalTimeScale scale) {}

  /**
   * Draws growing sums, the largest on top whatever the order of the names.
   *
   * @param sums the sums by the names that they get in the figure
   * @return the figure
   * @throws InputProblem when there is none
   */
  public static DrawnFigure of(Map<String, ThermalTimeScale> sums) {
    return figure(sums, Optional.empty());
  }

  /**
   * Draws growing sums and the day on which each reaches a requirement.
   *
   * @param sums the sums by the names that they get in the figure
   * @param requirement the sum to be reached
   * @return the figure
   * @throws InputProblem when there is no sum
   */
  public static DrawnFigure of(Map<String, ThermalTimeScale> sums, ThermalTime requirement) {
    return figure(sums, Optional.of(requirement));
  }

  private static DrawnFigure figure(
      Map<String, ThermalTimeScale> sums, Optional<ThermalTime> requirement) {
    if (sums.isEmpty()) {
      throw InputProblem.of("a figure of no sum of degree-days")
          .expected("at least one sum with its name")
          .because("there is nothing to draw")
          .mend("give a map from names to sums");
    }
    var lines =
        sums.entrySet().stream()
            .map(entry -> new NamedSum(entry.getKey(), entry.getValue()))
            .sorted(
                Comparator.comparingDouble((NamedSum line) -> -line.scale().totalC())
                    .thenComparing(NamedSum::name))
            .toList();
    var span =
        FigureWords.longDay(first(lines)) + " to " + FigureWords.longDay(last(lines).minusDays(1));
    var sheet =
        new FigureSheet(
            "Degree-days as they add up",
            span + requirement.map(sum -> "; the level is " + sum).orElse(""),
            List.of(new ThermalTimePlot(lines, requirement).panel()));
    return new DrawnFigure(
        sheet, alternative(lines, span, requirement), caption(lines), data(lines, requirement));
  }

  static LocalDate first(List<NamedSum> lines) {
    return lines.stream()
        .map(line -> line.scale().firstDay())
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }

  /** The day after the last one. */
  static LocalDate last(List<NamedSum> lines) {
    return lines.stream()
        .map(line -> line.scale().lastDay().plusDays(1))
        .max(Comparator.naturalOrder())
        .orElseThrow();
  }

  private static String alternative(
      List<NamedSum> lines, String span, Optional<ThermalTime> requirement) {
    var text = new StringBuilder("Sums of degree-days, ").append(span).append(": ");
    var parts = new ArrayList<String>();
    for (var line : lines) {
      parts.add(
          line.name()
              + " "
              + FigureWords.degreeDays(line.scale().totalC())
              + requirement.map(sum -> ", " + reached(line, sum)).orElse(""));
    }
    return text.append(String.join("; ", parts)).append('.').toString();
  }

  private static String reached(NamedSum line, ThermalTime requirement) {
    return line.scale()
        .reached(requirement)
        .map(Reached::day)
        .map(day -> FigureWords.degreeDays(requirement.degreeDaysC()) + " on " + day)
        .orElse(FigureWords.degreeDays(requirement.degreeDaysC()) + " not reached");
  }

  private static String caption(List<NamedSum> lines) {
    var rules = lines.stream().map(line -> line.scale().model().toString()).distinct().toList();
    return "Each line is one way to the temperatures or to their sum, from its own first day. "
        + FigureWords.sentence(String.join("; ", rules))
        + ".";
  }

  private static ResultTable data(List<NamedSum> lines, Optional<ThermalTime> requirement) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Sum"));
    columns.add(Column.of("First day"));
    columns.add(Column.of("Last day"));
    columns.add(Column.of("Total", FigureWords.DEGREE_DAYS));
    requirement.ifPresent(
        sum -> columns.add(Column.of("Reaches " + Numbers.plain(sum.degreeDaysC()) + " °C·d")));
    var rows = new ArrayList<List<Cell>>();
    for (var line : lines) {
      var row = new ArrayList<Cell>();
      row.add(Cell.text(line.name()));
      row.add(Cell.day(line.scale().firstDay()));
      row.add(Cell.day(line.scale().lastDay()));
      row.add(Cell.number(line.scale().totalC(), 1));
      requirement.ifPresent(
          sum ->
              row.add(
                  line.scale()
                      .reached(sum)
                      .map(reached -> Cell.day(reached.day()))
                      .orElse(Cell.text("not reached"))));
      rows.add(row);
    }
    return ResultTable.of("Sums of degree-days", columns, rows);
  }
}
