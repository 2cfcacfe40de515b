package agro.trial.efficacy;

import agro.units.Numbers;
import agro.working.Working;

/** Efficacy step by step. */
final class EfficacySteps {

  private static final String NEGATIVE =
      "more is left on the treated than the control lets expect; the value is kept below zero";

  private EfficacySteps() {}

  static Working of(EfficacyFormula formula, LiveCounts counts) {
    double percent = formula.percent(counts);
    var working = Working.of("Efficacy after " + formula.title());
    var ta = Numbers.plain(counts.treatedAfter());
    var ca = Numbers.plain(counts.controlAfter());
    if (!formula.needsBefore()) {
      return end(
          working.step(
              "share left",
              "Ta / Ca",
              ta + " / " + ca,
              number(counts.treatedAfter() / counts.controlAfter())),
          formula,
          "(1 − " + number(counts.treatedAfter() / counts.controlAfter()) + ") · 100",
          percent);
    }
    double tb = counts.treatedBefore().orElseThrow();
    double cb = counts.controlBefore().orElseThrow();
    return formula == EfficacyFormula.SUN_SHEPARD
        ? sunShepard(working, counts, percent)
        : end(
            working
                .step(
                    "left of the treated",
                    "Ta / Tb",
                    ta + " / " + Numbers.plain(tb),
                    number(counts.treatedAfter() / tb))
                .step(
                    "left of the control",
                    "Ca / Cb",
                    ca + " / " + Numbers.plain(cb),
                    number(counts.controlAfter() / cb)),
            formula,
            "(1 − ("
                + ta
                + " · "
                + Numbers.plain(cb)
                + ") / ("
                + Numbers.plain(tb)
                + " · "
                + ca
                + ")) · 100",
            percent);
  }

  private static Working sunShepard(Working working, LiveCounts counts, double percent) {
    double tb = counts.treatedBefore().orElseThrow();
    double cb = counts.controlBefore().orElseThrow();
    double lost = (tb - counts.treatedAfter()) / tb * 100;
    double change = (counts.controlAfter() - cb) / cb * 100;
    var steps =
        working
            .step(
                "loss on the treated",
                "M = (Tb − Ta) / Tb · 100",
                "("
                    + Numbers.plain(tb)
                    + " − "
                    + Numbers.plain(counts.treatedAfter())
                    + ") / "
                    + Numbers.plain(tb)
                    + " · 100",
                number(lost) + " %")
            .step(
                change < 0 ? "the control declines" : "change of the control",
                "Δ = (Ca − Cb) / Cb · 100",
                "("
                    + Numbers.plain(counts.controlAfter())
                    + " − "
                    + Numbers.plain(cb)
                    + ") / "
                    + Numbers.plain(cb)
                    + " · 100",
                number(change) + " %");
    return end(
        steps,
        EfficacyFormula.SUN_SHEPARD,
        "("
            + number(lost)
            + " + ("
            + number(change)
            + ")) / (100 + ("
            + number(change)
            + ")) · 100",
        percent);
  }

  static Working of(EfficacyFormula formula, MortalityPair mortality) {
    double percent = formula.percent(mortality);
    var working = Working.of("Efficacy after " + formula.title());
    double treated = mortality.treatedPercent();
    double control = mortality.controlPercent();
    if (formula == EfficacyFormula.ABBOTT) {
      var living =
          working
              .step("living of the treated", "100 − dead", "", number(100 - treated) + " %")
              .step("living of the control", "100 − dead", "", number(100 - control) + " %");
      return end(
          living,
          formula,
          "(1 − " + number(100 - treated) + " / " + number(100 - control) + ") · 100",
          percent);
    }
    var dead =
        working
            .step("dead beyond the control", "b − k", "", number(treated - control) + " %")
            .step("left to be killed", "100 − k", "", number(100 - control) + " %");
    return end(
        dead,
        formula,
        number(treated - control) + " / " + number(100 - control) + " · 100",
        percent);
  }

  private static Working end(
      Working working, EfficacyFormula formula, String numbers, double percent) {
    var steps =
        working.step("efficacy", formula.form(), numbers, number(percent) + " %", formula.source());
    return percent < 0 ? steps.step("sign", "", "", NEGATIVE) : steps;
  }

  private static String number(double value) {
    return Numbers.significant(value, 6);
  }
}
