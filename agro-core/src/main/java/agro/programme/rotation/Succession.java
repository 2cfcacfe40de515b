package agro.programme.rotation;

import agro.dose.Severity;
import agro.programme.rotation.ModeOfAction.SubGroups;
import java.util.Optional;

/** What the use of one mode of action after another counts as. */
final class Succession {

  private Succession() {}

  /**
   * Judges two modes in windows that follow each other.
   *
   * @return error, warning, or nothing where the second is another mode
   */
  static Optional<Severity> judge(ModeOfAction before, ModeOfAction after) {
    boolean same = before.number().equals(after.number());
    boolean named = before.isUnknown() && before.number().contains(" ");
    if (before.isUnknown() && after.isUnknown() && !(same && named)) {
      return Optional.of(Severity.WARNING);
    }
    if (!same) {
      return Optional.empty();
    }
    boolean otherSubGroup =
        !before.group().equals(after.group()) && hasSubGroup(before) && hasSubGroup(after);
    boolean warned = otherSubGroup && before.between() == SubGroups.WARNED;
    return Optional.of(warned ? Severity.WARNING : Severity.ERROR);
  }

  /** The rule that speaks in {@link #judge}. */
  static RotationRule rule(ModeOfAction before, ModeOfAction after) {
    if (before.isUnknown() && after.isUnknown() && !before.equals(after)) {
      return RotationRule.UNKNOWN_MODE;
    }
    return before.group().equals(after.group())
        ? RotationRule.SUCCESSIVE_WINDOWS
        : RotationRule.SUB_GROUPS;
  }

  private static boolean hasSubGroup(ModeOfAction mode) {
    return Character.isLetter(mode.group().charAt(mode.group().length() - 1));
  }
}
