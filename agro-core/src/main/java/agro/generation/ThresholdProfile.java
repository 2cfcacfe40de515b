package agro.generation;

import agro.units.Numbers;
import agro.units.Temperature;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Lower threshold and interval estimated together. Catches tell the dates of flights and hardly the
 * threshold: a lower threshold with a longer interval gives nearly the same dates. So the pair is
 * shown by its region and its correlation and never by two separate intervals, and it is refused
 * where the region is too wide to be of use.
 *
 * <p>The region holds within these seasons; the scatter of the interval between seasons is not in
 * it.
 *
 * @param points the thresholds looked at, from the lowest up
 * @param lowC lower edge of the 90 % region of the pair in °C
 * @param highC upper edge in °C
 * @param open whether the region reaches beyond the thresholds looked at
 * @param correlation correlation of threshold and interval, between -1 and 1
 */
public record ThresholdProfile(
    List<ThresholdPoint> points, double lowC, double highC, boolean open, double correlation)
    implements Presentable {

  /** A region wider than this is no estimate, in °C. */
  public static final double WIDEST_C = 6;

  /** Copies the list. */
  public ThresholdProfile {
    points = List.copyOf(points);
  }

  /** Reads region and correlation from the points. */
  static ThresholdProfile of(List<ThresholdPoint> points) {
    var low = 0;
    var high = points.size() - 1;
    while (!points.get(low).inRegion()) {
      low++;
    }
    while (!points.get(high).inRegion()) {
      high--;
    }
    return new ThresholdProfile(
        points,
        low == 0 ? points.get(0).lowerC() : edge(points.get(low - 1), points.get(low)),
        high == points.size() - 1
            ? points.get(high).lowerC()
            : edge(points.get(high + 1), points.get(high)),
        low == 0 || high == points.size() - 1,
        ProfileCurvature.correlation(points));
  }

  /** Where the root of the drop, which is nearly straight, crosses that of the region. */
  private static double edge(ThresholdPoint outside, ThresholdPoint inside) {
    var out = Math.sqrt(outside.drop());
    var in = Math.sqrt(inside.drop());
    var share = (Math.sqrt(ThresholdPoint.PAIR_DROP) - in) / (out - in);
    return inside.lowerC() + share * (outside.lowerC() - inside.lowerC());
  }

  /**
   * The point at which the counts are likeliest.
   *
   * @return threshold and interval; no estimate where {@link #refused()}
   */
  public ThresholdPoint best() {
    return points.stream().min(Comparator.comparingDouble(ThresholdPoint::drop)).orElseThrow();
  }

  /**
   * Whether the counts do not tell the threshold.
   *
   * @return true when the region is wider than 6 °C or reaches beyond the thresholds looked at
   */
  public boolean refused() {
    return open || highC - lowC > WIDEST_C;
  }

  /**
   * The threshold estimated together with the interval.
   *
   * @return the threshold; nothing when refused
   */
  public Optional<Temperature> threshold() {
    return refused() ? Optional.empty() : Optional.of(best().outcome().lower());
  }

  /**
   * The verdict in a sentence.
   *
   * @return the pair, or why there is none
   */
  public String words() {
    var region =
        Numbers.fixed(lowC, 1)
            + " to "
            + Numbers.fixed(highC, 1)
            + " °C"
            + (open ? " and beyond" : "");
    if (refused()) {
      return "refused: the 90 % region of threshold and interval reaches from "
          + region
          + ", and a region wider than "
          + Numbers.plain(WIDEST_C)
          + " °C tells no threshold; keep the one from its source";
    }
    return "threshold "
        + Numbers.fixed(best().lowerC(), 1)
        + " °C with an interval of "
        + Numbers.fixed(best().intervalC(), 0)
        + " °C·d; the 90 % region of the pair reaches from "
        + region
        + ", and the two go against each other (correlation "
        + Numbers.fixed(correlation, 3)
        + ")";
  }

  /**
   * Region of the pair, threshold by threshold.
   *
   * @return a line for each threshold in the region
   */
  public ResultTable table() {
    var rows = new ArrayList<List<Cell>>();
    for (var point : points) {
      var inside = point.inRegion();
      var half = point.halfWidthC();
      rows.add(
          List.of(
              Cell.number(point.lowerC(), 1),
              Cell.number(point.intervalC(), 0),
              Cell.number(-point.drop(), 2),
              inside ? Cell.number(point.intervalC() - half, 0) : Cell.text("outside"),
              inside ? Cell.number(point.intervalC() + half, 0) : Cell.text("outside")));
    }
    return ResultTable.of(
            "Lower threshold and interval together",
            List.of(
                Column.of("Lower threshold", "°C"),
                Column.of("Interval that fits best", "°C·d"),
                Column.of("Log likelihood below the best"),
                Column.of("Region from", "°C·d"),
                Column.of("to", "°C·d")),
            rows)
        .withNote(
            "90 % region of the pair (log likelihood within 2.30 of the best), within these"
                + " seasons.");
  }

  /**
   * The dates of the flights at each threshold of the region.
   *
   * @return a line for each threshold in the region
   */
  public ResultTable dates() {
    var inside = points.stream().filter(ThresholdPoint::inRegion).toList();
    return OtherThresholds.outcomeTable(
            "Dates over the region",
            inside.stream().map(ThresholdPoint::outcome).toList(),
            best().outcome())
        .withNote("Shifts of the middle of each flight from the dates of the best pair.");
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Lower threshold and interval estimated together")
        .fact("Verdict", words())
        .fact(
            "Correlation",
            Numbers.fixed(correlation, 3)
                + " within these seasons; neither figure means anything without the other")
        .table(table())
        .table(dates())
        .build();
  }

  @Override
  public String toString() {
    return presentation().toText();
  }
}
