package agro.stats.assumption;

import agro.stats.GroupedValues;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Size, centre and scatter of one group.
 *
 * @param label name of the group
 * @param n number of values
 * @param mean mean
 * @param median median
 * @param variance variance with n - 1 in the denominator
 */
public record GroupSpread(String label, int n, double mean, double median, double variance) {

  static List<GroupSpread> all(GroupedValues groups) {
    return IntStream.range(0, groups.groups())
        .mapToObj(
            i ->
                new GroupSpread(
                    groups.labels().get(i),
                    groups.size(i),
                    groups.mean(i),
                    groups.median(i),
                    groups.variance(i)))
        .toList();
  }
}
