package agro.programme.bulletin;

import agro.generation.ForecastRow;
import agro.report.InputProblem;
import agro.sampling.injury.TreatmentVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The bulletin of one pest in one short message: pest, place, the next date with its chance, what
 * the count says. What does not fit is left out from the end, whole sentences at a time; a word is
 * never cut.
 */
final class BulletinMessage {

  /** Characters of one short message. */
  static final int MOST = 160;

  private BulletinMessage() {}

  /**
   * The message.
   *
   * @throws InputProblem when the names alone are too long
   */
  static String of(FieldBulletin bulletin, PestBulletin pest, BulletinText text) {
    var tail = new ArrayList<String>();
    verdict(pest, text).ifPresent(tail::add);
    tail.add(text.say("message.label"));
    for (var date : dates(bulletin, pest, text)) {
      var core =
          text.say(
              "message.core",
              "pest",
              pest.pest(),
              "field",
              bulletin.field(),
              "day",
              text.day(bulletin.asOf()),
              "date",
              date);
      for (int parts = tail.size(); parts >= 0; parts--) {
        var message = GsmText.of(core + " " + String.join(" ", tail.subList(0, parts)));
        if (message.length() <= MOST) {
          return message;
        }
      }
    }
    throw InputProblem.of(
            "no message of "
                + MOST
                + " characters about "
                + pest.pest()
                + " in "
                + bulletin.field())
        .expected("names that leave room for a date with its chance")
        .because("a message that is cut off may say the opposite")
        .mend("give the pest or the field a shorter name");
  }

  /** The next date, first in many words, then in few. */
  private static List<String> dates(FieldBulletin bulletin, PestBulletin pest, BulletinText text) {
    var next = pest.next(bulletin.asOf());
    if (next.isEmpty()) {
      return List.of(
          text.say(pest.forecast().isPresent() ? "message.nothing" : "message.no.forecast"));
    }
    return List.of(date(next.get(), text, "message.date"), date(next.get(), text, "message.brief"));
  }

  private static String date(ForecastRow row, BulletinText text, String key) {
    var words = new ForecastWords(text);
    return text.say(
        key, "what", words.what(row), "median", words.median(row), "interval", words.interval(row));
  }

  private static Optional<String> verdict(PestBulletin pest, BulletinText text) {
    var verdicts = pest.counts().stream().flatMap(each -> each.verdict().stream()).toList();
    return verdicts.stream()
        .max(TreatmentVerdict::compareTo)
        .map(
            each -> {
              long alike = verdicts.stream().filter(each::equals).count();
              var words = text.say("message." + each.name());
              return alike == verdicts.size()
                  ? text.say("message.whole", "words", words)
                  : text.say(
                      "message.parts", "words", words, "number", alike, "all", verdicts.size());
            });
  }
}
