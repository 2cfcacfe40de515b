package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.dose.ReEntryLimit;
import agro.programme.FarmField;
import agro.programme.Programme;
import agro.programme.Spraying;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Re-entry to a field. The clock starts at the end of the application and runs on instants, so that
 * a day is 24 hours whatever the clock on the wall does; of a mixture the longest interval holds.
 */
final class EntryRule {

  private EntryRule() {}

  /**
   * What one application asks for.
   *
   * @param spraying the application
   * @param until when its longest known interval is over
   * @param findings what each product says at a moment
   */
  record EntryFrom(Spraying spraying, ZonedDateTime until, List<RuleFinding> findings) {

    /** What an application to an earlier crop still asks for, as far as it is recorded. */
    EntryFrom withoutUnknown() {
      return new EntryFrom(
          spraying,
          until,
          findings.stream().filter(each -> each.permission() != Permission.NOT_RECORDED).toList());
    }
  }

  /** The applications to a field that began before a moment, and what they ask for then. */
  static List<EntryFrom> all(Programme programme, FarmField field, ZonedDateTime moment) {
    var day = moment.withZoneSameInstant(field.zone()).toLocalDate();
    var found = new ArrayList<EntryFrom>();
    for (var spraying : programme.sprayingsOf(field.name())) {
      if (!spraying.start().toInstant().isAfter(moment.toInstant())) {
        var entry = one(programme, field, spraying, moment);
        found.add(sameCrop(programme, spraying, day) ? entry : entry.withoutUnknown());
      }
    }
    return found;
  }

  private static boolean sameCrop(Programme programme, Spraying spraying, LocalDate day) {
    return programme.plantingFor(spraying.field(), day).equals(programme.plantingOf(spraying));
  }

  private static EntryFrom one(
      Programme programme, FarmField field, Spraying spraying, ZonedDateTime moment) {
    var findings = new ArrayList<RuleFinding>();
    var longest = Duration.ZERO;
    var crop = programme.plantingOf(spraying).map(each -> each.crop()).orElse("");
    for (var product : spraying.products()) {
      var use = product.product() + " on " + (crop.isEmpty() ? "an unknown crop" : crop);
      var limits = new ArrayList<ReEntryLimit>();
      programme
          .labels()
          .find(product.product(), crop)
          .ifPresent(label -> limits.addAll(label.limits().of(ReEntryLimit.class)));
      if (limits.isEmpty()) {
        findings.add(RuleFinding.notRecorded(LimitRule.RE_ENTRY, use, "re-entry interval"));
      }
      for (var limit : limits) {
        longest = longer(longest, limit);
        findings.add(finding(use, limit, spraying, field, moment));
      }
      for (var local : programme.localRules()) {
        if (local.holdsFor(product.product(), crop, field.district())) {
          for (var limit : local.limits().of(ReEntryLimit.class)) {
            longest = longer(longest, limit);
            findings.add(finding(local.name(), limit, spraying, field, moment));
          }
        }
      }
    }
    var until = spraying.end().toInstant().plus(longest).atZone(field.zone());
    return new EntryFrom(spraying, until, findings);
  }

  private static Duration longer(Duration longest, ReEntryLimit limit) {
    return limit.entry() instanceof LabelEntry.Stated<Duration> stated
            && stated.value().compareTo(longest) > 0
        ? stated.value()
        : longest;
  }

  private static RuleFinding finding(
      String record, ReEntryLimit limit, Spraying spraying, FarmField field, ZonedDateTime moment) {
    if (limit.entry() instanceof LabelEntry.NotRecorded<Duration>) {
      return RuleFinding.notRecorded(LimitRule.RE_ENTRY, record, limit.words());
    }
    var words = limit.words() + ": " + limit.value();
    if (!(limit.entry() instanceof LabelEntry.Stated<Duration> stated)) {
      boolean underWay = moment.toInstant().isBefore(spraying.end().toInstant());
      return RuleFinding.of(
          underWay ? Permission.REFUSED : Permission.ALLOWED,
          LimitRule.RE_ENTRY,
          record,
          words,
          underWay ? "The application is under way." : "The label says in words: none.");
    }
    var until = spraying.end().toInstant().plus(stated.value()).atZone(field.zone());
    boolean waits = moment.toInstant().isBefore(until.toInstant());
    return RuleFinding.of(
            waits ? Permission.REFUSED : Permission.ALLOWED,
            LimitRule.RE_ENTRY,
            record,
            words,
            "The application ended "
                + print(spraying.end().withZoneSameInstant(field.zone()))
                + "; entry from "
                + print(until)
                + ".")
        .on(List.of(until.toLocalDate()), Optional.of(until.toLocalDate()));
  }

  static String print(ZonedDateTime moment) {
    return moment.toLocalDate() + " " + moment.toLocalTime() + " (" + moment.getOffset() + ")";
  }
}
