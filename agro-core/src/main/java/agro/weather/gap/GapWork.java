package agro.weather.gap;

import agro.weather.DailyTemperatures;
import agro.weather.DayRuns;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Fills one gap by the allowed ways in their order; what one cannot fill goes to the next. */
final class GapWork {

  private static final String NOTHING_ALLOWED = "no way of filling is allowed";

  private final List<GapFiller> fillers;
  private final DailyTemperatures.Builder target;
  private final List<FilledGap> done = new ArrayList<>();
  private final Set<String> refusals = new LinkedHashSet<>();

  GapWork(List<GapFiller> fillers, DailyTemperatures.Builder target) {
    this.fillers = fillers;
    this.target = target;
  }

  /** The parts of the gap in the order of their days. */
  List<FilledGap> fill(DayRuns.Run gap) {
    var open = List.of(gap);
    for (var filler : fillers) {
      var rest = new ArrayList<DayRuns.Run>();
      for (var run : open) {
        rest.addAll(fill(run, filler));
      }
      open = rest;
    }
    var why = refusals.isEmpty() ? NOTHING_ALLOWED : String.join("; ", refusals);
    for (var run : open) {
      done.add(
          new FilledGap(
              run, GapMethod.LEFT_OPEN, Double.NaN, Double.NaN, ErrorCorrelation.NONE, why));
    }
    done.sort(Comparator.comparing(part -> part.days().first()));
    return done;
  }

  /** Takes over what one way proposes; the days that it leaves open are returned. */
  private List<DayRuns.Run> fill(DayRuns.Run run, GapFiller filler) {
    var proposal = filler.propose(run);
    if (!proposal.refusal().isEmpty()) {
      refusals.add(proposal.refusal());
    }
    if (proposal.days().isEmpty()) {
      return List.of(run);
    }
    var filled = new ArrayList<LocalDate>();
    var open = new ArrayList<LocalDate>();
    for (int i = 0; i < run.days(); i++) {
      var day = run.first().plusDays(i);
      var fill = proposal.days().get(i);
      if (fill.isKnown()) {
        filled.add(day);
        target.put(
            day,
            fill.min(),
            fill.max(),
            fill.minError(),
            fill.maxError(),
            filler.method().origin());
      } else {
        open.add(day);
      }
    }
    for (var part : DayRuns.of(filled)) {
      done.add(piece(run, part, proposal, filler));
    }
    return DayRuns.of(open);
  }

  private static FilledGap piece(
      DayRuns.Run run, DayRuns.Run part, GapFiller.Proposal proposal, GapFiller filler) {
    double minSquares = 0;
    double maxSquares = 0;
    int first = (int) (part.first().toEpochDay() - run.first().toEpochDay());
    for (int i = first; i < first + part.days(); i++) {
      var fill = proposal.days().get(i);
      minSquares += fill.minError() * fill.minError();
      maxSquares += fill.maxError() * fill.maxError();
    }
    return new FilledGap(
        part,
        filler.method(),
        Math.sqrt(minSquares / part.days()),
        Math.sqrt(maxSquares / part.days()),
        proposal.correlation(),
        proposal.words());
  }
}
