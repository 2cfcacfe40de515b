package agro.programme.interval;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;

/**
 * An independent check: every rule as a walk over all days of the season with whole numbers,
 * without any of the records that the library uses.
 */
final class DayByDayChecker {

  private static final int DAYS = 800;

  private final RandomSeason season;
  private final int index;
  private final Map<LimitRule, Permission> verdicts = new EnumMap<>(LimitRule.class);

  private DayByDayChecker(RandomSeason season, int index) {
    this.season = season;
    this.index = index;
  }

  static Map<LimitRule, Permission> check(RandomSeason season, int index) {
    var checker = new DayByDayChecker(season, index);
    var use = season.uses.get(index);
    for (int product = 0; product < RandomSeason.PRODUCTS; product++) {
      if (use.millilitres().get(product) > 0) {
        checker.product(product);
      }
    }
    return checker.verdicts;
  }

  private void say(LimitRule rule, boolean broken) {
    verdicts.merge(rule, broken ? Permission.REFUSED : Permission.ALLOWED, Permission::and);
  }

  private void unknown(LimitRule rule) {
    verdicts.merge(rule, Permission.NOT_RECORDED, Permission::and);
  }

  private void product(int product) {
    int crop = RandomSeason.cropOn(season.uses.get(index).day());
    var label = season.labels[product][crop];
    numbers(product, label);
    spacing(product, label);
    amounts(product, label);
    harvest(label);
    for (int other = 0; other < RandomSeason.PRODUCTS; other++) {
      if (usedBesides(other) && other != product) {
        others(product, other, season.labels[other][crop]);
      }
    }
  }

  /** Whether another application to the same crop holds a product that this one does not. */
  private boolean usedBesides(int product) {
    var mine = season.uses.get(index);
    if (mine.millilitres().get(product) > 0) {
      return false;
    }
    for (int i = 0; i < season.uses.size(); i++) {
      var use = season.uses.get(i);
      boolean sameCrop = RandomSeason.cropOn(use.day()) == RandomSeason.cropOn(mine.day());
      if (i != index && sameCrop && use.millilitres().get(product) > 0) {
        return true;
      }
    }
    return false;
  }

  private boolean shares(int product, int other) {
    return (season.holds[product][0] && season.holds[other][0])
        || (season.holds[product][1] && season.holds[other][1]);
  }

  private boolean counts(RandomSeason.Use use, int label, boolean byActive, boolean byGroup) {
    for (int product = 0; product < RandomSeason.PRODUCTS; product++) {
      boolean same = byGroup || (byActive ? shares(product, label) : product == label);
      if (use.millilitres().get(product) > 0 && same) {
        return true;
      }
    }
    return false;
  }

  private void numbers(int product, RandomSeason.Label label) {
    boolean recorded = false;
    int[] limits = {label.crop, label.season, label.twelveMonths, label.group, label.active};
    for (int limit : limits) {
      recorded |= limit != RandomSeason.NOT_RECORDED;
    }
    if (!recorded) {
      unknown(LimitRule.NUMBER);
    }
    stated(label.crop, crop(product, false, false));
    stated(label.season, inYear(product));
    stated(label.twelveMonths, fullestYear(product));
    stated(label.group, crop(product, false, true));
    stated(label.active, crop(product, true, false));
  }

  private void stated(int most, int count) {
    if (most != RandomSeason.NOT_RECORDED) {
      say(LimitRule.NUMBER, most != RandomSeason.NONE && count > most);
    }
  }

  private int crop(int product, boolean byActive, boolean byGroup) {
    int mine = RandomSeason.cropOn(season.uses.get(index).day());
    int count = 0;
    for (int day = 0; day < DAYS; day++) {
      for (var use : season.uses) {
        boolean here = use.day() == day && RandomSeason.cropOn(day) == mine;
        count += here && counts(use, product, byActive, byGroup) ? 1 : 0;
      }
    }
    return count;
  }

  private static LocalDate date(int day) {
    return RandomSeason.FIRST.plusDays(day);
  }

  private int inYear(int product) {
    int year = date(season.uses.get(index).day()).getYear();
    int count = 0;
    for (var use : season.uses) {
      boolean here = date(use.day()).getYear() == year;
      count += here && counts(use, product, false, false) ? 1 : 0;
    }
    return count;
  }

