package agro.stats.multiple;

import agro.source.Reference;

/** Works that the comparisons of means rest on. */
final class MultipleSources {

  static final Reference FISHER_1935 =
      Reference.fromMemory("Fisher, R. A.", 1935, "The design of experiments", "Oliver and Boyd");

  static final Reference TUKEY_1953 =
      Reference.fromMemory(
          "Tukey, J. W.", 1953, "The problem of multiple comparisons", "Princeton University");

  static final Reference KRAMER_1956 =
      Reference.fromMemory(
          "Kramer, C. Y.",
          1956,
          "Extension of multiple range tests to group means with unequal numbers of replications",
          "Biometrics 12:307-310");

  static final Reference HARTER_1960 =
      Reference.fromMemory(
          "Harter, H. L.",
          1960,
          "Tables of range and studentized range",
          "Annals of Mathematical Statistics 31:1122-1147");

  static final Reference DUNNETT_1955 =
      Reference.fromMemory(
          "Dunnett, C. W.",
          1955,
          "A multiple comparison procedure for comparing several treatments with a control",
          "Journal of the American Statistical Association 50:1096-1121");

  static final Reference DUNNETT_1964 =
      Reference.fromMemory(
          "Dunnett, C. W.",
          1964,
          "New tables for multiple comparisons with a control",
          "Biometrics 20:482-491");

  static final Reference HSU_1992 =
      Reference.fromMemory(
          "Hsu, J. C.",
          1992,
          "The factor analytic approach to simultaneous inference in the general linear model",
          "Journal of Computational and Graphical Statistics 1:151-168");

  static final Reference DUNN_1961 =
      Reference.fromMemory(
          "Dunn, O. J.",
          1961,
          "Multiple comparisons among means",
          "Journal of the American Statistical Association 56:52-64");

  static final Reference SIDAK_1967 =
      Reference.fromMemory(
          "Sidak, Z.",
          1967,
          "Rectangular confidence regions for the means of multivariate normal distributions",
          "Journal of the American Statistical Association 62:626-633");

  static final Reference HOLM_1979 =
      Reference.fromMemory(
          "Holm, S.",
          1979,
          "A simple sequentially rejective multiple test procedure",
          "Scandinavian Journal of Statistics 6:65-70");

  static final Reference HOCHBERG_1988 =
      Reference.fromMemory(
          "Hochberg, Y.",
          1988,
          "A sharper Bonferroni procedure for multiple tests of significance",
          "Biometrika 75:800-802");

  static final Reference BENJAMINI_HOCHBERG_1995 =
      Reference.fromMemory(
          "Benjamini, Y. & Hochberg, Y.",
          1995,
          "Controlling the false discovery rate: a practical and powerful approach to multiple"
              + " testing",
          "Journal of the Royal Statistical Society B 57:289-300");

  static final Reference PIEPHO_2004 =
      Reference.fromMemory(
          "Piepho, H.-P.",
          2004,
          "An algorithm for a letter-based representation of all-pairwise comparisons",
          "Journal of Computational and Graphical Statistics 13:456-466");

  private MultipleSources() {}
}
