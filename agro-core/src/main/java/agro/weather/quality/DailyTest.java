package agro.weather.quality;

/** A check of daily extremes. */
interface DailyTest {
  /** Raises the flags of one rule. */
  void flag(DaysInTest series);
}
