package agro.trial.series;

import agro.source.Reference;

/** Works that the analyses of this package rest on, each once. */
final class SeriesSources {

  /** Combined analysis of experiments, with weights. */
  static final Reference COCHRAN_COX_1957 =
      Reference.fromMemory(
          "Cochran, W. G. & Cox, G. M.",
          1957,
          "Experimental designs, chapter 14: analysis of the results of a series of experiments",
          "Wiley, New York, second edition");

  /** Which error for which question. */
  static final Reference GOMEZ_GOMEZ_1984 =
      Reference.fromMemory(
          "Gomez, K. A. & Gomez, A. A.",
          1984,
          "Statistical procedures for agricultural research, chapter 8: analysis of data from a"
              + " series of experiments",
          "Wiley, New York, second edition");

  /** The factor up to which variances are pooled. */
  static final Reference POOLED_VARIANCES =
      Reference.commonPractice(
          "Error variances of trials of equal size that differ by a factor of up to about four are"
              + " pooled");

  /** Summaries of repeated measurements. */
  static final Reference MATTHEWS_1990 =
      Reference.fromMemory(
          "Matthews, J. N. S., Altman, D. G., Campbell, M. J. & Royston, P.",
          1990,
          "Analysis of serial measurements in medical research",
          "British Medical Journal 300:230-235");

  /** Epsilon from the covariance of the dates. */
  static final Reference GREENHOUSE_GEISSER_1959 =
      Reference.fromMemory(
          "Greenhouse, S. W. & Geisser, S.",
          1959,
          "On methods in the analysis of profile data",
          "Psychometrika 24:95-112");

  /** A less cautious epsilon. */
  static final Reference HUYNH_FELDT_1976 =
      Reference.fromMemory(
          "Huynh, H. & Feldt, L. S.",
          1976,
          "Estimation of the Box correction for degrees of freedom from sample data in randomized"
              + " block and split-plot designs",
          "Journal of Educational Statistics 1:69-82");

  /** The same for several groups, corrected. */
  static final Reference LECOUTRE_1991 =
      Reference.fromMemory(
          "Lecoutre, B.",
          1991,
          "A correction for the epsilon approximate test in repeated measures designs with two or"
              + " more independent groups",
          "Journal of Educational Statistics 16:371-372");

  /** Sphericity. */
  static final Reference MAUCHLY_1940 =
      Reference.fromMemory(
          "Mauchly, J. W.",
          1940,
          "Significance test for sphericity of a normal n-variate distribution",
          "Annals of Mathematical Statistics 11:204-209");

  private SeriesSources() {}
}
