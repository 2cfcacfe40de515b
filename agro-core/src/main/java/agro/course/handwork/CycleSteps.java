package agro.course.handwork;

import agro.working.Working;

/**
 * The steps of one cycle: the columns for the first dose, then the sums and the new line.
 *
 * @param cycle the cycle
 * @param question rounding and weights
 * @param words language
 */
record CycleSteps(ProbitCycle cycle, HandProbit question, HandWords words) {

  Working steps() {
    return firstDose().followedBy(regression());
  }

  private HandRounding rounding() {
    return question.rounding();
  }

  private Working firstDose() {
    var row = cycle.rows().get(0);
    var expected = words.number(row.expected(), rounding().expectedPrint());
    return Working.of(words.say("title"))
        .step(
            words.say("step.expected", "number", cycle.number()),
            "Y = a + b x",
            lineAt(row),
            expected)
        .step(
            words.say("step.weight", "number", cycle.number()),
            question.naturalMortality() > 0
                ? words.say("formula." + question.weights().name())
                : words.say("formula.PLAIN"),
            "",
            words.number(row.coefficient(), rounding().weightPrint())
                + "; n w = "
                + row.group().exposed()
                + " × "
                + words.number(row.coefficient(), rounding().weightPrint())
                + " = "
                + words.number(row.weight(), rounding().totalPrint()))
        .step(
            words.say("step.working", "number", cycle.number()),
            isLow(row) ? "y = (Y − P / Z) + p / Z" : "y = (Y + Q / Z) − q / Z",
            words.inFormula(isLow(row) ? row.least() : row.most(), rounding().tablePrint())
                + (isLow(row) ? " + " : " − ")
                + words.inFormula(share(row), 4)
                + " × "
                + words.number(row.range(), rounding().tablePrint()),
            words.number(row.working(), rounding().workingPrint()));
  }

  private static boolean isLow(CycleRow row) {
    return row.group().corrected() <= 50;
  }

  private static double share(CycleRow row) {
    double percent = row.group().corrected();
    return (isLow(row) ? percent : 100 - percent) / 100;
  }

  private String lineAt(CycleRow row) {
    double slope = cycle.from().slope();
    return words.number(cycle.from().intercept(), rounding().resultPrint())
        + (slope < 0 ? " − " : " + ")
        + words.number(Math.abs(slope), rounding().resultPrint())
        + " × "
        + words.inFormula(row.group().logDose(), rounding().logDosePrint());
  }

  private Working regression() {
    int number = cycle.number();
    var sums = cycle.sums();
    int result = rounding().resultPrint();
    return Working.of(words.say("title"))
        .step(
            words.say("step.means", "number", number),
            "x̄ = Σnwx / Σnw; ȳ = Σnwy / Σnw",
            divided(sums.wx(), sums.w()) + "; " + divided(sums.wy(), sums.w()),
            words.number(sums.meanX(), result) + "; " + words.number(sums.meanY(), result))
        .step(
            words.say("step.sxx", "number", number),
            "Sxx = Σnwx² − (Σnwx)² / Σnw",
            words.number(sums.wxx(), 4) + " − " + n(sums.wx()) + "² / " + n(sums.w()),
            words.number(sums.sxx(), result))
        .step(
            words.say("step.sxy", "number", number),
            "Sxy = Σnwxy − Σnwx Σnwy / Σnw",
            words.number(sums.wxy(), 4)
                + " − "
                + n(sums.wx())
                + " × "
                + n(sums.wy())
                + " / "
                + n(sums.w()),
            words.number(sums.sxy(), result))
        .step(
            words.say("step.slope", "number", number),
            "b = Sxy / Sxx",
            words.number(sums.sxy(), result) + " / " + words.inFormula(sums.sxx(), result),
            words.number(cycle.to().slope(), result))
        .step(
            words.say("step.intercept", "number", number),
            "a = ȳ − b x̄",
            words.number(sums.meanY(), result)
                + " − "
                + words.inFormula(cycle.to().slope(), result)
                + " × "
                + words.inFormula(sums.meanX(), result),
            words.number(cycle.to().intercept(), result));
  }

  private String n(double value) {
    return words.inFormula(value, 3);
  }

  private String divided(double above, double below) {
    return n(above) + " / " + n(below);
  }
}
