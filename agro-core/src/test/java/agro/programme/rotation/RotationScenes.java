package agro.programme.rotation;

import agro.dose.ApplicationLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
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
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Invented fields, label records and sprays. */
final class RotationScenes {

  static final LocalDate START = LocalDate.of(2027, 4, 1);
  static final ZoneId ZONE = ZoneId.of("Europe/Ljubljana");
  static final String FIELD = "Mill Field";
  static final String CROP = "cabbage";

  private RotationScenes() {}

  static LabelActive active(String name, String group) {
    return new LabelActive(name, Optional.of(group), Optional.empty());
  }

  static LabelRecord record(String product, LabelLimits limits, LabelActive... actives) {
    return LabelRecord.of(product, CROP, limits, actives)
        .withDose(ProductPerArea.parse("0.5 L/ha"));
  }

  static LabelLimits limits(int preHarvestDays, int mostApplications, int intervalDays) {
    return LabelLimits.of("invented")
        .with(PreHarvestLimit.ofDays(preHarvestDays))
        .with(ApplicationLimit.maximum(mostApplications).per(LimitScope.CROP))
        .with(IntervalLimit.ofDays(intervalDays));
  }

  static Programme programme(LabelBook book, int cycleDays, LocalDate... picking) {
    var last = START.plusDays(cycleDays - 1);
    var planting = CropPlanting.of(FIELD, CROP, START).clearedOn(last);
    var picked = picking.length == 0 ? planting : planting.picked(PickingPlan.on(picking));
    return Programme.of(book, List.of(FarmField.of(FIELD, ZONE)), List.of(picked));
  }

  static Spraying spray(String name, LocalDate day, String product) {
    var start = day.atTime(7, 0).atZone(ZONE);
    var dose = ProductPerArea.parse("0.5 L/ha");
    return Spraying.of(name, start, start.plusHours(1), FIELD, SprayedProduct.of(product, dose));
  }

  /** One product for each group, with sprays on days after the start. */
  static Programme sprayed(List<String> groups, List<Integer> days, int cycle) {
    var records = new ArrayList<LabelRecord>();
    groups.stream()
        .distinct()
        .forEach(
            g -> records.add(record("Product " + g, limits(3, 9, 1), active("active " + g, g))));
    var sprays = new ArrayList<Spraying>();
    for (int i = 0; i < days.size(); i++) {
      sprays.add(spray("S" + i, START.plusDays(days.get(i)), "Product " + groups.get(i)));
    }
    return programme(new LabelBook(records), cycle).withSprayings(sprays);
  }
}
