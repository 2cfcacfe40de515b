package agro.programme.rotation;

import agro.source.Standing;

/**
 * One mode-of-action group of the published scheme.
 *
 * @param group code of the group with the letter of its sub-group, for example {@code "4A"}
 * @param number what counts as one group in a rotation, for example {@code "4"}
 * @param chemicalClass the chemistry
 * @param target what it acts on
 * @param between what one sub-group after another of this number counts as
 * @param standing how well the line is backed
 */
public record ModeOfAction(
    String group,
    String number,
    String chemicalClass,
    String target,
    SubGroups between,
    Standing standing) {

  /** What a change from one sub-group to another of the same number counts as. */
  public enum SubGroups {
    /** The same target: no rotation, but a way out where nothing else is at hand. */
    WARNED,
    /** Resistance to the one is known to cover the other. */
    REFUSED,
    /** The mode is not known, so that two of them may or may not share it. */
    UNKNOWN
  }

  /**
   * Whether the mode of action is not known.
   *
   * @return true for UN and its kind
   */
  public boolean isUnknown() {
    return between == SubGroups.UNKNOWN;
  }

  @Override
  public String toString() {
    return "group " + group + " (" + chemicalClass + "; " + target + ")";
  }
}
