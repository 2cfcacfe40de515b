package agro.generation;

import agro.units.Numbers;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;

/**
 * A fit and its refits to counts drawn anew: a parametric bootstrap over seasons.
 *
 * <p>Each refit keeps the visits, their nights and the fitted starts and catch sizes of every
 * season. It draws for each year an interval about the mean of the seasons, with the scatter
 * between seasons that is left when each season's own error is taken off, and for each visit a
 * negative binomial count about the mean that follows. What a full trap would have held is drawn as
 * if it had room. The limits of the interval are studentised, for few seasons tell their own
 * scatter badly: the refits' distance from the mean, over their own error, takes the place of
 * Student's t. All other limits are percentiles of the refits.
 *
 * @param fit the fit
 * @param refits number of refits that were tried
 * @param seed seed of the random numbers
 * @param atEdge refits that ended at the edge of the search range and are left out
 * @param betweenSeasonsC scatter of the interval between seasons that was drawn, in °C·d
 * @param draws the refits
 */
public record FlightBootstrap(
    FlightTimingFit fit,
    int refits,
    long seed,
    int atEdge,
    double betweenSeasonsC,
    List<FlightRefit> draws)
    implements Presentable {

  private static final double LEVEL = 0.9;

  /** Copies the list. */
  public FlightBootstrap {
    Objects.requireNonNull(fit, "fit");
    draws = List.copyOf(draws);
  }

  /**
   * The interval between flights with its limits.
   *
   * @param level probability, for example 0.9, above 0 and below 1
   * @return studentised limits for several seasons; for one season, percentiles within it
   */
  public RefitLimits interval(double level) {
    var estimate = fit.interval().orElseThrow();
    var mean = estimate.mean().degreeDaysC();
    var name = "Interval";
    if (estimate.seasons() == 1) {
      return percentiles(name + ", this season only", "°C·d", mean, level, this::drawnMean);
    }
    var error = estimate.standardDeviationC() / Math.sqrt(estimate.seasons());
    var ratios =
        draws.stream()
            .mapToDouble(
                draw ->
                    (drawnMean(draw) - mean)
                        / (draw.interval().standardDeviationC()
                            / Math.sqrt(draw.interval().seasons())))
            .filter(Double::isFinite)
            .sorted()
            .toArray();
    return new RefitLimits(
        name,
        "°C·d",
        mean,
        mean - quantile(ratios, 0.5 + level / 2) * error,
        mean - quantile(ratios, 0.5 - level / 2) * error);
  }

  private double drawnMean(FlightRefit draw) {
    return draw.interval().mean().degreeDaysC();
  }

  /**
   * All quantities of the fit with their limits.
   *
   * @param level probability, for example 0.9, above 0 and below 1
   * @return the interval first, then starts, form of the flights and size of the counts
   */
  public List<RefitLimits> intervals(double level) {
    var all = new ArrayList<>(List.of(interval(level)));
    for (var s = 0; s < fit.seasons().size(); s++) {
      var place = s;
      var season = fit.seasons().get(s);
      all.add(
          percentiles(
              "Middle of the first flight, " + season.label(),
              "°C·d",
              season.start().degreeDaysC(),
              level,
              draw -> draw.startsC().get(place)));
    }
    all.add(
        percentiles(
            "Scale of the first flight",
            "°C·d",
            fit.shape().firstDegreeDaysC(),
            level,
            draw -> draw.shape().firstDegreeDaysC()));
    all.add(
        percentiles(
            "Scale added by each later one",
            "°C·d",
            fit.shape().addedDegreeDaysC(),
            level,
            draw -> draw.shape().addedDegreeDaysC()));
    all.add(
        percentiles(
            "Size of the counts",
            "per trap-night",
            fit.sizePerNight(),
            level,
            FlightRefit::sizePerNight));
    return all;
  }

  private RefitLimits percentiles(
      String of, String unit, double estimate, double level, ToDoubleFunction<FlightRefit> value) {
    var sorted = draws.stream().mapToDouble(value).sorted().toArray();
    return new RefitLimits(
        of, unit, estimate, quantile(sorted, 0.5 - level / 2), quantile(sorted, 0.5 + level / 2));
  }

  /** Quantile of sorted values by straight lines between them. */
  private static double quantile(double[] sorted, double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException("a level lies between 0 and 1");
    }
    if (sorted.length == 0) {
      return Double.NaN;
    }
    var place = probability * (sorted.length - 1);
    var below = (int) place;
    var above = Math.min(sorted.length - 1, below + 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }

  /**
   * All 90 % limits.
   *
   * @return a line a quantity
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var each : intervals(LEVEL)) {
      var decimals = each.unit().startsWith("per") ? 2 : 0;
      rows.add(
          List.of(
              Cell.text(each.of()),
              Cell.number(each.estimate(), decimals),
              Cell.number(each.low(), decimals),
              Cell.number(each.high(), decimals),
              Cell.text(each.unit())));
    }
    return ResultTable.of(
        "90 % limits from refits",
        List.of(
            Column.of("Quantity"),
            Column.of("Estimate"),
            Column.of("From"),
            Column.of("To"),
            Column.of("Unit")),
        rows);
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("The fit refitted to counts drawn anew")
        .fact(
            "Refits",
            refits + ", seed " + seed + ", " + atEdge + " ended at the edge and are left out")
        .fact(
            "Drawn",
            "for each year an interval with a standard deviation of "
                + Numbers.fixed(betweenSeasonsC, 1)
                + " °C·d between seasons, for each visit a negative binomial count about the mean"
                + " that follows; visits, starts and catch sizes are those of the fit")
        .fact(
            "Limits",
            "studentised for the interval, for the season is the unit of replication; percentiles"
                + " for all else, which hold within these seasons")
        .table(table())
        .build();
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
