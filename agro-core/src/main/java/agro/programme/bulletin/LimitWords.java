package agro.programme.bulletin;

import agro.dose.ApplicationLimit;
import agro.dose.BufferLimit;
import agro.dose.IntervalLimit;
import agro.dose.LabelEntry;
import agro.dose.LabelLimit;
import agro.dose.LimitScope;
import agro.dose.PreHarvest;
import agro.dose.PreHarvestLimit;
import agro.dose.ReEntryLimit;
import agro.programme.BeeRule;
import agro.programme.LabelRecord;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Limits of a label record in the words of a language. A limit is a number, none by the words of
 * the label, or not recorded; the last is never taken for none.
 */
final class LimitWords {

  private final BulletinText text;

  LimitWords(BulletinText text) {
    this.text = text;
  }

  String preHarvest(LabelRecord label) {
    return all(
        label.limits().of(PreHarvestLimit.class), limit -> entry(limit.entry(), this::preHarvest));
  }

  private String preHarvest(PreHarvest entry) {
    if (entry instanceof PreHarvest.Days days) {
      return days(days.days());
    }
    return text.say("limit.until", "stage", ((PreHarvest.UntilStage) entry).stage());
  }

  String reEntry(LabelRecord label) {
    return all(label.limits().of(ReEntryLimit.class), limit -> entry(limit.entry(), text::hours));
  }

  String interval(LabelRecord label) {
    return all(
        label.limits().of(IntervalLimit.class),
        limit -> entry(limit.entry(), this::days) + scope(limit.scope()));
  }

  String applications(LabelRecord label) {
    return all(
        label.limits().of(ApplicationLimit.class),
        limit -> entry(limit.entry(), String::valueOf) + scope(limit.scope()));
  }

  String buffers(LabelRecord label) {
    return all(
        label.limits().of(BufferLimit.class),
        limit ->
            text.say(
                "limit.buffer",
                "width",
                entry(limit.entry(), width -> text.quantity(width.toString())),
                "toward",
                toward(limit.toward())));
  }

  private String toward(String words) {
    return switch (words) {
      case "water" -> text.say("toward.water");
      case "people" -> text.say("toward.people");
      case "people outside the field while it is treated" -> text.say("toward.bystanders");
      default -> words;
    };
  }

  String rainFree(LabelRecord label) {
    return entry(label.stewardship().rainFree(), text::hours);
  }

  String bees(LabelRecord label) {
    return entry(label.stewardship().bees(), (BeeRule rule) -> text.say("bees." + rule.name()));
  }

  String days(int days) {
    return text.say(days == 1 ? "days.one" : "days.many", "number", days);
  }

  private String scope(LimitScope scope) {
    return scope == LimitScope.CROP || scope == LimitScope.APPLICATION
        ? ""
        : " " + text.say("scope." + scope.name());
  }

  private <T> String entry(LabelEntry<T> entry, Function<T, String> words) {
    if (entry instanceof LabelEntry.Stated<T> stated) {
      return words.apply(stated.value());
    }
    return text.say(
        entry instanceof LabelEntry.NotRecorded<T> ? "not.recorded" : "limit.label.says.none");
  }

  private <L extends LabelLimit> String all(List<L> limits, Function<L, String> words) {
    return limits.isEmpty()
        ? text.say("not.recorded")
        : limits.stream()
            .map(
                limit ->
                    words.apply(limit)
                        + limit.condition().map(when -> " (" + when.words() + ")").orElse(""))
            .collect(Collectors.joining("; "));
  }
}
