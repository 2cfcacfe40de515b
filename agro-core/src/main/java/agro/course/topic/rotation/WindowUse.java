package agro.course.topic.rotation;

import agro.dose.LabelLimits;
import agro.programme.LabelRecord;
import agro.programme.Spraying;
import agro.programme.rotation.RotationCheck;
import agro.programme.rotation.RotationFinding;
import agro.programme.rotation.RotationRule;
import agro.programme.rotation.RotationRules;
import agro.programme.rotation.RotationWindows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A product used in a window.
 *
 * @param window number of the window, from 0
 * @param product name of the product
 * @param groups published codes of its groups, joined by plus signs where it is a mixture
 */
record WindowUse(int window, String product, String groups) {

  /** Groups of the published scheme that are used against caterpillars and leaf-eating insects. */
  static final List<String> SINGLE = List.of("5", "6", "11A", "13", "15", "18", "28");

  /** Sub-groups that share a number. */
  static final List<List<String>> SUB_GROUPS =
      List.of(List.of("1A", "1B"), List.of("4A", "4C"), List.of("22A", "22B"), List.of("4A", "4D"));

  private static final int DAYS = 20;

  private static final Set<RotationRule> WINDOWS =
      EnumSet.of(RotationRule.SUCCESSIVE_WINDOWS, RotationRule.SUB_GROUPS);

  /** The codes of the groups. */
  List<String> codes() {
    return Arrays.asList(groups.split("\\+", -1));
  }

  /** The number of a group without the letter of its sub-group. */
  static String number(String code) {
    return code.replaceAll("[A-Z]+$", "");
  }

  /** The products whose use follows the same group in the window before. */
  static Set<String> breaches(List<WindowUse> uses) {
    var labels = new ArrayList<LabelRecord>();
    var sprays = new ArrayList<Spraying>();
    var known = new java.util.TreeSet<String>();
    int last = 0;
    for (var use : uses) {
      if (known.add(use.product())) {
        labels.add(
            LabelledField.record(
                use.product(), LabelLimits.of(""), use.codes().toArray(String[]::new)));
      }
      int day = use.window() * DAYS + 1 + sprays.size() % 5;
      sprays.add(
          LabelledField.spray(
              use.product() + " " + sprays.size(), LabelledField.day(day), use.product()));
      last = Math.max(last, use.window());
    }
    var windows =
        RotationWindows.every(LabelledField.day(0), LabelledField.day((last + 1) * DAYS - 1), DAYS);
    var programme = LabelledField.programme(labels).withSprayings(sprays);
    var rules = RotationRules.standard().withLargestShare(1).withoutNurseryBreak();
    var broken = new java.util.TreeSet<String>();
    for (RotationFinding finding :
        RotationCheck.of(programme, LabelledField.FIELD, windows).with(rules).check().findings()) {
      if (WINDOWS.contains(finding.rule())) {
        broken.add(finding.sprayings().get(1).split(" ", -1)[0]);
      }
    }
    return broken;
  }
}
