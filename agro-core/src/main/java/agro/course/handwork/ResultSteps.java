package agro.course.handwork;

import agro.trial.bioassay.DoseLimits;
import agro.working.Working;

/**
 * The steps from the last sums to the fiducial limits.
 *
 * @param fit the calculation
 * @param words language
 */
record ResultSteps(HandProbitFit fit, HandWords words) {

  Working steps() {
    var working =
        Working.of(words.say("title"))
            .step(words.say("step.chi"), "χ² = Syy − Sxy² / Sxx", chiSubstituted(), chiResult());
    if (fit.isHeterogeneous()) {
      working =
          working.step(
              words.say("step.factor"),
              "h = χ² / df",
              words.number(fit.chiSquared(), 4) + " / " + fit.degreesOfFreedom(),
              words.number(fit.heterogeneityFactor(), 4));
    }
    if (!(fit.line().slope() > 0)) {
      return working.step(words.say("step.median"), "", "", words.say("falls"));
    }
    return median(working, fit.lethalDose(50));
  }

  private Working median(Working before, HandLethalDose dose) {
    var sums = fit.last().sums();
    var slope = words.number(fit.line().slope(), 4);
    return before
        .step(
            words.say("step.median"),
            "m = (5 − a) / b",
            "(5 − " + words.inFormula(fit.line().intercept(), 4) + ") / " + slope,
            words.number(dose.logDose(), 4) + "; LD50 = " + inUnit(dose.dose()))
        .step(
            words.say("step.variance"),
            factor() + "V(m) = (1 / Σnw + (m − x̄)² / Sxx) / b²",
            factorValue()
                + "(1 / "
                + words.number(sums.w(), 3)
                + " + "
                + words.inFormula(dose.logDose() - sums.meanX(), 4)
                + "² / "
                + words.number(sums.sxx(), 4)
                + ") / "
                + slope
                + "²",
            words.say(
                "step.variance.result",
                "variance",
                words.significant(dose.variance(), 4),
                "error",
                words.number(dose.standardError(), 4)))
        .step(
            words.say("step.g"),
            fit.isHeterogeneous() ? "g = t² h / (b² Sxx)" : "g = t² / (b² Sxx)",
            words.number(fit.deviate(), 3)
                + "² × "
                + (fit.isHeterogeneous() ? words.number(fit.heterogeneityFactor(), 4) : "1")
                + " / ("
                + slope
                + "² × "
                + words.number(sums.sxx(), 4)
                + ")",
            words.significant(dose.g(), 4))
        .step(
            words.say("step.limits", "percent", confidence()),
            fit.isHeterogeneous()
                ? "m + g (m − x̄) / (1 − g) ± t √(h [(1 − g) / Σnw + (m − x̄)² / Sxx]) / (b (1 − g))"
                : "m + g (m − x̄) / (1 − g) ± t √((1 − g) / Σnw + (m − x̄)² / Sxx) / (b (1 − g))",
            "",
            limits(dose));
  }

  private String factor() {
    return fit.isHeterogeneous() ? "h × " : "";
  }

  private String factorValue() {
    return fit.isHeterogeneous() ? words.number(fit.heterogeneityFactor(), 4) + " × " : "";
  }

  private String chiSubstituted() {
    var sums = fit.last().sums();
    return words.number(sums.syy(), 4)
        + " − "
        + words.inFormula(sums.sxy(), 4)
        + "² / "
        + words.number(sums.sxx(), 4);
  }

  String chiSquared() {
    return fit.degreesOfFreedom() == 0
        ? words.say("chi.none")
        : words.say(
            "chi",
            "chi",
            words.number(fit.chiSquared(), 3),
            "df",
            fit.degreesOfFreedom(),
            "p",
            words.number(fit.heterogeneityP(), 3));
  }

  private String chiResult() {
    return fit.degreesOfFreedom() == 0
        ? words.say("chi.none")
        : words.say(
            "chi.result",
            "chi",
            words.number(fit.chiSquared(), 3),
            "df",
            fit.degreesOfFreedom(),
            "p",
            words.number(fit.heterogeneityP(), 3));
  }

  String inWords(HandLethalDose dose) {
    return words.say(
        "median",
        "dose",
        inUnit(dose.dose()),
        "log",
        words.number(dose.logDose(), 4),
        "error",
        words.number(dose.standardError(), 4),
        "percent",
        confidence(),
        "limits",
        limits(dose));
  }

  private String confidence() {
    return words.significant(100 * fit.question().confidence(), 4);
  }

  private String inUnit(double dose) {
    var unit = fit.question().data().axis().unit();
    return words.significant(dose, 4) + (unit.isEmpty() ? "" : " " + unit);
  }

  private String limits(HandLethalDose dose) {
    return switch (dose.limits().shape()) {
      case BOUNDED ->
          words.say(
              "limits",
              "low",
              words.significant(dose.limits().low(), 4),
              "high",
              inUnit(dose.limits().high()),
              "loglow",
              words.number(dose.logLimits().low(), 4),
              "loghigh",
              words.number(dose.logLimits().high(), 4));
      case OUTSIDE -> outside(dose.limits());
      default -> words.say("limits.none");
    };
  }

  private String outside(DoseLimits limits) {
    return words.say("limits.outside", "low", inUnit(limits.low()), "high", inUnit(limits.high()));
  }
}
