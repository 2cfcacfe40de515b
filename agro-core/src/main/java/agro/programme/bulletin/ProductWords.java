package agro.programme.bulletin;

import agro.dose.Severity;
import agro.dose.tank.TankLoad;
import agro.dose.tank.TankMix;
import agro.programme.interval.CalendarDay;
import agro.programme.interval.Permission;
import agro.programme.rotation.GroupUse;
import agro.programme.rotation.RotationReport;
import agro.units.QuantityStyle;
import agro.units.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Products, their limits, what is allowed when, amounts for the sprayer, and rotation. */
final class ProductWords {

  private final FieldBulletin bulletin;
  private final BulletinText text;
  private final LimitWords limits;
  private final boolean full;

  ProductWords(FieldBulletin bulletin, BulletinText text, ReadingLevel level) {
    this.bulletin = bulletin;
    full = level == ReadingLevel.ADVISER;
    this.text = text;
    limits = new LimitWords(text);
  }

  BulletinSection.Builder limits() {
    var section = new BulletinSection.Builder(text.say("heading.limits"));
    if (bulletin.products().isEmpty()) {
      return section;
    }
    var headings = new ArrayList<String>();
    for (var column :
        List.of("product", "groups", "dose", "harvest", "entry", "interval", "number", "left")) {
      headings.add(text.say("limits." + column));
    }
    section.add(
        new BulletinPart.Grid(
            text.say("limits.caption", "crop", bulletin.crop()),
            headings,
            bulletin.products().stream().map(this::limitRow).toList()));
    for (var each : bulletin.products()) {
      section.point(
          text.say(
              "limits.further",
              "product",
              each.label().product(),
              "rain",
              limits.rainFree(each.label()),
              "bees",
              limits.bees(each.label()),
              "buffers",
              limits.buffers(each.label())));
    }
    return section.say(text.say("limits.note"));
  }

  private List<String> limitRow(ProductAdvice each) {
    var label = each.label();
    var left = each.left().applications();
    return List.of(
        label.product(),
        groups(each),
        label.dose().map(dose -> text.quantity(dose.toString())).orElse(text.say("not.recorded")),
        limits.preHarvest(label),
        limits.reEntry(label),
        limits.interval(label),
        limits.applications(label),
        left.isPresent() ? text.number(left.getAsDouble(), 0) : text.say("not.recorded"));
  }

  private String groups(ProductAdvice each) {
    var groups =
        each.label().actives().stream()
            .map(active -> active.group().orElseGet(() -> text.say("not.recorded")))
            .collect(Collectors.joining(" + "));
    return groups.isEmpty() ? text.say("not.recorded") : groups;
  }

  BulletinSection.Builder calendar() {
    var section = new BulletinSection.Builder(text.say("heading.calendar"));
    var rows = new ArrayList<List<String>>();
    for (var each : bulletin.products()) {
      spans(each, rows);
    }
    if (!rows.isEmpty()) {
      section.add(
          new BulletinPart.Grid(
              text.say("calendar.caption"),
              List.of(
                  text.say("limits.product"),
                  text.say("calendar.days"),
                  text.say("calendar.answer"),
                  text.say("calendar.why")),
              rows));
    }
    return section;
  }

  /** Days in a row of which the rules say the same stand on one line. */
  private void spans(ProductAdvice each, List<List<String>> rows) {
    var days = each.days().days();
    int from = 0;
    for (int i = 1; i <= days.size(); i++) {
      if (i == days.size() || !alike(days.get(from), days.get(i))) {
        var first = days.get(from);
        var last = days.get(i - 1);
        var span =
            first.equals(last)
                ? text.day(first.day())
                : text.say(
                    "date.between", "from", text.day(first.day()), "to", text.day(last.day()));
        rows.add(
            List.of(
                each.label().product(),
                span,
                text.say("permission." + first.permission().name()),
                why(first)));
        from = i;
      }
    }
  }

  private boolean alike(CalendarDay one, CalendarDay other) {
    return one.permission() == other.permission() && why(one).equals(why(other));
  }

  private String why(CalendarDay day) {
    return ActionWords.rules(
        text,
        day.findings().stream().filter(each -> each.permission() == day.permission()).toList());
  }

