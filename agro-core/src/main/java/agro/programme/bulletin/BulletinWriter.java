package agro.programme.bulletin;

import agro.report.InputProblem;
import agro.working.Caution;
import java.util.ArrayList;
import java.util.List;

/** Puts a bulletin into the words of one language for one reader. */
final class BulletinWriter {

  private final FieldBulletin bulletin;
  private final BulletinText text;
  private final ReadingLevel level;
  private final List<BulletinSection> sections = new ArrayList<>();

  BulletinWriter(FieldBulletin bulletin, BulletinText text, ReadingLevel level) {
    this.bulletin = bulletin;
    this.text = text;
    this.level = level;
  }

  WrittenBulletin write() {
    var stand = new StandWords(bulletin, text, level);
    var actions = new ActionWords(bulletin, text);
    var products = new ProductWords(bulletin, text, level);
    var news = new NewsWords(bulletin, text, level);
    boolean full = level == ReadingLevel.ADVISER;
    add(stand.today());
    add(actions.toDo());
    add(actions.notToDo());
    add(stand.dates());
    add(stand.counts());
    add(stand.pictures());
    if (full) {
      add(products.limits());
      add(products.calendar());
    }
    add(products.tank());
    if (full) {
      add(products.rotation());
    }
    add(news.changes());
    add(news.missing());
    add(cautions());
    if (full) {
      add(news.assumed());
      add(news.sources());
    }
    var messages = messages();
    return new WrittenBulletin(
        text.language(),
        level,
        text.say("title", "field", bulletin.field()),
        subtitle(),
        sections,
        messages,
        text.say("footer", "day", text.fullDay(bulletin.asOf())));
  }

  private void add(BulletinSection.Builder section) {
    if (!section.isEmpty()) {
      sections.add(section.build());
    }
  }

  private String subtitle() {
    var words = new StringBuilder(text.say("subtitle.day", "day", text.fullDay(bulletin.asOf())));
    if (!bulletin.crop().isEmpty()) {
      words.append(' ').append(text.say("subtitle.crop", "crop", bulletin.crop()));
    }
    if (!bulletin.place().isEmpty() && !bulletin.place().equals(bulletin.field())) {
      words.append(' ').append(text.say("subtitle.place", "place", bulletin.place()));
    }
    return words.toString();
  }

  private BulletinSection.Builder cautions() {
    var section =
        new BulletinSection.Builder(BulletinSection.Kind.CAUTION, text.say("heading.cautions"));
    for (var caution : Caution.all()) {
      section.point(text.say("caution." + caution.name()));
    }
    return section;
  }

  private List<String> messages() {
    var messages = new ArrayList<String>();
    for (var pest : bulletin.pests()) {
      try {
        messages.add(BulletinMessage.of(bulletin, pest, text));
      } catch (InputProblem tooLong) {
        sections.add(
            new BulletinSection.Builder(text.say("heading.message"))
                .say(tooLong.getMessage())
                .build());
      }
    }
    return messages;
  }
}
