package agro.programme.window;

import agro.units.Numbers;
import java.time.Duration;

/** Times in words. */
final class TimeWords {

  private TimeWords() {}

  static String words(Duration time) {
    long minutes = time.toMinutes();
    return minutes % 60 == 0
        ? minutes / 60 + "\u00a0h"
        : minutes < 60 ? minutes + "\u00a0min" : Numbers.plain(minutes / 60.0) + "\u00a0h";
  }
}
