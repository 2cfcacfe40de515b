package agro.stats.power;

import agro.source.Reference;

/** Works that the power of tests rests on, each once. */
final class PowerSources {

  static final Reference JOHNSON_KOTZ_1995 =
      Reference.fromMemory(
          "Johnson, N. L., Kotz, S. & Balakrishnan, N.",
          1995,
          "Continuous Univariate Distributions, volume 2",
          "Wiley, chapters 30 and 31");

  static final Reference COHEN_1988 =
      Reference.fromMemory(
          "Cohen, J.",
          1988,
          "Statistical Power Analysis for the Behavioral Sciences, 2nd edition",
          "Erlbaum");

  private PowerSources() {}
}
