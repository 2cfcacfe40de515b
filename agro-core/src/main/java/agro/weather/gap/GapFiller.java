package agro.weather.gap;

import agro.weather.DayRuns;
import java.util.List;

/** One way to fill a gap. */
interface GapFiller {

  /** What is proposed for the days of a gap. */
  Proposal propose(DayRuns.Run gap);

  /** The method that this is. */
  GapMethod method();

  /**
   * A proposal.
   *
   * @param days one entry for each day of the gap; NaN in it where nothing can be said
   * @param correlation how the errors of its days hang together
   * @param words what it rests on
   * @param refusal why days stay open, empty when none does
   */
  record Proposal(List<DayFill> days, ErrorCorrelation correlation, String words, String refusal) {
    public Proposal {
      days = List.copyOf(days);
    }

    static Proposal refused(String why) {
      return new Proposal(List.of(), ErrorCorrelation.NONE, "", why);
    }
  }
}
