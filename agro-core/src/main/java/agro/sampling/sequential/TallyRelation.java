package agro.sampling.sequential;

import agro.report.InputProblem;
import agro.sampling.NegativeBinomialCounts;
import agro.sampling.presence.PresenceRelation;
import agro.units.Numbers;
import java.util.Objects;

/** How the share of units with more than a tally of animals follows from their mean number. */
public sealed interface TallyRelation {

  /**
   * Animals that a unit may have without counting.
   *
   * @return T, 0 for presence and absence
   */
  int tally();

  /**
   * Share of units with more animals than the tally.
   *
   * @param mean mean count for each unit, above 0
   * @return 0 to 1
   */
  double shareAbove(double mean);

  /**
   * The relation in words.
   *
   * @return one line
   */
  String words();

  /**
   * Presence and absence.
   *
   * @param relation share of units with any animal by their mean
   */
  record AnyAnimal(PresenceRelation relation) implements TallyRelation {
    /** Refuses null. */
    public AnyAnimal {
      Objects.requireNonNull(relation, "relation");
    }

    @Override
    public int tally() {
      return 0;
    }

    @Override
    public double shareAbove(double mean) {
      return relation.share(mean);
    }

    @Override
    public String words() {
      return "units with any animal, " + relation.words();
    }
  }

  /**
   * Counts with one exponent at every density.
   *
   * @param tally T, 0 or more
   * @param exponent k, infinite for counts at random
   */
  record MoreThan(int tally, double exponent) implements TallyRelation {
    /** Checks tally and exponent. */
    public MoreThan {
      if (tally < 0 || !(exponent > 0)) {
        throw InputProblem.of("a tally of " + tally + " with k " + exponent)
            .expected("a tally of 0 or more and a k above 0")
            .because("the share of units above the tally follows from them")
            .mend("take 0 for presence and absence, and the k of the pest");
      }
    }

    @Override
    public double shareAbove(double mean) {
      return new NegativeBinomialCounts(mean, exponent).chanceOfMoreThan(tally);
    }

    @Override
    public String words() {
      return "units with more than "
          + tally
          + " animals, "
          + (Double.isInfinite(exponent)
              ? "counts at random"
              : "negative binomial with k = " + Numbers.plain(exponent));
    }
  }
}
