package agro.programme.window;

import agro.report.InputProblem;
import agro.units.Numbers;

/** How the effect of a residue falls off while it lasts, from 1 at the treatment. */
public sealed interface ResidueDecay {

  /** Full effect to the last day, then none. */
  record Steady() implements ResidueDecay {
    @Override
    public double left(double days, double lasts) {
      return days <= lasts ? 1 : 0;
    }

    @Override
    public String words() {
      return "full effect until it ends";
    }
  }

  /** Falls evenly from full effect to none on the last day. */
  record Linear() implements ResidueDecay {
    @Override
    public double left(double days, double lasts) {
      return Double.isInfinite(lasts) ? 1 : Math.max(0, 1 - days / lasts);
    }

    @Override
    public String words() {
      return "effect that falls evenly to nothing";
    }
  }

  /**
   * Falls by half in each half-life, and ends on the last day.
   *
   * @param halfLifeDays days in which the effect falls by half, above 0
   */
  record Exponential(double halfLifeDays) implements ResidueDecay {
    /** Refuses a half-life that is none. */
    public Exponential {
      if (!(halfLifeDays > 0)) {
        throw InputProblem.of("a half-life of " + Numbers.plain(halfLifeDays) + " days")
            .expected("days above 0")
            .because("an effect without a half-life would be gone at once")
            .mend("give the days after which half of the effect is left");
      }
    }

    @Override
    public double left(double days, double lasts) {
      return days <= lasts ? Math.pow(2, -days / halfLifeDays) : 0;
    }

    @Override
    public String words() {
      return "effect that falls by half every " + Numbers.plain(halfLifeDays) + " days";
    }
  }

  /**
   * The effect that is left.
   *
   * @param days days since the treatment, 0 or more
   * @param lasts days that the residue lasts, above 0; infinite if it does not end
   * @return 0 to 1, never rising with the days
   */
  double left(double days, double lasts);

  /**
   * The course in words.
   *
   * @return a phrase in lower case
   */
  String words();
}
