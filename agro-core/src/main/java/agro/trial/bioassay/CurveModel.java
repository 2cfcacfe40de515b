package agro.trial.bioassay;

import agro.stats.glm.LinkFunction;
import java.util.ArrayList;
import java.util.List;

/**
 * Curves P = C + (1 − C − D) F(offset + a + b x) through groups that share parameters: which
 * intercept a, slope b, natural mortality C and immunity D belongs to which group. A missing slope
 * and intercept with an infinite offset make a control.
 */
final class CurveModel {

  /** Place of a parameter that a group does not have. */
  static final int NONE = -1;

  /** One group and the places of its parameters among all. */
  record Point(
      double x,
      double exposed,
      double responded,
      double offset,
      int intercept,
      int slope,
      int natural,
      double fixedNatural,
      int immune) {}

  final LinkFunction link;
  final List<Point> points = new ArrayList<>();
  final int parameters;

  CurveModel(LinkFunction link, int parameters) {
    this.link = link;
    this.parameters = parameters;
  }

  /** Whether a parameter is a share, natural mortality or immunity, which cannot be negative. */
  boolean[] shares() {
    var shares = new boolean[parameters];
    for (var point : points) {
      if (point.natural != NONE) {
        shares[point.natural] = true;
      }
      if (point.immune != NONE) {
        shares[point.immune] = true;
      }
    }
    return shares;
  }

  double eta(Point point, double[] at, double centre) {
    double eta = point.offset;
    if (point.intercept != NONE) {
      eta += at[point.intercept];
    }
    if (point.slope != NONE) {
      eta += at[point.slope] * (point.x - centre);
    }
    return eta;
  }

  static double natural(Point point, double[] at) {
    return point.natural == NONE ? point.fixedNatural : at[point.natural];
  }

  static double immune(Point point, double[] at) {
    return point.immune == NONE ? 0 : at[point.immune];
  }
}
