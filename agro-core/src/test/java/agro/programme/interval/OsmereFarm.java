package agro.programme.interval;

import agro.dose.ApplicationLimit;
import agro.dose.BufferLimit;
import agro.dose.DoseBound;
import agro.dose.DoseLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
import agro.dose.ProductPerArea;
import agro.dose.ReEntryLimit;
import agro.programme.CropPlanting;
import agro.programme.FarmField;
import agro.programme.LabelActive;
import agro.programme.LabelBook;
import agro.programme.LabelRecord;
import agro.programme.PickingPlan;
import agro.programme.Programme;
import agro.programme.SprayedProduct;
import agro.programme.Spraying;
import agro.units.Length;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;

/** An invented farm with leeks on one field. */
final class OsmereFarm {

  static final ZoneId ZONE = ZoneId.of("Europe/Ljubljana");
  static final String FIELD = "Long Acre";
  static final LocalDate JUNE = LocalDate.of(2027, 6, 1);

  private OsmereFarm() {}

  static FarmField field() {
    return FarmField.of(FIELD, ZONE)
        .at(46.4, 14.5)
        .withDistances(Map.of("water", Length.parse("20 m")));
  }

  /** Every limit that a calendar asks for, each of them recorded. */
  static LabelLimits complete(String product) {
    return LabelLimits.of(product + " on leeks")
        .with(ApplicationLimit.maximum(3))
        .with(IntervalLimit.ofDays(10))
        .with(DoseLimit.none(DoseBound.MAXIMUM))
        .with(PreHarvestLimit.ofDays(7))
        .with(ReEntryLimit.ofHours(12))
        .with(BufferLimit.of("water", Length.parse("5 m")));
  }

  static LabelRecord label(String product, LabelActive... actives) {
    return LabelRecord.of(product, "leeks", complete(product), actives)
        .withDose(ProductPerArea.parse("0.6 L/ha"));
  }

  static Programme programme(PickingPlan picking, LabelRecord... labels) {
    return Programme.of(
        LabelBook.of(labels),
        List.of(field()),
        List.of(CropPlanting.of(FIELD, "leeks", LocalDate.of(2027, 4, 1)).picked(picking)));
  }

  static Programme programme(LabelRecord... labels) {
    return programme(PickingPlan.on(LocalDate.of(2027, 9, 1)), labels);
  }

  static Spraying sprayed(LocalDate day, String... products) {
    var dose = ProductPerArea.parse("0.6 L/ha");
    var end = ZonedDateTime.of(day, java.time.LocalTime.of(18, 30), ZONE);
    var parts =
        List.of(products).stream()
            .map(product -> SprayedProduct.of(product, dose))
            .toArray(SprayedProduct[]::new);
    return Spraying.of(
        String.join("+", products) + " " + day, end.minusHours(1), end, FIELD, parts);
  }

  static DoseLimit seasonCap(String dose) {
    return DoseLimit.maximum(agro.dose.ActivePerArea.parse(dose)).per(LimitScope.SEASON);
  }
}
