package agro.notebook.figure;

import agro.stats.linear.LinearModelFit;
import agro.trial.analysis.AnalysedTrial;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Figures of the residuals of linear models and of trials. */
final class ModelResiduals {

  private final List<ResidualPoint> points;
  private final String scale;

  private ModelResiduals(List<ResidualPoint> points, String scale) {
    this.points = List.copyOf(points);
    this.scale = scale;
  }

  static DrawnFigure of(LinearModelFit fit) {
    double[] fitted = fit.fittedValues();
    double[] standardised = fit.standardisedResiduals();
    var points = new ArrayList<ResidualPoint>();
    for (int i = 0; i < fitted.length; i++) {
      points.add(new ResidualPoint(Integer.toString(i + 1), "", fitted[i], standardised[i]));
    }
    return new ModelResiduals(points, "").figure("What the model leaves");
  }

  static DrawnFigure of(AnalysedTrial analysed) {
    var points = new ArrayList<ResidualPoint>();
    for (var plot : analysed.plots()) {
      if (plot.fitted().isPresent() && plot.standardised().isPresent()) {
        points.add(
            new ResidualPoint(
                plot.plot().name(),
                plot.plot().treatment(),
                plot.fitted().getAsDouble(),
                plot.standardised().getAsDouble()));
      }
    }
    var subject = analysed.subject();
    return new ModelResiduals(
            points,
            subject.route().isGeneralisedLinear() || subject.transformation().isNone()
                ? subject.values().response().name()
                : subject.transformation().words())
        .figure("What the analysis of " + subject.title() + " leaves");
  }

  private DrawnFigure figure(String heading) {
    var sheet =
        new FigureSheet(
            heading,
            points.isEmpty()
                ? "This analysis has no residuals."
                : "Ring: one plot; named beyond 2 standard errors. Shade right: where 19 of 20"
                    + " normal numbers would lie.",
            points.isEmpty() ? List.of(empty()) : new ResidualPlot(points, fittedName()).panels());
    return new DrawnFigure(sheet, alternative(), caption(), data());
  }

  private String fittedName() {
    return scale.isEmpty() ? "Fitted" : "Fitted (" + scale + ")";
  }

  private static ChartPanel empty() {
    var panel = new ChartPanel(120, 4, "").withoutYTicks();
    panel.ranges(0, 1, 0, 1);
    return panel.words(
        "No residuals", 0.5, 0.5, ChartPanel.Side.CENTRE, FigureLook.TEXT, FigureLook.INK);
  }

  private List<ResidualPoint> far() {
    return points.stream()
        .filter(point -> Math.abs(point.standardised()) > ResidualPlot.FAR)
        .sorted(Comparator.comparingDouble(point -> -Math.abs(point.standardised())))
        .toList();
  }

  private String alternative() {
    if (points.isEmpty()) {
      return "This analysis has no residuals to draw.";
    }
    var all = points.stream().mapToDouble(ResidualPoint::standardised).summaryStatistics();
    return "Standardised residuals of "
        + points.size()
        + " observations over fitted values and over normal quantiles, from "
        + Numbers.fixed(all.getMin(), 2)
        + " to "
        + Numbers.fixed(all.getMax(), 2)
        + ". Mean size in the lower half of the fitted values "
        + Numbers.fixed(meanSize(false), 2)
        + ", in the upper half "
        + Numbers.fixed(meanSize(true), 2)
        + ". Beyond 2: "
        + (far().isEmpty()
            ? "none"
            : far().stream()
                .map(point -> point.label() + " " + Numbers.fixed(point.standardised(), 2))
                .collect(Collectors.joining(", ")))
        + ".";
  }

  private double meanSize(boolean upper) {
    var sorted = points.stream().sorted(Comparator.comparingDouble(ResidualPoint::fitted)).toList();
    int half = sorted.size() / 2;
    var part = upper ? sorted.subList(half, sorted.size()) : sorted.subList(0, half);
    return part.stream().mapToDouble(point -> Math.abs(point.standardised())).average().orElse(0);
  }

  private static String caption() {
    return "Residual over its own standard error. Left, a fan that opens to the right says that the"
        + " scatter grows with the mean, a bow that the scale is wrong. Right, normal residuals lie"
        + " along the dashed line (plotting positions of Blom 1958); the shade is for numbers that"
        + " do not depend on each other, which residuals nearly are. Of 100 sound residuals some 5"
        + " lie beyond 2.";
  }

  private ResultTable data() {
    var rows = new ArrayList<List<Cell>>();
    for (var point : points) {
      rows.add(
          List.of(
              Cell.text(point.label()),
              Cell.text(point.group()),
              Cell.number(point.fitted(), 3),
              Cell.number(point.standardised(), 2)));
    }
    return ResultTable.of(
        "Standardised residuals",
        List.of(
            Column.of("Plot"),
            Column.of("Treatment"),
            Column.of("Fitted"),
            Column.of("Residual", "standard errors")),
        rows);
  }
}
