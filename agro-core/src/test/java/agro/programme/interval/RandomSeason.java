package agro.programme.interval;

import agro.dose.ActivePerArea;
import agro.dose.ApplicationLimit;
import agro.dose.BufferLimit;
import agro.dose.DoseLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelLimits;
import agro.dose.LimitScope;
import agro.dose.PreHarvestLimit;
import agro.dose.ProductPerArea;
import agro.programme.ActiveCap;
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
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** A season drawn at random, as plain numbers and as a programme. */
final class RandomSeason {

  static final LocalDate FIRST = LocalDate.of(2027, 9, 1);
  static final int CLEARED = 168;
  static final int SECOND_CROP = 173;
  static final int PRODUCTS = 3;
  static final int NOT_RECORDED = -1;
  static final int NONE = -2;
  private static final ZoneId ZONE = ZoneId.of("Europe/Ljubljana");
  private static final String[] CROPS = {"leeks", "onions"};

  /** Limits of one product on one crop; days, numbers, grams per hectare, millilitres. */
  static final class Label {
    int crop;
    int season;
    int twelveMonths;
    int group;
    int active;
    int interval;
    int intervalActive;
    int preHarvest;
    int cap;
    int dose;
  }

  /** One application: day from {@link #FIRST} on and millilitres per product, 0 if not in it. */
  record Use(int day, List<Integer> millilitres) {}

  final boolean[][] holds = new boolean[PRODUCTS][2];
  final Label[][] labels = new Label[PRODUCTS][2];
  final List<Use> uses = new ArrayList<>();
  final List<Integer> picks = new ArrayList<>();

  RandomSeason(long seed) {
    var random = new Random(seed);
    for (int product = 0; product < PRODUCTS; product++) {
      holds[product][random.nextInt(2)] = true;
      holds[product][0] |= random.nextInt(4) == 0;
      for (int crop = 0; crop < 2; crop++) {
        labels[product][crop] = label(random);
      }
    }
    int number = 1 + random.nextInt(8);
    for (int i = 0; i < number; i++) {
      uses.add(use(random));
    }
    for (int i = random.nextInt(6); i > 0; i--) {
      int day = random.nextInt(365);
      picks.add(day > CLEARED && day < SECOND_CROP ? SECOND_CROP : day);
    }
  }

  private static Label label(Random random) {
    var label = new Label();
    label.crop = limit(random, 3);
    label.season = limit(random, 3);
    label.twelveMonths = limit(random, 4);
    label.group = limit(random, 3);
    label.active = limit(random, 3);
    label.interval = limit(random, 30);
    label.intervalActive = limit(random, 20);
    label.preHarvest = limit(random, 21);
    label.cap = random.nextInt(3) == 0 ? 100 * (1 + random.nextInt(12)) : NOT_RECORDED;
    label.dose = limit(random, 8);
    return label;
  }

  /** Two of four are not in the record at all, one of eight is denied by the label. */
  private static int limit(Random random, int most) {
    int kind = random.nextInt(8);
    return kind < 4 ? NOT_RECORDED : kind == 4 ? NONE : 1 + random.nextInt(most);
  }

  private static Use use(Random random) {
    var millilitres = new int[PRODUCTS];
    millilitres[random.nextInt(PRODUCTS)] = 250 * (1 + random.nextInt(6));
    if (random.nextInt(4) == 0) {
      millilitres[random.nextInt(PRODUCTS)] = 250 * (1 + random.nextInt(6));
    }
    return new Use(random.nextInt(365), Arrays.stream(millilitres).boxed().toList());
  }

  /** Days after the first crop is cleared count for the second, which is not planted yet. */
  static int cropOn(int day) {
    return day <= CLEARED ? 0 : 1;
  }

  SeasonRules rules() {
    var records = new ArrayList<LabelRecord>();
    for (int product = 0; product < PRODUCTS; product++) {
      for (int crop = 0; crop < 2; crop++) {
        records.add(record(product, crop));
      }
    }
    var second = FIRST.plusDays(SECOND_CROP);
    var plantings =
        List.of(
            CropPlanting.of("Long Acre", CROPS[0], FIRST)
                .clearedOn(FIRST.plusDays(CLEARED))
                .picked(picking(0)),
            CropPlanting.of("Long Acre", CROPS[1], second).picked(picking(1)));
    var sprayings = new ArrayList<Spraying>();
    for (int i = 0; i < uses.size(); i++) {
      sprayings.add(spraying(i));
    }
    return SeasonRules.of(
        Programme.of(new LabelBook(records), List.of(FarmField.of("Long Acre", ZONE)), plantings)
            .withSprayings(sprayings));
  }

