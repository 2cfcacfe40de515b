package agro.programme.bulletin;

import agro.generation.DateInterval;
import agro.generation.FlightShare;
import agro.generation.ForecastRow;
import java.time.LocalDate;
import java.util.Optional;

/** Lines of a forecast in the words of a language. */
final class ForecastWords {

  static final double MOST = 0.8;

  private final BulletinText text;

  ForecastWords(BulletinText text) {
    this.text = text;
  }

  /** What a line is about, such as "half of flight 2". */
  String what(ForecastRow row) {
    return what(row.event(), row.generation(), row.share());
  }

  String what(String event, int generation, FlightShare share) {
    var named =
        event.equals("flight")
            ? text.say("event.flight", "number", generation)
            : text.say("event.stage", "stage", event, "number", generation);
    return text.say("share." + share.name(), "event", named);
  }

  /** The day that is as likely passed as not. */
  String median(ForecastRow row) {
    return row.dates().median().map(text::day).orElseGet(() -> text.say("not.this.season"));
  }

  /** Eight chances in ten. */
  String interval(ForecastRow row) {
    return interval(row.dates().interval(MOST));
  }

  private String interval(DateInterval interval) {
    return between(interval.from(), interval.to());
  }

  String between(Optional<LocalDate> from, Optional<LocalDate> to) {
    if (from.isEmpty()) {
      return text.say("not.this.season");
    }
    return to.map(
            end ->
                end.equals(from.get())
                    ? text.day(end)
                    : text.say("date.between", "from", text.day(from.get()), "to", text.day(end)))
        .orElseGet(() -> text.say("date.open", "from", text.day(from.get())));
  }
}