  BulletinSection.Builder tank() {
    var section = new BulletinSection.Builder(text.say("heading.tank"));
    var rows = new ArrayList<List<String>>();
    for (var each : bulletin.products()) {
      // On the board amounts of a product that nobody needs, or whose label has to be read first,
      // would only mislead.
      boolean onBoard =
          ActionWords.isWanted(bulletin, each)
              && each.today().permission() != Permission.NOT_RECORDED;
      if (!full && !onBoard) {
        continue;
      }
      if (each.today().permission() == Permission.REFUSED) {
        section.point(text.say("tank.refused", "product", each.label().product()));
      } else if (each.tank().isPresent()) {
        tank(section, each, each.tank().get(), rows);
      } else if (!each.tankProblem().isEmpty()) {
        section.point(
            text.say(
                "tank.problem", "product", each.label().product(), "problem", each.tankProblem()));
      } else {
        section.point(text.say("tank.missing", "product", each.label().product()));
      }
    }
    if (rows.isEmpty()) {
      return section;
    }
    var mix = bulletin.products().stream().flatMap(each -> each.tank().stream()).findFirst();
    var sprayer = bulletin.sprayer().orElseThrow();
    var caption =
        text.say(
            "tank.caption",
            "sprayer",
            sprayer.name(),
            "tank",
            print(mix.orElseThrow(), sprayer.tank().capacity()),
            "spray",
            text.quantity(sprayer.spray().print(QuantityStyle.METRIC)),
            "area",
            text.quantity(mix.get().plan().field().printArea(QuantityStyle.METRIC)));
    return section
        .add(
            new BulletinPart.Grid(
                caption,
                List.of(
                    text.say("limits.product"),
                    text.say("tank.load"),
                    text.say("tank.spray"),
                    text.say("tank.amount"),
                    text.say("tank.water")),
                rows))
        .say(text.say("tank.note"));
  }

  private void tank(
      BulletinSection.Builder section, ProductAdvice each, TankMix mix, List<List<String>> rows) {
    boolean overLabel = mix.findings().stream().anyMatch(f -> f.severity() == Severity.ERROR);
    if (overLabel) {
      section.point(text.say("tank.over.label", "product", each.label().product()));
      return;
    }
    for (var load : mix.loads()) {
      rows.add(
          List.of(
              each.label().product(),
              load(load),
              print(mix, load.made()),
              text.quantity(load.amounts().get(0).amount().print(mix.plan().style())),
              text.quantity(mix.plan().style().printRange(load.water()))));
    }
  }

  private String load(TankLoad load) {
    return text.say(
        "load." + load.kind().name(),
        "numbers",
        load.count() == 1 ? String.valueOf(load.first()) : load.first() + "\u2013" + load.last());
  }

  private String print(TankMix mix, Volume volume) {
    return text.quantity(mix.plan().style().print(volume));
  }

  BulletinSection.Builder rotation() {
    var section = new BulletinSection.Builder(text.say("heading.rotation"));
    bulletin.rotation().ifPresent(report -> rotation(section, report));
    return section;
  }

  private void rotation(BulletinSection.Builder section, RotationReport report) {
    var windows = report.windows().windows();
    var rows = new ArrayList<List<String>>();
    for (int i = 0; i < windows.size(); i++) {
      var window = windows.get(i);
      var uses = report.inWindow(i);
      rows.add(
          List.of(
              String.valueOf(window.number()),
              text.say(
                  "date.between", "from", text.day(window.first()), "to", text.day(window.last())),
              uses.isEmpty() ? text.say("rotation.no.use") : uses(uses)));
    }
    section.add(
        new BulletinPart.Grid(
            text.say("rotation.basis." + windows.get(0).basis().name()),
            List.of(
                text.say("rotation.window"), text.say("calendar.days"), text.say("rotation.uses")),
            rows));
    var nursery = report.uses().stream().filter(GroupUse::beforeTheField).toList();
    if (!nursery.isEmpty()) {
      section.point(text.say("rotation.nursery", "uses", uses(nursery)));
    }
    report.findings().stream()
        .map(
            each ->
                text.say(
                    each.severity() == Severity.ERROR ? "rotation.broken" : "rotation.doubt",
                    "rule",
                    text.say("rotation." + each.rule().name())))
        .distinct()
        .forEach(section::point);
    if (report.findings().isEmpty()) {
      section.point(text.say("rotation.kept"));
    }
  }

  private String uses(List<GroupUse> uses) {
    return uses.stream()
        .map(
            each ->
                text.say(
                    "rotation.use",
                    "product",
                    each.product(),
                    "day",
                    text.day(each.day()),
                    "group",
                    each.mode().map(mode -> mode.group()).orElse(text.say("not.recorded"))))
        .collect(Collectors.joining("; "));
  }
}
