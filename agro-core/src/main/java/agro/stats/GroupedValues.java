package agro.stats;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Values in groups, for example the plots of each treatment. Groups keep the order of their first
 * value; within a group the values are sorted, so that the order of rows cannot change a result.
 */
public final class GroupedValues {

  private final List<String> labels;
  private final List<double[]> values;

  private GroupedValues(Map<String, double[]> groups) {
    labels = List.copyOf(groups.keySet());
    values =
        groups.values().stream()
            .map(
                each -> {
                  double[] sorted = each.clone();
                  Arrays.sort(sorted);
                  return sorted;
                })
            .toList();
  }

  /**
   * Groups of rows that name their group.
   *
   * @param labels name of the group of each row
   * @param values value of each row, finite
   * @return the groups
   * @throws InputProblem if there are fewer than two groups, numbers of rows differ, a label is
   *     empty, or a value is not finite
   */
  public static GroupedValues of(List<String> labels, double[] values) {
    if (labels.size() != values.length) {
      throw InputProblem.of(labels.size() + " group names and " + values.length + " values")
          .expected("one group name for each value")
          .because("a value without its group cannot be compared")
          .mend("give both columns of the same rows");
    }
    var rows = new LinkedHashMap<String, List<Double>>();
    for (int i = 0; i < values.length; i++) {
      rows.computeIfAbsent(labels.get(i), label -> new ArrayList<>()).add(values[i]);
    }
    var groups = new LinkedHashMap<String, double[]>();
    rows.forEach(
        (label, list) ->
            groups.put(label, list.stream().mapToDouble(Double::doubleValue).toArray()));
    return of(groups);
  }

  /**
   * Groups that are already apart.
   *
   * @param groups values of each group by its name, in the order in which they are to be shown
   * @return the groups
   * @throws InputProblem if there are fewer than two groups, a name or group is empty, or a value
   *     is not finite
   */
  public static GroupedValues of(Map<String, double[]> groups) {
    if (groups.size() < 2) {
      throw InputProblem.of("There is " + (groups.isEmpty() ? "no group" : "one group only"))
          .expected("at least two groups")
          .because("the test compares groups with each other")
          .mend("check the column that names the groups");
    }
    groups.forEach(GroupedValues::check);
    return new GroupedValues(groups);
  }

  /**
   * Groups named 1, 2, 3 and so on.
   *
   * @param groups values of each group
   * @return the groups
   * @throws InputProblem as {@link #of(Map)}
   */
  public static GroupedValues numbered(double[]... groups) {
    var named = new LinkedHashMap<String, double[]>();
    for (int i = 0; i < groups.length; i++) {
      named.put(Integer.toString(i + 1), groups[i]);
    }
    return of(named);
  }

  private static void check(String label, double[] values) {
    if (label == null || label.isBlank()) {
      throw InputProblem.of("A group has no name")
          .expected("a name for each group")
          .because("results are told by the names of groups")
          .mend("fill in the empty cells of the column that names the groups");
    }
    if (values.length == 0) {
      throw InputProblem.of("Group " + label + " has no values")
          .expected("at least one value in each group")
          .because("an empty group has no mean and no rank")
          .mend("leave the group out");
    }
    for (double value : values) {
      if (!Double.isFinite(value)) {
        throw InputProblem.of("Group " + label + " contains the value " + value)
            .expected("finite numbers")
            .because("one such value would spoil every sum")
            .mend("leave rows without a value out, and say so");
      }
    }
  }

  /**
   * Names of the groups.
   *
   * @return in the order of their first values
   */
  public List<String> labels() {
    return labels;
  }

  /**
   * Number of groups.
   *
   * @return at least two
   */
  public int groups() {
    return labels.size();
  }

  /**
   * Number of values in one group.
   *
   * @param group place of the group, from 0
   * @return at least one
   */
  public int size(int group) {
    return values.get(group).length;
  }

  /**
   * Number of values in all groups.
   *
   * @return at least two
   */
  public int total() {
    return values.stream().mapToInt(each -> each.length).sum();
  }

  /**
   * Values of one group in ascending order.
   *
   * @param group place of the group, from 0
   * @return a copy
   */
  public double[] values(int group) {
    return values.get(group).clone();
  }

  /**
   * All values, group after group.
   *
   * @return a new array
   */
  public double[] all() {
    return values.stream().flatMapToDouble(Arrays::stream).toArray();
  }

  /**
   * Mean of one group.
   *
   * @param group place of the group, from 0
   * @return the mean
   */
  public double mean(int group) {
    return DoubleStream.of(values.get(group)).sum() / size(group);
  }

  /**
   * Median of one group.
   *
   * @param group place of the group, from 0
   * @return the middle value, or the mean of the two middle values
   */
  public double median(int group) {
    double[] sorted = values.get(group);
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }

  /**
   * Variance of one group with n - 1 in the denominator.
   *
   * @param group place of the group, from 0
   * @return the variance, exactly 0 when all values are equal; NaN for a group of one value
   */
  public double variance(int group) {
    double[] each = values.get(group);
    if (each.length < 2) {
      return Double.NaN;
    }
    if (each[0] == each[each.length - 1]) {
      return 0;
    }
    double mean = mean(group);
    return DoubleStream.of(each).map(x -> (x - mean) * (x - mean)).sum() / (each.length - 1);
  }

  /**
   * Groups in which all values are equal, among those with two or more.
   *
   * @return their names, possibly none
   */
  public List<String> groupsWithoutVariance() {
    return IntStream.range(0, groups())
        .filter(i -> size(i) > 1 && variance(i) == 0)
        .mapToObj(labels::get)
        .toList();
  }

  /**
   * Refuses groups that are smaller than a test can use.
   *
   * @param smallest number of values that each group must have
   * @param reason why fewer cannot be used, without a full stop
   * @throws InputProblem naming the first group that is too small
   */
  public void requireSize(int smallest, String reason) {
    for (int i = 0; i < groups(); i++) {
      if (size(i) < smallest) {
        throw InputProblem.of(
                "Group "
                    + labels.get(i)
                    + " has "
                    + size(i)
                    + (size(i) == 1 ? " value" : " values"))
            .expected("at least " + smallest + " values in each group")
            .because(reason)
            .mend("leave the group out and say so, or take another test");
      }
    }
  }
}
