package agro.generation.skill;

import agro.generation.TrapSeason;
import agro.generation.TrapState;
import agro.generation.TrapVisit;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Optional;

/** The first catch of a season: the first of two running visits to one trap that each had one. */
final class FirstCatch {

  private FirstCatch() {}

  /** Day of the visit, or nothing when no trap had two running visits with a catch. */
  static Optional<LocalDate> of(TrapSeason traps) {
    var before = new HashMap<String, TrapVisit>();
    LocalDate first = null;
    for (var visit : traps.visits()) {
      if (visit.state() == TrapState.FAILED) {
        continue;
      }
      var last = before.put(visit.trap(), visit);
      if (last != null
          && last.count() > 0
          && visit.count() > 0
          && (first == null || last.date().isBefore(first))) {
        first = last.date();
      }
    }
    return Optional.ofNullable(first);
  }
}
