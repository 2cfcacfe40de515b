package agro.course.handwork;

import agro.source.Reference;

/** The works that the classical probit calculation rests on. */
final class HandworkSources {

  static final Reference BLISS_1935 =
      Reference.fromMemory(
          "Bliss, C. I.",
          1935,
          "The calculation of the dosage-mortality curve",
          "Annals of Applied Biology 22:134-167");

  static final Reference FINNEY_1947 =
      Reference.fromMemory("Finney, D. J.", 1947, "Probit Analysis", "Cambridge University Press");

  static final Reference FINNEY_1971 =
      Reference.fromMemory(
          "Finney, D. J.", 1971, "Probit Analysis, third edition", "Cambridge University Press");

  static final Reference FINNEY_STEVENS_1948 =
      Reference.fromMemory(
          "Finney, D. J. & Stevens, W. L.",
          1948,
          "A table for the calculation of working probits and weights in probit analysis",
          "Biometrika 35:191-201");

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

  private HandworkSources() {}
}