  private PickingPlan picking(int crop) {
    return PickingPlan.on(
        picks.stream()
            .filter(day -> cropOn(day) == crop)
            .map(day -> FIRST.plusDays(day))
            .toArray(LocalDate[]::new));
  }

  private Spraying spraying(int index) {
    var use = uses.get(index);
    var end = ZonedDateTime.of(FIRST.plusDays(use.day()), java.time.LocalTime.of(9, index), ZONE);
    var products = new ArrayList<SprayedProduct>();
    for (int product = 0; product < PRODUCTS; product++) {
      if (use.millilitres().get(product) > 0) {
        var dose = ProductPerArea.parse(use.millilitres().get(product) + " mL/ha");
        products.add(SprayedProduct.of("P" + product, dose));
      }
    }
    return Spraying.of(
        "use " + index, end, end, "Long Acre", products.toArray(SprayedProduct[]::new));
  }

  private LabelRecord record(int product, int crop) {
    var label = labels[product][crop];
    var use = "P" + product + " on " + CROPS[crop];
    var limits = LabelLimits.of(use).with(BufferLimit.none("water"));
    limits = number(limits, label.crop, LimitScope.CROP);
    limits = number(limits, label.season, LimitScope.SEASON);
    limits = number(limits, label.twelveMonths, LimitScope.TWELVE_MONTHS);
    limits = number(limits, label.group, LimitScope.GROUP);
    limits = number(limits, label.active, LimitScope.ACTIVE_INGREDIENT);
    limits = interval(limits, label.interval, LimitScope.CROP);
    limits = interval(limits, label.intervalActive, LimitScope.ACTIVE_INGREDIENT);
    if (label.preHarvest != NOT_RECORDED) {
      limits =
          limits.with(
              label.preHarvest == NONE
                  ? PreHarvestLimit.none()
                  : PreHarvestLimit.ofDays(label.preHarvest));
    }
    if (label.dose != NOT_RECORDED) {
      limits =
          limits.with(
              label.dose == NONE
                  ? DoseLimit.none(agro.dose.DoseBound.MAXIMUM)
                  : DoseLimit.maximum(ProductPerArea.parse(250 * label.dose + " mL/ha")));
    }
    var actives = new ArrayList<LabelActive>();
    for (int active = 0; active < 2; active++) {
      if (holds[product][active]) {
        // Both ingredients are of one main group, in two sub-groups.
        actives.add(LabelActive.of("active " + active, active == 0 ? "4A" : "4C", "400 g/L"));
      }
    }
    var record =
        LabelRecord.of(
            use.substring(0, use.indexOf(' ')),
            CROPS[crop],
            limits,
            actives.toArray(LabelActive[]::new));
    var cap = DoseLimit.maximum(ActivePerArea.parse(Math.max(1, label.cap) + " g ai/ha"));
    int first = holds[product][0] ? 0 : 1;
    return label.cap == NOT_RECORDED
        ? record
        : record.withCaps(new ActiveCap("active " + first, cap.per(LimitScope.SEASON)));
  }

  private static LabelLimits number(LabelLimits limits, int value, LimitScope scope) {
    if (value == NOT_RECORDED) {
      return limits;
    }
    return limits.with(
        (value == NONE ? ApplicationLimit.none() : ApplicationLimit.maximum(value)).per(scope));
  }

  private static LabelLimits interval(LabelLimits limits, int value, LimitScope scope) {
    if (value == NOT_RECORDED) {
      return limits;
    }
    return limits.with(
        (value == NONE ? IntervalLimit.none() : IntervalLimit.ofDays(value)).per(scope));
  }

  @Override
  public String toString() {
    var text = new StringBuilder();
    for (var use : uses) {
      text.append(use.day()).append(use.millilitres()).append(' ');
    }
    return text + "picks " + picks;
  }
}
