package agro.development;

import agro.weather.DailyTemperatures;
import agro.weather.gap.ErrorCorrelation;
import agro.weather.gap.FilledDays;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** Which days share one run of correlated errors, and how. */
final class ThermalTimeErrorRuns {

  private record Place(int run, ErrorCorrelation correlation) {}

  private static final Place NOWHERE = new Place(-1, ErrorCorrelation.NONE);

  private final Map<LocalDate, Place> places = new HashMap<>();

  /** Each gap is a run of its own; days with errors from elsewhere are runs by origin. */
  ThermalTimeErrorRuns(FilledDays filled) {
    this(filled.daily(), ErrorCorrelation.NONE);
    int run = filled.daily().size();
    for (var gap : filled.gaps()) {
      run++;
      for (int i = 0; i < gap.days().days(); i++) {
        places.put(gap.days().first().plusDays(i), new Place(run, gap.correlation()));
      }
    }
  }

  /** Unbroken days of one origin with errors are a run. */
  ThermalTimeErrorRuns(DailyTemperatures days, ErrorCorrelation correlation) {
    int run = 0;
    for (int i = 0; i < days.size(); i++) {
      if (i > 0 && days.originAt(i) != days.originAt(i - 1)) {
        run++;
      }
      places.put(days.day(i), new Place(run, correlation));
    }
  }

  int run(LocalDate day) {
    return places.getOrDefault(day, NOWHERE).run();
  }

  ErrorCorrelation correlation(LocalDate day) {
    return places.getOrDefault(day, NOWHERE).correlation();
  }
}
