package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import agro.report.InputProblem;
import agro.source.Reference;
import agro.trial.bioassay.BioassayData;
import agro.trial.bioassay.DoseGroup;
import agro.trial.bioassay.HeterogeneityRule;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The classical calculation of a probit line by hand, as Bliss and Finney taught it: empirical
 * probits, a provisional line, and cycles of expected probits, weights, working probits and a
 * weighted regression. After enough cycles without rounding it is the maximum-likelihood line.
 *
 * @param data one series of an assay; groups of dose 0 are its control
 * @param start the line from which it begins
 * @param rounding to how many decimals it is carried
 * @param weights how deaths in the control change the weights
 * @param heterogeneity when scatter beyond chance widens the limits
 * @param confidence of the limits, for example 0.95
 */
public record HandProbit(
    BioassayData data,
    ProvisionalLine start,
    HandRounding rounding,
    ControlWeights weights,
    HeterogeneityRule heterogeneity,
    double confidence) {

  private static final double USUAL_CONFIDENCE = 0.95;
  private static final double USUAL_LEVEL = 0.05;
  private static final int MOST_CYCLES = 1000;
  private static final double STILL = 1e-11;

  /**
   * Checks that the data make one line.
   *
   * @throws InputProblem when there are several series, fewer than two doses, a dose below 0, or
   *     controls that all died
   */
  public HandProbit {
    Objects.requireNonNull(start, "start");
    Objects.requireNonNull(rounding, "rounding");
    Objects.requireNonNull(weights, "weights");
    Objects.requireNonNull(heterogeneity, "heterogeneity");
    if (data.series().size() > 1) {
      throw InputProblem.of("an assay of " + data.series().size() + " series")
          .expected("one series")
          .because("each series has a line of its own")
          .mend("take one with BioassayData.ofSeries");
    }
    var doses =
        data.groups().stream()
            .filter(group -> !group.isControl())
            .mapToDouble(DoseGroup::dose)
            .toArray();
    if (Arrays.stream(doses).distinct().count() < 2) {
      throw InputProblem.of(doses.length + " groups at one dose or none")
          .expected("at least two different doses")
          .because("a slope needs them")
          .mend("add the other doses of the assay");
    }
    Arrays.stream(doses).forEach(ProbitLine::logDose);
    if (!(confidence > 0 && confidence < 1)) {
      throw InputProblem.of("a confidence of " + confidence)
          .expected("a share between 0 and 1")
          .because("limits need it")
          .mend("write 95 % as 0.95");
    }
    if (naturalMortality(data) >= 1) {
      throw InputProblem.of("a control in which all animals died")
          .expected("a control in which most animals live")
          .because("where all die without the dose, the dose cannot show an effect")
          .mend("repeat the assay with healthy animals");
    }
  }

  /**
   * Exact calculation from an unweighted provisional line, limits of 95 %, widened when the test of
   * heterogeneity gives P below 0.05.
   *
   * @param data one series of an assay
   * @return the question
   * @throws InputProblem when the data make no line
   */
  public static HandProbit of(BioassayData data) {
    return new HandProbit(
        data,
        ProvisionalLine.unweighted(),
        HandRounding.EXACT,
        ControlWeights.WITH_NATURAL_MORTALITY,
        HeterogeneityRule.below(USUAL_LEVEL),
        USUAL_CONFIDENCE);
  }

  /**
   * The same from another line.
   *
   * @param other the line from which it begins
   * @return a new question
   */
  public HandProbit with(ProvisionalLine other) {
    return new HandProbit(data, other, rounding, weights, heterogeneity, confidence);
  }

  /**
   * The same with other roundings.
   *
   * @param other to how many decimals it is carried
   * @return a new question
   */
  public HandProbit with(HandRounding other) {
    return new HandProbit(data, start, other, weights, heterogeneity, confidence);
  }

  /**
   * The same with other weights where controls died.
   *
   * @param other how the control changes them
   * @return a new question
   */
  public HandProbit with(ControlWeights other) {
    return new HandProbit(data, start, rounding, other, heterogeneity, confidence);
  }

  /**
   * The same with another rule for scatter beyond chance.
   *
   * @param other the rule
   * @return a new question
   */
  public HandProbit with(HeterogeneityRule other) {
    return new HandProbit(data, start, rounding, weights, other, confidence);
  }

  /**
   * The same with another confidence.
   *
   * @param share for example 0.95
   * @return a new question
   * @throws InputProblem when it is not between 0 and 1
   */
  public HandProbit withConfidence(double share) {
    return new HandProbit(data, start, rounding, weights, heterogeneity, share);
  }

  /**
   * Share of the control that died, all control groups together.
   *
   * @return C, 0 where there is no control
   */
  public double naturalMortality() {
    return naturalMortality(data);
  }

  private static double naturalMortality(BioassayData data) {
    int exposed = data.controls().stream().mapToInt(DoseGroup::exposed).sum();
    int died = data.controls().stream().mapToInt(DoseGroup::responded).sum();
    return exposed == 0 ? 0 : (double) died / exposed;
  }

  /**
   * The doses as they are written down first, in the order of the data, without the control.
   *
   * @return log doses, per cent, corrected per cent and empirical probits
   */
  public List<ProbitGroup> groups() {
    var groups = new ArrayList<ProbitGroup>();
    for (var group : data.groups()) {
      if (!group.isControl()) {
        groups.add(written(group));
      }
    }
    return List.copyOf(groups);
  }

  private ProbitGroup written(DoseGroup group) {
    double share = group.share();
    double natural = naturalMortality();
    double corrected = natural == 0 ? rounding.percent(100 * share) : corrected(share, natural);
    return new ProbitGroup(
        group.dose(),
        rounding.logDose(ProbitLine.logDose(group.dose())),
        group.exposed(),
        group.responded(),
        rounding.percent(100 * share),
        corrected,
        corrected > 0 && corrected < 100
            ? OptionalDouble.of(rounding.probit(ProbitLine.probit(corrected)))
            : OptionalDouble.empty());
  }

  private double corrected(double share, double natural) {
    return share == 1 ? 100 : rounding.percent(100 * weights.corrected(share, natural));
  }

  /**
   * The calculation with so many cycles.
   *
   * @param number cycles, 1 or more; two are usual by hand
   * @return the cycles and what follows from the last
   * @throws InputProblem when the number is out of range, no provisional line goes through the
   *     points, or a cycle leaves no weight
   */
  public HandProbitFit cycles(int number) {
    if (number < 1 || number > MOST_CYCLES) {
      throw InputProblem.of(number + " cycles")
          .expected("1 to " + MOST_CYCLES)
          .because("the first line comes from the first cycle, and nobody writes down so many")
          .mend("take 2, as by hand, or all with untilStill");
    }
    return run(number, false);
  }

  /**
   * As many cycles as it takes until a further one changes no expected probit.
   *
   * @return the cycles and what follows from the last
   * @throws InputProblem when no provisional line goes through the points, a cycle leaves no
   *     weight, or the line does not come to rest
   */
  public HandProbitFit untilStill() {
    var fit = run(MOST_CYCLES, true);
    if (fit.cycles().size() == MOST_CYCLES) {
      throw InputProblem.of("a line that still moves after " + MOST_CYCLES + " cycles")
          .expected("a line that comes to rest")
          .because("the limits are those of the line at rest")
          .mend(
              "where every dose kills none or all there is no such line; where the cycles swing to and"
                  + " fro, round less, begin nearer to the points, or take likelihoodFit");
    }
    return fit;
  }

  private HandProbitFit run(int most, boolean stopWhenStill) {
    var provisional = start.through(groups(), rounding);
    var cycles = new ArrayList<ProbitCycle>();
    var line = provisional;
    double natural = naturalMortality();
    for (int number = 1; number <= most; number++) {
      var cycle = ProbitCycle.of(number, line, this, natural);
      cycles.add(cycle);
      line = cycle.to();
      if (stopWhenStill && cycle.change() <= STILL * Math.max(1, Math.abs(line.intercept()))) {
        break;
      }
    }
    return new HandProbitFit(this, provisional, cycles);
  }

  /**
   * The textbook of the calculation, for exercises that take a step out of it.
   *
   * @return the book
   */
  public static Reference textbook() {
    return HandworkSources.FINNEY_1971;
  }
}
