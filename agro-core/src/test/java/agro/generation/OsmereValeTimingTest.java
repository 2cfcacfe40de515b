package agro.generation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import agro.demo.OsmereVale;
import agro.demo.TrueSeason;
import agro.development.DegreeDayModel;
import agro.development.ThermalTimeScale;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The main job over many invented vales, beside their truth.
 *
 * <p>The generator is not the fitted model: it has hourly temperatures, adults that live 5 to 15
 * days, trapping that depends on the evening's warmth and wind, lures that fade, catches that stray
 * together, and a start and a requirement that differ between seasons. What that costs is printed.
 * Over seeds 1 to 40 the fitted interval misses by a few °C·d, the middle of the second flight, a
 * month ahead, by 3 to 4 days, and that of the third, three months ahead, by 10. Late dates can be
 * compared only in the seasons that reach them; those are the warm ones, so that forecasts look
 * late there. Bounds are loose for these reasons; none of it is proof of anything in the field.
 */
@Tag("slow")
class OsmereValeTimingTest {

  private static final int SEEDS = 40;

  /** Rows to score: a flight and a share of it. */
  private record Line(int flight, FlightShare share) {}

  /** One forecast beside its truth. */
  private record Scored(DateDistribution dates, Optional<LocalDate> truth) {
    boolean inside(double probability) {
      var interval = dates.interval(probability);
      var from = interval.from().orElse(LocalDate.MAX);
      var to = interval.to().orElse(LocalDate.MAX);
      var day = truth.orElse(LocalDate.MAX);
      return !day.isBefore(from) && !day.isAfter(to);
    }

    /** Forecast minus truth in days; nothing when one of the two is "not this season". */
    Optional<Double> error() {
      return dates
          .median()
          .flatMap(day -> truth.map(other -> (double) ChronoUnit.DAYS.between(other, day)));
    }
  }

  /** What the seeds gave for one line. */
  private static final class Score {
    final List<Scored> all = new ArrayList<>();

    double coverage(double probability) {
      return all.stream().filter(each -> each.inside(probability)).count() / (double) all.size();
    }

    double bias() {
      return all.stream()
          .flatMap(each -> each.error().stream())
          .mapToDouble(x -> x)
          .average()
          .orElse(0);
    }

    double meanAbsoluteError() {
      return all.stream()
          .flatMap(each -> each.error().stream())
          .mapToDouble(Math::abs)
          .average()
          .orElse(0);
    }

    double chanceNot() {
      return all.stream()
          .mapToDouble(each -> each.dates().chanceNotThisSeason())
          .average()
          .orElse(0);
    }

    double shareNot() {
      return all.stream().filter(each -> each.truth().isEmpty()).count() / (double) all.size();
    }
  }

