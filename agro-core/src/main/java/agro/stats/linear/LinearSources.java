package agro.stats.linear;

import agro.source.Reference;

/** Works that linear models of trials rest on. */
final class LinearSources {

  static final Reference FISHER_1925 =
      Reference.fromMemory(
          "Fisher, R. A.", 1925, "Statistical methods for research workers", "Oliver and Boyd");

  static final Reference YATES_1934 =
      Reference.fromMemory(
          "Yates, F.",
          1934,
          "The analysis of multiple classifications with unequal numbers in the different classes",
          "Journal of the American Statistical Association 29:51-66");

  static final Reference YATES_1935 =
      Reference.fromMemory(
          "Yates, F.",
          1935,
          "Complex experiments",
          "Supplement to the Journal of the Royal Statistical Society 2:181-247");

  static final Reference SATTERTHWAITE_1946 =
      Reference.fromMemory(
          "Satterthwaite, F. E.",
          1946,
          "An approximate distribution of estimates of variance components",
          "Biometrics Bulletin 2:110-114");

  static final Reference NELDER_1965 =
      Reference.fromMemory(
          "Nelder, J. A.",
          1965,
          "The analysis of randomized experiments with orthogonal block structure",
          "Proceedings of the Royal Society of London A 283:147-178");

  static final Reference NELDER_1977 =
      Reference.fromMemory(
          "Nelder, J. A.",
          1977,
          "A reformulation of linear models",
          "Journal of the Royal Statistical Society A 140:48-77");

  private LinearSources() {}
}
