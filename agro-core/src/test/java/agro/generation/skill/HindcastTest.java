package agro.generation.skill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import agro.generation.CatchConditions;
import agro.generation.FlightShare;
import agro.generation.LureFade;
import agro.generation.skill.InventedDistrict.Driver;
import agro.report.Progress;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Forecasts of past seasons of an invented district. */
class HindcastTest {

  private static final InventedDistrict DISTRICT = new InventedDistrict(1, Driver.WARMTH, 3);

  private static final HindcastPlan SHORT =
      HindcastPlan.usual().withLeads(LeadTime.SEASON_START).withShares(FlightShare.HALF);

  private static Hindcast hindcast;

  @BeforeAll
  static void run() {
    hindcast = SHORT.of(DISTRICT);
  }

  @Test
  void datesOfWholeSeasonsAreNearTheTruth() {
    for (var season : hindcast.observed()) {
      for (var flight = 1; flight <= 3; flight++) {
        var date = season.date(new FlightEvent(flight, FlightShare.HALF));
        assertThat(date.came()).isTrue();
        assertThat(date.errorDays()).isBetween(0.2, 3.0);
        assertThat(date.days())
            .as("%d, flight %d", season.year(), flight)
            .isEqualTo(DISTRICT.middleDays(season.year(), flight), within(4 * date.errorDays()));
      }
    }
  }

  @Test
  void everyForecastIsIssuedWhenItSays() {
    assertThat(hindcast.forecasts())
        .hasSize(15)
        .allSatisfy(each -> assertThat(each.issueDate()).isEqualTo(each.firstDay()))
        .allSatisfy(each -> assertThat(each.observed()).isEqualTo(observed(each)));
    var plan = SHORT.withSchemes(HindcastScheme.ONLY_EARLIER).withLeads(LeadTime.days(28));
    var before = plan.of(new InventedDistrict(1, Driver.WARMTH, 2)).forecasts();
    assertThat(before).isNotEmpty();
    for (var each : before) {
      assertThat(ChronoUnit.DAYS.between(each.issueDate(), each.observed().day(each.firstDay())))
          .isEqualTo(28);
    }
  }

  private static ObservedDate observed(HindcastForecast forecast) {
    return hindcast.observed().stream()
        .filter(season -> season.year() == forecast.year())
        .findFirst()
        .orElseThrow()
        .date(forecast.event());
  }

  /** The first season has nothing before it, and the second one too little for references. */
  @Test
  void onlyEarlierSeasonsKnowLess() {
    var earlier = HindcastScheme.ONLY_EARLIER;
    assertThat(hindcast.forecasts())
        .filteredOn(each -> each.scheme() == earlier && each.year() == 2018)
        .isNotEmpty()
        .allSatisfy(each -> assertThat(each.references()).isEmpty());
    assertThat(hindcast.forecasts())
        .filteredOn(each -> each.scheme() == earlier && each.year() == 2019)
        .isNotEmpty()
        .allSatisfy(
            each ->
                assertThat(each.references())
                    .containsKeys(SkillReference.CALENDAR, SkillReference.PUBLISHED_INTERVAL));
    assertThat(hindcast.report().entries())
        .anySatisfy(entry -> assertThat(entry.text()).contains("no forecast of 2017-03-01"));
  }

  @Test
  void thePageSaysHowFarItCanBeTrusted() {
    var text = hindcast.presentation().toText().replaceAll("\\s+", " ");
    assertThat(text)
        .contains("Skill on invented data is a demonstration, never proof")
        .contains("too few to judge")
        .contains("Leave one season out: all events together")
        .contains("Only earlier seasons: every event")
        .contains("as the counts of each whole season tell")
        .contains("Clopper")
        .contains("Before you use these figures");
    assertThat(hindcast.rows().rows()).hasSize(hindcast.forecasts().size());
    assertThat(hindcast.byEvent(HindcastScheme.LEAVE_ONE_OUT).rows()).hasSize(3);
  }

  /** What a catch depends on is part of the choices of the archive, and every fit makes them. */
  @Test
  void choicesOfTheArchiveReachEveryFit() {
    var plain = new InventedDistrict(1, Driver.WARMTH, 2);
    var fading = CatchConditions.NONE.with(LureFade.halfLife(60));
    var choosy = new InventedDistrict(1, Driver.WARMTH, 2).withTiming(plain.timing().with(fading));
    var plan = SHORT.withSchemes(HindcastScheme.LEAVE_ONE_OUT).withLeads(LeadTime.days(14));
    var chosen = plan.of(choosy).forecasts();
    assertThat(chosen).isNotEmpty();
    assertThat(chosen.get(0).dates()).isNotEqualTo(plan.of(plain).forecasts().get(0).dates());
  }

  @Test
  void numberOfThreadsDoesNotMatter() {
    var again = SHORT.withForecastsAtATime(hindcast.plan().atATime() == 1 ? 3 : 1).of(DISTRICT);
    assertThat(again.forecasts()).isEqualTo(hindcast.forecasts());
    assertThat(again.observed()).isEqualTo(hindcast.observed());
    assertThat(again.report()).isEqualTo(hindcast.report());
  }

  @Test
  void progressIsHeardAndMayCancel() {
    var heard = new ArrayList<Long>();
    Progress cancelling =
        (what, done, total) -> {
          if (what.equals("hindcast")) {
            heard.add(done);
          }
          return !what.equals("hindcast") || done < 1;
        };
    assertThatThrownBy(() -> SHORT.of(DISTRICT, cancelling))
        .isInstanceOf(CancellationException.class)
        .hasMessageContaining("cancelled after 1 of");
    // While it waits for one it tells the same again, so that a wish to cancel is heard soon.
    assertThat(heard.stream().distinct()).containsExactly(0L, 1L);
  }

  @Test
  void noSeasonThatIsOver() {
    assertThatThrownBy(() -> Hindcast.of(new InventedDistrict(1, Driver.WARMTH, 0)))
        .hasMessageContaining("no season of test pest at Test field is over")
        .hasMessageContaining("judged by what came");
  }
}
