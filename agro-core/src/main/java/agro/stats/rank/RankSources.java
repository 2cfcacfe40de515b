package agro.stats.rank;

import agro.source.Reference;

/** Works that the tests rest on, each once. */
final class RankSources {

  static final Reference KRUSKAL_WALLIS_1952 =
      Reference.fromMemory(
          "Kruskal, W. H. & Wallis, W. A.",
          1952,
          "Use of ranks in one-criterion variance analysis",
          "Journal of the American Statistical Association 47:583-621");

  static final Reference FRIEDMAN_1937 =
      Reference.fromMemory(
          "Friedman, M.",
          1937,
          "The use of ranks to avoid the assumption of normality implicit in the analysis of variance",
          "Journal of the American Statistical Association 32:675-701");

  static final Reference IMAN_DAVENPORT_1980 =
      Reference.fromMemory(
          "Iman, R. L. & Davenport, J. M.",
          1980,
          "Approximations of the critical region of the Friedman statistic",
          "Communications in Statistics A 9:571-595");

  static final Reference QUADE_1979 =
      Reference.fromMemory(
          "Quade, D.",
          1979,
          "Using weighted rankings in the analysis of complete blocks with additive block effects",
          "Journal of the American Statistical Association 74:680-683");

  static final Reference SKILLINGS_MACK_1981 =
      Reference.fromMemory(
          "Skillings, J. H. & Mack, G. A.",
          1981,
          "On the use of a Friedman-type statistic in balanced and unbalanced block designs",
          "Technometrics 23:171-177");

  static final Reference WELCH_1951 =
      Reference.fromMemory(
          "Welch, B. L.",
          1951,
          "On the comparison of several mean values: an alternative approach",
          "Biometrika 38:330-336");

  static final Reference DUNN_1964 =
      Reference.fromMemory(
          "Dunn, O. J.", 1964, "Multiple comparisons using rank sums", "Technometrics 6:241-252");

  static final Reference CONOVER_IMAN_1979 =
      Reference.fromMemory(
          "Conover, W. J. & Iman, R. L.",
          1979,
          "On multiple-comparisons procedures",
          "Los Alamos Scientific Laboratory report LA-7677-MS");

  static final Reference CONOVER_1999 =
      Reference.fromMemory(
          "Conover, W. J.", 1999, "Practical Nonparametric Statistics, 3rd edition", "Wiley, 5.8");

  static final Reference NEMENYI_1963 =
      Reference.fromMemory(
          "Nemenyi, P. B.", 1963, "Distribution-free multiple comparisons", "Princeton University");

  static final Reference GAMES_HOWELL_1976 =
      Reference.fromMemory(
          "Games, P. A. & Howell, J. F.",
          1976,
          "Pairwise multiple comparison procedures with unequal N's and/or variances",
          "Journal of Educational Statistics 1:113-125");

  private RankSources() {}
}
