package agro.course.topic.rotation;

import agro.course.CourseWords;
import agro.dose.DosePerArea;
import agro.dose.LabelLimits;
import agro.dose.ProductPerArea;
import agro.programme.CropPlanting;
import agro.programme.FarmField;
import agro.programme.LabelActive;
import agro.programme.LabelBook;
import agro.programme.LabelRecord;
import agro.programme.PickingPlan;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.programme.interval.LimitRule;
import agro.programme.interval.Permission;
import agro.programme.interval.RuleFinding;
import agro.programme.interval.SeasonRules;
import agro.units.QuantityRange;
import agro.units.VolumePerArea;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A field of a student's exercise as the adviser's own rules want it. */
final class LabelledField {

  static final String FIELD = "field";
  static final String CROP = "crop";

  /** The year of all exercises; days are printed without it. */
  static final int YEAR = 2027;

  private static final LocalTime EVENING = LocalTime.of(18, 0);

  private LabelledField() {}

  /** A day of the season. */
  static LocalDate day(int afterFirstOfApril) {
    return LocalDate.of(YEAR, 4, 1).plusDays(afterFirstOfApril);
  }

  static LabelRecord record(String product, LabelLimits limits, String... groups) {
    return LabelRecord.of(
        product,
        CROP,
        limits,
        Arrays.stream(groups)
            .map(group -> new LabelActive("active " + group, Optional.of(group), Optional.empty()))
            .toArray(LabelActive[]::new));
  }

  static Programme programme(List<LabelRecord> labels, LocalDate... harvests) {
    var planting = CropPlanting.of(FIELD, CROP, LocalDate.of(YEAR, 1, 1));
    return Programme.of(
        new LabelBook(labels),
        List.of(FarmField.of(FIELD, ZoneOffset.UTC)),
        List.of(harvests.length == 0 ? planting : planting.picked(PickingPlan.on(harvests))));
  }

  static Spraying spray(String name, LocalDate day, String product) {
    return spray(name, day, new SprayedProduct(product, Optional.empty(), ""));
  }

  static Spraying spray(String name, LocalDate day, String product, VolumePerArea dose) {
    return spray(name, day, SprayedProduct.of(product, exactly(dose)));
  }

  private static Spraying spray(String name, LocalDate day, SprayedProduct product) {
    var end = day.atTime(EVENING).atZone(ZoneOffset.UTC);
    return Spraying.of(name, end.minusHours(1), end, FIELD, product);
  }

  static DosePerArea exactly(VolumePerArea dose) {
    return ProductPerArea.liquid(QuantityRange.exactly(dose));
  }

  /** What some rules say to a product on a day. */
  static Permission asked(
      Programme programme, String product, LocalDate day, Set<LimitRule> rules) {
    var all = SeasonRules.of(programme);
    return all.check(all.planned(FIELD, product, day)).findings().stream()
        .filter(finding -> rules.contains(finding.rule()))
        .map(RuleFinding::permission)
        .reduce(Permission.ALLOWED, Permission::and);
  }

  /** A sum or difference of a day and days. */
  static String shifted(LocalDate day, long days, CourseWords words) {
    return words.day(day)
        + (days < 0 ? " − " : " + ")
        + words.say(Math.abs(days) == 1 ? "day" : "days", "number", Math.abs(days));
  }
}
