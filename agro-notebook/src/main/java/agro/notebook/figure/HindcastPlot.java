package agro.notebook.figure;

import agro.generation.skill.Hindcast;
import agro.generation.skill.HindcastForecast;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.LeadTime;
import agro.notebook.figure.ChartPanel.Side;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.hipparchus.util.FastMath;

/** Panels of forecasts less observed dates, all on one scale of days and one calendar. */
final class HindcastPlot {

  private static final int PANEL_HEIGHT = 128;
  private static final int AXIS_HEIGHT = 58;
  private static final int LEFT_ROOM = 60;
  private static final double LEAST_DAYS = 10;
  private static final double MOST_DAYS = 40;
  private static final int MARGIN_DAYS = 6;

  /** Any year without 29 February, onto which all seasons are laid. */
  private static final int COMMON_YEAR = 2001;

  private final Hindcast hindcast;
  private final HindcastScheme scheme;
  private final CalendarAxis.Span span;
  private final double reach;

  HindcastPlot(Hindcast hindcast, HindcastScheme scheme) {
    this.hindcast = hindcast;
    this.scheme = scheme;
    var first = Double.POSITIVE_INFINITY;
    var last = Double.NEGATIVE_INFINITY;
    var widest = LEAST_DAYS;
    for (var each : hindcast.forecasts()) {
      first = FastMath.min(first, place(each));
      last = FastMath.max(last, place(each));
      widest = FastMath.max(widest, FastMath.abs(from(each, 0.1)));
      widest = FastMath.max(widest, FastMath.abs(from(each, 0.9)));
    }
    if (hindcast.forecasts().isEmpty()) {
      first = CalendarAxis.at(LocalDate.of(COMMON_YEAR, 1, 1));
      last = first + 364;
    }
    span =
        new CalendarAxis.Span(
            LocalDate.ofEpochDay((long) first - MARGIN_DAYS),
            LocalDate.ofEpochDay((long) last + MARGIN_DAYS));
    reach = FastMath.min(MOST_DAYS, 5 * FastMath.ceil(widest / 5));
  }

  /** A quantile of a forecast less the observed date, cut at the season's end. */
  static double from(HindcastForecast forecast, double probability) {
    return FastMath.min(forecast.dates().quantileDays(probability), forecast.horizonDays())
        - forecast.observedDays();
  }

  private static double place(HindcastForecast forecast) {
    var start = forecast.firstDay().withYear(COMMON_YEAR);
    return CalendarAxis.at(start) + forecast.observedDays();
  }

  List<ChartPanel> panels() {
    var panels = new ArrayList<ChartPanel>();
    var leads = hindcast.plan().leads();
    for (var i = 0; i < leads.size(); i++) {
      panels.add(panel(leads.get(i), i == leads.size() - 1));
    }
    return panels;
  }

  private ChartPanel panel(LeadTime lead, boolean last) {
    var panel = new ChartPanel(PANEL_HEIGHT, last ? AXIS_HEIGHT : 4, "Days late");
    panel.leftRoom(LEFT_ROOM);
    panel.ranges(
        CalendarAxis.at(span.from()), CalendarAxis.at(span.to().plusDays(1)), -reach, reach);
    CalendarAxis.rule(panel, span, -reach, reach);
    panel.level(0, FigureLook.INK, FigureLook.solid(1.2));
    var forecasts = HindcastFigure.at(hindcast, scheme, lead);
    for (var each : forecasts) {
      draw(panel, each);
    }
    panel.words(
        lead.issuedWords() + (forecasts.isEmpty() ? ": no forecast" : ""),
        panel.xLow(),
        0.84 * reach,
        Side.RIGHT,
        FigureLook.BOLD,
        FigureLook.INK);
    if (last) {
      CalendarAxis.label(panel, span, -reach);
      panel.words(
          "Observed date, all seasons on one calendar",
          (panel.xLow() + panel.xHigh()) / 2,
          -reach,
          Side.FAR_BELOW,
          FigureLook.TEXT,
          FigureLook.INK);
    }
    return panel;
  }

  private void draw(ChartPanel panel, HindcastForecast forecast) {
    var x = place(forecast);
    var inside = forecast.inside(0.8);
    panel.stroke(
        x,
        clipped(from(forecast, 0.1)),
        x,
        clipped(from(forecast, 0.9)),
        inside ? FigureLook.MIDDLE_GREY : FigureLook.VERMILION,
        FigureLook.solid(3.5));
    panel.mark(
        x,
        clipped(forecast.errorDays()),
        inside ? FigureLook.INK : FigureLook.VERMILION,
        inside ? FigureMark.OBSERVATION : FigureMark.BOUND);
  }

  private double clipped(double days) {
    return FastMath.max(-reach, FastMath.min(reach, days));
  }
}
