package agro.programme.interval;

import static agro.programme.interval.OsmereFarm.FIELD;
import static agro.programme.interval.OsmereFarm.JUNE;
import static agro.programme.interval.OsmereFarm.ZONE;
import static agro.programme.interval.OsmereFarm.label;
import static agro.programme.interval.OsmereFarm.programme;
import static agro.programme.interval.OsmereFarm.sprayed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.LabelEntry;
import agro.dose.LabelLimits;
import agro.programme.BeeRule;
import agro.programme.BloomPeriod;
import agro.programme.EnemyRelease;
import agro.programme.FarmField;
import agro.programme.LabelActive;
import agro.programme.LabelRecord;
import agro.programme.LabelRecord.Stewardship;
import agro.programme.PickingPlan;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.report.InputProblem;
import agro.working.Caution;
import agro.working.Sheet;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CalendarAndHelpersTest {

  private static final LocalTime EVENING = LocalTime.of(21, 30);

  private static LabelRecord withBees(LabelEntry<BeeRule> bees, int hours) {
    return label("Product A")
        .with(
            new Stewardship(
                LabelEntry.stated(Duration.ofHours(6)),
                bees,
                LabelEntry.stated(Duration.ofHours(hours))));
  }

  private static Spraying at(LocalTime time) {
    var start = ZonedDateTime.of(JUNE, time, ZONE);
    return Spraying.of(
        "asked",
        start,
        start.plusMinutes(30),
        FIELD,
        new SprayedProduct("Product A", Optional.empty(), ""));
  }

  private static Permission bees(SeasonRules rules, LocalTime time) {
    return rules.check(at(time)).findings().stream()
        .filter(each -> each.rule() == LimitRule.BEES)
        .map(RuleFinding::permission)
        .reduce(Permission.ALLOWED, Permission::and);
  }

  @Test
  void everyDayOfTheCalendarSaysWhatTheRulesSay() {
    var picking = PickingPlan.every(JUNE.plusDays(20), JUNE.plusDays(60), 4);
    var empty = LabelRecord.of("<script>", "leeks", LabelLimits.of("<script> on leeks"));
    var rules =
        SeasonRules.of(
            programme(picking, label("Product A"), empty).with(sprayed(JUNE, "Product A")));
    var calendar =
        UseCalendar.of(rules, FIELD, List.of("Product A", "<script>"), JUNE, JUNE.plusDays(40));
    var days = calendar.row("Product A");
    assertThat(days.days(Permission.ALLOWED))
        .containsExactlyElementsOf(JUNE.plusDays(10).datesUntil(JUNE.plusDays(14)).toList());
    assertThat(days.days().get(5).mark()).isEqualTo("I");
    assertThat(days.days().get(15).mark()).isEqualTo("H");
    assertThat(calendar.row("<script>").days(Permission.NOT_RECORDED)).hasSize(41);
    assertThat(calendar.row("<script>").days().get(0).mark()).isEqualTo("?");
    assertThat(calendar.row(UseCalendar.PICKING).days(Permission.REFUSED))
        .containsExactlyElementsOf(JUNE.datesUntil(JUNE.plusDays(7)).toList());
    assertThat(calendar.pickingDays()).hasSize(6);
    assertThat(calendar.pickingInDoubt()).isEmpty();
    assertThat(calendar.presentation().toHtml()).doesNotContain("<script>");
    assertThatThrownBy(() -> calendar.row("Product Q")).isInstanceOf(InputProblem.class);
  }

  @Test
  void thePrintedCalendarIsBlackAndWhiteAndStaysOnItsPages() {
    var labels = new LabelRecord[32];
    var names = new java.util.ArrayList<String>();
    for (int i = 0; i < labels.length; i++) {
      labels[i] = label("Product with a rather long name " + i);
      names.add(labels[i].product());
    }
    var rules = SeasonRules.of(programme(labels).with(sprayed(JUNE, labels[0].product())));
    var pages = UseCalendar.of(rules, FIELD, names, JUNE.plusDays(20), JUNE.plusDays(40)).sheets();
    assertThat(pages).hasSize(3);
    for (var page : pages) {
      assertThat(page.toSvg()).contains("leave");
      for (var mark : page.marks()) {
        if (mark instanceof Sheet.Words words) {
          assertThat(words.at().y()).isBetween(5.0, 292.0);
          double width = Sheet.width(words.text(), words.type());
          double right =
              words.at().x() + (words.type().align() == Sheet.Align.START ? width : width / 2);
          assertThat(right).isLessThan(207);
        }
      }
      for (var caution : Caution.all()) {
        assertThat(page.toSvg()).contains(caution.line().substring(0, 8));
      }
    }
  }

  @Test
  void bloomAndFlightDecideForBees() {
    var bloom = List.of(new BloomPeriod(FIELD, "white clover", JUNE, Optional.of(JUNE)));
    var inBloom = programme(withBees(LabelEntry.stated(BeeRule.NOT_IN_BLOOM), 0));
    assertThat(bees(SeasonRules.of(inBloom), EVENING)).isEqualTo(Permission.NOT_RECORDED);
    assertThat(bees(SeasonRules.of(inBloom.withBlooms(bloom)), EVENING))
        .isEqualTo(Permission.REFUSED);
    var later = List.of(new BloomPeriod(FIELD, "white clover", JUNE.plusDays(1), Optional.empty()));
    assertThat(bees(SeasonRules.of(inBloom.withBlooms(later)), EVENING))
        .isEqualTo(Permission.ALLOWED);

    var flight =
        programme(withBees(LabelEntry.stated(BeeRule.NOT_WHILE_BEES_FLY), 0)).withBlooms(bloom);
    assertThat(bees(SeasonRules.of(flight), EVENING)).isEqualTo(Permission.NOT_RECORDED);
    // At 46.4° N, 14.5° E the sun sets shortly before 21 h summer time on the first of June.
    var bySun = SeasonRules.of(flight).with(BeeFlight.fromSunriseToSunset());
    assertThat(bees(bySun, LocalTime.NOON)).isEqualTo(Permission.REFUSED);
    assertThat(bees(bySun, LocalTime.of(20, 20))).isEqualTo(Permission.REFUSED);
    assertThat(bees(bySun, EVENING)).isEqualTo(Permission.ALLOWED);
    var clock =
        SeasonRules.of(flight).with(BeeFlight.between(LocalTime.of(8, 0), LocalTime.of(18, 0)));
    assertThat(bees(clock, LocalTime.of(18, 0))).isEqualTo(Permission.ALLOWED);
    assertThat(bees(clock, LocalTime.of(7, 30))).isEqualTo(Permission.ALLOWED);
    assertThat(bees(clock, LocalTime.of(7, 31))).isEqualTo(Permission.REFUSED);
    var gap =
        programme(withBees(LabelEntry.stated(BeeRule.NOT_WHILE_BEES_FLY), 12)).withBlooms(bloom);
    var withGap =
        SeasonRules.of(gap).with(BeeFlight.between(LocalTime.of(8, 0), LocalTime.of(18, 0)));
    assertThat(bees(withGap, LocalTime.of(19, 0))).isEqualTo(Permission.ALLOWED);
    assertThat(bees(withGap, LocalTime.of(20, 0))).isEqualTo(Permission.REFUSED);
  }

  @Test
  void coldBeesDoNotFly() {
    var field = FarmField.of(FIELD, ZONE).at(46.4, 14.5);
    var noon = JUNE.atTime(12, 0).atZone(ZONE);
    var celsius = new java.util.TreeMap<Instant, Double>();
    for (int hour = 0; hour < 24; hour++) {
      celsius.put(JUNE.atTime(hour, 0).atZone(ZONE).toInstant(), hour < 10 ? 8.0 : 18.0);
    }
    var hours = new BeeFlight.ByTemperature(12, celsius).on(field, JUNE).orElseThrow();
    assertThat(hours.from()).isBetween(noon.minusHours(2), noon.minusMinutes(104));
    var sun = BeeFlight.fromSunriseToSunset().on(field, JUNE).orElseThrow();
    assertThat(hours.to()).isEqualTo(sun.to());
    var cold = new BeeFlight.ByTemperature(30, celsius).on(field, JUNE).orElseThrow();
    assertThat(cold.from().isBefore(cold.to())).isFalse();
    assertThat(new BeeFlight.ByTemperature(12, Map.of()).on(field, JUNE)).contains(sun);
  }

  @Test
  void releasesHaveWaitingDaysOnBothSides() {
    var table =
        SideEffectTable.parse(
            "side effects",
            """
            product,organism,class,days_before_release,days_after_release,source
            Product A,lacewing,3,14,5,invented for demonstration
            Product B,lacewing,1,none,none,invented for demonstration
            Product C,lacewing,,,,invented for demonstration
            """);
    var farm =
        programme(label("Product A"), label("Product B"), label("Product C"))
            .withReleases(List.of(new EnemyRelease("r", "lacewing", FIELD, JUNE, "")));
    var rules = SeasonRules.of(farm).with(table);
    assertThat(helper(rules, JUNE.minusDays(14), "Product A")).isEqualTo(Permission.ALLOWED);
    assertThat(helper(rules, JUNE.minusDays(13), "Product A")).isEqualTo(Permission.REFUSED);
    assertThat(helper(rules, JUNE, "Product A")).isEqualTo(Permission.REFUSED);
    assertThat(helper(rules, JUNE.plusDays(4), "Product A")).isEqualTo(Permission.REFUSED);
    assertThat(helper(rules, JUNE.plusDays(5), "Product A")).isEqualTo(Permission.ALLOWED);
    assertThat(helper(rules, JUNE, "Product B")).isEqualTo(Permission.ALLOWED);
    assertThat(helper(rules, JUNE, "Product C")).isEqualTo(Permission.NOT_RECORDED);
    assertThat(helper(SeasonRules.of(farm), JUNE, "Product B")).isEqualTo(Permission.NOT_RECORDED);
    var sprayedFarm = rules.with(farm.with(sprayed(JUNE, "Product A")));
    var questions = SeasonQuestions.of(sprayedFarm);
    assertThat(questions.mayRelease(FIELD, "lacewing", JUNE.plusDays(13)).reply())
        .isEqualTo(Reply.NO);
    assertThat(questions.mayRelease(FIELD, "lacewing", JUNE.plusDays(14)).reply())
        .isEqualTo(Reply.YES);
    assertThat(questions.mayRelease(FIELD, "ladybird", JUNE.plusDays(14)).reply())
        .isEqualTo(Reply.NOT_RECORDED);
  }

  private static Permission helper(SeasonRules rules, LocalDate day, String product) {
    return rules.check(sprayed(day, product)).findings().stream()
        .filter(each -> each.rule() == LimitRule.HELPERS)
        .map(RuleFinding::permission)
        .reduce(Permission.ALLOWED, Permission::and);
  }

  @Test
  void rainTwoHoursAfterIsHeldAgainstTheLabel() {
    var none =
        label("Product B")
            .with(
                new Stewardship(
                    LabelEntry.none(), LabelEntry.notRecorded(), LabelEntry.notRecorded()));
    var farm =
        programme(withBees(LabelEntry.none(), 0), none, label("Product C"))
            .with(sprayed(JUNE, "Product A"))
            .with(sprayed(JUNE.plusDays(1), "Product B"))
            .with(sprayed(JUNE.plusDays(2), "Product B", "Product C"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));
    assertThat(rain(questions, farm, 0, 120)).isEqualTo(Reply.NO);
    assertThat(rain(questions, farm, 0, 360)).isEqualTo(Reply.YES);
    assertThat(rain(questions, farm, 1, 1)).isEqualTo(Reply.YES);
    assertThat(rain(questions, farm, 1, -1)).isEqualTo(Reply.NO);
    assertThat(rain(questions, farm, 2, 600)).isEqualTo(Reply.NOT_RECORDED);
  }

  private static Reply rain(SeasonQuestions questions, Programme farm, int index, int minutes) {
    var spraying = farm.sprayings().get(index);
    return questions.rainFreeReached(spraying.name(), spraying.end().plusMinutes(minutes)).reply();
  }

  @Test
  void theSameGroupIsSeenThroughAnyProduct() {
    var farm =
        programme(
                label("A", LabelActive.of("one", "4A", "200 g/L")),
                label("B", LabelActive.of("one", "4A", "100 g/L")),
                label("C", LabelActive.of("two", "4C", "100 g/L")),
                label("D", LabelActive.of("three", "28", "100 g/L")),
                label("E"))
            .with(sprayed(JUNE, "A"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));
    var day = JUNE.plusDays(20);
    assertThat(questions.sameGroupAsLast(FIELD, "B", day).line())
        .isEqualTo("Yes. Both are of group 4A.");
    assertThat(questions.sameGroupAsLast(FIELD, "C", day).line()).contains("same target site");
    assertThat(questions.sameGroupAsLast(FIELD, "C", day).reply()).isEqualTo(Reply.YES);
    assertThat(questions.sameGroupAsLast(FIELD, "D", day).reply()).isEqualTo(Reply.NO);
    assertThat(questions.sameGroupAsLast(FIELD, "E", day).reply()).isEqualTo(Reply.NOT_RECORDED);
    assertThat(questions.sameGroupAsLast(FIELD, "B", JUNE.minusDays(1)).reply())
        .isEqualTo(Reply.NO);
    assertThat(questions.sameGroupAsLast(FIELD, "B", day).presentation().toHtml())
        .contains(Caution.LABEL_FIRST.line());
  }
}
