package agro.course.practical;

import agro.dose.ActiveStrength;
import agro.dose.ContentByMass;
import agro.dose.ContentByVolume;
import agro.units.LengthUnit;
import agro.units.QuantityStyle;
import agro.units.Volume;
import agro.units.VolumePerAreaUnit;
import agro.units.VolumeUnit;
import agro.working.TextLanguage;

/** The names of slips with the figures of a situation. */
final class SlipNames {

  private final SlipSituation at;
  private final PracticalWords words;

  SlipNames(SlipSituation at, TextLanguage language) {
    this.at = at;
    words = new PracticalWords(language, QuantityStyle.METRIC);
  }

  String of(CommonSlip kind) {
    return words.say("dose.slip." + kind.name(), values(kind));
  }

  private Object[] values(CommonSlip kind) {
    var ground = at.ground();
    return switch (kind) {
      case LAND_UNIT_FOR_OTHER ->
          values("meant", ground.meant().symbol(), "taken", ground.taken().symbol());
      case OTHER_FOR_LAND_UNIT ->
          values("meant", ground.taken().symbol(), "taken", ground.meant().symbol());
      case DRY_OUNCE_FOR_FLUID ->
          values("density", number(at.product().density().kilogramsPerLitre()));
      case POWDER_BY_VOLUME ->
          values("density", number(at.product().bulkDensity().kilogramsPerLitre()));
      case ACTIVE_TAKEN_AS_PRODUCT, PRODUCT_TAKEN_AS_ACTIVE ->
          values("strength", text(at.product().strength()));
      case OTHER_FORMULATION ->
          values("strength", text(at.product().strength()), "other", text(at.product().other()));
      case LITRE_DOSE_IN_PUMP, PUMP_DOSE_IN_LITRE -> values("pump", litres(at.tank().pump()));
      case FULL_DOSE_IN_LAST_LOAD ->
          values("load", litres(at.tank().lastLoad()), "tank", litres(at.tank().tank()));
      case TOPPED_UP_WITH_FULL_DOSE, TOPPED_UP_WITH_WATER ->
          values("rest", litres(at.tank().rest()), "tank", litres(at.tank().tank()));
      case LITRE_DOSE_AT_OTHER_VOLUME ->
          values(
              "label",
              words.in(ground.labelVolume(), VolumePerAreaUnit.LITRE_PER_HECTARE, 4),
              "sprayer",
              words.in(ground.sprayerVolume(), VolumePerAreaUnit.LITRE_PER_HECTARE, 4));
      case WALKED_FASTER, WALKED_SLOWER -> values("percent", percent(ground.speedShare()));
      case WORN_NOZZLE -> values("percent", percent(ground.wearShare()));
      case SWATHS_OVERLAP -> values("percent", percent(ground.overlapShare()));
      case FIELD_RATE_IN_BANDS ->
          values(
              "band",
              words.in(ground.bandWidth(), LengthUnit.CENTIMETRE, 4),
              "row",
              words.in(ground.rowSpacing(), LengthUnit.CENTIMETRE, 4));
      default -> values();
    };
  }

  private static Object[] values(Object... namesAndValues) {
    return namesAndValues;
  }

  private String number(double value) {
    return words.significant(value, 3);
  }

  private String text(ActiveStrength strength) {
    var content =
        strength instanceof ContentByVolume byVolume
            ? byVolume.content().toString()
            : ((ContentByMass) strength).content().toString();
    return words.decimals(content);
  }

  private String litres(Volume volume) {
    return words.in(volume, VolumeUnit.LITRE, 4);
  }

  private String percent(double share) {
    return words.significant(100 * share, 3) + "\u00a0%";
  }
}
