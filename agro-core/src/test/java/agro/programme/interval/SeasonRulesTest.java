package agro.programme.interval;

import static agro.programme.interval.OsmereFarm.FIELD;
import static agro.programme.interval.OsmereFarm.JUNE;
import static agro.programme.interval.OsmereFarm.ZONE;
import static agro.programme.interval.OsmereFarm.complete;
import static agro.programme.interval.OsmereFarm.label;
import static agro.programme.interval.OsmereFarm.programme;
import static agro.programme.interval.OsmereFarm.sprayed;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.ReferenceTable;
import agro.dose.ApplicationLimit;
import agro.dose.BufferLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
import agro.dose.ReEntryLimit;
import agro.programme.ActiveCap;
import agro.programme.LabelActive;
import agro.programme.LabelRecord;
import agro.programme.LocalRule;
import agro.programme.PickingPlan;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.report.InputProblem;
import agro.units.Length;
import agro.working.Caution;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SeasonRulesTest {

  private static List<NamedCsvRecord> preHarvest() {
    return ReferenceTable.read(SeasonRulesTest.class, "pre-harvest.csv");
  }

  private static List<NamedCsvRecord> reEntry() {
    return ReferenceTable.read(SeasonRulesTest.class, "re-entry.csv");
  }

  @ParameterizedTest
  @MethodSource("preHarvest")
  void harvestIsCountedOnDates(NamedCsvRecord row) {
    var applied = LocalDate.parse(row.getField("applied"));
    var earliest = LocalDate.parse(row.getField("earliest"));
    var limits =
        LabelLimits.of("Product A on leeks")
            .with(PreHarvestLimit.ofDays(ReferenceTable.whole(row, "days")))
            .with(ReEntryLimit.none());
    var base = programme(PickingPlan.notStated(), LabelRecord.of("Product A", "leeks", limits));
    var planting = agro.programme.CropPlanting.of(FIELD, "leeks", applied.minusDays(30));
    var farm =
        agro.programme.Programme.of(base.labels(), base.fields(), List.of(planting))
            .with(sprayed(applied, "Product A"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));

    assertThat(questions.mayPick(FIELD, earliest).reply()).isEqualTo(Reply.YES);
    if (earliest.isAfter(applied)) {
      var before = questions.mayPick(FIELD, earliest.minusDays(1));
      assertThat(before.reply()).isEqualTo(Reply.NO);
      assertThat(before.day()).contains(earliest);
      assertThat(before.line()).contains("Product A on leeks").contains(earliest.toString());
    }
  }

  @ParameterizedTest
  @MethodSource("reEntry")
  void entryIsCountedOnInstantsFromTheEnd(NamedCsvRecord row) {
    var zone = ZoneId.of(row.getField("zone"));
    var end = OffsetDateTime.parse(row.getField("end")).atZoneSameInstant(zone);
    var entry = OffsetDateTime.parse(row.getField("entry"));
    var intervals = row.getField("intervals").split(" \\+ ", -1);
    var text = new StringBuilder("product,crop,re_entry\n");
    var parts = new SprayedProduct[intervals.length];
    for (int i = 0; i < intervals.length; i++) {
      text.append("P").append(i).append(",leeks,").append(intervals[i]).append('\n');
      parts[i] = new SprayedProduct("P" + i, java.util.Optional.empty(), "");
    }
    var farm =
        agro.programme.Programme.of(
                agro.programme.LabelBook.parse("labels", text.toString()),
                List.of(agro.programme.FarmField.of(FIELD, zone)),
                List.of(
                    agro.programme.CropPlanting.of(FIELD, "leeks", end.toLocalDate().minusDays(9))))
            .with(Spraying.of("one", end.minusHours(9), end, FIELD, parts));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));

    var when = questions.whenEnter("one");
    assertThat(when.reply()).isEqualTo(Reply.YES);
    assertThat(when.moment().orElseThrow().toOffsetDateTime()).isEqualTo(entry);
    var at = entry.atZoneSameInstant(zone);
    assertThat(questions.mayEnter(FIELD, at).reply()).isEqualTo(Reply.YES);
    assertThat(questions.mayEnter(FIELD, at.minusSeconds(1)).reply()).isEqualTo(Reply.NO);
    assertThat(questions.mayEnter(FIELD, end.minusHours(1)).reply()).isEqualTo(Reply.NO);
    assertThat(questions.mayEnter(FIELD, end.minusHours(10)).reply()).isEqualTo(Reply.YES);
  }

  @Test
  void theFourthApplicationTooSoonIsRefusedTwiceOver() {
    var farm =
        programme(label("Product A"))
            .withSprayings(
                List.of(
                    sprayed(JUNE, "Product A"),
                    sprayed(JUNE.plusDays(10), "Product A"),
                    sprayed(JUNE.plusDays(20), "Product A")));
    var rules = SeasonRules.of(farm);
    assertThat(rules.checkAll())
        .allSatisfy(each -> assertThat(each.permission()).isEqualTo(Permission.ALLOWED));

    var verdict = rules.check(sprayed(LocalDate.of(2027, 6, 22), "Product A"));
    assertThat(verdict.of(Permission.REFUSED))
        .extracting(RuleFinding::rule)
        .containsExactlyInAnyOrder(LimitRule.NUMBER, LimitRule.INTERVAL);
    assertThatThrownBy(verdict::require)
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("Product A on leeks")
        .hasMessageContaining("number of applications")
        .hasMessageContaining("2027-06-21");
    assertThat(verdict.presentation().toText()).contains(Caution.LABEL_FIRST.line());
  }

  @Test
  void aSpacingIsKeptTowardsALaterApplicationToo() {
    var farm = programme(label("Product A")).with(sprayed(JUNE.plusDays(20), "Product A"));
    var rules = SeasonRules.of(farm);
    assertThat(rules.check(sprayed(JUNE.plusDays(11), "Product A")).permission())
        .isEqualTo(Permission.REFUSED);
    assertThat(rules.check(sprayed(JUNE.plusDays(10), "Product A")).permission())
        .isEqualTo(Permission.ALLOWED);
    var next = SeasonQuestions.of(rules).nextAllowed(FIELD, "Product A", JUNE.plusDays(12));
    assertThat(next.day()).contains(JUNE.plusDays(30));
  }

  @Test
  void aCapOfActiveIngredientCountsAcrossProducts() {
    var strong = LabelActive.of("active X", "28", "1000 g/L");
    var weak = LabelActive.of("active X", "28", "500 g/L");
    var first =
        label("Product A", strong)
            .withCaps(new ActiveCap("active X", OsmereFarm.seasonCap("1.5 kg ai/ha")));
    var farm =
        programme(first, label("Product B", weak))
            .with(sprayed(JUNE, "Product A"))
            .with(sprayed(JUNE.plusDays(10), "Product A"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));

    var left = questions.howMuchIsLeft(FIELD, "Product A", JUNE.plusDays(20));
    assertThat(left.lines())
        .anySatisfy(line -> assertThat(line.left()).isEqualTo("0.3 kg ai/ha of active X"));
    assertThat(
            left.lines().stream()
                .filter(line -> line.limit().contains("season"))
                .findFirst()
                .orElseThrow()
                .number())
        .isEqualTo(0.3);
    assertThat(left.applications()).hasValue(1);
    assertThat(left.presentation().toText()).contains("0.3 kg ai/ha");
    var third = questions.mayApply(FIELD, "Product A", JUNE.plusDays(20));
    assertThat(third.reply()).isEqualTo(Reply.NO);
    assertThat(third.line()).contains("0.3 kg ai/ha is left");
    // 0.6 L/ha of the weaker product are 0.3 kg ai/ha: just what the label of the other one leaves.
    assertThat(questions.mayApply(FIELD, "Product B", JUNE.plusDays(20)).reply())
        .isEqualTo(Reply.YES);
    var both = SeasonRules.of(farm.with(sprayed(JUNE.plusDays(19), "Product B")));
    assertThat(both.check(sprayed(JUNE.plusDays(30), "Product B")).of(Permission.REFUSED))
        .extracting(RuleFinding::record)
        .containsExactly("Product A on leeks");
  }

  @Test
  void missingIsNeitherNoneNorAllowed() {
    var empty = LabelRecord.of("Product A", "leeks", LabelLimits.of("Product A on leeks"));
    var none =
        LabelRecord.of(
            "Product B",
            "leeks",
            LabelLimits.of("Product B on leeks")
                .with(ApplicationLimit.none())
                .with(IntervalLimit.none())
                .with(agro.dose.DoseLimit.none(agro.dose.DoseBound.MAXIMUM))
                .with(PreHarvestLimit.none())
                .with(ReEntryLimit.none())
                .with(BufferLimit.none("water")));
    var rules = SeasonRules.of(programme(empty, none));
    var missing = rules.check(sprayed(JUNE, "Product A"));
    assertThat(missing.permission()).isEqualTo(Permission.NOT_RECORDED);
    assertThat(missing.of(Permission.NOT_RECORDED))
        .extracting(RuleFinding::rule)
        .contains(
            LimitRule.NUMBER,
            LimitRule.INTERVAL,
            LimitRule.AMOUNT,
            LimitRule.PRE_HARVEST,
            LimitRule.BUFFER);
    assertThatThrownBy(missing::require).hasMessageContaining("not recorded");
    assertThat(rules.check(sprayed(JUNE, "Product B")).permission()).isEqualTo(Permission.ALLOWED);
    assertThat(rules.check(sprayed(JUNE, "Product Z")).findings().get(0).rule())
        .isEqualTo(LimitRule.LABELLED_USE);
    var farm = rules.programme().with(sprayed(JUNE, "Product A", "Product B"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));
    assertThat(questions.mayPick(FIELD, JUNE.plusDays(60)).reply()).isEqualTo(Reply.NOT_RECORDED);
    assertThat(questions.whenEnter("Product A+Product B 2027-06-01").reply())
        .isEqualTo(Reply.NOT_RECORDED);
  }

  @Test
  void theLongerOfLabelAndLocalRuleHolds() {
    var local =
        LocalRule.everywhere(
            "district order",
            LabelLimits.of("district order")
                .with(PreHarvestLimit.ofDays(14))
                .with(ReEntryLimit.ofHours(4))
                .with(IntervalLimit.ofDays(3)));
    var farm =
        programme(label("Product A"))
            .withLocalRules(List.of(local))
            .with(sprayed(JUNE, "Product A"));
    var questions = SeasonQuestions.of(SeasonRules.of(farm));
    var pick = questions.mayPick(FIELD, JUNE.plusDays(13));
    assertThat(pick.day()).contains(JUNE.plusDays(14));
    assertThat(pick.line()).contains("district order");
    assertThat(questions.whenEnter("Product A 2027-06-01").moment().orElseThrow())
        .isEqualTo(ZonedDateTime.of(2027, 6, 2, 6, 30, 0, 0, ZONE));
    assertThat(questions.nextAllowed(FIELD, "Product A", JUNE).day()).contains(JUNE.plusDays(10));
  }

  @Test
  void allPickingDaysOfACropPickedOftenCount() {
    var every = PickingPlan.every(JUNE, JUNE.plusDays(30), 3);
    var rules = SeasonRules.of(programme(every, label("Product A")));
    var during = rules.check(sprayed(JUNE.plusDays(4), "Product A"));
    assertThat(during.of(Permission.REFUSED).get(0).days())
        .containsExactly(JUNE.plusDays(6), JUNE.plusDays(9));
    assertThat(rules.check(sprayed(JUNE.plusDays(31), "Product A")).permission())
        .isEqualTo(Permission.ALLOWED);
    assertThat(rules.check(sprayed(JUNE.minusDays(7), "Product A")).permission())
        .isEqualTo(Permission.ALLOWED);
    assertThat(rules.check(sprayed(JUNE.minusDays(6), "Product A")).permission())
        .isEqualTo(Permission.REFUSED);
    var oneDay =
        LabelRecord.of(
            "Product B",
            "leeks",
            new LabelLimits(
                "Product B on leeks",
                complete("Product B").limits().stream()
                    .map(l -> l instanceof PreHarvestLimit ? PreHarvestLimit.ofDays(1) : l)
                    .toList()));
    var daily = PickingPlan.every(JUNE, JUNE.plusDays(30), 1);
    assertThat(
            SeasonRules.of(programme(daily, oneDay)).check(sprayed(JUNE, "Product B")).permission())
        .isEqualTo(Permission.REFUSED);
    var morning = daily.doneBy(LocalTime.of(11, 0));
    assertThat(
            SeasonRules.of(programme(morning, oneDay))
                .check(sprayed(JUNE, "Product B"))
                .permission())
        .isEqualTo(Permission.ALLOWED);
  }

  @Test
  void growthStagesAreComparedWhereTheyCanBe() {
    var limits =
        new LabelLimits(
            "Product A on leeks",
            complete("Product A").limits().stream()
                .map(l -> l instanceof PreHarvestLimit ? PreHarvestLimit.untilStage("BBCH 45") : l)
                .toList());
    var rules = SeasonRules.of(programme(LabelRecord.of("Product A", "leeks", limits)));
    var spraying = sprayed(JUNE, "Product A");
    assertThat(rules.check(spraying.atStage("BBCH 45")).permission()).isEqualTo(Permission.ALLOWED);
    assertThat(rules.check(spraying.atStage("bbch 47")).permission()).isEqualTo(Permission.REFUSED);
    assertThat(rules.check(spraying.atStage("shaft as thick as a thumb")).permission())
        .isEqualTo(Permission.NOT_RECORDED);
    assertThat(rules.check(spraying).permission()).isEqualTo(Permission.NOT_RECORDED);
  }

  @Test
  void scopesCountWhatTheySay() {
    var limits =
        LabelLimits.of("Product A on leeks")
            .with(ApplicationLimit.maximum(1).per(LimitScope.TWELVE_MONTHS));
    var farm =
        programme(LabelRecord.of("Product A", "leeks", limits))
            .with(sprayed(LocalDate.of(2028, 2, 29), "Product A"));
    var rules = SeasonRules.of(farm);
    assertThat(number(rules, LocalDate.of(2029, 2, 27))).isEqualTo(Permission.REFUSED);
    assertThat(number(rules, LocalDate.of(2029, 2, 28))).isEqualTo(Permission.REFUSED);
    assertThat(number(rules, LocalDate.of(2029, 3, 1))).isEqualTo(Permission.ALLOWED);
    assertThat(number(rules, LocalDate.of(2027, 6, 1))).isEqualTo(Permission.REFUSED);
    assertThat(number(rules, LocalDate.of(2027, 2, 27))).isEqualTo(Permission.ALLOWED);
    var season =
        LabelLimits.of("Product A on leeks")
            .with(ApplicationLimit.maximum(1).per(LimitScope.SEASON));
    var bySeason =
        programme(LabelRecord.of("Product A", "leeks", season))
            .with(sprayed(LocalDate.of(2027, 12, 30), "Product A"));
    assertThat(number(SeasonRules.of(bySeason), LocalDate.of(2028, 1, 2)))
        .isEqualTo(Permission.ALLOWED);
    var fromMarch = SeasonRules.of(bySeason.seasonFrom(java.time.MonthDay.of(3, 1)));
    assertThat(number(fromMarch, LocalDate.of(2028, 2, 29))).isEqualTo(Permission.REFUSED);
    assertThat(number(fromMarch, LocalDate.of(2028, 3, 1))).isEqualTo(Permission.ALLOWED);
  }

  private static Permission number(SeasonRules rules, LocalDate day) {
    return rules.check(sprayed(day, "Product A")).findings().stream()
        .filter(each -> each.rule() == LimitRule.NUMBER)
        .findFirst()
        .orElseThrow()
        .permission();
  }

  @Test
  void buffersAreDataOfTheUser() {
    var limits =
        complete("Product A")
            .with(BufferLimit.of("people", Length.parse("25 ft")))
            .with(BufferLimit.of("water", Length.parse("30 m")).when("fine droplets"));
    var rules = SeasonRules.of(programme(LabelRecord.of("Product A", "leeks", limits)));
    var open = rules.check(sprayed(JUNE, "Product A"));
    assertThat(open.permission()).isEqualTo(Permission.NOT_RECORDED);
    var fine = rules.withCircumstance("fine droplets", true).check(sprayed(JUNE, "Product A"));
    assertThat(fine.of(Permission.REFUSED).get(0).sentence()).contains("10 m");
    var coarse = rules.withCircumstance("fine droplets", false).check(sprayed(JUNE, "Product A"));
    assertThat(coarse.of(Permission.NOT_RECORDED))
        .extracting(RuleFinding::limit)
        .containsExactly("buffer to people: 7.62 m");
  }
}
