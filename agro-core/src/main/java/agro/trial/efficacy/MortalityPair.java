package agro.trial.efficacy;

import agro.report.InputProblem;

/**
 * Mortality of the treated and of the control, in per cent.
 *
 * @param treatedPercent dead of the treated, 0 to 100
 * @param controlPercent dead of the control, 0 to 100
 */
public record MortalityPair(double treatedPercent, double controlPercent) {

  /**
   * Checks the numbers.
   *
   * @throws InputProblem when one is not between 0 and 100
   */
  public MortalityPair {
    check(treatedPercent, "treated");
    check(controlPercent, "control");
  }

  private static void check(double percent, String which) {
    if (!(percent >= 0 && percent <= 100)) {
      throw InputProblem.of("a mortality of the " + which + " of " + percent + " %")
          .expected("0 to 100 %")
          .because("no more than all can die")
          .mend("give dead over total times 100; for numbers that grow take counts");
    }
  }

  /**
   * Mortality from the numbers of dead.
   *
   * @param treatedDead dead of the treated
   * @param treatedTotal all treated, above 0
   * @param controlDead dead of the control
   * @param controlTotal all of the control, above 0
   * @return the pair
   * @throws InputProblem when there are more dead than animals, or none
   */
  public static MortalityPair ofDead(
      double treatedDead, double treatedTotal, double controlDead, double controlTotal) {
    return new MortalityPair(share(treatedDead, treatedTotal), share(controlDead, controlTotal));
  }

  static double share(double dead, double total) {
    if (!(dead >= 0 && total > 0 && dead <= total && Double.isFinite(total))) {
      throw InputProblem.of(dead + " dead of " + total)
          .expected("0 or more dead of a total above 0, no more dead than there were")
          .because("mortality is a share of the animals that were tested")
          .mend("look for dead and total in each other's place, or a slip of the pen");
    }
    return 100 * dead / total;
  }
}
