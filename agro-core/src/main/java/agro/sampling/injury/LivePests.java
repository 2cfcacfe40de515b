package agro.sampling.injury;

import agro.report.InputProblem;
import agro.sampling.CountSample;
import agro.units.Numbers;
import agro.working.Presentable;
import agro.working.Presentation;
import java.util.ArrayList;
import java.util.List;

/**
 * Counts with those animals left out that a natural enemy has taken already: parasitised or
 * diseased ones do no more harm that treating could prevent. Both counts are needed on every unit.
 *
 * @param all all animals of each unit
 * @param taken parasitised or diseased ones among them, unit by unit
 */
public record LivePests(CountSample all, CountSample taken) implements Presentable {

  /**
   * Checks that the counts belong together.
   *
   * @throws InputProblem when units or numbers differ, or more were taken than there are
   */
  public LivePests {
    all.unit().requireSame(taken.unit(), "animals and parasitised animals");
    if (all.size() != taken.size()) {
      throw InputProblem.of(
              all.size() + " counts of animals and " + taken.size() + " of parasitised ones")
          .expected("both on every unit")
          .because("the discount belongs to the animals of the same unit")
          .mend("write a zero where no animal was parasitised");
    }
    for (int i = 0; i < all.size(); i++) {
      if (taken.counts().get(i) > all.counts().get(i)) {
        throw InputProblem.of(
                "unit "
                    + (i + 1)
                    + " with "
                    + taken.counts().get(i)
                    + " parasitised of "
                    + all.counts().get(i)
                    + " animals")
            .expected("no more than all animals")
            .because("the parasitised ones are counted among all")
            .mend("count living and parasitised ones together as all");
      }
    }
  }

  /**
   * The animals that still count.
   *
   * @return all less those taken, unit by unit
   */
  public CountSample live() {
    var left = new ArrayList<Integer>();
    for (int i = 0; i < all.size(); i++) {
      left.add(all.counts().get(i) - taken.counts().get(i));
    }
    return new CountSample(all.label(), all.unit(), left);
  }

  /**
   * Share of the animals that is taken.
   *
   * @return Σ taken / Σ all
   * @throws InputProblem when there is no animal
   */
  public double shareTaken() {
    all.requireAnimals("the share of parasitised animals");
    return (double) taken.total() / all.total();
  }

  /**
   * Standard error of the share, as a ratio of two sums over units that vary together.
   *
   * @return √(Σ (t − p a)² / (n (n − 1))) / mean of a
   */
  public double shareStandardError() {
    double share = shareTaken();
    double sum = 0;
    for (int i = 0; i < all.size(); i++) {
      double off = taken.counts().get(i) - share * all.counts().get(i);
      sum += off * off;
    }
    double n = all.size();
    return Math.sqrt(sum / (n * (n - 1))) / all.mean();
  }

  @Override
  public Presentation presentation() {
    var page =
        Presentation.titled("Natural enemies taken off")
            .fact("All animals", Numbers.fixed(all.mean(), 2) + " per " + all.unit().words())
            .fact("Still to count", Numbers.fixed(live().mean(), 2) + " per " + all.unit().words());
    if (all.total() > 0) {
      page.fact(
          "Share taken",
          Numbers.fixed(100 * shareTaken(), 1)
              + " % ± "
              + Numbers.fixed(100 * shareStandardError(), 1)
              + " %");
    }
    return page.paragraph(
            "Only enemies that can be seen are in it. Eggs and young larvae of parasitoids inside"
                + " living animals are not, so that more may be taken than is counted.")
        .sources(List.of())
        .build();
  }
}
