package agro.programme;

import agro.reading.NearestWord;
import agro.report.InputProblem;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything that the limits of a season are held against.
 *
 * @param labels the user's label records
 * @param localRules rules beside the label
 * @param fields the fields
 * @param plantings the crops in them
 * @param sprayings applications made or planned, in any order
 * @param releases releases of natural enemies
 * @param blooms bloom of crops and weeds
 * @param generations days of the pest's generations, where they are known
 * @param seasonStart day of the year on which a season of the label begins
 */
public record Programme(
    LabelBook labels,
    List<LocalRule> localRules,
    List<FarmField> fields,
    List<CropPlanting> plantings,
    List<Spraying> sprayings,
    List<EnemyRelease> releases,
    List<BloomPeriod> blooms,
    List<GenerationDays> generations,
    MonthDay seasonStart) {

  /** Refuses names that the other tables do not know and two crops on one field at once. */
  public Programme {
    Objects.requireNonNull(labels, "labels");
    Objects.requireNonNull(seasonStart, "seasonStart");
    localRules = List.copyOf(localRules);
    fields = List.copyOf(fields);
    plantings = List.copyOf(plantings);
    sprayings = List.copyOf(sprayings);
    releases = List.copyOf(releases);
    blooms = List.copyOf(blooms);
    generations = List.copyOf(generations);
    ProgrammeNames.check(fields, plantings, sprayings);
    if (seasonStart.equals(MonthDay.of(2, 29))) {
      throw InputProblem.of("a season that begins on 29 February")
          .expected("a day that every year has")
          .because("three of four seasons would have no first day")
          .mend("let it begin on 1 March");
    }
  }

  /**
   * A programme without applications, in which a season is a calendar year.
   *
   * @param labels the user's label records
   * @param fields the fields
   * @param plantings the crops in them
   * @return the programme
   */
  public static Programme of(
      LabelBook labels, List<FarmField> fields, List<CropPlanting> plantings) {
    return new Programme(
        labels,
        List.of(),
        fields,
        plantings,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        MonthDay.of(1, 1));
  }

  /**
   * The same with applications in place of the present ones.
   *
   * @param other the applications
   * @return a new programme
   */
  public Programme withSprayings(Collection<Spraying> other) {
    return new Programme(
        labels,
        localRules,
        fields,
        plantings,
        List.copyOf(other),
        releases,
        blooms,
        generations,
        seasonStart);
  }

  /**
   * The same with one more application.
   *
   * @param spraying the application
   * @return a new programme
   */
  public Programme with(Spraying spraying) {
    var more = new ArrayList<>(sprayings);
    more.add(spraying);
    return withSprayings(more);
  }

  /**
   * The same with rules beside the label.
   *
   * @param other the rules
   * @return a new programme
   */
  public Programme withLocalRules(Collection<LocalRule> other) {
    return new Programme(
        labels,
        List.copyOf(other),
        fields,
        plantings,
        sprayings,
        releases,
        blooms,
        generations,
        seasonStart);
  }

  /**
   * The same with releases of natural enemies.
   *
   * @param other the releases
   * @return a new programme
   */
  public Programme withReleases(Collection<EnemyRelease> other) {
    return new Programme(
        labels,
        localRules,
        fields,
        plantings,
        sprayings,
        List.copyOf(other),
        blooms,
        generations,
        seasonStart);
  }

  /**
   * The same with bloom.
   *
   * @param other periods of bloom
   * @return a new programme
   */
  public Programme withBlooms(Collection<BloomPeriod> other) {
    return new Programme(
        labels,
        localRules,
        fields,
        plantings,
        sprayings,
        releases,
        List.copyOf(other),
        generations,
        seasonStart);
  }

  /**
   * The same with the generations of pests.
   *
   * @param other their days
   * @return a new programme
   */
  public Programme withGenerations(Collection<GenerationDays> other) {
    return new Programme(
        labels,
        localRules,
        fields,
        plantings,
        sprayings,
        releases,
        blooms,
        List.copyOf(other),
        seasonStart);
  }

  /**
   * The same with another beginning of the season.
   *
   * @param other first day of a season
   * @return a new programme
   */
  public Programme seasonFrom(MonthDay other) {
    return new Programme(
        labels, localRules, fields, plantings, sprayings, releases, blooms, generations, other);
  }

  /**
   * A field by its name.
   *
   * @param name the name
   * @return the field
   * @throws InputProblem if there is none of that name
   */
  public FarmField field(String name) {
    return fields.stream()
        .filter(each -> each.name().equals(name))
        .findFirst()
        .orElseThrow(
            () -> {
              var names = fields.stream().map(FarmField::name).toList();
              return InputProblem.of("the field \"" + name + "\" was asked for")
                  .expected("one of the fields: " + String.join(", ", names))
                  .because("nothing is known of another one; capitals and spaces count")
                  .mend(
                      NearestWord.to(name, names)
                          .map(near -> "ask for \"" + near + "\" if that is meant")
                          .orElse("add the field"));
            });
  }

  /**
   * The crop in a field on a day.
   *
   * @param field the field
   * @param day the day
   * @return the planting; nothing if none stands there
   */
  public Optional<CropPlanting> plantingOn(String field, LocalDate day) {
    return plantings.stream()
        .filter(each -> each.field().equals(field) && each.standsOn(day))
        .findFirst();
  }

  /**
   * The crop that an application counts for: the one that stands on its day, or, where it was made
   * before the field was planted, the next one.
   *
   * @param spraying the application
   * @return the planting; nothing if none comes
   */
  public Optional<CropPlanting> plantingOf(Spraying spraying) {
    var zone = field(spraying.field()).zone();
    return plantingFor(spraying.field(), spraying.day(zone));
  }

  /**
   * The crop that an application on a day would count for.
   *
   * @param field the field
   * @param day the day
   * @return the one that stands then, else the next one; nothing if none comes
   */
  public Optional<CropPlanting> plantingFor(String field, LocalDate day) {
    var standing = plantingOn(field, day);
    return standing.isPresent()
        ? standing
        : plantings.stream()
            .filter(each -> each.field().equals(field) && each.planted().isAfter(day))
            .min((a, b) -> a.planted().compareTo(b.planted()));
  }

  /**
   * First day of the season in which a day lies.
   *
   * @param day the day
   * @return the first day
   */
  public LocalDate seasonOf(LocalDate day) {
    var start = seasonStart.atYear(day.getYear());
    return start.isAfter(day) ? seasonStart.atYear(day.getYear() - 1) : start;
  }

  /**
   * The applications to a field in the order of their ends.
   *
   * @param field the field
   * @return the applications
   */
  public List<Spraying> sprayingsOf(String field) {
    return sprayings.stream()
        .filter(each -> each.field().equals(field))
        .sorted((a, b) -> a.end().toInstant().compareTo(b.end().toInstant()))
        .toList();
  }
}
