package agro.generation;

import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import agro.units.Numbers;
import java.util.List;
import java.util.Optional;

/** What a reader should know before believing a fit. */
final class FitNotes {

  private static final double ABSURD_RESIDUAL = 6;

  private final ReadReport.Collector report;

  FitNotes(ReadReport.Collector report) {
    this.report = report;
  }

  void add(
      CatchFit best,
      List<SeasonTiming> seasons,
      List<CatchData> data,
      Optional<LureEstimate> lure) {
    if (!best.converged) {
      note("the fit had not come to rest when it was stopped: read its figures with care");
    }
    seasons.forEach(this::noteStart);
    for (var s = 0; s < data.size(); s++) {
      noteAbsurdCounts(data.get(s), best.residuals(s));
    }
    noteCorrelation(seasons);
    lure.ifPresent(this::noteLure);
    if (best.model().generations == 1) {
      report.add(
          Deed.ASSUMED,
          SourceLocation.NONE,
          "one flight only: nothing is known of the spread of later ones; each is given an added"
              + " scale of 0.12 published intervals");
    }
  }

  private void noteStart(SeasonTiming season) {
    if (season.start().degreeDaysC() < 0) {
      note(
          "season "
              + season.label()
              + ": the middle of the first flight lies before the first day of the season. Are"
              + " the temperatures in the stated unit, and does the season start early enough?");
    }
    if (season.beganBeforeTraps()) {
      note(
          "season "
              + season.label()
              + ": the first flight began before the traps were set; about "
              + Numbers.fixed(100 * season.shareBeforeTraps(), 0)
              + " % of it had flown unseen, and its middle follows from the rest and from the later"
              + " flights");
    }
  }

  private void noteAbsurdCounts(CatchData data, double[] residuals) {
    for (var v = 0; v < residuals.length; v++) {
      if (residuals[v] > ABSURD_RESIDUAL) {
        var visit = data.book.get(v);
        note(
            "the count of "
                + visit.count()
                + " at trap "
                + visit.trap()
                + " on "
                + visit.date()
                + " is far above what the fit expects: is it right?");
      }
    }
  }

  private void noteCorrelation(List<SeasonTiming> seasons) {
    var mean = FitDetails.meanCorrelation(seasons);
    if (mean > PooledInterval.CORRELATED) {
      note(
          "counts of running visits stray together (correlation of residuals "
              + Numbers.fixed(mean, 2)
              + "): the profile interval within these seasons is widened for it, the interval"
              + " season by season needs no widening, and dates of the season under way may be"
              + " too sure");
    }
  }

  private void noteLure(LureEstimate lure) {
    note(
        "the lures lose half their strength in "
            + Numbers.fixed(lure.halfLifeDays(), 0)
            + " days (90 % profile interval "
            + Numbers.fixed(lure.lowDays(), 0)
            + " to "
            + (Double.isInfinite(lure.highDays())
                ? "lures that never fade"
                : Numbers.fixed(lure.highDays(), 0))
            + "), estimated from the counts; the log likelihood is "
            + Numbers.fixed(lure.gain(), 1)
            + " above that of lures that do not fade");
  }

  private void note(String text) {
    report.add(Deed.NOTED, SourceLocation.NONE, text);
  }
}
