package agro.trial.bioassay;

import agro.source.Reference;

/** The works that dose-response rests on. */
final class BioassaySources {

  static final Reference FINNEY_1971 =
      Reference.fromMemory(
          "Finney, D. J.", 1971, "Probit Analysis, third edition", "Cambridge University Press");

  static final Reference FIELLER_1954 =
      Reference.fromMemory(
          "Fieller, E. C.",
          1954,
          "Some problems in interval estimation",
          "Journal of the Royal Statistical Society B 16:175-185");

  static final Reference ABBOTT_1925 =
      Reference.fromMemory(
          "Abbott, W. S.",
          1925,
          "A method of computing the effectiveness of an insecticide",
          "Journal of Economic Entomology 18:265-267");

  static final Reference ROBERTSON_PREISLER_1992 =
      Reference.fromMemory(
          "Robertson, J. L. & Preisler, H. K.",
          1992,
          "Pesticide Bioassays with Arthropods",
          "CRC Press, Boca Raton; formula as printed in Lei & Sun 2018");

  static final Reference LEI_SUN_2018 =
      Reference.read(
          "Lei, C. & Sun, X.",
          2018,
          "Comparing lethal dose ratios using probit regression with arbitrary slopes",
          "BMC Pharmacology and Toxicology 19 (manuscript)");

  static final Reference CLOPPER_PEARSON_1934 =
      Reference.fromMemory(
          "Clopper, C. J. & Pearson, E. S.",
          1934,
          "The use of confidence or fiducial limits illustrated in the case of the binomial",
          "Biometrika 26:404-413");

  static final Reference DERSIMONIAN_LAIRD_1986 =
      Reference.fromMemory(
          "DerSimonian, R. & Laird, N.",
          1986,
          "Meta-analysis in clinical trials",
          "Controlled Clinical Trials 7:177-188");

  static final Reference CONTROL_CEILING =
      Reference.commonPractice(
          "Assays in which more than 20 % of the controls respond are repeated.");

  static final Reference DISCRIMINATING_DOSE =
      Reference.commonPractice(
          "Twice the dose for 99 % of a susceptible strain separates resistant animals.");

  private BioassaySources() {}
}