  /** The fullest span of twelve months, ending on any day at all, that holds the application. */
  private int fullestYear(int product) {
    var mine = date(season.uses.get(index).day());
    int most = 0;
    for (int end = 0; end < DAYS; end++) {
      var last = date(end);
      var before = last.minusYears(1);
      if (mine.isAfter(before) && !mine.isAfter(last)) {
        int count = 0;
        for (var use : season.uses) {
          boolean here = date(use.day()).isAfter(before) && use.day() <= end;
          count += here && counts(use, product, false, false) ? 1 : 0;
        }
        most = Math.max(most, count);
      }
    }
    return most;
  }

  private void spacing(int product, RandomSeason.Label label) {
    if (label.interval == RandomSeason.NOT_RECORDED
        && label.intervalActive == RandomSeason.NOT_RECORDED) {
      unknown(LimitRule.INTERVAL);
    }
    spaced(product, label.interval, false);
    spaced(product, label.intervalActive, true);
  }

  private void spaced(int product, int least, boolean byActive) {
    if (least == RandomSeason.NOT_RECORDED) {
      return;
    }
    var mine = season.uses.get(index);
    boolean broken = false;
    for (int i = 0; i < season.uses.size(); i++) {
      var use = season.uses.get(i);
      boolean sameCrop = RandomSeason.cropOn(use.day()) == RandomSeason.cropOn(mine.day());
      boolean counted = i != index && sameCrop && counts(use, product, byActive, false);
      broken |= counted && Math.abs(use.day() - mine.day()) < least;
    }
    say(LimitRule.INTERVAL, broken);
  }

  private void amounts(int product, RandomSeason.Label label) {
    if (label.dose == RandomSeason.NOT_RECORDED && label.cap == RandomSeason.NOT_RECORDED) {
      unknown(LimitRule.AMOUNT);
    }
    if (label.dose != RandomSeason.NOT_RECORDED) {
      int planned = season.uses.get(index).millilitres().get(product);
      say(LimitRule.AMOUNT, label.dose != RandomSeason.NONE && planned > 250 * label.dose);
    }
    if (label.cap != RandomSeason.NOT_RECORDED) {
      capped(season.holds[product][0] ? 0 : 1, label.cap);
    }
  }

  /** Milligrams of an ingredient in the calendar year; 400 g/L are 400 mg/mL. */
  private void capped(int active, int gramsPerHectare) {
    int year = date(season.uses.get(index).day()).getYear();
    long milligrams = 0;
    for (var use : season.uses) {
      for (int product = 0; product < RandomSeason.PRODUCTS; product++) {
        if (date(use.day()).getYear() == year && season.holds[product][active]) {
          milligrams += 400L * use.millilitres().get(product);
        }
      }
    }
    say(LimitRule.AMOUNT, milligrams > 1000L * gramsPerHectare);
  }

  private void harvest(RandomSeason.Label label) {
    var mine = season.uses.get(index);
    if (label.preHarvest == RandomSeason.NOT_RECORDED) {
      unknown(LimitRule.PRE_HARVEST);
    } else if (label.preHarvest == RandomSeason.NONE) {
      say(LimitRule.PRE_HARVEST, false);
    } else {
      boolean any = false;
      boolean broken = false;
      for (int pick : season.picks) {
        boolean here = RandomSeason.cropOn(pick) == RandomSeason.cropOn(mine.day());
        any |= here;
        broken |= here && pick >= mine.day() && pick - mine.day() < label.preHarvest;
      }
      if (any) {
        say(LimitRule.PRE_HARVEST, broken);
      } else {
        unknown(LimitRule.PRE_HARVEST);
      }
    }
  }

  /** What the label of another product on the crop limits over several products. */
  private void others(int product, int other, RandomSeason.Label label) {
    if (label.group > 0) {
      say(LimitRule.NUMBER, crop(other, false, true) > label.group);
    }
    if (label.active > 0 && shares(product, other)) {
      say(LimitRule.NUMBER, crop(other, true, false) > label.active);
    }
    if (label.intervalActive > 0 && shares(product, other)) {
      spaced(other, label.intervalActive, true);
    }
    int active = season.holds[other][0] ? 0 : 1;
    if (label.cap > 0 && season.holds[product][active]) {
      capped(active, label.cap);
    }
  }
}