  @Test
  void fortyValesBesideTheirTruth() {
    var lines = new ArrayList<Line>();
    for (var flight : new int[] {2, 3}) {
      for (var share : FlightShare.values()) {
        lines.add(new Line(flight, share));
      }
    }
    var scores = lines.stream().map(line -> new Score()).toList();
    var biases = new ArrayList<Double>();
    var fitMillis = 0.0;
    var forecastMillis = 0.0;
    for (var seed = 1; seed <= SEEDS; seed++) {
      var vale = OsmereVale.of(seed);
      var seasons = vale.leekMoth(OsmereVale.ISSUE_DATE);
      var past = seasons.past();
      var began = System.nanoTime();
      var fit = FlightTiming.searching(seasons.pest().range()).fit(past);
      fitMillis += (System.nanoTime() - began) / 1e6 / SEEDS;
      var ahead = seasons.ahead(seed).underWay();
      began = System.nanoTime();
      var forecast = GenerationForecast.of(fit, ahead);
      forecastMillis += (System.nanoTime() - began) / 1e6 / SEEDS;
      var truth = trueInterval(vale, seasons.pest().model());
      biases.add(fit.workingInterval().degreeDaysC() - truth);
      System.out.printf(
          Locale.ROOT,
          "seed %2d: K %5.1f, truth %5.1f, %s, flight 2 half %s, truth %s%n",
          seed,
          fit.workingInterval().degreeDaysC(),
          truth,
          fit.verdict(),
          forecast.flight(2, FlightShare.HALF).map(row -> row.dates().toString()).orElse("none"),
          day(vale.leekMothTruth(OsmereVale.LAST_SEASON), 2, 0.5));
      for (var i = 0; i < lines.size(); i++) {
        score(scores.get(i), lines.get(i), forecast, vale);
      }
    }
    var bias = biases.stream().mapToDouble(x -> x).average().orElseThrow();
    System.out.printf(
        Locale.ROOT,
        "K bias %.1f °C·d; fit %.0f ms, forecast %.0f ms%n",
        bias,
        fitMillis,
        forecastMillis);
    for (var i = 0; i < lines.size(); i++) {
      print(lines.get(i), scores.get(i));
    }
    var half = scores.get(1);
    assertThat(Math.abs(bias)).isLessThan(15);
    assertThat(half.coverage(0.9)).isGreaterThanOrEqualTo(0.8);
    assertThat(half.coverage(0.5)).isBetween(0.3, 0.85);
    assertThat(half.meanAbsoluteError()).isLessThan(6);
    assertThat(scores.get(4).coverage(0.9)).isGreaterThanOrEqualTo(0.75);
    for (var score : scores) {
      assertThat(score.all).hasSize(SEEDS);
      assertThat(score.chanceNot()).isCloseTo(score.shareNot(), within(0.2));
    }
  }

  private static void score(Score score, Line line, GenerationForecast forecast, OsmereVale vale) {
    forecast
        .flight(line.flight(), line.share())
        .ifPresent(
            row ->
                score.all.add(
                    new Scored(
                        row.dates(),
                        day(
                            vale.leekMothTruth(OsmereVale.LAST_SEASON),
                            line.flight(),
                            line.share().share()))));
  }

  private static void print(Line line, Score score) {
    System.out.printf(
        Locale.ROOT,
        "flight %d %-17s n %2d, coverage 50/80/90 %%: %.2f %.2f %.2f, bias %+.1f d, MAE %.1f d,"
            + " not this season: chance %.2f, truth %.2f%n",
        line.flight(),
        line.share().words(),
        score.all.size(),
        score.coverage(0.5),
        score.coverage(0.8),
        score.coverage(0.9),
        score.bias(),
        score.meanAbsoluteError(),
        score.chanceNot(),
        score.shareNot());
  }

  private static Optional<LocalDate> day(TrueSeason season, int flight, double share) {
    return season.flight(flight).flatMap(each -> each.dateOf(share));
  }

  /** Mean true interval between the middles of running flights, on the scale of the fit. */
  private static double trueInterval(OsmereVale vale, DegreeDayModel model) {
    var sum = 0.0;
    var intervals = 0;
    for (var year = OsmereVale.FIRST_SEASON; year < OsmereVale.LAST_SEASON; year++) {
      var scale =
          ThermalTimeScale.of(model, vale.trueUpperCroft(year), OsmereVale.seasonStart(year));
      var truth = vale.leekMothTruth(year);
      for (var flight = 1; flight <= 2; flight++) {
        var from = middle(truth, flight, scale);
        var to = middle(truth, flight + 1, scale);
        if (Double.isFinite(to)) {
          sum += to - from;
          intervals++;
        }
      }
    }
    return sum / intervals;
  }

  /** Degree-days at the evening of the middle, which is near the end of its day. */
  private static double middle(TrueSeason truth, int flight, ThermalTimeScale scale) {
    return day(truth, flight, 0.5)
        .map(day -> scale.degreeDaysCAtStartOf(day.plusDays(1)))
        .orElse(Double.NaN);
  }
}
