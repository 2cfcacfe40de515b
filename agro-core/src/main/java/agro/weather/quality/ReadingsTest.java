package agro.weather.quality;

/** A check of readings. */
interface ReadingsTest {
  /** Raises the flags of one rule. */
  void flag(ReadingsInTest series);
}
