package agro.programme.rotation;

import agro.source.Reference;

/** A rule that uses of modes of action are held against. */
public enum RotationRule {
  /** Of every use the group is known. */
  GROUP_RECORDED("the group of every active ingredient is recorded", RotationSources.SCHEME),
  /** No group in two windows in a row. */
  SUCCESSIVE_WINDOWS("no group in two windows in a row", RotationSources.WINDOWS),
  /** A change of sub-group is no rotation. */
  SUB_GROUPS("sub-groups of one number are no rotation", RotationSources.SUB_GROUPS),
  /** That a mode is not known proves no difference. */
  UNKNOWN_MODE("an unknown mode is no proof of another mode", RotationSources.SUB_GROUPS),
  /** Windows with one group cover at most a share of the crop's time in the field. */
  SHARE_OF_SEASON("one group in at most a share of the crop cycle", RotationSources.DIAMONDBACK),
  /** A group of the nursery rests for one generation in the field. */
  NURSERY_BREAK(
      "one generation in the field without the groups of the nursery", RotationSources.DIAMONDBACK);

  private final String words;
  private final Reference source;

  RotationRule(String words, Reference source) {
    this.words = words;
    this.source = source;
  }

  /**
   * The rule in words.
   *
   * @return lower-case words
   */
  public String words() {
    return words;
  }

  /**
   * Where the rule is published.
   *
   * @return the source
   */
  public Reference source() {
    return source;
  }
}
