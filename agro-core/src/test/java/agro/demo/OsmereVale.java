package agro.demo;

import agro.generation.TrapSeason;
import agro.season.PestSeasons;
import agro.weather.DailyTemperatures;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Osmere Vale, an upland valley that does not exist. One seed gives its weather, insects and traps;
 * {@link #truth} tells what lies behind the counts.
 */
public final class OsmereVale {
  /** The seed of the committed files. */
  public static final long SEED = 8;

  /** The day on which the season under way is looked at. */
  public static final LocalDate ISSUE_DATE = LocalDate.of(2026, 6, 16);

  /** First season of trapping. */
  public static final int FIRST_SEASON = 2022;

  /** The season under way at the day of issue. */
  public static final int LAST_SEASON = 2026;

  /** Traps for leek moth at Upper Croft. */
  public static final List<String> LEEK_MOTH_TRAPS = List.of("UC1", "UC2");

  /** Traps for diamondback moth at Mill Field. */
  public static final List<String> DIAMONDBACK_MOTH_TRAPS = List.of("MF1", "MF2");

  private final long seed;
  private final ValeWeather vale;
  private final HourlyLogger logger;
  private final Map<Site, SiteWeather> air = new EnumMap<>(Site.class);

  private OsmereVale(long seed) {
    this.seed = seed;
    vale = new ValeWeather(seed);
    logger = new HourlyLogger(seed);
  }

  /** The vale of a seed. */
  public static OsmereVale of(long seed) {
    return new OsmereVale(seed);
  }

  /** First day of a season's degree-days. */
  public static LocalDate seasonStart(int year) {
    return LocalDate.of(year, 3, 1);
  }

  /** Last day of a season. */
  public static LocalDate seasonEnd(int year) {
    return LocalDate.of(year, 10, 31);
  }

  /** The truth of leek moth at Upper Croft; the season under way runs to its end. */
  public TrueSeason leekMothTruth(int year) {
    return truth(Pest.LEEK_MOTH, Site.UPPER_CROFT, year);
  }

  /** The truth of diamondback moth at Mill Field; the season under way runs to its end. */
  public TrueSeason diamondbackMothTruth(int year) {
    return truth(Pest.DIAMONDBACK_MOTH, Site.MILL_FIELD, year);
  }

  /** What the logger of Upper Croft kept of a season's days; lost days are missing. */
  public DailyTemperatures upperCroft(int year) {
    return DemoSeries.daily(
        Site.UPPER_CROFT,
        air(Site.UPPER_CROFT),
        HourlyLogger.firstDay(year),
        HourlyLogger.lastDay(year),
        logger::dayLost);
  }

  /** What was read of the thermometer at Mill Field, from 2022 to some days before the issue. */
  DailyTemperatures millField() {
    return DemoSeries.daily(
        Site.MILL_FIELD,
        air(Site.MILL_FIELD),
        LocalDate.of(FIRST_SEASON, 1, 1),
        ISSUE_DATE.minusDays(4),
        day -> false);
  }

  /** Leek moth at Upper Croft as the season folder would give it, in memory and without files. */
  public PestSeasons leekMoth(LocalDate issueDate) {
    return new DemoSeasons(this, issueDate).leekMoth();
  }

  /** Diamondback moth at Mill Field as the season folder would give it, in memory. */
  public PestSeasons diamondbackMoth(LocalDate issueDate) {
    return new DemoSeasons(this, issueDate).diamondbackMoth();
  }

  /** The true extremes at Upper Croft on every day of a season, beyond the day of issue too. */
  public DailyTemperatures trueUpperCroft(int year) {
    return truly(Site.UPPER_CROFT, year);
  }

  /** The true extremes at Mill Field on every day of a season, beyond the day of issue too. */
  public DailyTemperatures trueMillField(int year) {
    return truly(Site.MILL_FIELD, year);
  }

  /** The station's days from 2011 to the day of issue. */
  public DailyTemperatures station() {
    return DemoSeries.daily(
        Site.STATION, air(Site.STATION), ValeWeather.FIRST_DAY, ISSUE_DATE, day -> false);
  }

  /** The visits to the leek moth traps of a season, up to the day of issue. */
  public TrapSeason leekMothTraps(int year) {
    return DemoSeries.traps(year, leekMothVisits(year));
  }

  /** The visits to the diamondback moth traps of a season, up to the day of issue. */
  public TrapSeason diamondbackMothTraps(int year) {
    return DemoSeries.traps(year, diamondbackMothVisits(year));
  }

  private DailyTemperatures truly(Site site, int year) {
    return DemoSeries.daily(site, air(site), seasonStart(year), seasonEnd(year), day -> false);
  }

  long seed() {
    return seed;
  }

  HourlyLogger logger() {
    return logger;
  }

  SiteWeather air(Site site) {
    return air.computeIfAbsent(site, here -> new SiteWeather(vale, here, seed));
  }

  List<VisitNote> leekMothVisits(int year) {
    return visits(Pest.LEEK_MOTH, Site.UPPER_CROFT, LEEK_MOTH_TRAPS, year);
  }

  List<VisitNote> diamondbackMothVisits(int year) {
    return visits(Pest.DIAMONDBACK_MOTH, Site.MILL_FIELD, DIAMONDBACK_MOTH_TRAPS, year);
  }

  static List<Integer> seasons() {
    var years = new ArrayList<Integer>();
    for (int year = FIRST_SEASON; year <= LAST_SEASON; year++) {
      years.add(year);
    }
    return years;
  }

  private TrueSeason truth(Pest pest, Site site, int year) {
    return Insects.season(pest, air(site), seasonStart(year), seasonEnd(year), seed);
  }

  private List<VisitNote> visits(Pest pest, Site site, List<String> traps, int year) {
    return TrapBook.season(pest, traps, truth(pest, site, year), air(site), seed);
  }
}
