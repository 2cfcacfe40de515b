package agro.programme.interval;

import agro.dose.LabelEntry;
import agro.programme.FarmField;
import agro.programme.Spraying;
import agro.report.InputProblem;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The questions of the season, each with a one-line answer and the rules behind it. */
public final class SeasonQuestions {

  private static final int DAYS_AHEAD = 800;

  private final SeasonRules rules;

  private SeasonQuestions(SeasonRules rules) {
    this.rules = Objects.requireNonNull(rules, "rules");
  }

  /**
   * Questions to a programme.
   *
   * @param rules the programme with its rules
   * @return the questions
   */
  public static SeasonQuestions of(SeasonRules rules) {
    return new SeasonQuestions(rules);
  }

  /**
   * May this be applied?
   *
   * @param spraying the application
   * @return yes only if every rule is recorded and kept
   */
  public SeasonAnswer mayApply(Spraying spraying) {
    var verdict = rules.check(spraying);
    var question =
        "May "
            + spraying.mixture()
            + " be applied to "
            + spraying.field()
            + " on "
            + spraying.start().toLocalDate()
            + "?";
    return SeasonAnswer.of(
            question,
            Reply.of(verdict.permission()),
            sentence(verdict.findings(), "Every rule that is recorded is kept."),
            verdict.findings())
        .on(spraying.start().toLocalDate());
  }

  /**
   * May one product be applied on a day, at the dose of its label record?
   *
   * @param field the field
   * @param product the product
   * @param day the day
   * @return yes only if every rule is recorded and kept
   */
  public SeasonAnswer mayApply(String field, String product, LocalDate day) {
    return mayApply(rules.planned(field, product, day));
  }

  private static String sentence(List<RuleFinding> findings, String otherwise) {
    return findings.stream()
        .filter(each -> each.permission() != Permission.ALLOWED)
        .findFirst()
        .map(each -> each.record() + ", " + each.limit() + ". " + each.sentence())
        .orElse(otherwise);
  }

  /**
   * When may the product be applied next?
   *
   * @param field the field
   * @param product the product
   * @param from first day that is looked at
   * @return the first day on which no rule is broken; its reply is not recorded where a rule of
   *     that day is not recorded, and no where no day of the next two years passes
   */
  public SeasonAnswer nextAllowed(String field, String product, LocalDate from) {
    var question = "When may " + product + " be applied to " + field + " from " + from + " on?";
    for (var day = from; day.isBefore(from.plusDays(DAYS_AHEAD)); day = day.plusDays(1)) {
      var verdict = rules.check(rules.planned(field, product, day));
      if (verdict.permission() != Permission.REFUSED) {
        boolean known = verdict.permission() == Permission.ALLOWED;
        var words =
            known
                ? "On " + day + "."
                : "No recorded rule refuses "
                    + day
                    + ", but "
                    + sentence(verdict.findings(), "something is not recorded.");
        return SeasonAnswer.of(question, Reply.of(verdict.permission()), words, verdict.findings())
            .on(day);
      }
    }
    var verdict = rules.check(rules.planned(field, product, from));
    return SeasonAnswer.of(
        question,
        Reply.NO,
        "On no day of the next two years. " + sentence(verdict.findings(), ""),
        verdict.findings());
  }

  /**
   * May the field be picked on a day? Both the pre-harvest and the re-entry intervals of all
   * applications to the crop are kept.
   *
   * @param field the field
   * @param day the day
   * @return the answer, with the first day that the recorded intervals allow
   */
  public SeasonAnswer mayPick(String field, LocalDate day) {
    var place = rules.programme().field(field);
    var findings = new ArrayList<RuleFinding>();
    for (var spraying : rules.programme().sprayingsOf(field)) {
      if (!spraying.firstDay(place.zone()).isAfter(day) && sameCrop(spraying, place, day)) {
        PickingFindings.of(rules, place, spraying, day, findings);
      }
    }
    var endOfDay = day.plusDays(1).atStartOfDay(place.zone()).minusNanos(1);
    for (var entry : EntryRule.all(rules.programme(), place, endOfDay)) {
      findings.addAll(entry.findings());
    }
    findings.sort((a, b) -> b.permission().compareTo(a.permission()));
    var permission =
        findings.stream().map(RuleFinding::permission).reduce(Permission.ALLOWED, Permission::and);
    var entry = entryHour(place, day);
    var otherwise =
        "All intervals are over"
            + entry.map(moment -> " from " + EntryRule.print(moment)).orElse("")
            + ".";
    var first =
        findings.stream()
            .filter(each -> each.permission() == Permission.REFUSED)
            .flatMap(each -> each.firstAllowed().stream())
            .max(LocalDate::compareTo);
    return SeasonAnswer.of(
            "May " + field + " be picked on " + day + "?",
            Reply.of(permission),
            sentence(findings, otherwise),
            findings)
        .on(first.orElse(day));
  }

