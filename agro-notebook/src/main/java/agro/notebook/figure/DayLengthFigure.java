package agro.notebook.figure;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.sun.DayLength;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The length of the day through the year, at one place or several. */
public final class DayLengthFigure {

  private static final int HEIGHT = 330;
  private static final int AXIS_HEIGHT = 32;
  private static final double LEFT_ROOM = 0.035;
  private static final int HOURS = 24;
  private static final int HOURS_APART = 3;

  private DayLengthFigure() {}

  /**
   * Draws the hours from the beginning of the day to its end on every day of a year.
   *
   * @param year the calendar year
   * @param places rules of the places
   * @return the figure
   * @throws InputProblem when no place is given
   */
  public static DrawnFigure of(int year, DayLength... places) {
    if (places.length == 0) {
      throw InputProblem.of("a figure of day lengths without a place")
          .expected("at least one latitude")
          .because("the length of the day depends on it")
          .mend("give a day length, for example DayLength.at(Latitude.north(46.4))");
    }
    var rules = Arrays.stream(places).map(DayLength::toString).distinct().toList();
    var first = LocalDate.of(year, 1, 1);
    var sheet =
        new FigureSheet(
            "Length of the day in " + year,
            "Hours of sun that a clear day could have, by latitude",
            List.of(panel(first, places)));
    return new DrawnFigure(
        sheet,
        alternative(year, places),
        FigureWords.sentence(String.join("; ", rules)) + ".",
        data(year, places));
  }

  private static ChartPanel panel(LocalDate first, DayLength... places) {
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Day length (h)");
    double start = CalendarAxis.at(first);
    double end = start + first.lengthOfYear();
    panel.ranges(start - LEFT_ROOM * (end - start), end, 0, HOURS + 1).withoutYTicks();
    for (int hour = 0; hour <= HOURS; hour += HOURS_APART) {
      var colour = hour == 0 ? FigureLook.QUIET_INK : FigureLook.GRID;
      panel.stroke(start, hour, end, hour, colour, FigureLook.solid(1));
      panel.words(
          Integer.toString(hour),
          start,
          hour,
          ChartPanel.Side.LEFT,
          FigureLook.SMALL,
          FigureLook.INK);
    }
    var span = new CalendarAxis.Span(first, first.plusYears(1));
    CalendarAxis.rule(panel, span, 0, HOURS);
    CalendarAxis.label(panel, span, 0);
    for (int i = 0; i < places.length; i++) {
      var x = new double[first.lengthOfYear()];
      var y = new double[x.length];
      for (int day = 0; day < x.length; day++) {
        x[day] = start + day + 0.5;
        y[day] = places[i].hours(first.plusDays(day));
      }
      var colour = i == 0 ? FigureLook.BLUE : i == 1 ? FigureLook.INK : FigureLook.MIDDLE_GREY;
      panel.curve(
          x, y, colour, i == 0 ? FigureLook.solid(2.5) : FigureLook.dashed(i == 1 ? 2 : 1.5));
      int label = labelDay(first, places[i], x.length);
      panel.words(
          places[i].latitude().toString(),
          x[label],
          y[label],
          ChartPanel.Side.ABOVE,
          FigureLook.BOLD,
          colour);
    }
    return panel;
  }

  /** The longest day, where the lines of different latitudes stand farthest apart. */
  private static int labelDay(LocalDate first, DayLength place, int days) {
    int longest = 0;
    for (int day = 1; day < days; day++) {
      if (place.hours(first.plusDays(day)) > place.hours(first.plusDays(longest))) {
        longest = day;
      }
    }
    return longest;
  }

  private static String alternative(int year, DayLength... places) {
    var parts = new ArrayList<String>();
    for (var place : places) {
      double winter = place.hours(LocalDate.of(year, 12, 21));
      double summer = place.hours(LocalDate.of(year, 6, 21));
      parts.add(
          place.latitude()
              + " "
              + Numbers.fixed(summer, 1)
              + " h on 21 June and "
              + Numbers.fixed(winter, 1)
              + " h on 21 December");
    }
    return "Length of the day in " + year + ": " + String.join("; ", parts) + ".";
  }

  private static ResultTable data(int year, DayLength... places) {
    var columns = new ArrayList<Column>();
    columns.add(Column.of("Day"));
    for (var place : places) {
      columns.add(Column.of(place.latitude().toString(), "h"));
    }
    var rows = new ArrayList<List<Cell>>();
    for (int month = 1; month <= 12; month++) {
      var day = LocalDate.of(year, month, 21);
      var row = new ArrayList<Cell>();
      row.add(Cell.day(day));
      for (var place : places) {
        row.add(Cell.number(place.hours(day), 2));
      }
      rows.add(row);
    }
    return ResultTable.of("Length of the day", columns, rows);
  }
}
