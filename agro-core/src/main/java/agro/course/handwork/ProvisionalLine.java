package agro.course.handwork;

import agro.course.sheet.ProbitLine;
import agro.course.sheet.WorkingProbit;
import agro.report.InputProblem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The line from which a calculation by hand begins.
 *
 * @param way how it is found
 * @param drawn the line, for {@link Way#BY_EYE} alone
 */
public record ProvisionalLine(Way way, Optional<ProbitLine> drawn) {

  /** The ways of finding it. */
  public enum Way {
    /** Regression of empirical probits on log dose, every dose alike. */
    UNWEIGHTED,
    /** The same with weights n Z² / (P Q) at the empirical probits. */
    WEIGHTED,
    /** Drawn through the points on log-probability paper. */
    BY_EYE
  }

  /** Checks that a drawn line comes with its numbers. */
  public ProvisionalLine {
    Objects.requireNonNull(way, "way");
    if (drawn.isPresent() != (way == Way.BY_EYE)) {
      throw new IllegalArgumentException("a line drawn by eye, and no other, has its numbers");
    }
  }

  /**
   * Regression of empirical probits on log dose, every dose alike.
   *
   * @return the way
   */
  public static ProvisionalLine unweighted() {
    return new ProvisionalLine(Way.UNWEIGHTED, Optional.empty());
  }

  /**
   * Regression of empirical probits on log dose with their weights.
   *
   * @return the way
   */
  public static ProvisionalLine weighted() {
    return new ProvisionalLine(Way.WEIGHTED, Optional.empty());
  }

  /**
   * A line drawn by eye.
   *
   * @param intercept a, in probits
   * @param slope b, probits for each tenfold dose
   * @return the line
   * @throws InputProblem when the numbers are not finite
   */
  public static ProvisionalLine byEye(double intercept, double slope) {
    return byEye(new ProbitLine(intercept, slope));
  }

  /**
   * A line drawn by eye, for example {@link ProbitLine#through}.
   *
   * @param line the line
   * @return the line as a beginning
   */
  public static ProvisionalLine byEye(ProbitLine line) {
    return new ProvisionalLine(Way.BY_EYE, Optional.of(line));
  }

  /** The line for groups; doses that killed none or all have no empirical probit and stay out. */
  ProbitLine through(List<ProbitGroup> groups, HandRounding rounding) {
    if (drawn.isPresent()) {
      return drawn.get();
    }
    var usable = groups.stream().filter(group -> group.empirical().isPresent()).toList();
    boolean apart = usable.stream().mapToDouble(ProbitGroup::logDose).distinct().count() > 1;
    if (!apart) {
      throw InputProblem.of(usable.size() + " groups with an empirical probit")
          .expected("at least two doses that killed some and not all")
          .because("a provisional line goes through points, and none and all have no probit")
          .mend("draw a line by eye and give it with ProvisionalLine.byEye");
    }
    var sums = RegressionSums.EMPTY;
    for (var group : usable) {
      double probit = group.empirical().getAsDouble();
      double weight =
          way == Way.UNWEIGHTED ? 1 : group.exposed() * WorkingProbit.at(probit).weight();
      sums = sums.with(weight, group.logDose(), probit);
    }
    return sums.line(rounding);
  }
}