  private boolean sameCrop(Spraying spraying, FarmField field, LocalDate day) {
    var then = rules.programme().plantingOf(spraying);
    var now = rules.programme().plantingFor(field.name(), day);
    return then.equals(now);
  }

  /** The hour of the day from which re-entry allows picking, if it falls on that day. */
  private Optional<ZonedDateTime> entryHour(FarmField field, LocalDate day) {
    var endOfDay = day.plusDays(1).atStartOfDay(field.zone()).minusNanos(1);
    return EntryRule.all(rules.programme(), field, endOfDay).stream()
        .map(EntryRule.EntryFrom::until)
        .filter(until -> until.toLocalDate().equals(day))
        .max((a, b) -> a.toInstant().compareTo(b.toInstant()));
  }

  /**
   * May the field be entered at a moment without protective equipment?
   *
   * @param field the field
   * @param moment the moment
   * @return the answer, with the moment from which the recorded intervals allow it
   */
  public SeasonAnswer mayEnter(String field, ZonedDateTime moment) {
    var place = rules.programme().field(field);
    var entries = EntryRule.all(rules.programme(), place, moment);
    var findings =
        entries.stream()
            .flatMap(entry -> entry.findings().stream())
            .sorted((a, b) -> b.permission().compareTo(a.permission()))
            .toList();
    var permission =
        findings.stream().map(RuleFinding::permission).reduce(Permission.ALLOWED, Permission::and);
    var from =
        entries.stream()
            .map(EntryRule.EntryFrom::until)
            .max((a, b) -> a.toInstant().compareTo(b.toInstant()));
    var otherwise =
        from.map(until -> "All intervals were over " + EntryRule.print(until) + ".")
            .orElse("No application to the crop is entered before that moment.");
    var words =
        permission == Permission.REFUSED
            ? "Not before " + EntryRule.print(from.orElseThrow()) + ". " + sentence(findings, "")
            : sentence(findings, otherwise);
    var answer =
        SeasonAnswer.of(
            "May "
                + field
                + " be entered at "
                + EntryRule.print(moment.withZoneSameInstant(place.zone()))
                + " without protective equipment?",
            Reply.of(permission),
            words,
            findings);
    return from.map(answer::at).orElse(answer);
  }

  /**
   * When may the field be entered after an application without protective equipment?
   *
   * @param name name of the application
   * @return the answer with its moment; not recorded if one interval of the mixture is not
   * @throws InputProblem if there is no such application
   */
  public SeasonAnswer whenEnter(String name) {
    var spraying = spraying(name);
    var place = rules.programme().field(spraying.field());
    var entry =
        EntryRule.all(rules.programme().withSprayings(List.of(spraying)), place, spraying.end())
            .get(0);
    boolean unknown =
        entry.findings().stream().anyMatch(each -> each.permission() == Permission.NOT_RECORDED);
    var until = EntryRule.print(entry.until());
    return SeasonAnswer.of(
            "When may " + spraying.field() + " be entered after " + spraying.mixture() + "?",
            unknown ? Reply.NOT_RECORDED : Reply.YES,
            unknown
                ? "Not before " + until + ", and one interval of the mixture is not recorded."
                : "From " + until + " on.",
            entry.findings())
        .at(entry.until());
  }

