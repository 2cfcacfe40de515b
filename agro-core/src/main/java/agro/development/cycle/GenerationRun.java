package agro.development.cycle;

/** One generation of a life cycle, by stage and day. */
final class GenerationRun {

  private final double[][] entered;
  private final double[][] present;
  private final double[] eggs;
  private final double[] potential;

  GenerationRun(double[][] entered, double[][] present, double[] eggs, double[] potential) {
    this.entered = entered;
    this.present = present;
    this.eggs = eggs;
    this.potential = potential;
  }

  /** How many enter a stage on each day. */
  double[] entered(int stage) {
    return entered[stage];
  }

  /** How many are in a stage at the end of each day. */
  double[] present(int stage) {
    return present[stage];
  }

  /** Eggs of the next generation laid on each day. */
  double[] eggs() {
    return eggs;
  }

  /** How many would enter each stage if the season went on for ever. */
  double[] potential() {
    return potential;
  }
}
