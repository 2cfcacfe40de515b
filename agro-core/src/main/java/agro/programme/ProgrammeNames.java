package agro.programme;

import agro.report.InputProblem;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Names that tables share, and crops that follow one another. */
final class ProgrammeNames {

  private ProgrammeNames() {}

  static void check(
      List<FarmField> fields, List<CropPlanting> plantings, List<Spraying> sprayings) {
    var names = new HashSet<String>();
    for (var field : fields) {
      once(names, "field", field.name());
    }
    var planted = new HashSet<String>();
    for (var planting : plantings) {
      once(planted, "planting", planting.name());
      known(names, "the planting " + planting.name(), planting.field());
    }
    var entries = new HashSet<String>();
    for (var spraying : sprayings) {
      once(entries, "application", spraying.name());
      known(names, "the application " + spraying.name(), spraying.field());
    }
    for (int i = 0; i < plantings.size(); i++) {
      for (int j = 0; j < i; j++) {
        apart(plantings.get(j), plantings.get(i));
      }
    }
  }

  private static void once(Set<String> names, String what, String name) {
    if (!names.add(name)) {
      throw InputProblem.of("the " + what + " \"" + name + "\" for the second time")
          .expected("each name once")
          .because("an entry could mean either of the two")
          .mend("give one of them another name, or remove it");
    }
  }

  private static void known(Set<String> fields, String where, String field) {
    if (!fields.contains(field)) {
      throw InputProblem.of(where + " is of the field \"" + field + "\"")
          .expected("one of the fields: " + String.join(", ", fields.stream().sorted().toList()))
          .because("limits are counted field by field; capitals and spaces count")
          .mend("correct the name, or add the field");
    }
  }

  private static void apart(CropPlanting one, CropPlanting other) {
    boolean together =
        one.field().equals(other.field())
            && !one.planted().isAfter(other.cleared().orElse(LocalDate.MAX))
            && !other.planted().isAfter(one.cleared().orElse(LocalDate.MAX));
    if (together) {
      throw InputProblem.of(
              one.name() + " and " + other.name() + " stand in " + one.field() + " at once")
          .expected("one crop at a time in a field")
          .because("it is unknown for which of the two an application counts")
          .mend("state the day on which the first was cleared, or make two fields of it");
    }
  }
}
