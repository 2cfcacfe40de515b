package agro.demo;

import java.util.Locale;

/**
 * Sprayer calibrations of a class of 24 groups, all on one hand boom of four nozzles. Most groups
 * walk and read a little differently; some are off for a known reason, and some slipped in their
 * own arithmetic.
 */
public final class CalibrationBook {

  static final int GROUPS = 24;
  static final int NOZZLES = 4;
  static final double TARGET = 300;

  private static final double COURSE_M = 25;
  private static final double SPACING_M = 0.5;
  private static final double CATCH_S = 30;
  private static final double NOZZLE_L_PER_MIN = 0.9;
  private static final double PACE_SD = 0.035;
  private static final double RUN_SD = 0.012;
  private static final double CATCH_SD = 0.012;
  private static final int RUNS = 3;

  /** What is off on the sprayer or on the way; the volume is multiplied by the last number. */
  enum Fault {
    NONE(0, "", 1, 1, 1),
    TOO_FAST(4, "walked a fifth too fast", 1.22, 1, 1),
    HIGH_PRESSURE(9, "pressure far too high", 1, 1.25, 1),
    HALF_BLOCKED(13, "one nozzle half blocked", 1, 1, 0.45),
    TOO_SLOW(18, "walked too slowly", 0.86, 1, 1),
    WRONG_COURSE(20, "walked 20 m and wrote 25 m", 1.25, 1, 1);

    final int group;
    final String words;
    final double pace;
    final double flow;
    final double thirdNozzle;

    Fault(int group, String words, double pace, double flow, double thirdNozzle) {
      this.group = group;
      this.words = words;
      this.pace = pace;
      this.flow = flow;
      this.thirdNozzle = thirdNozzle;
    }

    static Fault of(int group) {
      for (var fault : values()) {
        if (fault.group == group) {
          return fault;
        }
      }
      return NONE;
    }
  }

  /** What is wrong in a group's own arithmetic. */
  enum OwnSlip {
    NONE(0, "", 1),
    SPACES(2, "took three spacings for four nozzles", 4.0 / 3),
    ACRE(6, "wrote the volume per acre as per hectare", 0.40468564224),
    ONE_NOZZLE(11, "took one nozzle for all", 0.25),
    TEN_THOUSAND(16, "used 10 000 in place of 600", 10000.0 / 600),
    MINUTE(22, "took the catch of 30 s for that of a minute", 0.5);

    final int group;
    final String words;
    final double times;

    OwnSlip(int group, String words, double times) {
      this.group = group;
      this.words = words;
      this.times = times;
    }

    static OwnSlip of(int group) {
      for (var slip : values()) {
        if (slip.group == group) {
          return slip;
        }
      }
      return NONE;
    }
  }

  private CalibrationBook() {}

  /** One line for each group. */
  static String table(long seed) {
    var lines = new StringBuilder();
    lines.append("# hand boom of four nozzles, water; three runs over the course, each nozzle");
    lines.append(" caught once for 30 s\n");
    lines.append("group,sprayer,course (m),time (s),nozzles,spacing,catches (mL),catch_time,");
    lines.append("own_result,target\n");
    for (int group = 1; group <= GROUPS; group++) {
      lines.append(line(seed, group)).append('\n');
    }
    return lines.toString();
  }

  private static String line(long seed, int group) {
    var draws = Draws.of(seed, "calibration of group " + group);
    var fault = Fault.of(group);
    double pace = fault.pace * StrictMath.exp(PACE_SD * draws.gaussian());
    var times = new StringBuilder();
    double seconds = 0;
    for (int run = 0; run < RUNS; run++) {
      double tenths = Math.rint(10 * COURSE_M / pace * StrictMath.exp(RUN_SD * draws.gaussian()));
      seconds += tenths / 10 / RUNS;
      times.append(run == 0 ? "" : "; ").append(String.format(Locale.ROOT, "%.1f", tenths / 10));
    }
    var catches = new StringBuilder();
    double millilitres = 0;
    for (int nozzle = 1; nozzle <= NOZZLES; nozzle++) {
      double flow = NOZZLE_L_PER_MIN * fault.flow * (nozzle == 3 ? fault.thirdNozzle : 1);
      double caught = flow * 1000 * CATCH_S / 60 * StrictMath.exp(CATCH_SD * draws.gaussian());
      double read = 5 * Math.rint(caught / 5);
      millilitres += read;
      catches.append(nozzle == 1 ? "" : " | ").append((int) read);
    }
    double own = volume(seconds, millilitres) * OwnSlip.of(group).times;
    return group
        + ",hand boom,25,"
        + times
        + ","
        + NOZZLES
        + ",50 cm,"
        + catches
        + ",30 s,"
        + (group == GROUPS ? "" : Math.round(own) + " L/ha")
        + ",300 L/ha";
  }

  /** Litres per hectare: what was put out in a second over the square metres of a second. */
  private static double volume(double seconds, double millilitres) {
    double litresPerSecond = millilitres / 1000 / CATCH_S;
    double squareMetresPerSecond = COURSE_M / seconds * SPACING_M * NOZZLES;
    return 10_000 * litresPerSecond / squareMetresPerSecond;
  }

  /** What lies behind the table. */
  static String truth() {
    var lines = new StringBuilder("group,fault,own_slip\n");
    for (int group = 1; group <= GROUPS; group++) {
      var fault = Fault.of(group);
      var slip = OwnSlip.of(group);
      if (fault != Fault.NONE || slip != OwnSlip.NONE) {
        lines.append(group).append(',').append(fault.words).append(',').append(slip.words);
        lines.append('\n');
      }
    }
    return lines.toString();
  }
}
