package agro.trial.layout;

import agro.source.Reference;

/** The works that planning of trials comes from. */
final class LayoutSources {

  /** Residual degrees of freedom of trials. */
  static final Reference EFFICACY_STANDARD =
      Reference.fromMemory(
          "European and Mediterranean Plant Protection Organization",
          2012,
          "PP 1/152: Design and analysis of efficacy evaluation trials",
          "EPPO Bulletin 42:367-381");

  /** Drawing Latin squares of any order. */
  static final Reference LATIN_SQUARES =
      Reference.fromMemory(
          "Jacobson, M. T. & Matthews, P.",
          1996,
          "Generating uniformly distributed random Latin squares",
          "Journal of Combinatorial Designs 4:405-437");

  /** The random number generator. */
  static final Reference RANDOM_NUMBERS =
      Reference.fromMemory(
          "Steele, G. L., Lea, D. & Flood, C. H.",
          2014,
          "Fast splittable pseudorandom number generators",
          "Proceedings of OOPSLA 2014:453-472");

  private LayoutSources() {}
}
