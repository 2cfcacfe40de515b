package agro.notebook.figure;

import agro.development.DegreeDayModel;
import agro.notebook.figure.ChartPanel.Side;
import agro.units.Temperature;
import agro.weather.curve.CurveDay;

/** Lays one day out: curve, thresholds, and the area that counts. */
final class DayCurvePlot {

  private static final int HEIGHT = 400;
  private static final int AXIS_HEIGHT = 46;
  private static final int POINTS = 1441;
  private static final double HOUR_STEP = 3;
  private static final double HOURS = 24;

  private final DegreeDayModel model;
  private final CurveDay day;
  private final double lower;

  DayCurvePlot(DegreeDayModel model, CurveDay day) {
    this.model = model;
    this.day = day;
    lower = model.thresholds().lower().celsius();
  }

  /**
   * Temperature so many hours after the minimum. The averages know no moments: the first is drawn
   * as a day that is all at its mean, the second as one that is half at either extreme, which have
   * the areas that these averages count.
   */
  double temperature(double hour) {
    return switch (model.method()) {
      case AVERAGE_MEAN_LIMITED -> 0.5 * (day.minCelsius() + day.maxCelsius());
      case AVERAGE_EXTREMES_LIMITED ->
          hour < HOURS / 4 || hour > 0.75 * HOURS ? day.minCelsius() : day.maxCelsius();
      default -> model.method().curve().orElseThrow().celsiusAt(day, hour);
    };
  }

  /** What counts of a temperature, in °C above the lower threshold, by the rule of the cutoff. */
  double rate(double celsius) {
    var upper = model.thresholds().upper().map(Temperature::celsius).orElse(Double.MAX_VALUE);
    return model.cutoff().rate(celsius, lower, upper);
  }

  ChartPanel panel() {
    var hours = new double[POINTS];
    var curve = new double[POINTS];
    var base = new double[POINTS];
    var counting = new double[POINTS];
    var lowest = Math.min(lower, day.minCelsius());
    lowest = model.method().needsNextMinimum() ? Math.min(lowest, day.endCelsius()) : lowest;
    var highest = Math.max(lower, day.maxCelsius());
    for (var i = 0; i < POINTS; i++) {
      hours[i] = HOURS * i / (POINTS - 1);
      curve[i] = temperature(hours[i]);
      base[i] = lower;
      counting[i] = lower + rate(curve[i]);
      lowest = Math.min(lowest, counting[i]);
    }
    if (model.cutoff().needsUpperThreshold()) {
      highest = Math.max(highest, model.thresholds().upper().get().celsius());
    }
    var room = Math.max(1, 0.12 * (highest - lowest));
    var panel = new ChartPanel(HEIGHT, AXIS_HEIGHT, "Temperature (°C)");
    panel.ranges(0, HOURS, lowest - room, highest + room);
    NumberAxis.rule(panel, HOUR_STEP);
    NumberAxis.label(
        panel,
        HOUR_STEP,
        model.method().needsDayLength() ? "Time since sunrise (h)" : "Time since the minimum (h)");
    panel.band(hours, base, counting, FigureLook.PALE_BLUE);
    lowerThreshold(panel);
    upperThreshold(panel);
    panel.curve(hours, curve, FigureLook.INK, FigureLook.solid(2.5));
    area(panel);
    return panel;
  }

  /**
   * Its name stands where the curve is not: below the line at noon, above a cold day, and at the
   * side of a day that hardly reaches it.
   */
  private void lowerThreshold(ChartPanel panel) {
    panel.level(lower, FigureLook.BLUE, FigureLook.dashed(2));
    var hardly = day.maxCelsius() > lower && !reachesFar();
    panel.words(
        "lower threshold " + Temperature.ofCelsius(lower),
        hardly ? 0 : HOURS / 2,
        lower,
        hardly ? Side.ABOVE_RIGHT : day.maxCelsius() > lower ? Side.BELOW : Side.ABOVE,
        FigureLook.TEXT,
        FigureLook.BLUE);
  }

  private boolean reachesFar() {
    return day.maxCelsius() - lower > 0.15 * (day.maxCelsius() - Math.min(lower, day.minCelsius()));
  }

  private void upperThreshold(ChartPanel panel) {
    if (model.cutoff().needsUpperThreshold()) {
      var upper = model.thresholds().upper().get();
      panel.level(upper.celsius(), FigureLook.BLUE, FigureLook.dashed(2));
      panel.words(
          "upper threshold " + upper,
          model.method().needsDayLength() ? 0.8 * HOURS : 0,
          upper.celsius(),
          model.method().needsDayLength() ? Side.ABOVE : Side.ABOVE_RIGHT,
          FigureLook.TEXT,
          FigureLook.BLUE);
    }
  }

  private void area(ChartPanel panel) {
    var area = model.degreeDaysC(day);
    var reach = day.maxCelsius() - lower;
    if (area > 0) {
      var inside = reachesFar();
      panel.words(
          FigureWords.degreeDaysFine(area),
          HOURS / 2,
          inside ? lower + 0.3 * reach : day.maxCelsius(),
          inside ? Side.CENTRE : Side.ABOVE,
          FigureLook.HEADING,
          FigureLook.INK);
    }
  }
}
