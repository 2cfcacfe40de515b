package agro.stats.assumption;

import agro.source.Reference;

/** Works that the checks rest on, each once. */
final class AssumptionSources {

  static final Reference ROYSTON_1995 =
      Reference.fromMemory(
          "Royston, P.",
          1995,
          "Remark AS R94: a remark on algorithm AS 181: the W-test for normality",
          "Applied Statistics 44:547-551");

  static final Reference BARTLETT_1937 =
      Reference.fromMemory(
          "Bartlett, M. S.",
          1937,
          "Properties of sufficiency and statistical tests",
          "Proceedings of the Royal Society of London A 160:268-282");

  static final Reference LEVENE_1960 =
      Reference.fromMemory(
          "Levene, H.",
          1960,
          "Robust tests for equality of variances",
          "In: Contributions to Probability and Statistics, Stanford University Press, 278-292");

  static final Reference BROWN_FORSYTHE_1974 =
      Reference.fromMemory(
          "Brown, M. B. & Forsythe, A. B.",
          1974,
          "Robust tests for the equality of variances",
          "Journal of the American Statistical Association 69:364-367");

  static final Reference CONOVER_JOHNSON_1981 =
      Reference.fromMemory(
          "Conover, W. J., Johnson, M. E. & Johnson, M. M.",
          1981,
          "A comparative study of tests for homogeneity of variances",
          "Technometrics 23:351-361");

  static final Reference TUKEY_1949 =
      Reference.fromMemory(
          "Tukey, J. W.", 1949, "One degree of freedom for non-additivity", "Biometrics 5:232-242");

  static final Reference COOK_WEISBERG_1982 =
      Reference.fromMemory(
          "Cook, R. D. & Weisberg, S.",
          1982,
          "Residuals and Influence in Regression",
          "Chapman and Hall, section 2.2.2");

  private AssumptionSources() {}
}
