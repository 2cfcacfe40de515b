package agro.trial.load;

import agro.report.InputProblem;
import agro.sampling.injury.MoneyPerArea;
import agro.units.AreaUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How graded yields become money: price of each grade, cost of each treatment, and the control.
 *
 * @param prices price of each grade
 * @param costs cost of each treatment on a hectare; a treatment that is not named costs nothing
 * @param control name of the untreated control
 * @param level level of the limits
 */
public record GradedYield(
    List<GradePrice> prices, Map<String, MoneyPerArea> costs, String control, double level) {

  private static final double LEVEL = 0.95;

  /**
   * Checks prices and costs.
   *
   * @throws InputProblem when there is no price, a grade has two, or currencies differ
   */
  public GradedYield {
    Objects.requireNonNull(control, "control");
    prices = List.copyOf(prices);
    costs = Map.copyOf(costs);
    if (prices.isEmpty()) {
      throw InputProblem.of("no price of any grade")
          .expected("a price of each grade, 0 for what cannot be sold")
          .because("a yield becomes money by its price")
          .mend("give for example GradePrice.perKilogram(\"first\", 0.42, \"EUR\")");
    }
    if (!(level > 0 && level < 1)) {
      throw InputProblem.of("a level of " + level)
          .expected("a number between 0 and 1")
          .because("it is the share of such limits that hold the truth")
          .mend("give for example 0.95");
    }
    var grades = new HashSet<String>();
    for (var price : prices) {
      if (!grades.add(price.grade())) {
        throw InputProblem.of("two prices of the grade " + price.grade())
            .expected("one price of each grade")
            .because("nobody knows which of them holds")
            .mend("leave one of them out");
      }
    }
    requireOneCurrency(prices, costs);
  }

  private static void requireOneCurrency(List<GradePrice> prices, Map<String, MoneyPerArea> costs) {
    var currencies = new HashSet<String>();
    prices.forEach(price -> currencies.add(price.currency().getCurrencyCode()));
    costs.values().forEach(cost -> currencies.add(cost.currency().getCurrencyCode()));
    if (currencies.size() > 1) {
      throw InputProblem.of("amounts in " + currencies.stream().sorted().toList())
          .expected("one currency for prices and costs")
          .because("nothing here knows at which rate the one buys the other")
          .mend("convert them at a rate of your own and state all in one currency");
    }
  }

  /**
   * Prices and a control, no costs, limits of 95 %.
   *
   * @param control name of the untreated control
   * @param prices price of each grade
   * @return the settings
   * @throws InputProblem when there is no price, a grade has two, or currencies differ
   */
  public static GradedYield of(String control, List<GradePrice> prices) {
    return new GradedYield(prices, Map.of(), control, LEVEL);
  }

  /**
   * These settings with the cost of a treatment, product and work.
   *
   * @param treatment the treatment
   * @param cost its cost on a hectare
   * @return new settings
   */
  public GradedYield withCost(String treatment, MoneyPerArea cost) {
    var more = new HashMap<>(costs);
    more.put(treatment, cost);
    return new GradedYield(prices, more, control, level);
  }

  /**
   * These settings with another level of the limits.
   *
   * @param newLevel level of the limits
   * @return new settings
   */
  public GradedYield withLevel(double newLevel) {
    return new GradedYield(prices, costs, control, newLevel);
  }

  /**
   * Turns the yields of a trial into money.
   *
   * @param plots the plots
   * @return value and gain of each treatment
   * @throws InputProblem when a grade has no price, a cost names no treatment, or there is no
   *     control
   */
  public TrialValue evaluate(List<GradedPlot> plots) {
    var values = new ArrayList<PlotGross>();
    for (var plot : plots) {
      values.add(new PlotGross(plot.plot(), plot.block(), plot.treatment(), grossPerHectare(plot)));
    }
    values.sort(Comparator.comparing(PlotGross::plot, agro.trial.NaturalOrder.ofNames()));
    requireNames(values);
    return new TrialValue(this, values, TreatmentValues.of(this, values));
  }

  private double grossPerHectare(GradedPlot plot) {
    double sum = 0;
    for (var amount : plot.amounts().entrySet()) {
      var price =
          prices.stream()
              .filter(one -> one.grade().equals(amount.getKey()))
              .findFirst()
              .orElseThrow(
                  () ->
                      InputProblem.of("the grade " + amount.getKey() + " without a price")
                          .expected("one of " + prices)
                          .because("its share of the value is unknown")
                          .mend("give its price, 0 if it cannot be sold"));
      sum += price.amount() * amount.getValue();
    }
    return sum / plot.area().in(AreaUnit.HECTARE);
  }

  private void requireNames(List<PlotGross> values) {
    var names = values.stream().map(PlotGross::treatment).distinct().sorted().toList();
    if (!names.contains(control) || names.size() < 2) {
      throw InputProblem.of("treatments " + names)
          .expected("the control \"" + control + "\" and at least one treatment")
          .because("a gain is stated against the control")
          .mend("write the control as it stands in the data");
    }
    for (var costly : costs.keySet()) {
      if (!names.contains(costly)) {
        throw InputProblem.of("a cost of the treatment \"" + costly + '"')
            .expected("one of " + names)
            .because("a cost that meets no treatment would silently be left out")
            .mend("write the treatment as it stands in the data");
      }
    }
    if (values.stream().map(PlotGross::plot).distinct().count() < values.size()) {
      throw InputProblem.of("a plot that appears twice")
          .expected("each plot once")
          .because("pickings of one plot are no plots of their own")
          .mend("add up the pickings of a plot");
    }
  }

  /**
   * Cost of a treatment.
   *
   * @param treatment the treatment
   * @return money for a hectare, 0 where none is stated
   */
  double cost(String treatment) {
    var cost = costs.get(treatment);
    return cost == null ? 0 : cost.perHectare();
  }

  String currency() {
    return prices.get(0).currency().getCurrencyCode();
  }
}
