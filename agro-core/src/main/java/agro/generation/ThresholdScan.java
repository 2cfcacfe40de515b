package agro.generation;

import agro.development.DegreeDayModel;
import agro.development.Thresholds;
import agro.report.Progress;
import agro.report.ReadReport;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The same explanation of the counts on the degree-day scale of another lower threshold. The fit
 * starts from the dates that it had: starts and interval move to the new scale by the days on which
 * they fall.
 */
final class ThresholdScan {

  private final FlightTiming timing;
  private final CatchConditions conditions;

  /** What a threshold gives, and where the next one may start from. */
  final List<ObservedSeason> observed;

  final CatchFit fit;
  final double lowerC;

  /** How much longer or shorter thermal times are than at the threshold of the seasons. */
  final double ratio;

  ThresholdScan(
      FlightTiming timing,
      CatchConditions conditions,
      List<ObservedSeason> observed,
      CatchFit fit,
      double ratio) {
    this.timing = timing;
    this.conditions = conditions;
    this.observed = List.copyOf(observed);
    this.fit = fit;
    this.ratio = ratio;
    lowerC = model().thresholds().lower().celsius();
  }

  DegreeDayModel model() {
    return observed.get(0).scale().model();
  }

  /** Whether a lower threshold leaves room below the upper one. */
  boolean allows(double otherLowerC) {
    return model().thresholds().upper().map(upper -> otherLowerC < upper.celsius()).orElse(true);
  }

  /** The fit at another lower threshold. */
  ThresholdScan at(double otherLowerC) {
    var upper = model().thresholds().upper();
    var lower = Temperature.ofCelsius(otherLowerC);
    var other =
        new DegreeDayModel(
            model().method(),
            upper.isPresent() ? Thresholds.between(lower, upper.get()) : Thresholds.above(lower),
            model().cutoff());
    var moved = observed.stream().map(season -> season.on(other)).toList();
    var scrap = new ReadReport.Collector("other threshold");
    var data = moved.stream().map(season -> season.usable(conditions, scrap)).toList();
    var from = fit.model();
    var model = new CatchModel(data, from.generations, from.arrivals, from.curve);
    var longer = ratioTo(moved);
    var expected = timing.range().expected().degreeDaysC() * ratio * longer;
    return new ThresholdScan(
        timing,
        conditions,
        moved,
        new CatchFit(
                model,
                new WeakPrior(model, expected),
                freeOf(fit),
                timing.range().low().degreeDaysC() * ratio * longer,
                timing.range().high().degreeDaysC() * ratio * longer)
            .maximise(start(model, moved, longer), fit.size, true),
        ratio * longer);
  }

  private static boolean[] freeOf(CatchFit fit) {
    var free = new boolean[fit.model().parameters()];
    for (var p = 0; p < free.length; p++) {
      free[p] = fit.isFree(p);
    }
    return free;
  }

  private double[] start(CatchModel model, List<ObservedSeason> moved, double longer) {
    var start = fit.parameters.clone();
    for (var s = 0; s < moved.size(); s++) {
      var given = timing.givenStarts().get(moved.get(s).year());
      start[s] =
          given == null
              ? onOtherScale(observed.get(s), moved.get(s), start[s], longer)
              : moved.get(s).scale().degreeDaysCAtStartOf(given.biofix())
                  + given.toMiddle().degreeDaysC() * ratio * longer;
      for (var a = 1; a < model.arrivals; a++) {
        start[model.delayIndex(s, a)] += Math.log(longer);
      }
    }
    start[model.intervalIndex()] *= longer;
    start[model.firstScaleIndex()] += Math.log(longer);
    start[model.addedScaleIndex()] += Math.log(longer);
    return start;
  }

  /** Ratio of the two scales between the first and the last flight that the seasons reach. */
  private double ratioTo(List<ObservedSeason> moved) {
    var model = fit.model();
    var here = 0.0;
    var there = 0.0;
    for (var s = 0; s < moved.size(); s++) {
      var from = Math.max(0, fit.parameters[s]);
      var to =
          Math.min(
              observed.get(s).scale().totalC(),
              from + (model.generations - 1) * fit.parameters[model.intervalIndex()]);
      here += to - from;
      there +=
          onOtherScale(observed.get(s), moved.get(s), to, 1)
              - onOtherScale(observed.get(s), moved.get(s), from, 1);
    }
    return here > 0 && there > 0 ? there / here : 1;
  }

  private static double onOtherScale(
      ObservedSeason from, ObservedSeason to, double degreeDaysC, double ratio) {
    var days = from.scale().daysUntil(degreeDaysC);
    var there = Double.isFinite(days) ? to.scale().degreeDaysCAfter(days) : Double.NaN;
    return Double.isNaN(there) ? ratio * degreeDaysC : there;
  }

  /** Interval and dates at this threshold. */
  ThresholdOutcome outcome() {
    var range =
        new IntervalRange(
            timing.range().low().times(ratio),
            timing.range().high().times(ratio),
            timing.range().expected().times(ratio),
            timing.range().sources());
    var seasonwise = new SeasonwiseIntervals(fit, range);
    var intervals = seasonwise.run(Progress.silent());
    var byYear = SeasonwiseIntervals.byYear(fit.model().seasons, intervals);
    var pooled = new ThermalTime(fit.parameters[fit.model().intervalIndex()]);
    var estimate =
        byYear.isEmpty()
            ? Optional.<IntervalEstimate>empty()
            : Optional.of(new IntervalEstimate(byYear));
    return new ThresholdOutcome(
        Temperature.ofCelsius(lowerC),
        pooled,
        estimate,
        fit.logLikelihood,
        flightDays(seasonwise, estimate.map(IntervalEstimate::mean).orElse(pooled)));
  }

  /** The middle of each flight by the season's start and the interval of all seasons. */
  private List<FlightDay> flightDays(SeasonwiseIntervals seasonwise, ThermalTime interval) {
    var days = new ArrayList<FlightDay>();
    for (var s = 0; s < observed.size(); s++) {
      var scale = observed.get(s).scale();
      for (var g = 0; g < fit.model().generations; g++) {
        var after = scale.daysUntil(Math.max(0, seasonwise.start(s) + g * interval.degreeDaysC()));
        var day =
            Double.isFinite(after)
                ? Optional.of(scale.firstDay().plusDays((long) after))
                : Optional.<LocalDate>empty();
        days.add(new FlightDay(observed.get(s).label(), g + 1, day, after));
      }
    }
    return days;
  }
}
