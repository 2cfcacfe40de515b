package agro.programme.bulletin;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where the pests stand, which dates come next, and what was counted. */
final class StandWords {

  private static final int DATES_ON_BOARD = 3;
  private static final int DAYS_SOON = 14;

  /** A flight of which more has flown is over for the reader. */
  private static final double OVER = 0.995;

  private final FieldBulletin bulletin;
  private final BulletinText text;
  private final ForecastWords words;
  private final boolean full;

  StandWords(FieldBulletin bulletin, BulletinText text, ReadingLevel level) {
    this.bulletin = bulletin;
    this.text = text;
    words = new ForecastWords(text);
    full = level == ReadingLevel.ADVISER;
  }

  BulletinSection.Builder today() {
    var section = new BulletinSection.Builder(text.say("heading.today"));
    if (bulletin.pests().isEmpty()) {
      section.say(text.say("today.no.pest"));
    }
    for (var pest : bulletin.pests()) {
      var parts = new ArrayList<String>();
      flown(pest, parts);
      next(pest).ifPresent(parts::add);
      catches(pest, parts);
      if (pest.forecast().isEmpty()) {
        parts.add(
            pest.problem().isEmpty()
                ? text.say("today.no.forecast")
                : text.say("today.problem", "problem", pest.problem()));
      }
      section.point(text.say("today.pest", "pest", pest.pest(), "words", String.join(" ", parts)));
    }
    return section;
  }

  private void flown(PestBulletin pest, List<String> parts) {
    if (pest.forecast().isEmpty()) {
      return;
    }
    var flown = pest.forecast().get().flown();
    if (flown.isEmpty()) {
      parts.add(text.say("today.none.flown"));
    }
    for (var each : flown) {
      boolean newest = flown.indexOf(each) == flown.size() - 1;
      if (each.low() > OVER) {
        if (full || newest) {
          parts.add(text.say("today.over", "number", each.generation()));
        }
      } else {
        parts.add(
            text.say(
                "today.flown",
                "number",
                each.generation(),
                "median",
                text.percent(each.median()),
                "low",
                text.percent(each.low()),
                "high",
                text.percent(each.high())));
      }
    }
    if (full) {
      stages(pest, parts);
    }
  }

  /** The chance that a share of a stage is over today. */
  private void stages(PestBulletin pest, List<String> parts) {
    for (var row : pest.forecast().get().rows()) {
      double chance = row.dates().chanceBy(bulletin.asOf());
      if (!row.isFlight() && chance > 0.05 && chance < 0.95) {
        parts.add(text.say("today.stage", "what", words.what(row), "chance", text.chance(chance)));
      }
    }
  }

  private Optional<String> next(PestBulletin pest) {
    return pest.next(bulletin.asOf())
        .map(
            row ->
                text.say(
                    "today.next",
                    "what",
                    words.what(row),
                    "median",
                    words.median(row),
                    "interval",
                    words.interval(row)));
  }

  private void catches(PestBulletin pest, List<String> parts) {
    var spans = pest.catches();
    if (spans.isEmpty()) {
      return;
    }
    var last = spans.get(spans.size() - 1);
    if (last.perTrapNight().isEmpty()) {
      parts.add(text.say("today.failed", "from", text.day(last.from()), "to", text.day(last.to())));
      return;
    }
    parts.add(
        text.say(
            last.atLeast() ? "today.catch.full" : "today.catch",
            "from",
            text.day(last.from()),
            "to",
            text.day(last.to()),
            "rate",
            rate(last)));
    for (int i = spans.size() - 2; full && i >= 0; i--) {
      if (spans.get(i).perTrapNight().isPresent()) {
        parts.add(text.say("today.catch.before", "rate", rate(spans.get(i))));
        return;
      }
    }
  }

  private String rate(CatchSpan span) {
    return text.number(span.perTrapNight().orElseThrow(), 1);
  }

  BulletinSection.Builder dates() {
    var section = new BulletinSection.Builder(text.say("heading.dates"));
    var soon = bulletin.asOf().plusDays(DAYS_SOON);
    var headings =
        List.of(
            text.say("dates.what"),
            text.say("dates.median"),
            text.say("dates.interval"),
            text.say("dates.soon", "day", text.day(soon)));
    for (var pest : bulletin.pests()) {
      var rows = new ArrayList<List<String>>();
      for (var row : pest.ahead(bulletin.asOf())) {
        if (full || rows.size() < DATES_ON_BOARD) {
          rows.add(
              List.of(
                  words.what(row),
                  words.median(row),
                  words.interval(row),
                  text.chance(row.dates().chanceBy(soon))));
        }
      }
      if (!rows.isEmpty()) {
        section.add(new BulletinPart.Grid(pest.pest(), headings, rows));
      }
    }
    if (!section.isEmpty()) {
      section.say(text.say("dates.note"));
    }
    return section;
  }

  BulletinSection.Builder counts() {
    var section = new BulletinSection.Builder(text.say("heading.counts"));
    for (var pest : bulletin.pests()) {
      if (pest.counts().isEmpty()) {
        continue;
      }
      if (full) {
        var rows = pest.counts().stream().map(this::row).toList();
        section.add(new BulletinPart.Grid(pest.pest(), countHeadings(), rows));
        pest.counts().stream()
            .flatMap(each -> each.threshold().stream())
            .map(each -> text.say("counts.source", "pest", pest.pest(), "source", each.source()))
            .distinct()
            .forEach(section::say);
      } else {
        section.point(brief(pest));
      }
    }
    return section;
  }

  /** The highest count of a pest in one sentence. */
  private String brief(PestBulletin pest) {
    var most =
        pest.counts().stream()
            .max(Comparator.comparingDouble(each -> each.counts().mean()))
            .orElseThrow();
    return text.say(
        "counts.brief",
        "pest",
        pest.pest(),
        "part",
        most.shortPart(bulletin.field()),
        "mean",
        mean(most.counts().mean()),
        "unit",
        text.say("unit." + most.counts().unit().kind().name()),
        "threshold",
        threshold(most));
  }

  private String threshold(CountVerdict count) {
    return count
        .threshold()
        .map(each -> text.quantity(Numbers.significant(each.level(), 3)))
        .orElseGet(() -> text.say("not.recorded"));
  }

  private List<String> countHeadings() {
    return List.of(
        text.say("counts.part"),
        text.say("counts.day"),
        text.say("counts.mean"),
        text.say("counts.threshold"),
        text.say("counts.verdict"));
  }

  private List<String> row(CountVerdict count) {
    var unit = text.say("unit." + count.counts().unit().kind().name());
    var sample =
        text.say(
            "counts.value",
            "mean",
            mean(count.counts().mean()),
            "low",
            mean(count.low()),
            "high",
            mean(count.high()),
            "unit",
            unit,
            "size",
            count.counts().size());
    return List.of(
        count.shortPart(bulletin.field()),
        text.day(count.day()),
        sample,
        threshold(count),
        count
            .verdict()
            .map(
                each ->
                    text.say(
                        "verdict." + each.name(),
                        "chance",
                        text.chance(count.chanceAbove().orElseThrow())))
            .orElseGet(() -> text.say("verdict.none")));
  }

  private String mean(double value) {
    return text.number(value, value < 1 ? 2 : 1);
  }

  BulletinSection.Builder pictures() {
    var section =
        new BulletinSection.Builder(BulletinSection.Kind.PICTURE, text.say("heading.picture"));
    for (var pest : bulletin.pests()) {
      if (pest.forecast().isPresent() && (full || section.isEmpty())) {
        section.add(SeasonFigure.of(bulletin, pest, text, full));
      }
    }
    return section;
  }
}
