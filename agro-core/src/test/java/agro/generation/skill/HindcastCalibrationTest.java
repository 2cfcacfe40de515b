package agro.generation.skill;

import static org.assertj.core.api.Assertions.assertThat;

import agro.generation.FlightShare;
import agro.generation.skill.InventedDistrict.Driver;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Many invented districts of five seasons, seeds 1 to N. Where the fitted model is the generator
 * the intervals must hold what they claim; where flights follow the calendar the model must not
 * seem to beat it.
 */
@Tag("slow")
class HindcastCalibrationTest {

  private static final int DISTRICTS = Integer.getInteger("agro.hindcast.districts", 100);
  private static final int SEASONS = 5;

  private static final HindcastPlan PLAN =
      HindcastPlan.usual()
          .withSchemes(HindcastScheme.LEAVE_ONE_OUT)
          .withLeads(LeadTime.days(28), LeadTime.SEASON_START)
          .withShares(FlightShare.HALF);

  @Test
  void intervalsHoldWhatTheyClaim() {
    var all = new ArrayList<HindcastForecast>();
    for (var seed = 1; seed <= DISTRICTS; seed++) {
      all.addAll(PLAN.of(new InventedDistrict(seed, Driver.WARMTH, SEASONS)).forecasts());
    }
    for (var lead : PLAN.leads()) {
      for (var flight = 1; flight <= 3; flight++) {
        var scores = HindcastScores.of(of(all, flight, lead));
        print(lead.words() + ", flight " + flight, scores);
        var ninety = scores.coverage().get(2);
        assertThat(ninety.high(0.99)).as("%s, flight %d", lead, flight).isGreaterThan(0.85);
        assertThat(ninety.low(0.99)).isLessThan(0.97);
        assertThat(Math.abs(scores.biasDays())).isLessThan(2);
      }
    }
  }

  private static List<HindcastForecast> of(List<HindcastForecast> all, int flight, LeadTime lead) {
    return all.stream()
        .filter(each -> each.event().generation() == flight && each.lead().equals(lead))
        .toList();
  }

  private static void print(String what, HindcastScores scores) {
    System.out.printf(
        Locale.ROOT,
        "%s: n %d, bias %+.2f, MAE %.2f, CRPS %.2f d, coverage 50/80/90 %%: %.3f %.3f %.3f,"
            + " skill %.2f %.2f %.2f%n",
        what,
        scores.forecasts(),
        scores.biasDays(),
        scores.meanAbsoluteErrorDays(),
        scores.rankedProbabilityDays(),
        scores.coverage().get(0).share(),
        scores.coverage().get(1).share(),
        scores.coverage().get(2).share(),
        scores.skills().get(0).skill(),
        scores.skills().get(1).skill(),
        scores.skills().get(2).skill());
  }

  @Test
  void noSkillOverTheCalendarWhereFlightsFollowIt() {
    for (var lead : PLAN.leads()) {
      var plan = PLAN.withLeads(lead);
      var skills = new ArrayList<Double>();
      for (var seed = 1; seed <= DISTRICTS / 4; seed++) {
        var hindcast = plan.of(new InventedDistrict(seed, Driver.CALENDAR, SEASONS));
        var skill =
            HindcastScores.of(
                    hindcast.forecasts(
                        HindcastScheme.LEAVE_ONE_OUT, Optional.empty(), Optional.empty()))
                .skill(SkillReference.CALENDAR);
        if (!Double.isNaN(skill.skill())) {
          skills.add(skill.skill());
        }
      }
      var mean = skills.stream().mapToDouble(x -> x).average().orElseThrow();
      var squares = skills.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
      var error = Math.sqrt(squares / (skills.size() - 1) / skills.size());
      System.out.printf(
          Locale.ROOT,
          "flights follow the calendar, %s: skill over it %.2f ± %.2f (%d districts)%n",
          lead.words(),
          mean,
          error,
          skills.size());
      assertThat(mean).isLessThan(2 * error);
    }
  }
}
