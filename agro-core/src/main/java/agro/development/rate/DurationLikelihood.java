package agro.development.rate;

import agro.stats.ScalarModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;

/**
 * Minus the log likelihood of single durations, by the coordinates of the search and the logarithm
 * of the dispersion as the last one.
 */
final class DurationLikelihood implements ScalarModel {

  private final RateEquation equation;
  private final ArrheniusConstants constants;
  private final DurationDistribution distribution;
  private final double[] celsius;
  private final double[] from;
  private final double[] to;

  /** Animals of each different record; a bootstrap changes them. */
  final double[] count;

  /** Place of each given record among the different ones. */
  final int[] place;

  DurationLikelihood(RateFitting fitting, List<RearedAnimals> animals) {
    equation = fitting.equation();
    constants = fitting.constants();
    distribution = fitting.distribution().orElseThrow();
    var places = new HashMap<List<Double>, Integer>();
    var different = new ArrayList<List<Double>>();
    place = new int[animals.size()];
    for (int i = 0; i < place.length; i++) {
      var one = animals.get(i);
      var record = List.of(one.celsius(), one.fromDays(), one.toDays());
      var known = places.putIfAbsent(record, different.size());
      place[i] = known == null ? different.size() : known;
      if (known == null) {
        different.add(record);
      }
    }
    celsius = different.stream().mapToDouble(record -> record.get(0)).toArray();
    from = different.stream().mapToDouble(record -> record.get(1)).toArray();
    to = different.stream().mapToDouble(record -> record.get(2)).toArray();
    count = new double[celsius.length];
    for (int i = 0; i < place.length; i++) {
      count[place[i]] += animals.get(i).animals();
    }
  }

  @Override
  public double value(double[] coordinates) {
    double dispersion = Math.exp(coordinates[coordinates.length - 1]);
    double sum = 0;
    double rate = 0;
    for (int i = 0; i < celsius.length; i++) {
      if (i == 0 || celsius[i] != celsius[i - 1]) {
        rate = equation.fitted(celsius[i], coordinates, constants);
      }
      if (count[i] > 0) {
        sum -= count[i] * distribution.logProbability(from[i], to[i], rate, dispersion);
      }
    }
    return sum;
  }
}
