package agro.programme.bulletin;

import agro.season.LedgerScores;
import java.util.List;

/** What changed, how the last forecast turned out, what is missing, and what the page rests on. */
final class NewsWords {

  private static final int CHANGES_ON_BOARD = 2;

  private final FieldBulletin bulletin;
  private final BulletinText text;
  private final ForecastWords words;
  private final boolean full;

  NewsWords(FieldBulletin bulletin, BulletinText text, ReadingLevel level) {
    this.bulletin = bulletin;
    this.text = text;
    words = new ForecastWords(text);
    full = level == ReadingLevel.ADVISER;
  }

  BulletinSection.Builder changes() {
    var section = new BulletinSection.Builder(text.say("heading.changes"));
    for (var pest : bulletin.pests()) {
      var over = pest.changes().stream().filter(each -> each.isOver(bulletin.asOf())).toList();
      var ahead = pest.changes().stream().filter(each -> !each.isOver(bulletin.asOf())).toList();
      some(over).forEach(each -> section.point(outcome(pest, each)));
      some(ahead).forEach(each -> section.point(moved(pest, each)));
      pest.scores()
          .filter(each -> !each.scored().isEmpty())
          .ifPresent(each -> section.point(scored(pest, each)));
    }
    if (section.isEmpty()) {
      section.say(text.say("changes.none"));
    }
    return section;
  }

  private List<DateChange> some(List<DateChange> changes) {
    return full || changes.size() <= CHANGES_ON_BOARD
        ? changes
        : changes.subList(0, CHANGES_ON_BOARD);
  }

  private String what(DateChange change) {
    return words.what(change.now());
  }

  private String outcome(PestBulletin pest, DateChange change) {
    return text.say(
        change.wasInside() ? "changes.inside" : "changes.outside",
        "pest",
        pest.pest(),
        "issued",
        text.day(change.before().issued()),
        "what",
        what(change),
        "interval",
        words.between(change.low(), change.high()),
        "now",
        words.median(change.now()));
  }

  private String moved(PestBulletin pest, DateChange change) {
    var moved = change.movedDays();
    var then = change.before().median().map(text::day).orElseGet(() -> text.say("not.this.season"));
    if (moved.isEmpty()) {
      return text.say(
          "changes.season",
          "pest",
          pest.pest(),
          "what",
          what(change),
          "then",
          then,
          "now",
          words.median(change.now()));
    }
    long days = moved.getAsLong();
    if (days == 0) {
      return text.say("changes.same", "pest", pest.pest(), "what", what(change), "then", then);
    }
    return text.say(
        days > 0 ? "changes.later" : "changes.earlier",
        "pest",
        pest.pest(),
        "what",
        what(change),
        "then",
        then,
        "now",
        words.median(change.now()),
        "days",
        new LimitWords(text).days((int) Math.abs(days)));
  }

  private String scored(PestBulletin pest, LedgerScores scores) {
    return text.say(
        "changes.scored",
        "pest",
        pest.pest(),
        "number",
        scores.scored().size(),
        "inside",
        scores.coverage(ForecastWords.MOST).inside(),
        "error",
        text.number(scores.meanAbsoluteErrorDays(), 1));
  }

  BulletinSection.Builder missing() {
    var section = new BulletinSection.Builder(text.say("heading.missing"));
    for (var part : bulletin.missing()) {
      section.point(text.say("missing." + part.name()));
    }
    bulletin
        .hours()
        .ifPresent(
            hours ->
                hours
                    .notJudged()
                    .forEach(each -> section.point(text.say("missing.limit", "limit", each))));
    return section;
  }

  BulletinSection.Builder assumed() {
    var section = new BulletinSection.Builder(text.say("heading.assumed"));
    section.say(text.say("assumed.chance"));
    bulletin.assumed().forEach(section::point);
    return section;
  }

  BulletinSection.Builder sources() {
    var section = new BulletinSection.Builder(text.say("heading.sources"));
    bulletin.sources().forEach(each -> section.point(each.citation()));
    return section;
  }
}
