package agro.dose;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;

/** Number of applications, interval between them, time before harvest and before re-entry. */
final class TimingRules {

  private TimingRules() {}

  static void check(LimitCheck check, List<DoseFinding> findings) {
    var number = "number of applications";
    for (var limit : check.applicable(ApplicationLimit.class, number, Severity.WARNING, findings)) {
      findings.add(number(check.plan(), limit));
    }
    var interval = "interval between applications";
    for (var limit : check.applicable(IntervalLimit.class, interval, Severity.WARNING, findings)) {
      findings.add(interval(check.plan(), limit));
    }
    var harvest = "pre-harvest interval";
    for (var limit : check.applicable(PreHarvestLimit.class, harvest, Severity.WARNING, findings)) {
      findings.add(harvest(check.plan(), limit));
    }
    var entry = "re-entry interval";
    for (var limit : check.applicable(ReEntryLimit.class, entry, Severity.WARNING, findings)) {
      findings.add(reEntry(limit));
    }
  }

  private static DoseFinding number(PlannedUse plan, ApplicationLimit limit) {
    int most = ((LabelEntry.Stated<Integer>) limit.entry()).value();
    var uses = UsesInScope.of(plan, limit.scope());
    if (!uses.reason().isEmpty()) {
      return notChecked(limit, uses.reason());
    }
    int count = uses.uses().size() + 1;
    var sentence = "This is application " + count + " of at most " + most + ".";
    return new DoseFinding(count > most ? Severity.ERROR : Severity.NOTE, limit.words(), sentence);
  }

  private static DoseFinding interval(PlannedUse plan, IntervalLimit limit) {
    int least = ((LabelEntry.Stated<Integer>) limit.entry()).value();
    var uses = UsesInScope.of(plan, limit.scope()).uses();
    var last = uses.stream().map(PastUse::day).max(Comparator.naturalOrder());
    if (last.isEmpty()) {
      return new DoseFinding(
          Severity.NOTE, limit.words(), "No earlier application is stated that counts.");
    }
    var earliest = last.get().plusDays(least);
    if (plan.day().isEmpty()) {
      return notChecked(
          limit,
          "the day of the application is not stated; " + earliest + " is the first day allowed");
    }
    long days = ChronoUnit.DAYS.between(last.get(), plan.day().get());
    boolean tooSoon = days < least;
    return new DoseFinding(
        tooSoon ? Severity.ERROR : Severity.NOTE,
        limit.words(),
        days
            + (days == 1 ? " day" : " days")
            + " after the application on "
            + last.get()
            + ", and the label asks for "
            + least
            + (tooSoon ? ". The first day allowed is " + earliest + "." : "."));
  }

  private static DoseFinding harvest(PlannedUse plan, PreHarvestLimit limit) {
    var value = ((LabelEntry.Stated<PreHarvest>) limit.entry()).value();
    if (!(value instanceof PreHarvest.Days days)) {
      return new DoseFinding(
          Severity.WARNING,
          limit.words(),
          "The label says: " + value + ". Look at the stage of the crop before spraying.");
    }
    if (plan.day().isEmpty()) {
      return notChecked(limit, "the day of the application is not stated");
    }
    LocalDate earliest = days.earliestHarvest(plan.day().get());
    if (plan.harvest().isEmpty()) {
      return new DoseFinding(
          Severity.WARNING,
          limit.words(),
          "The label asks for "
              + days
              + ". The day of harvest is not stated; it must not be before "
              + earliest
              + ".");
    }
    boolean tooSoon = plan.harvest().get().isBefore(earliest);
    return new DoseFinding(
        tooSoon ? Severity.ERROR : Severity.NOTE,
        limit.words(),
        "The label asks for "
            + days
            + ": no harvest before "
            + earliest
            + ". Harvest is planned for "
            + plan.harvest().get()
            + ".");
  }

  private static DoseFinding reEntry(ReEntryLimit limit) {
    Duration time = ((LabelEntry.Stated<Duration>) limit.entry()).value();
    return new DoseFinding(
        Severity.NOTE,
        limit.words(),
        "Nobody enters without protective equipment until "
            + time.toHours()
            + " h after the end of the application.");
  }

  private static DoseFinding notChecked(LabelLimit limit, String reason) {
    return new DoseFinding(
        Severity.WARNING,
        limit.words(),
        "The label states " + limit.entry() + ". Not checked: " + reason + ".");
  }
}