  private Spraying spraying(String name) {
    return rules.programme().sprayings().stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                InputProblem.of("the application \"" + name + "\" was asked for")
                    .expected("the name of an application of the programme")
                    .because("nothing is known of another one")
                    .mend("take the name from the diary"));
  }

  /**
   * How much of a product may still be used on a day?
   *
   * @param field the field
   * @param product the product
   * @param day the day
   * @return what each maximum leaves
   */
  public LeftToUse howMuchIsLeft(String field, String product, LocalDate day) {
    return LeftToUse.of(rules, rules.planned(field, product, day));
  }

  /**
   * Is a product of the same mode-of-action group as the last application?
   *
   * @param field the field
   * @param product the product
   * @param day day of the planned application
   * @return yes, no, or not recorded
   */
  public SeasonAnswer sameGroupAsLast(String field, String product, LocalDate day) {
    return GroupQuestion.ask(rules, field, product, day);
  }

  /**
   * It began to rain: was the rain-free time of the label reached? Of a mixture the longest counts.
   *
   * @param name name of the application
   * @param rainBegan when it began to rain
   * @return yes if it was reached, no, or not recorded
   * @throws InputProblem if there is no such application
   */
  public SeasonAnswer rainFreeReached(String name, ZonedDateTime rainBegan) {
    var spraying = spraying(name);
    var crop = rules.programme().plantingOf(spraying).map(each -> each.crop()).orElse("");
    var between = Duration.between(spraying.end().toInstant(), rainBegan.toInstant());
    var findings = new ArrayList<RuleFinding>();
    for (var product : spraying.products()) {
      var label = rules.programme().labels().find(product.product(), crop);
      var entry = label.map(each -> each.stewardship().rainFree()).orElse(LabelEntry.notRecorded());
      findings.add(rain(product.product() + " on " + crop, entry, between));
    }
    findings.sort((a, b) -> b.permission().compareTo(a.permission()));
    var permission = findings.get(0).permission();
    return SeasonAnswer.of(
            "Was the rain-free time of "
                + spraying.mixture()
                + " reached when it rained at "
                + EntryRule.print(rainBegan)
                + "?",
            Reply.of(permission),
            findings.get(0).record()
                + ", "
                + findings.get(0).limit()
                + ". "
                + findings.get(0).sentence(),
            findings)
        .at(rainBegan);
  }

  private static RuleFinding rain(String use, LabelEntry<Duration> entry, Duration between) {
    var rule = LimitRule.RAIN_FREE;
    if (entry instanceof LabelEntry.NotRecorded<Duration>) {
      return RuleFinding.notRecorded(rule, use, rule.words());
    }
    var after =
        between.isNegative()
            ? "The rain began before the application was over."
            : "The rain began " + hours(between) + " after its end.";
    if (entry instanceof LabelEntry.Stated<Duration> stated) {
      boolean reached = between.compareTo(stated.value()) >= 0;
      return RuleFinding.of(
          reached ? Permission.ALLOWED : Permission.REFUSED,
          rule,
          use,
          rule.words() + ": " + hours(stated.value()),
          after + (reached ? " Reached." : " Not reached; whether to repeat it is for the label."));
    }
    return RuleFinding.of(
        between.isNegative() ? Permission.REFUSED : Permission.ALLOWED,
        rule,
        use,
        rule.words() + ": none",
        after + " The label says that none is needed.");
  }

  private static String hours(Duration time) {
    long minutes = time.toMinutes();
    return minutes % 60 == 0 ? minutes / 60 + " h" : minutes / 60 + " h " + minutes % 60 + " min";
  }

  /**
   * May a natural enemy be released on a day, after what was applied and before what is planned?
   *
   * @param field the field
   * @param organism the natural enemy
   * @param day the day
   * @return yes, no, or not recorded where the table has no line
   */
  public SeasonAnswer mayRelease(String field, String organism, LocalDate day) {
    var place = rules.programme().field(field);
    var release = new agro.programme.EnemyRelease("asked", organism, field, day, "");
    var findings = new ArrayList<RuleFinding>();
    for (var spraying : rules.programme().sprayingsOf(field)) {
      for (var product : spraying.products()) {
        findings.add(HelperRule.one(rules, place, spraying, product.product(), release));
      }
    }
    findings.sort((a, b) -> b.permission().compareTo(a.permission()));
    var permission =
        findings.stream().map(RuleFinding::permission).reduce(Permission.ALLOWED, Permission::and);
    return SeasonAnswer.of(
            "May " + organism + " be released in " + field + " on " + day + "?",
            Reply.of(permission),
            sentence(findings, "All waiting days are kept."),
            findings)
        .on(day);
  }

  /**
   * The rules that are asked.
   *
   * @return programme, side effects and hours of flight
   */
  public SeasonRules rules() {
    return rules;
  }
}
