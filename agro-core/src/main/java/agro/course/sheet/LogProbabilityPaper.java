package agro.course.sheet;

import agro.report.InputProblem;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Log-probability paper: doses on a logarithmic axis, per cent on an axis on which a normal
 * distribution of tolerances becomes a straight line, probits at the right edge. Empty for a line
 * drawn by eye, or with points and a line as its solution.
 *
 * @param title heading; the name of the paper when empty
 * @param doseName what the dose is, with its unit; room to write it when empty
 * @param cycles powers of ten on the dose axis, 1 to 4
 * @param firstDose dose at the left edge, a power of ten; nothing for an axis without numbers
 * @param lowestPercent per cent at the lower edge
 * @param highestPercent per cent at the upper edge
 * @param points points that are drawn, possibly none
 * @param line the line that is drawn, possibly none
 */
public record LogProbabilityPaper(
    String title,
    String doseName,
    int cycles,
    OptionalDouble firstDose,
    double lowestPercent,
    double highestPercent,
    List<PaperPoint> points,
    Optional<ProbitLine> line)
    implements PrintableSheet {

  private static final int MOST_CYCLES = 4;
  private static final double LEAST_PERCENT = 0.01;
  private static final double LEFT = 27;
  private static final double RIGHT = 181;
  private static final double TOP = 39;
  private static final double BOTTOM = 258;

  /**
   * Checks axes and points.
   *
   * @throws InputProblem when cycles or per cent are out of range, the first dose is no power of
   *     ten, or a point or line has no place on the axis
   */
  public LogProbabilityPaper {
    points = List.copyOf(points);
    if (cycles < 1 || cycles > MOST_CYCLES) {
      throw InputProblem.of("paper of " + cycles + " cycles")
          .expected("1 to 4")
          .because("more powers of ten leave no room to read a dose")
          .mend("take as many as the doses span");
    }
    if (!(lowestPercent >= LEAST_PERCENT
        && lowestPercent < 50
        && highestPercent > 50
        && highestPercent <= 100 - LEAST_PERCENT)) {
      throw InputProblem.of("paper from " + lowestPercent + " to " + highestPercent + " %")
          .expected("a lower edge from 0.01 to below 50 % and an upper one to 99.99 %")
          .because("the line is read at 50 %, and 0 and 100 % lie at infinity")
          .mend("take 0.1 and 99.9, or 1 and 99 for few animals");
    }
    if (firstDose.isPresent()) {
      requirePowerOfTen(firstDose.getAsDouble());
    }
    if (firstDose.isEmpty() && !(points.isEmpty() && line.isEmpty())) {
      throw InputProblem.of("points on an axis without numbers")
          .expected("the dose at the left edge")
          .because("a point needs its place")
          .mend("state it with startingAt, or take LogProbabilityPaper.around");
    }
    for (var point : points) {
      double place = Math.log10(point.dose() / firstDose.getAsDouble());
      if (!(place >= -1e-9 && place <= cycles + 1e-9)) {
        throw InputProblem.of("a point at a dose of " + point.dose())
            .expected("doses on the " + cycles + " cycles from " + firstDose.getAsDouble())
            .because("the point would lie off the paper")
            .mend("take more cycles or another first dose, or LogProbabilityPaper.around");
      }
    }
  }

  private static void requirePowerOfTen(double dose) {
    double power = Math.log10(dose);
    if (!(dose > 0 && Math.abs(power - Math.rint(power)) < 1e-9)) {
      throw InputProblem.of("a first dose of " + dose)
          .expected("a power of ten, such as 0.1, 1 or 10")
          .because("the lines of a cycle run from 1 to 10")
          .mend("take the power of ten below the smallest dose");
    }
  }

  /**
   * Empty paper from 0.1 to 99.9 %, its doses to be written by hand.
   *
   * @param cycles powers of ten, 1 to 4
   * @return the paper
   * @throws InputProblem when there are fewer or more cycles
   */
  public static LogProbabilityPaper of(int cycles) {
    return new LogProbabilityPaper(
        "", "", cycles, OptionalDouble.empty(), 0.1, 99.9, List.of(), Optional.empty());
  }

  /**
   * Paper on which all points have their place, from 0.1 to 99.9 %.
   *
   * @param points at least one point
   * @return the paper with the points on it
   * @throws InputProblem when there are no points, or they span more than four powers of ten
   */
  public static LogProbabilityPaper around(List<PaperPoint> points) {
    double low = points.stream().mapToDouble(PaperPoint::dose).min().orElse(Double.NaN);
    double high = points.stream().mapToDouble(PaperPoint::dose).max().orElse(Double.NaN);
    if (points.isEmpty()) {
      throw InputProblem.of("paper around no points")
          .expected("at least one point")
          .because("the axis is chosen by the doses")
          .mend("take LogProbabilityPaper.of for empty paper");
    }
    double first = Math.floor(Math.log10(low) + 1e-9);
    int cycles = (int) Math.max(1, Math.ceil(Math.log10(high) - first - 1e-9));
    return of(cycles).startingAt(Math.pow(10, first)).withPoints(points);
  }

  /**
   * The same paper without points and line, for the question that belongs to a solution.
   *
   * @return empty paper with the same axes
   */
  public LogProbabilityPaper empty() {
    return new LogProbabilityPaper(
        title,
        doseName,
        cycles,
        firstDose,
        lowestPercent,
        highestPercent,
        List.of(),
        Optional.empty());
  }

  /**
   * The same paper with numbers on the dose axis.
   *
   * @param dose dose at the left edge, a power of ten
   * @return new paper
   * @throws InputProblem when it is no power of ten
   */
  public LogProbabilityPaper startingAt(double dose) {
    return new LogProbabilityPaper(
        title,
        doseName,
        cycles,
        OptionalDouble.of(dose),
        lowestPercent,
        highestPercent,
        points,
        line);
  }

  /**
   * The same paper with a heading and a name of the dose.
   *
   * @param heading heading
   * @param dose what the dose is, with its unit
   * @return new paper
   */
  public LogProbabilityPaper titled(String heading, String dose) {
    return new LogProbabilityPaper(
        heading, dose, cycles, firstDose, lowestPercent, highestPercent, points, line);
  }

  /**
   * The same paper between other shares.
   *
   * @param lowest per cent at the lower edge, 0.01 to below 50
   * @param highest per cent at the upper edge, above 50 to 99.99
   * @return new paper
   * @throws InputProblem when they are out of range
   */
  public LogProbabilityPaper percents(double lowest, double highest) {
    return new LogProbabilityPaper(
        title, doseName, cycles, firstDose, lowest, highest, points, line);
  }

  /**
   * The same paper with points.
   *
   * @param more points beside those that are on it already
   * @return new paper
   * @throws InputProblem when a point has no place on the axis
   */
  public LogProbabilityPaper withPoints(List<PaperPoint> more) {
    var all = new ArrayList<>(points);
    all.addAll(more);
    return new LogProbabilityPaper(
        title, doseName, cycles, firstDose, lowestPercent, highestPercent, all, line);
  }

  /**
   * The same paper with a line, and how the median lethal dose is read from it.
   *
   * @param drawn the line
   * @return new paper
   * @throws InputProblem when the axis has no numbers
   */
  public LogProbabilityPaper withLine(ProbitLine drawn) {
    return new LogProbabilityPaper(
        title,
        doseName,
        cycles,
        firstDose,
        lowestPercent,
        highestPercent,
        points,
        Optional.of(drawn));
  }

  /** Logarithm of the dose at the left edge; 0 for an axis without numbers. */
  double firstLogDose() {
    return firstDose.isPresent() ? Math.rint(Math.log10(firstDose.getAsDouble())) : 0;
  }

  /**
   * Where a logarithm of a dose stands.
   *
   * @param logDose logarithm to base 10; on an axis without numbers 0 stands at the left edge
   * @return millimetres from the left edge of the paper
   */
  public double across(double logDose) {
    return LEFT + (RIGHT - LEFT) * (logDose - firstLogDose()) / cycles;
  }

  /**
   * Where a share stands.
   *
   * @param percent per cent, between 0 and 100
   * @return millimetres from the upper edge of the paper
   * @throws InputProblem for 0 and 100, which have no place
   */
  public double down(double percent) {
    return downOfProbit(ProbitLine.probit(percent));
  }

  /**
   * Where a probit stands.
   *
   * @param probit any number
   * @return millimetres from the upper edge of the paper
   */
  public double downOfProbit(double probit) {
    double low = ProbitLine.probit(lowestPercent);
    double high = ProbitLine.probit(highestPercent);
    return BOTTOM - (BOTTOM - TOP) * (probit - low) / (high - low);
  }

  @Override
  public Sheet sheet(TextLanguage language) {
    return new LogProbabilityDrawing(this, language).draw();
  }
}
