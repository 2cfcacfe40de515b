package agro.weather.gap;

import agro.report.InputProblem;
import agro.report.Progress;
import agro.units.Numbers;
import agro.weather.DailyTemperatures;
import agro.weather.DayOrigin;
import agro.weather.Extreme;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.simple.RandomSource;

/**
 * How well a way of filling does on a series: observed days are taken out, filled, and compared
 * with what was observed.
 *
 * @param place name of the place
 * @param filling what was tried
 * @param rows one for each length of gap and extreme
 */
public record GapTrial(String place, String filling, List<Row> rows) implements Presentable {

  /** Nominal share of days inside the stated intervals. */
  public static final double LEVEL = 0.9;

  private static final double SCORE = 1.6448536269514722;

  /**
   * One extreme for one length of gap.
   *
   * @param lengthDays length of the artificial gaps in days
   * @param extreme minimum or maximum
   * @param gaps artificial gaps that were filled
   * @param days days in them
   * @param biasCelsius mean of filled less observed in °C
   * @param missCelsius root mean square of filled less observed in °C
   * @param statedCelsius root mean square of the stated standard errors in °C
   * @param coverage share of the days whose observed value lies within 1.645 standard errors of the
   *     filled one; 0.9 is right
   */
  public record Row(
      int lengthDays,
      Extreme extreme,
      int gaps,
      int days,
      double biasCelsius,
      double missCelsius,
      double statedCelsius,
      double coverage) {}

  /** Copies the rows. */
  public GapTrial {
    rows = List.copyOf(rows);
  }

  /**
   * Tries a way of filling. In each round every part of the series gets one artificial gap, at a
   * drawn place; gaps stand at least their own length and three days apart.
   *
   * @param filling what to try
   * @param series daily extremes, with gaps of its own if need be
   * @param lengthsDays lengths of gaps in days, each 1 or more
   * @param rounds how many times gaps are drawn for each length, 1 or more
   * @param seed seed of the places of the gaps
   * @return misses and coverage by length
   * @throws InputProblem when a length or the rounds are less than 1
   */
  public static GapTrial of(
      GapFilling filling,
      DailyTemperatures series,
      List<Integer> lengthsDays,
      int rounds,
      long seed) {
    var progress = Progress.ofThread();
    var rows = new ArrayList<Row>();
    for (int k = 0; k < lengthsDays.size(); k++) {
      int length = lengthsDays.get(k);
      if (length < 1 || rounds < 1) {
        throw InputProblem.of("artificial gaps of " + length + " days in " + rounds + " rounds")
            .expected("at least one day and one round")
            .because("nothing would be tried")
            .mend("give for example List.of(1, 3, 7) and 10 rounds");
      }
      var minimum = new Tally(Extreme.MINIMUM);
      var maximum = new Tally(Extreme.MAXIMUM);
      var random = RandomSource.XO_SHI_RO_256_PP.create(seed + length);
      for (int round = 0; round < rounds; round++) {
        var places = places(series, length, random.nextInt(period(length)));
        var filled = filling.fill(without(series, places, length)).daily();
        for (int start : places) {
          minimum.add(series, filled, start, length);
          maximum.add(series, filled, start, length);
        }
        progress.step(
            "artificial gaps", (long) k * rounds + round + 1, (long) lengthsDays.size() * rounds);
      }
      rows.add(minimum.row(length));
      rows.add(maximum.row(length));
    }
    return new GapTrial(series.place(), filling.toString(), rows);
  }

  private static int period(int length) {
    return Math.max(30, 4 * length + 3);
  }

  /** First days of the artificial gaps: observed days with observed days on both sides. */
  private static List<Integer> places(DailyTemperatures series, int length, int first) {
    var places = new ArrayList<Integer>();
    for (int start = first + 1; start + length < series.size(); start += period(length)) {
      boolean observed = true;
      for (int i = start - 1; i <= start + length; i++) {
        observed &= series.originAt(i) == DayOrigin.OBSERVED;
      }
      if (observed) {
        places.add(start);
      }
    }
    return places;
  }

  private static DailyTemperatures without(
      DailyTemperatures series, List<Integer> places, int length) {
    var builder = DailyTemperatures.builder(series.firstDay(), series.lastDay());
    series.copyInto(builder, series.firstDay());
    for (int start : places) {
      for (int i = start; i < start + length; i++) {
        builder.putAt(i, Double.NaN, Double.NaN, DayOrigin.MISSING);
      }
    }
    return builder.build(series.place(), series.medium());
  }

  private static final class Tally {
    private final Extreme extreme;
    private int gaps;
    private int days;
    private int inside;
    private double misses;
    private double squares;
    private double stated;

    Tally(Extreme extreme) {
      this.extreme = extreme;
    }

    void add(DailyTemperatures truth, DailyTemperatures filled, int start, int length) {
      boolean any = false;
      for (int i = start; i < start + length; i++) {
        var day = truth.day(i);
        if (filled.origin(day) != DayOrigin.MISSING) {
          double miss = extreme.of(filled, day) - extreme.of(truth, day);
          double error = extreme.standardError(filled, day);
          any = true;
          days++;
          misses += miss;
          squares += miss * miss;
          stated += error * error;
          inside += Math.abs(miss) <= SCORE * error ? 1 : 0;
        }
      }
      gaps += any ? 1 : 0;
    }

    Row row(int length) {
      return new Row(
          length,
          extreme,
          gaps,
          days,
          misses / days,
          Math.sqrt(squares / days),
          Math.sqrt(stated / days),
          inside / (double) days);
    }
  }

  @Override
  public Presentation presentation() {
    var columns =
        List.of(
            Column.of("Length", "d"),
            Column.of("Extreme"),
            Column.of("Gaps"),
            Column.of("Mean miss", "°C"),
            Column.of("Miss (rms)", "°C"),
            Column.of("Stated error (rms)", "°C"),
            Column.of("Inside 90 % interval", "%"));
    var cells = new ArrayList<List<Cell>>();
    for (var row : rows) {
      cells.add(
          List.of(
              Cell.number(row.lengthDays(), 0),
              Cell.text(row.extreme().words()),
              Cell.number(row.gaps(), 0),
              Cell.number(row.biasCelsius(), 2),
              Cell.number(row.missCelsius(), 2),
              Cell.number(row.statedCelsius(), 2),
              Cell.number(100 * row.coverage(), 0)));
    }
    return Presentation.titled("Artificial gaps at " + place)
        .fact("Filling", filling)
        .table(
            new ResultTable(
                "Filled days against what was observed",
                columns,
                cells,
                List.of(
                    "Miss: filled less observed. A stated error that is right has the size of the"
                        + " miss, and "
                        + Numbers.fixed(100 * LEVEL, 0)
                        + " % of the days lie inside the interval.")))
        .build();
  }
}
