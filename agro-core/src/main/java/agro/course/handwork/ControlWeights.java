package agro.course.handwork;

import agro.course.sheet.WorkingProbit;

/** How deaths in the control change the weights. */
public enum ControlWeights {
  /**
   * Z² / (Q (P + C / (1 − C))): what the control takes from a dose is lost to its weight. After
   * enough cycles it is the maximum-likelihood line for a natural mortality that is known.
   */
  WITH_NATURAL_MORTALITY {
    @Override
    double weight(WorkingProbit at, double natural) {
      double low = at.below() + natural / (1 - natural);
      return at.ordinate() / at.above() * (at.ordinate() / low);
    }

    @Override
    double corrected(double share, double natural) {
      return (share - natural) / (1 - natural);
    }
  },
  /**
   * Z² / (P Q), as if the corrected share had been counted; a share below the control's counts as
   * none. Simpler and a little too sure of low doses.
   */
  PLAIN {
    @Override
    double weight(WorkingProbit at, double natural) {
      return at.weight();
    }

    @Override
    double corrected(double share, double natural) {
      return Math.max(0, (share - natural) / (1 - natural));
    }
  };

  abstract double weight(WorkingProbit at, double natural);

  abstract double corrected(double share, double natural);
}
