package agro.stats.linear;

import agro.report.InputProblem;
import java.util.Arrays;

/** A measured variable of a model: a name and one number for each observation. */
public final class Covariate {

  private final String name;
  private final double[] values;
  private final double mean;

  private Covariate(String name, double[] values) {
    this.name = name;
    this.values = values;
    this.mean = Arrays.stream(values).average().orElseThrow();
  }

  /**
   * A covariate.
   *
   * @param name its name
   * @param values value of each observation, all finite
   * @return the covariate
   * @throws InputProblem if there is no value or one is not finite
   */
  public static Covariate of(String name, double... values) {
    if (name.isBlank() || values.length == 0) {
      throw InputProblem.of("covariate \"" + name + "\" with " + values.length + " values")
          .expected("a name and a value for each observation")
          .because("a model is stated by names and fitted to observations")
          .mend("give both");
    }
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        throw InputProblem.of(
                "observation " + (i + 1) + " of covariate " + name + " is " + values[i])
            .expected("a finite number")
            .because("a regression has no place for it")
            .mend("fill in the value or leave the observation out");
      }
    }
    return new Covariate(name, values.clone());
  }

  /**
   * Name of the covariate.
   *
   * @return a text that is not blank
   */
  public String name() {
    return name;
  }

  /**
   * Number of observations.
   *
   * @return at least 1
   */
  public int size() {
    return values.length;
  }

  /**
   * Value of an observation.
   *
   * @param observation index from 0
   * @return a finite number
   */
  public double value(int observation) {
    return values[observation];
  }

  /**
   * Mean over the observations.
   *
   * @return a finite number
   */
  public double mean() {
    return mean;
  }

  /**
   * The covariate of some of the observations.
   *
   * @param observations indices from 0, in the wanted order
   * @return a covariate of as many observations
   */
  public Covariate select(int... observations) {
    double[] chosen = new double[observations.length];
    for (int i = 0; i < chosen.length; i++) {
      chosen[i] = values[observations[i]];
    }
    return of(name, chosen);
  }

  @Override
  public boolean equals(Object object) {
    return this == object
        || (object instanceof Covariate other
            && name.equals(other.name)
            && Arrays.equals(values, other.values));
  }

  @Override
  public int hashCode() {
    return name.hashCode();
  }

  @Override
  public String toString() {
    return name + " with mean " + mean + " of " + values.length + " observations";
  }
}
