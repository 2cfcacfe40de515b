package agro.trial;

import java.util.ArrayList;
import java.util.List;

/**
 * How treatments were laid on plots. The treatment factors are crossed within each stratum; more
 * than one of them makes the trial a factorial.
 */
public sealed interface TrialDesign
    permits TrialDesign.CompletelyRandomised,
        TrialDesign.CompleteBlocks,
        TrialDesign.IncompleteBlocks,
        TrialDesign.LatinSquare,
        TrialDesign.SplitPlot,
        TrialDesign.SplitSplitPlot {

  /**
   * All treatment factors.
   *
   * @return names of the factors
   */
  List<String> factors();

  /**
   * The design in words.
   *
   * @return for example {@code "randomised complete blocks"}
   */
  String words();

  /**
   * Whether treatments are combinations of several factors.
   *
   * @return true for two factors or more
   */
  default boolean isFactorial() {
    return factors().size() > 1;
  }

  /**
   * Treatments at random over all plots.
   *
   * @param factors treatment factors
   */
  record CompletelyRandomised(List<String> factors) implements TrialDesign {
    /** Refuses a design without factors. */
    public CompletelyRandomised {
      factors = checked(factors);
    }

    @Override
    public String words() {
      return factorial(factors) + "completely randomised";
    }
  }

  /**
   * Each treatment in each block.
   *
   * @param factors treatment factors
   */
  record CompleteBlocks(List<String> factors) implements TrialDesign {
    /** Refuses a design without factors. */
    public CompleteBlocks {
      factors = checked(factors);
    }

    @Override
    public String words() {
      return factorial(factors) + "randomised complete blocks";
    }
  }

  /**
   * Blocks that hold some of the treatments only.
   *
   * @param factors treatment factors
   * @param balanced whether each pair of treatments meets in the same number of blocks
   */
  record IncompleteBlocks(List<String> factors, boolean balanced) implements TrialDesign {
    /** Refuses a design without factors. */
    public IncompleteBlocks {
      factors = checked(factors);
    }

    @Override
    public String words() {
      return factorial(factors) + (balanced ? "balanced incomplete blocks" : "incomplete blocks");
    }
  }

  /**
   * Each treatment once in each row and in each column.
   *
   * @param factors treatment factors
   */
  record LatinSquare(List<String> factors) implements TrialDesign {
    /** Refuses a design without factors. */
    public LatinSquare {
      factors = checked(factors);
    }

    @Override
    public String words() {
      return factorial(factors) + "Latin square";
    }
  }

  /**
   * Main plots that carry one treatment, divided into plots that carry another.
   *
   * @param mainFactors factors laid on main plots
   * @param subFactors factors laid on the plots within them
   * @param inBlocks whether the main plots stand in complete blocks
   */
  record SplitPlot(List<String> mainFactors, List<String> subFactors, boolean inBlocks)
      implements TrialDesign {
    /** Refuses a stratum without factors. */
    public SplitPlot {
      mainFactors = checked(mainFactors);
      subFactors = checked(subFactors);
    }

    @Override
    public List<String> factors() {
      return joined(List.of(mainFactors, subFactors));
    }

    @Override
    public String words() {
      return "split plot"
          + (inBlocks ? " in blocks" : ", main plots completely randomised")
          + " with "
          + String.join(" and ", mainFactors)
          + " on main plots and "
          + String.join(" and ", subFactors)
          + " on plots within them";
    }
  }

  /**
   * Main plots divided into sub-plots that are divided again.
   *
   * @param mainFactors factors laid on main plots
   * @param subFactors factors laid on the sub-plots
   * @param subSubFactors factors laid on the plots within sub-plots
   * @param inBlocks whether the main plots stand in complete blocks
   */
  record SplitSplitPlot(
      List<String> mainFactors,
      List<String> subFactors,
      List<String> subSubFactors,
      boolean inBlocks)
      implements TrialDesign {
    /** Refuses a stratum without factors. */
    public SplitSplitPlot {
      mainFactors = checked(mainFactors);
      subFactors = checked(subFactors);
      subSubFactors = checked(subSubFactors);
    }

    @Override
    public List<String> factors() {
      return joined(List.of(mainFactors, subFactors, subSubFactors));
    }

    @Override
    public String words() {
      return "split-split plot"
          + (inBlocks ? " in blocks" : ", main plots completely randomised")
          + " with "
          + String.join(" and ", mainFactors)
          + " on main plots, "
          + String.join(" and ", subFactors)
          + " on sub-plots and "
          + String.join(" and ", subSubFactors)
          + " on plots within them";
    }
  }

  private static String factorial(List<String> factors) {
    return factors.size() > 1 ? "factorial of " + String.join(" and ", factors) + ", " : "";
  }

  private static List<String> joined(List<List<String>> strata) {
    var all = new ArrayList<String>();
    strata.forEach(all::addAll);
    return List.copyOf(all);
  }

  private static List<String> checked(List<String> factors) {
    if (factors.isEmpty()) {
      throw new IllegalArgumentException("each stratum of a design needs a treatment factor");
    }
    return List.copyOf(factors);
  }
}
