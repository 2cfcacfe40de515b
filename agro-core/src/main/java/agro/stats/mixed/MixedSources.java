package agro.stats.mixed;

import agro.source.Reference;

/** Works that mixed models rest on, each once. */
final class MixedSources {

  static final Reference PATTERSON_THOMPSON_1971 =
      Reference.fromMemory(
          "Patterson, H. D. & Thompson, R.",
          1971,
          "Recovery of inter-block information when block sizes are unequal",
          "Biometrika 58:545-554");

  static final Reference FAI_CORNELIUS_1996 =
      Reference.fromMemory(
          "Fai, A. H.-T. & Cornelius, P. L.",
          1996,
          "Approximate F-tests of multiple degree of freedom hypotheses in generalized least squares"
              + " analyses of unbalanced split-plot experiments",
          "Journal of Statistical Computation and Simulation 54:363-378");

  private MixedSources() {}
}
