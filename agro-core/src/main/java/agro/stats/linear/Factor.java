package agro.stats.linear;

import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;

/**
 * A classification of observations: a name and one label for each observation. The order of the
 * levels does not depend on the order of the observations: it is the natural order of the labels
 * (plot 2 before plot 10), or the order that was declared.
 */
public final class Factor {

  private final String name;
  private final List<String> levels;
  private final int[] codes;

  private Factor(String name, List<String> levels, int[] codes) {
    this.name = name;
    this.levels = List.copyOf(levels);
    this.codes = codes;
  }

  /**
   * A factor whose levels stand in the natural order of their labels.
   *
   * @param name name of the factor
   * @param labels label of each observation
   * @return the factor
   * @throws InputProblem if there is no observation or a label is missing or blank
   */
  public static Factor of(String name, List<String> labels) {
    checkLabels(name, labels);
    var sorted = new TreeSet<>(LabelOrder.NATURAL);
    sorted.addAll(new LinkedHashSet<>(labels));
    return coded(name, new ArrayList<>(sorted), labels);
  }

  /**
   * A factor whose levels stand in the natural order of their labels.
   *
   * @param name name of the factor
   * @param labels label of each observation
   * @return the factor
   * @throws InputProblem if there is no observation or a label is missing or blank
   */
  public static Factor of(String name, String... labels) {
    return of(name, Arrays.asList(labels));
  }

  /**
   * A factor whose levels stand in a declared order, for example doses from low to high. Declared
   * levels without an observation are left out.
   *
   * @param name name of the factor
   * @param declared labels in their order
   * @param labels label of each observation
   * @return the factor
   * @throws InputProblem if a label is not declared, is declared twice, is missing or blank
   */
  public static Factor declared(String name, List<String> declared, List<String> labels) {
    checkLabels(name, labels);
    if (new LinkedHashSet<>(declared).size() != declared.size()) {
      throw InputProblem.of("levels " + declared + " of factor " + name + " name one level twice")
          .expected("each level once")
          .because("the order of the levels would be ambiguous")
          .mend("remove the repeated level");
    }
    var present = new LinkedHashSet<>(labels);
    for (String label : present) {
      if (!declared.contains(label)) {
        throw InputProblem.of("label \"" + label + "\" of factor " + name)
            .expected("one of the declared levels " + declared)
            .because("an observation of an unknown level belongs to no mean")
            .mend("correct the label or declare the level");
      }
    }
    return coded(name, declared.stream().filter(present::contains).toList(), labels);
  }

  private static void checkLabels(String name, List<String> labels) {
    Objects.requireNonNull(name);
    if (name.isBlank() || labels.isEmpty()) {
      throw InputProblem.of("factor \"" + name + "\" with " + labels.size() + " labels")
          .expected("a name and a label for each observation")
          .because("a model is stated by names and fitted to observations")
          .mend("give both");
    }
    for (int i = 0; i < labels.size(); i++) {
      if (labels.get(i) == null || labels.get(i).isBlank()) {
        throw InputProblem.of("observation " + (i + 1) + " has no label of factor " + name)
            .expected("a label that is not blank")
            .because("an observation of an unknown level belongs to no mean")
            .mend("fill in the label or leave the observation out");
      }
    }
  }

  private static Factor coded(String name, List<String> levels, List<String> labels) {
    Map<String, Integer> places = new HashMap<>();
    for (int k = 0; k < levels.size(); k++) {
      places.put(levels.get(k), k);
    }
    int[] codes = new int[labels.size()];
    for (int i = 0; i < codes.length; i++) {
      codes[i] = places.get(labels.get(i));
    }
    return new Factor(name, levels, codes);
  }

  /**
   * Name of the factor.
   *
   * @return a text that is not blank
   */
  public String name() {
    return name;
  }

  /**
   * Labels of the levels in their order.
   *
   * @return at least one label
   */
  public List<String> levels() {
    return levels;
  }

  /**
   * Number of levels.
   *
   * @return at least 1
   */
  public int levelCount() {
    return levels.size();
  }

  /**
   * Number of observations.
   *
   * @return at least 1
   */
  public int size() {
    return codes.length;
  }

  /**
   * Place of an observation's level in {@link #levels()}.
   *
   * @param observation index from 0
   * @return place from 0
   */
  public int code(int observation) {
    return codes[observation];
  }

  /**
   * Label of an observation.
   *
   * @param observation index from 0
   * @return its level
   */
  public String label(int observation) {
    return levels.get(codes[observation]);
  }

  /**
   * Place of a level.
   *
   * @param label label of a level
   * @return place from 0
   * @throws InputProblem if there is no such level
   */
  public int placeOf(String label) {
    int place = levels.indexOf(label);
    if (place < 0) {
      throw InputProblem.of("level \"" + label + "\" of factor " + name)
          .expected("one of " + levels)
          .because("a comparison needs means that exist")
          .mend("name one of the levels");
    }
    return place;
  }

  /**
   * Number of observations of each level, in the order of the levels.
   *
   * @return a new array
   */
  public int[] counts() {
    int[] counts = new int[levels.size()];
    for (int code : codes) {
      counts[code]++;
    }
    return counts;
  }

  /**
   * The factor of some of the observations; levels keep their order, and those that no chosen
   * observation has are left out.
   *
   * @param observations indices from 0, in the wanted order
   * @return a factor of as many observations
   */
  public Factor select(int... observations) {
    var labels = new ArrayList<String>(observations.length);
    for (int observation : observations) {
      labels.add(label(observation));
    }
    checkLabels(name, labels);
    var present = new LinkedHashSet<>(labels);
    return coded(name, levels.stream().filter(present::contains).toList(), labels);
  }

  /**
   * The factor whose levels are the combinations of this and another factor that were observed, in
   * the order of this factor and within it of the other.
   *
   * @param other a factor of the same observations
   * @return a factor named after both, with labels such as "a1:b2"
   */
  public Factor combinedWith(Factor other) {
    var pairs = new TreeSet<Integer>();
    for (int i = 0; i < codes.length; i++) {
      pairs.add(codes[i] * other.levelCount() + other.codes[i]);
    }
    var order = new ArrayList<>(pairs);
    Map<Integer, Integer> places = new HashMap<>();
    var joined = new ArrayList<String>();
    for (int pair : order) {
      places.put(pair, joined.size());
      joined.add(
          levels.get(pair / other.levelCount())
              + ":"
              + other.levels.get(pair % other.levelCount()));
    }
    int[] both = new int[codes.length];
    for (int i = 0; i < codes.length; i++) {
      both[i] = places.get(codes[i] * other.levelCount() + other.codes[i]);
    }
    return new Factor(name + ":" + other.name, joined, both);
  }

  @Override
  public boolean equals(Object object) {
    return this == object
        || (object instanceof Factor other
            && name.equals(other.name)
            && levels.equals(other.levels)
            && Arrays.equals(codes, other.codes));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name + " with levels " + levels + " of " + codes.length + " observations";
  }
}
