package agro.demo;

import agro.units.Numbers;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A spray trial on cabbages of Mill Field: six treatments in five complete blocks, larvae of
 * diamondback moth on ten plants of each plot on one day before and three days after the spraying,
 * and heads graded at harvest. Plots differ beyond their blocks, larvae stand in clumps, one sheet
 * of one plot is lost, one sheet bears a misspelt treatment, and one number is a slip of the pen.
 */
public final class SprayTrial {
  /** Day of spraying. */
  public static final LocalDate TREATED = LocalDate.of(2026, 5, 19);

  /** Days of counting: the day before the spraying and 3, 10 and 21 days after it. */
  public static final List<LocalDate> COUNTED =
      List.of(
          TREATED.minusDays(1), TREATED.plusDays(3), TREATED.plusDays(10), TREATED.plusDays(21));

  /** Treatments in the order of their codes; the first is the control. */
  public static final List<String> TREATMENTS =
      List.of(
          "A untreated",
          "B single low",
          "C single full",
          "D double low",
          "E double full",
          "F microbial");

  /** Share of larvae that a treatment takes away on the days after the spraying. */
  static final Map<String, List<Double>> TRUE_EFFICACY =
      Map.of(
          "A untreated", List.of(0.0, 0.0, 0.0),
          "B single low", List.of(0.62, 0.45, 0.15),
          "C single full", List.of(0.88, 0.72, 0.35),
          "D double low", List.of(0.80, 0.74, 0.52),
          "E double full", List.of(0.95, 0.90, 0.70),
          "F microbial", List.of(0.45, 0.68, 0.40));

  /** The misspelt treatment, and the plot and day of its sheet. */
  static final String MISSPELT = "C single ful";

  /** Marketable yield without larvae, t/ha. */
  static final double TRUE_YIELD = 52;

  /** Share of that yield which a larva-day per plant takes. */
  static final double TRUE_LOSS_SHARE = 0.0011;

  private static final int BLOCKS = 5;
  private static final int PLANTS = 10;
  private static final double START = 6;
  private static final double[] CONTROL_GROWTH = {1, 1.2, 1.6, 1.9};
  private static final double CLUMPING = 2.2;
  private static final double BLOCK_SD = 0.25;
  private static final double PLOT_SD = 0.22;
  private static final double PLOT_AREA = 14.4;
  private static final int HEADS = 40;

  /** A plot with its true density before the spraying, larvae per plant. */
  private record Plot(int number, int block, int place, String treatment, double start) {

    double density(int day) {
      double left = day == 0 ? 1 : 1 - TRUE_EFFICACY.get(treatment).get(day - 1);
      return start * CONTROL_GROWTH[day] * left;
    }

    double larvaDays() {
      double sum = 0;
      for (int day = 1; day < COUNTED.size(); day++) {
        long days = COUNTED.get(day).toEpochDay() - COUNTED.get(day - 1).toEpochDay();
        sum += days * (density(day - 1) + density(day)) / 2;
      }
      return sum;
    }

    String head() {
      return number + "," + block + "," + treatment;
    }
  }

  private final long seed;
  private final List<Plot> plots = new ArrayList<>();

  SprayTrial(long seed) {
    this.seed = seed;
    for (int block = 1; block <= BLOCKS; block++) {
      var draws = Draws.of(seed, "spray trial block " + block);
      double level = START * StrictMath.exp(BLOCK_SD * draws.gaussian());
      var order = shuffled(draws);
      for (int place = 1; place <= order.size(); place++) {
        double start = level * StrictMath.exp(PLOT_SD * draws.gaussian());
        int number = 100 * block + place;
        plots.add(new Plot(number, block, place, order.get(place - 1), start));
      }
    }
  }

  private static List<String> shuffled(Draws draws) {
    var left = new ArrayList<>(TREATMENTS);
    var order = new ArrayList<String>();
    while (!left.isEmpty()) {
      order.add(left.remove(draws.whole(0, left.size() - 1)));
    }
    return order;
  }

  /** The plan: where every plot lies and what it gets. */
  String plan() {
    var lines = new StringBuilder("plot,block,treatment,row,column,area\n");
    for (var plot : plots) {
      lines.append(plot.head() + "," + plot.block() + "," + plot.place() + "," + PLOT_AREA + "\n");
    }
    return lines.toString();
  }

  /** Larvae, one line for each plant and day. */
  String counts() {
    var lines = new StringBuilder("plot,block,treatment,row,column,date,plant,larvae,who\n");
    for (int day = 0; day < COUNTED.size(); day++) {
      for (var plot : plots) {
        if (!(plot.number() == lostPlot().number() && day == 2)) {
          sheet(lines, plot, day);
        }
      }
    }
    return lines.toString();
  }

