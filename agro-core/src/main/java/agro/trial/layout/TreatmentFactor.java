package agro.trial.layout;

import agro.trial.TrialPlot;
import java.util.HashSet;
import java.util.List;

/**
 * A treatment factor of a trial to be planned.
 *
 * @param name name of the factor, and heading of its column
 * @param levels its levels, at least two
 */
public record TreatmentFactor(String name, List<String> levels) {

  /** Refuses a factor without a name, with fewer than two levels or with a level twice. */
  public TreatmentFactor {
    levels = List.copyOf(levels);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a treatment factor needs a name");
    }
    if (levels.size() < 2 || levels.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException(
          "the factor " + name + " needs at least two levels with names, but got " + levels);
    }
    if (new HashSet<>(levels).size() < levels.size()) {
      throw new IllegalArgumentException("the factor " + name + " has a level twice: " + levels);
    }
  }

  /**
   * A factor with a name.
   *
   * @param name name of the factor
   * @param levels its levels
   * @return the factor
   */
  public static TreatmentFactor of(String name, String... levels) {
    return new TreatmentFactor(name, List.of(levels));
  }

  /**
   * The only factor of a trial.
   *
   * @param treatments the treatments
   * @return a factor whose name is the word "treatment"
   */
  public static TreatmentFactor treatments(String... treatments) {
    return new TreatmentFactor(TrialPlot.TREATMENT, List.of(treatments));
  }
}
