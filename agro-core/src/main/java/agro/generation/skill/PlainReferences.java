package agro.generation.skill;

import agro.development.ThermalTimeScale;
import agro.generation.DateDistribution;
import agro.generation.FlightTimingFit;
import agro.generation.IntervalRange;
import agro.generation.ObservedSeason;
import agro.generation.SeasonUnderWay;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.util.FastMath;

/**
 * The references of one day of issue. Each is a predictive distribution of a new season: mean and
 * scatter of the seasons learnt from, Student's t with the factor sqrt(1 + 1/m). One season tells
 * nothing of scatter, so that at least two are needed.
 */
final class PlainReferences {

  private static final int OUTCOMES = 201;
  private static final int OUTCOMES_A_MEMBER = 41;

  private final FlightTimingFit fit;
  private final SeasonUnderWay season;
  private final List<Learnt> learnt = new ArrayList<>();
  private final Optional<LocalDate> firstCatch;
  private final double horizon;

  /** A season learnt from: its dates, and its first catch in days and degree-days. */
  private record Learnt(SeasonDates dates, ThermalTimeScale scale, Optional<LocalDate> firstCatch) {
    double firstCatchDays() {
      return firstCatch
          .map(day -> (double) ChronoUnit.DAYS.between(scale.firstDay(), day))
          .orElse(Double.NaN);
    }

    double firstCatchC() {
      return firstCatch.map(scale::degreeDaysCAtStartOf).orElse(Double.NaN);
    }
  }

  PlainReferences(FlightTimingFit fit, SeasonArchive.Known known, SeasonArchive archive) {
    this.fit = fit;
    season = known.underWay();
    firstCatch = FirstCatch.of(season.traps());
    horizon = ChronoUnit.DAYS.between(season.firstDay(), season.lastDay()) + 1.0;
    for (var past : known.past()) {
      learnt.add(
          new Learnt(
              SeasonDates.of(fit, past, archive.lastDay(past.year())),
              past.scale(),
              firstCatchOnScale(past)));
    }
  }

  private static Optional<LocalDate> firstCatchOnScale(ObservedSeason past) {
    return FirstCatch.of(past.traps())
        .filter(day -> !day.isAfter(past.scale().lastDay().plusDays(1)))
        .filter(day -> !day.isBefore(past.scale().firstDay()));
  }

  /** The references that can be made for an event. */
  Map<SkillReference, DateDistribution> of(FlightEvent event) {
    var made = new EnumMap<SkillReference, DateDistribution>(SkillReference.class);
    calendar(event).ifPresent(days -> made.put(SkillReference.CALENDAR, dates(days)));
    firstCatch(event).ifPresent(days -> made.put(SkillReference.FIRST_CATCH, dates(days)));
    published(event).ifPresent(days -> made.put(SkillReference.PUBLISHED_INTERVAL, dates(days)));
    return made;
  }

  private DateDistribution dates(double[] days) {
    for (var i = 0; i < days.length; i++) {
      days[i] = days[i] >= horizon ? Double.POSITIVE_INFINITY : days[i];
    }
    return DateDistribution.ofOutcomes(season.firstDay(), days);
  }

  private Optional<double[]> calendar(FlightEvent event) {
    return spreadOut(event, each -> each.dates().date(event).days(), 0);
  }

  private Optional<double[]> firstCatch(FlightEvent event) {
    if (firstCatch.isEmpty()) {
      return Optional.empty();
    }
    var caught = (double) ChronoUnit.DAYS.between(season.firstDay(), firstCatch.get());
    return spreadOut(
        event, each -> each.dates().date(event).days() - each.firstCatchDays(), caught);
  }

  /** Outcomes about the mean of the seasons, with their share that did not have the event. */
  private Optional<double[]> spreadOut(
      FlightEvent event, Function<Learnt, Double> value, double shift) {
    var values = new ArrayList<Double>();
    var never = 0;
    for (var each : learnt) {
      var days = value.apply(each);
      if (Double.isFinite(days)) {
        values.add(days);
      } else if (each.dates().date(event).kind() == ObservedDate.Kind.DID_NOT_COME) {
        never++;
      }
    }
    if (values.size() < 2) {
      return Optional.empty();
    }
    var reached = (double) values.size() / (values.size() + never);
    var prediction = Prediction.of(values);
    var days = new double[OUTCOMES];
    for (var i = 0; i < OUTCOMES; i++) {
      var probability = (i + 0.5) / OUTCOMES;
      days[i] =
          probability < reached
              ? shift + prediction.quantile(probability / reached)
              : Double.POSITIVE_INFINITY;
    }
    return Optional.of(days);
  }

  /** First catch, then the way to the same share of the first flight, then published intervals. */
  private Optional<double[]> published(FlightEvent event) {
    var toFirst = new FlightEvent(1, event.share());
    var ways = new ArrayList<Double>();
    var starts = new ArrayList<Double>();
    for (var each : learnt) {
      var first = each.dates().date(toFirst);
      if (first.came() && each.firstCatch().isPresent()) {
        ways.add(each.scale().degreeDaysCAfter(first.days()) - each.firstCatchC());
        starts.add(each.firstCatchC());
      }
    }
    if (ways.size() < 2) {
      return Optional.empty();
    }
    var way = Prediction.of(ways);
    var start = firstCatch.isPresent() ? Prediction.exactly(caughtC()) : Prediction.of(starts);
    var steps = event.generation() - 1.0;
    var interval = fit.timing().range().expected().degreeDaysC();
    var mean = start.mean() + way.mean() + steps * interval;
    var deviation =
        FastMath.sqrt(
            start.scale() * start.scale()
                + way.scale() * way.scale()
                + FastMath.pow(steps * IntervalRange.PUBLISHED_VARIATION * interval, 2));
    return Optional.of(acrossMembers(mean, deviation));
  }

  private double caughtC() {
    var known = season.known().between(season.firstDay(), season.known().lastDay());
    return ThermalTimeScale.of(season.model(), known, season.firstDay())
        .degreeDaysCAtStartOf(firstCatch.orElseThrow());
  }

  private double[] acrossMembers(double meanC, double deviationC) {
    var known = season.known().between(season.firstDay(), season.known().lastDay());
    var normal = new NormalDistribution();
    var days = new double[season.members().size() * OUTCOMES_A_MEMBER];
    for (var m = 0; m < season.members().size(); m++) {
      var whole = known.followedBy(season.members().get(m));
      var scale = ThermalTimeScale.of(season.model(), whole, season.firstDay());
      for (var i = 0; i < OUTCOMES_A_MEMBER; i++) {
        var z = normal.inverseCumulativeProbability((i + 0.5) / OUTCOMES_A_MEMBER);
        days[m * OUTCOMES_A_MEMBER + i] = FastMath.max(0, scale.daysUntil(meanC + z * deviationC));
      }
    }
    return days;
  }

  /** What some values say of the next one: mean, and the scale of Student's t. */
  private record Prediction(double mean, double scale, int values) {
    static Prediction of(List<Double> values) {
      var m = values.size();
      var mean = values.stream().mapToDouble(x -> x).average().orElseThrow();
      var squares = values.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
      return new Prediction(mean, FastMath.sqrt(squares / (m - 1) * (1 + 1.0 / m)), m);
    }

    static Prediction exactly(double value) {
      return new Prediction(value, 0, 2);
    }

    double quantile(double probability) {
      RealDistribution t = new TDistribution(values - 1.0);
      return mean + scale * t.inverseCumulativeProbability(probability);
    }
  }
}
