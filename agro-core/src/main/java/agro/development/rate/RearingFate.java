package agro.development.rate;

/** What became of a reared animal. */
public enum RearingFate {
  /** It was seen developed. */
  DEVELOPED,
  /** It was alive and not yet developed when it was last looked at. */
  ALIVE,
  /** It died before it had developed; until its last look it counts as not yet developed. */
  DIED
}