  private void sheet(StringBuilder lines, Plot plot, int day) {
    boolean misspelt = plot.number() == misspeltPlot().number() && day == 1;
    int[] larvae = larvae(plot, day);
    for (int plant = 1; plant <= PLANTS; plant++) {
      boolean slip = plot.equals(slipPlot()) && day == 1 && plant == fullest(larvae);
      lines.append(plot.number()).append(',').append(plot.block()).append(',');
      lines.append(misspelt ? MISSPELT : plot.treatment()).append(',');
      lines.append(plot.block()).append(',').append(plot.place()).append(',');
      lines.append(COUNTED.get(day)).append(',').append(plant).append(',');
      lines.append(slip ? 10 * larvae[plant - 1] : larvae[plant - 1]);
      lines.append(day % 2 == 0 ? ",first reader\n" : ",second reader\n");
    }
  }

  private int[] larvae(Plot plot, int day) {
    var draws = Draws.of(seed, "spray trial plot " + plot.number() + " day " + day);
    int[] larvae = new int[PLANTS];
    for (int plant = 0; plant < PLANTS; plant++) {
      larvae[plant] = ScoutingBook.clumped(draws, plot.density(day), CLUMPING);
    }
    return larvae;
  }

  /** Number of the first plant with the most larvae. */
  private static int fullest(int[] larvae) {
    int place = 0;
    for (int i = 1; i < larvae.length; i++) {
      place = larvae[i] > larvae[place] ? i : place;
    }
    return place + 1;
  }

  private Plot slipPlot() {
    return plot(4, "B single low");
  }

  private Plot lostPlot() {
    return plot(3, "F microbial");
  }

  private Plot misspeltPlot() {
    return plot(2, "C single full");
  }

  private Plot plot(int block, String treatment) {
    return plots.stream()
        .filter(plot -> plot.block() == block && plot.treatment().equals(treatment))
        .findFirst()
        .orElseThrow();
  }

  /** The slip of the pen with its mending. */
  String corrections() {
    var slip = slipPlot();
    int[] larvae = larvae(slip, 1);
    int plant = fullest(larvae);
    return "site,year,plot,date,sub-sample,variable,old value,new value,reason,who,when\n"
        + (",," + slip.number() + "," + COUNTED.get(1) + "," + plant + ",larvae,")
        + (10 * larvae[plant - 1] + "," + larvae[plant - 1])
        + ",a nought too many; the tally sheet has "
        + larvae[plant - 1]
        + " strokes,second reader,2026-05-23\n";
  }

  /** Heads by grade at harvest. */
  String harvest() {
    var lines =
        new StringBuilder(
            "plot,block,treatment,area,heads,first_heads,first_kg,second_heads,second_kg,"
                + "unmarketable_heads\n");
    for (var plot : plots) {
      var draws = Draws.of(seed, "spray trial harvest " + plot.number());
      double lost = Math.min(0.9, TRUE_LOSS_SHARE * plot.larvaDays());
      double soil = 1 + 0.03 * draws.gaussian();
      int second = 0;
      int thrown = 0;
      for (int head = 0; head < HEADS; head++) {
        double chance = draws.uniform();
        thrown += chance < 0.25 * lost ? 1 : 0;
        second += chance >= 0.25 * lost && chance < 0.08 + 1.6 * lost ? 1 : 0;
      }
      int first = HEADS - second - thrown;
      // The mass of all heads that would be sold without larvae, in kilograms on the plot.
      double whole = TRUE_YIELD * PLOT_AREA / 10 * soil * (1 - lost);
      double each = whole / (first + 0.8 * second);
      lines.append(plot.head()).append(',').append(PLOT_AREA).append(',').append(HEADS);
      lines.append(',').append(first).append(',').append(Numbers.fixed(first * each, 1));
      lines.append(',').append(second).append(',').append(Numbers.fixed(0.8 * second * each, 1));
      lines.append(',').append(thrown).append('\n');
    }
    return lines.toString();
  }

  /** What a kilogram of each grade brings. */
  static String prices() {
    return "grade,price,currency,per\nfirst,0.42,EUR,kg\nsecond,0.19,EUR,kg\n";
  }

  /** What each treatment costs on a hectare, product and work. */
  static String costs() {
    var costs = List.of(0, 62, 84, 124, 168, 110);
    var lines = new StringBuilder("treatment,cost,currency,per\n");
    for (int i = 0; i < costs.size(); i++) {
      lines.append(TREATMENTS.get(i) + "," + costs.get(i) + ",EUR,ha\n");
    }
    return lines.toString();
  }

  /** The truth behind the counts. */
  static String truth() {
    var lines =
        new StringBuilder(
            "# marketable yield without larvae "
                + TRUE_YIELD
                + " t/ha; a larva-day per plant takes the share "
                + TRUE_LOSS_SHARE
                + " of it\ntreatment,days_after,efficacy_percent\n");
    for (var treatment : TREATMENTS) {
      for (int day = 1; day < COUNTED.size(); day++) {
        lines
            .append(treatment + "," + (COUNTED.get(day).toEpochDay() - TREATED.toEpochDay()) + ",")
            .append(Numbers.fixed(100 * TRUE_EFFICACY.get(treatment).get(day - 1), 0) + "\n");
      }
    }
    return lines.toString();
  }
}
