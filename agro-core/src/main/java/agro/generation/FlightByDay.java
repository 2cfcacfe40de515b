package agro.generation;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.SortedMap;
import java.util.TreeMap;

/** A fitted flight of one season, day by day. */
final class FlightByDay {

  private FlightByDay() {}

  static SortedMap<LocalDate, Double> of(
      FlightTimingFit fit, ObservedSeason season, int generation) {
    var timing =
        fit.seasons().stream()
            .filter(each -> each.year() == season.year() && each.site().equals(season.site()))
            .findFirst()
            .orElseThrow(
                () ->
                    InputProblem.of("season " + season.label())
                        .expected("one of the seasons of the fit in which something was caught")
                        .because("each season has a start of its own")
                        .mend("fit the season together with the others"));
    if (generation < 1 || generation > fit.generations()) {
      throw InputProblem.of("flight " + generation)
          .expected("1 to " + fit.generations())
          .because("the counts show so many flights a season")
          .mend("ask for one of them");
    }
    var interval = timing.interval().orElse(fit.workingInterval()).degreeDaysC();
    var middle = timing.start().degreeDaysC() + (generation - 1) * interval;
    var scale = fit.shape().scaleDegreeDaysC(generation);
    var curve = fit.shape().curve();
    var sums = season.scale().sumsC();
    var byDay = new TreeMap<LocalDate, Double>();
    for (var day = 0; day < sums.length - 1; day++) {
      var share =
          curve.cumulative((sums[day + 1] - middle) / scale)
              - curve.cumulative((sums[day] - middle) / scale);
      byDay.put(season.scale().firstDay().plusDays(day), share);
    }
    return byDay;
  }
}
