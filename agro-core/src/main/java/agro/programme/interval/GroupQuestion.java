package agro.programme.interval;

import agro.programme.LabelActive;
import agro.programme.SprayedProduct;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether a product is of the mode-of-action group of the last application. */
final class GroupQuestion {

  private GroupQuestion() {}

  static SeasonAnswer ask(SeasonRules rules, String field, String product, LocalDate day) {
    var place = rules.programme().field(field);
    var question = "Is " + product + " of the same group as the last application to " + field + "?";
    var last =
        rules.programme().sprayingsOf(field).stream()
            .filter(each -> !each.firstDay(place.zone()).isAfter(day))
            .reduce((a, b) -> b);
    if (last.isEmpty()) {
      return SeasonAnswer.of(
          question, Reply.NO, "No application to " + field + " is entered before.", List.of());
    }
    var book = rules.programme().labels();
    var own = book.activesOf(product);
    var before = new ArrayList<LabelActive>();
    var unknown = new ArrayList<String>();
    if (unrecorded(own)) {
      unknown.add(product);
    }
    for (SprayedProduct each : last.get().products()) {
      var actives = book.activesOf(each.product());
      before.addAll(actives);
      if (unrecorded(actives)) {
        unknown.add(each.product());
      }
    }
    var applied = last.get().mixture() + " on " + last.get().day(place.zone());
    var answer = answer(question, product, applied, own, before, unknown);
    return answer.on(last.get().day(place.zone()));
  }

  private static SeasonAnswer answer(
      String question,
      String product,
      String applied,
      List<LabelActive> own,
      List<LabelActive> before,
      List<String> unknown) {
    var shared = new HashSet<>(UseBaskets.groups(own));
    shared.retainAll(UseBaskets.groups(before));
    var record = product + " after " + applied;
    var limit = print(own) + " after " + print(before);
    if (!shared.isEmpty()) {
      var exact = new HashSet<>(written(own));
      exact.retainAll(written(before));
      var words =
          exact.isEmpty()
              ? "Group "
                  + String.join(", ", shared.stream().sorted().toList())
                  + " in other sub-groups: the same target site; it is a rotation only where there"
                  + " is no alternative."
              : "Both are of group " + String.join(", ", exact.stream().sorted().toList()) + ".";
      return found(question, Reply.YES, Permission.REFUSED, record, limit, words);
    }
    if (!unknown.isEmpty()) {
      return found(
          question,
          Reply.NOT_RECORDED,
          Permission.NOT_RECORDED,
          record,
          limit,
          "The group of " + String.join(" and of ", unknown) + " is not recorded.");
    }
    boolean unknownMode = groupsOf(own).stream().anyMatch(group -> group.startsWith("UN"));
    return found(
        question,
        Reply.NO,
        Permission.ALLOWED,
        record,
        limit,
        "The last one was "
            + applied
            + ", "
            + print(before)
            + (unknownMode ? "; an unknown mode of action is no proof of a different one." : "."));
  }

  private static SeasonAnswer found(
      String question,
      Reply reply,
      Permission permission,
      String record,
      String limit,
      String words) {
    return SeasonAnswer.of(
        question,
        reply,
        words,
        List.of(RuleFinding.of(permission, LimitRule.GROUP, record, limit, words)));
  }

  private static boolean unrecorded(List<LabelActive> actives) {
    return actives.isEmpty() || actives.stream().anyMatch(active -> active.group().isEmpty());
  }

  private static Set<String> written(List<LabelActive> actives) {
    return groupsOf(actives);
  }

  private static Set<String> groupsOf(List<LabelActive> actives) {
    return actives.stream()
        .map(LabelActive::group)
        .flatMap(Optional::stream)
        .collect(Collectors.toSet());
  }

  private static String print(List<LabelActive> actives) {
    var groups = groupsOf(actives).stream().sorted().toList();
    return groups.isEmpty() ? "group not recorded" : "group " + String.join(" + ", groups);
  }
}
