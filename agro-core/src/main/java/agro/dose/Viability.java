package agro.dose;

import agro.report.InputProblem;
import agro.units.Numbers;

/**
 * The share of the labelled living units that a test found alive.
 *
 * @param share above 0 and up to 1
 */
public record Viability(double share) {

  /** Refuses shares that no test finds. */
  public Viability {
    if (!(share > 0 && share <= 1)) {
      throw InputProblem.of("a viability of " + share)
          .expected("a share above 0 and up to 1, for example 0.85 for 85 %")
          .because(
              "a product without living units has no dose, and none holds more than it was counted"
                  + " to hold")
          .mend("write the share of the test as a fraction, or use Viability.percent");
    }
  }

  /**
   * A viability in per cent.
   *
   * @param percent above 0 and up to 100
   * @return the viability
   */
  public static Viability percent(double percent) {
    return new Viability(percent / 100);
  }

  @Override
  public String toString() {
    return Numbers.plain(100 * share) + " % alive";
  }
}
