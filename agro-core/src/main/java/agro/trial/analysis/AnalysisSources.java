package agro.trial.analysis;

import agro.source.Reference;

/** The works that rules of this package come from. */
final class AnalysisSources {

  /** Transformations of counts and shares. */
  static final Reference BARTLETT_1947 =
      Reference.fromMemory(
          "Bartlett, M. S.", 1947, "The use of transformations", "Biometrics 3:39-52");

  /** At least 12 degrees of freedom of the residual. */
  static final Reference EPPO_152 =
      Reference.fromMemory(
          "European and Mediterranean Plant Protection Organization",
          2012,
          "PP 1/152: Design and analysis of efficacy evaluation trials",
          "EPPO Bulletin 42:367-381");

  private AnalysisSources() {}
}
