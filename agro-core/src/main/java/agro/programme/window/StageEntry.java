package agro.programme.window;

/**
 * When the animals of one course enter a stage: their shares in short spans of time, and the
 * degree-days at the ends of these spans.
 */
final class StageEntry {

  private static final double NOTHING = 1e-9;
  private static final int STEPS = StageCourses.stepsADay();

  private final double[] sums;
  private final int first;
  private final double[] mass;
  private final boolean comes;

  private StageEntry(double[] sums, int first, double[] mass, boolean comes) {
    this.sums = sums;
    this.first = first;
    this.mass = mass;
    this.comes = comes;
  }

  static StageEntry of(StageCourses.Course course, int days, DelayTable before) {
    int cells = days * STEPS;
    var sums = new double[cells + 1];
    var flown = new double[cells + 1];
    for (int i = 0; i <= cells; i++) {
      sums[i] = course.sumAfter((double) i / STEPS);
      flown[i] = course.flownBy((double) i / STEPS);
    }
    var begun = before.none() ? flown : begun(sums, flown, before);
    int from = 0;
    while (from < cells && begun[from + 1] < NOTHING) {
      from++;
    }
    int to = cells;
    while (to > from + 1 && begun[to] - begun[to - 1] < NOTHING) {
      to--;
    }
    var mass = new double[to - from];
    for (int k = 0; k < mass.length; k++) {
      mass[k] = begun[from + k + 1] - begun[from + k];
    }
    if (mass.length > 0) {
      mass[0] += begun[from];
    }
    return new StageEntry(sums, from, mass, course.comes(half(begun)));
  }

  /** Share that has begun the stage by the end of each span. */
  private static double[] begun(double[] sums, double[] flown, DelayTable before) {
    var begun = new double[sums.length];
    addLump(begun, sums, flown[0], before);
    for (int j = 0; j + 1 < sums.length; j++) {
      double mass = flown[j + 1] - flown[j];
      if (mass < NOTHING) {
        continue;
      }
      for (int k = j + 1; k < sums.length; k++) {
        double share = before.mean(sums[k] - sums[j + 1], sums[k] - sums[j]);
        if (share > 1 - NOTHING) {
          addRest(begun, k, mass);
          break;
        }
        begun[k] += mass * share;
      }
    }
    return begun;
  }

  /** What had flown before the first day is taken to have flown as it began. */
  private static void addLump(double[] begun, double[] sums, double mass, DelayTable before) {
    for (int k = 1; k < sums.length && mass >= NOTHING; k++) {
      begun[k] += mass * before.completedBy(sums[k] - sums[0]);
    }
  }

  private static void addRest(double[] begun, int from, double mass) {
    for (int k = from; k < begun.length; k++) {
      begun[k] += mass;
    }
  }

  private static double half(double[] begun) {
    for (int k = 1; k < begun.length; k++) {
      if (begun[k] >= 0.5) {
        double part =
            begun[k] > begun[k - 1] ? (0.5 - begun[k - 1]) / (begun[k] - begun[k - 1]) : 1;
        return (k - 1 + Math.max(0, part)) / STEPS;
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  /** Whether the stage comes this season. */
  boolean comes() {
    return comes;
  }

  /** Number of spans in which animals enter. */
  int size() {
    return mass.length;
  }

  double mass(int index) {
    return mass[index];
  }

  /** When a span begins, in days. */
  double begins(int index) {
    return (double) (first + index) / STEPS;
  }

  static double spanDays() {
    return 1.0 / STEPS;
  }

  double sumAtStart(int index) {
    return sums[first + index];
  }

  double sumAtEnd(int index) {
    return sums[first + index + 1];
  }

  /** Degree-days after some days; after the last day they stand still. */
  double sumAfter(double days) {
    double place = Math.min(days * STEPS, sums.length - 1.0);
    int whole = (int) Math.min(place, sums.length - 2.0);
    return sums[whole] + (place - whole) * (sums[whole + 1] - sums[whole]);
  }
}
