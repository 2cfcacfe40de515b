package agro.programme.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import agro.programme.CropPlanting;
import agro.programme.LabelBook;
import agro.programme.PickingPlan;
import agro.programme.Programme;
import agro.programme.interval.Permission;
import agro.programme.interval.SeasonRules;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A treatment after the picking of its day, and what it costs, from a table of labels. */
class PickingHourTest {

  private static final LocalDate DAY = RotationScenes.START.plusDays(10);

  private static final LabelBook BOOK =
      LabelBook.parse(
          "labels.csv",
          """
          product,crop,active,group,dose,pre_harvest,max_applications,cost_per_ha
          A,cabbage,a,28,0.5 L/ha,3 days,2,62.5
          """);

  private static Programme picked(PickingPlan plan) {
    var planting =
        CropPlanting.of(RotationScenes.FIELD, RotationScenes.CROP, RotationScenes.START)
            .clearedOn(RotationScenes.START.plusDays(41))
            .picked(plan);
    var fields = RotationScenes.programme(BOOK, 42).fields();
    return Programme.of(BOOK, fields, List.of(planting));
  }

  private static PlanOutcome planned(PickingPlan plan) {
    var season = RotationWindows.every(RotationScenes.START, RotationScenes.START.plusDays(41), 21);
    var window = PlanWindow.treatedOn(season.windows().get(0), DAY);
    return RotationPlanner.of(picked(plan), RotationScenes.FIELD, "", season, List.of(window))
        .plan();
  }

  private static boolean refusedByTheCalendar(PickingPlan plan) {
    var rules = SeasonRules.of(picked(plan));
    return !rules
        .check(rules.planned(RotationScenes.FIELD, "A", DAY))
        .of(Permission.REFUSED)
        .isEmpty();
  }

  @Test
  void pickingThatIsDoneByAnHourComesBeforeTheTreatment() {
    var done = PickingPlan.on(DAY).doneBy(LocalTime.of(11, 0));
    assertThat(planned(done).count()).isEqualTo(BigInteger.ONE);
    assertThat(refusedByTheCalendar(done)).isFalse();
  }

  @Test
  void pickingWithoutAnHourMayComeAfterIt() {
    var open = PickingPlan.on(DAY);
    assertThat(planned(open).isPossible()).isFalse();
    assertThat(planned(open).refusals()).anyMatch(each -> each.rule() == PlanRule.PRE_HARVEST);
    assertThat(refusedByTheCalendar(open)).isTrue();
  }

  @Test
  void theNextPickingStillCounts() {
    var often = PickingPlan.on(DAY, DAY.plusDays(2)).doneBy(LocalTime.of(11, 0));
    assertThat(planned(often).isPossible()).isFalse();
    assertThat(refusedByTheCalendar(often)).isTrue();
    var later = PickingPlan.on(DAY, DAY.plusDays(3)).doneBy(LocalTime.of(11, 0));
    assertThat(planned(later).isPossible()).isTrue();
  }

  @Test
  void costsAreReadFromTheTableOfLabels() {
    var best = planned(PickingPlan.on(DAY.plusDays(20))).best().get(0);
    assertThat(best.scores().get(PlanCriterion.COST)).isEqualTo(62.5);
  }
}
