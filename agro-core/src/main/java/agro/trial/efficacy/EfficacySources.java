package agro.trial.efficacy;

import agro.source.Reference;

/** The works that the formulas and limits of this package come from. */
final class EfficacySources {

  /** Survivors of the treated as a share of those of the control. */
  static final Reference ABBOTT_1925 =
      Reference.fromMemory(
          "Abbott, W. S.",
          1925,
          "A method of computing the effectiveness of an insecticide",
          "Journal of Economic Entomology 18:265-267");

  /** The same from mortality. */
  static final Reference SCHNEIDER_ORELLI_1947 =
      Reference.fromMemory(
          "Schneider-Orelli, O.",
          1947,
          "Entomologisches Praktikum",
          "Sauerländer, Aarau, second edition");

  /** Counts before and after in both. */
  static final Reference HENDERSON_TILTON_1955 =
      Reference.fromMemory(
          "Henderson, C. F. & Tilton, E. W.",
          1955,
          "Tests with acaricides against the brown wheat mite",
          "Journal of Economic Entomology 48:157-161");

  /** Mortality corrected by the change of the control. */
  static final Reference SUN_SHEPARD_1947 =
      Reference.fromMemory(
          "Sun, Y. P. & Shepard, H. H.",
          1947,
          "Methods of calculating and correcting the mortality of insects",
          "Journal of Economic Entomology 40:710-715");

  /** Limits of a ratio of two shares by scores. */
  static final Reference KOOPMAN_1984 =
      Reference.fromMemory(
          "Koopman, P. A. R.",
          1984,
          "Confidence intervals for the ratio of two binomial proportions",
          "Biometrics 40:513-517");

  /** Comparison of two counts given their sum. */
  static final Reference PRZYBOROWSKI_WILENSKI_1940 =
      Reference.fromMemory(
          "Przyborowski, J. & Wilenski, H.",
          1940,
          "Homogeneity of results in testing samples from Poisson series",
          "Biometrika 31:313-323");

  /** Half a count added to every cell. */
  static final Reference HALDANE_1956 =
      Reference.fromMemory(
          "Haldane, J. B. S.",
          1956,
          "The estimation and significance of the logarithm of a ratio of frequencies",
          "Annals of Human Genetics 20:309-311");

  /** Variance of a ratio of two means. */
  static final Reference COCHRAN_1977 =
      Reference.fromMemory(
          "Cochran, W. G.", 1977, "Sampling Techniques, third edition", "Wiley, New York, ch. 6");

  /** Bias-corrected and accelerated percentiles. */
  static final Reference EFRON_1987 =
      Reference.fromMemory(
          "Efron, B.",
          1987,
          "Better bootstrap confidence intervals",
          "Journal of the American Statistical Association 82:171-185");

  /** Degrees of freedom of two variances. */
  static final Reference SATTERTHWAITE_1946 =
      Reference.fromMemory(
          "Satterthwaite, F. E.",
          1946,
          "An approximate distribution of estimates of variance components",
          "Biometrics Bulletin 2:110-114");

  private EfficacySources() {}
}
