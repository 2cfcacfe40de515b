package agro.programme.bulletin;

import agro.dose.Severity;
import agro.programme.interval.ApplicationVerdict;
import agro.programme.interval.Permission;
import agro.programme.interval.Reply;
import agro.programme.interval.RuleFinding;
import agro.sampling.injury.TreatmentVerdict;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** What to do, and what not to do. */
final class ActionWords {

  private static final int VISIT_DUE_DAYS = 9;

  private final FieldBulletin bulletin;
  private final BulletinText text;
  private final ForecastWords words;

  ActionWords(FieldBulletin bulletin, BulletinText text) {
    this.bulletin = bulletin;
    this.text = text;
    words = new ForecastWords(text);
  }

  BulletinSection.Builder toDo() {
    var section = new BulletinSection.Builder(BulletinSection.Kind.DO, text.say("heading.do"));
    for (var pest : bulletin.pests()) {
      verdict(section, pest, TreatmentVerdict.TREAT, "do.treat");
      verdict(section, pest, TreatmentVerdict.LOOK_ON, "do.look.on");
      if (pest.counts().isEmpty()) {
        section.point(text.say("do.count", "pest", pest.pest()));
      }
      pest.next(bulletin.asOf())
          .flatMap(row -> row.dates().quantile(0.1).map(day -> look(pest, words.what(row), day)))
          .ifPresent(section::point);
      visits(section, pest);
    }
    var allowed =
        products(
            each ->
                each.today().permission() == Permission.ALLOWED
                    && rests(each)
                    && isWanted(bulletin, each));
    if (!allowed.isEmpty()) {
      section.point(text.say("do.products", "products", allowed));
    }
    return section;
  }

  private String look(PestBulletin pest, String what, LocalDate day) {
    return day.isAfter(bulletin.asOf())
        ? text.say("do.look", "pest", pest.pest(), "what", what, "day", text.day(day))
        : text.say("do.look.now", "pest", pest.pest(), "what", what);
  }

  private void visits(BulletinSection.Builder section, PestBulletin pest) {
    if (pest.catches().isEmpty()) {
      return;
    }
    var last = pest.catches().get(pest.catches().size() - 1).to();
    if (ChronoUnit.DAYS.between(last, bulletin.asOf()) > VISIT_DUE_DAYS) {
      section.point(text.say("do.visit", "pest", pest.pest(), "day", text.day(last)));
    }
  }

  private void verdict(
      BulletinSection.Builder section, PestBulletin pest, TreatmentVerdict verdict, String key) {
    var found = pest.counts().stream().filter(each -> is(each, verdict)).toList();
    if (found.isEmpty()) {
      return;
    }
    boolean all = found.size() == pest.counts().size() && found.size() > 1;
    var parts =
        all
            ? text.say("parts.all", "number", found.size())
            : found.stream()
                .map(each -> each.shortPart(bulletin.field()))
                .collect(Collectors.joining(", "));
    section.point(text.say(key, "pest", pest.pest(), "parts", parts));
  }

  private static boolean is(CountVerdict count, TreatmentVerdict verdict) {
    return count.verdict().map(verdict::equals).orElse(false);
  }

  /** Whether a product may be wanted: the counts of one of its pests say so, or there are none. */
  static boolean isWanted(FieldBulletin bulletin, ProductAdvice advice) {
    return bulletin.pests().stream()
        .filter(
            each ->
                advice.label().pests().isEmpty()
                    || advice.label().pests().stream().anyMatch(each.pest()::equalsIgnoreCase))
        .anyMatch(each -> each.counts().stream().anyMatch(ActionWords::mayNeedTreatment));
  }

  private static boolean mayNeedTreatment(CountVerdict count) {
    return count.verdict().map(each -> each != TreatmentVerdict.LEAVE).orElse(false);
  }

  private String products(Predicate<ProductAdvice> which) {
    return bulletin.products().stream()
        .filter(which)
        .map(each -> each.label().product())
        .collect(Collectors.joining(", "));
  }

  private static boolean rests(ProductAdvice advice) {
    return advice.rotation().stream().noneMatch(each -> each.severity() == Severity.ERROR);
  }

  BulletinSection.Builder notToDo() {
    var section =
        new BulletinSection.Builder(BulletinSection.Kind.DO_NOT, text.say("heading.dont"));
    for (var pest : bulletin.pests()) {
      verdict(section, pest, TreatmentVerdict.LEAVE, "dont.leave");
    }
    if (bulletin.pests().stream().anyMatch(each -> !each.catches().isEmpty())) {
      section.point(text.say("dont.catch"));
    }
    for (var each : bulletin.products()) {
      product(section, each);
    }
    bulletin
        .picking()
        .filter(each -> each.reply() != Reply.YES)
        .ifPresent(
            each ->
                section.point(
                    each.reply() == Reply.NO
                        ? text.say(
                            "dont.pick", "day", text.fullDay(each.day().orElse(bulletin.asOf())))
                        : text.say("dont.pick.unknown")));
    return section;
  }

  private void product(BulletinSection.Builder section, ProductAdvice each) {
    var name = each.label().product();
    if (each.today().permission() == Permission.REFUSED) {
      var rules = rules(each.today(), Permission.REFUSED);
      section.point(
          each.next().reply() == Reply.NO
              ? text.say("dont.never", "product", name, "rules", rules)
              : text.say(
                  "dont.before",
                  "product",
                  name,
                  "day",
                  text.day(each.next().day().orElse(bulletin.asOf())),
                  "rules",
                  rules));
    } else if (each.today().permission() == Permission.NOT_RECORDED) {
      section.point(
          text.say(
              "dont.unrecorded",
              "product",
              name,
              "rules",
              rules(each.today(), Permission.NOT_RECORDED)));
    }
    each.rotation().stream()
        .filter(finding -> finding.severity() == Severity.ERROR)
        .map(finding -> text.say("rotation." + finding.rule().name()))
        .distinct()
        .forEach(rule -> section.point(text.say("dont.rotation", "product", name, "rule", rule)));
  }

  private String rules(ApplicationVerdict verdict, Permission permission) {
    return rules(text, verdict.of(permission));
  }

  static String rules(BulletinText text, List<RuleFinding> findings) {
    return findings.stream()
        .map(each -> text.say("rule." + each.rule().name()))
        .distinct()
        .collect(Collectors.joining(", "));
  }
}
