package agro;

import static com.tngtech.archunit.core.domain.JavaCall.Predicates.target;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.util.Date;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The package map of the library. A new package fails here until it is drawn into the map; a
 * package that is drawn but does not exist yet does no harm.
 */
@AnalyzeClasses(packages = "agro", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final Set<String> FLOOR =
      Set.of("stats", "reading", "working", "units", "report", "source");

  /** Each package with the packages that it may import, from top to bottom. */
  private static final Map<String, Set<String>> MAY_IMPORT =
      Map.ofEntries(
          entry(
              "course",
              floorAnd(
                  "programme",
                  "season",
                  "generation",
                  "sampling",
                  "development",
                  "trial",
                  "dose",
                  "weather")),
          entry(
              "programme",
              floorAnd("season", "generation", "sampling", "development", "dose", "weather")),
          entry("season", floorAnd("generation", "development", "weather")),
          entry("generation", floorAnd("development", "weather")),
          entry("sampling", floorAnd("development")),
          entry("development", floorAnd("weather")),
          entry("trial", floorAnd("sampling")),
          entry("dose", FLOOR),
          entry("weather", FLOOR),
          entry("stats", Set.of("report", "source")),
          entry("reading", Set.of("units", "report", "source")),
          entry("working", Set.of("units", "report", "source")),
          entry("units", Set.of("report", "source")),
          entry("report", Set.of("source")),
          entry("source", Set.of()));

  @ArchTest static final ArchRule ARROWS = arrows();

  @ArchTest
  static final ArchRule NO_CIRCLES = slices().matching("agro.(**)").should().beFreeOfCycles();

  /** The parts of dose import dose itself and never each other. */
  @ArchTest
  static final ArchRule DOSE_PARTS_STAND_ALONE =
      slices().matching("agro.dose.(*)..").should().notDependOnEachOther();

  @ArchTest
  static final ArchRule DOSE_KNOWS_NO_PART_OF_IT =
      noClasses()
          .that()
          .resideInAPackage("agro.dose")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("agro.dose.tank..", "agro.dose.sprayer..", "agro.dose.scaling..");

  /** Parts of a package and the other parts that each may import. */
  private static final Map<String, Set<String>> PARTS =
      Map.ofEntries(
          entry("weather.log", Set.of("archive", "quality")),
          entry("weather.archive", Set.of()),
          entry("weather.quality", Set.of()),
          entry("weather.gap", Set.of("climate")),
          entry("weather.climate", Set.of()),
          entry("weather.curve", Set.of("sun")),
          entry("weather.sun", Set.of()),
          entry("weather.siting", Set.of("curve", "sun", "climate")),
          entry("development.rate", Set.of()),
          entry("development.cycle", Set.of("rate")),
          entry("development.field", Set.of()),
          entry("generation.skill", Set.of()),
          entry("sampling.dispersion", Set.of()),
          entry("sampling.size", Set.of()),
          entry("sampling.presence", Set.of()),
          entry("sampling.sequential", Set.of("presence", "size")),
          entry("sampling.injury", Set.of("size", "presence")),
          entry("sampling.field", Set.of("size", "presence", "sequential", "injury")),
          entry("stats.multiple", Set.of()),
          entry("stats.assumption", Set.of()),
          entry("stats.rank", Set.of("multiple")),
          entry("stats.power", Set.of("multiple")),
          entry("stats.linear", Set.of("multiple")),
          entry("stats.glm", Set.of("linear", "multiple")),
          entry("stats.mixed", Set.of("linear", "multiple")),
          entry("trial.layout", Set.of()),
          entry("trial.efficacy", Set.of()),
          entry("trial.load", Set.of()),
          entry("trial.bioassay", Set.of()),
          entry("trial.analysis", Set.of("efficacy", "load")),
          entry("trial.series", Set.of("analysis", "efficacy", "load")),
          entry("programme.interval", Set.of()),
          entry("programme.rotation", Set.of("interval")),
          entry("programme.window", Set.of()),
          entry("programme.diary", Set.of()),
          entry("programme.bulletin", Set.of("interval", "rotation", "window", "diary")),
          entry("course.topic", Set.of("handwork", "sheet")),
          entry("course.marking", Set.of()),
          entry("course.paper", Set.of("topic", "marking", "sheet")),
          entry("course.sheet", Set.of()),
          entry("course.handwork", Set.of("sheet")),
          entry("course.practical", Set.of()));

  @ArchTest
  static void partsAreOnTheMapAndImportNoOthers(JavaClasses classes) {
    var found = new TreeSet<String>();
    for (JavaClass each : classes) {
      var part = part(each.getPackageName());
      if (part.isEmpty()) {
        continue;
      }
      for (Dependency dependency : each.getDirectDependenciesFromSelf()) {
        var target = part(dependency.getTargetClass().getPackageName());
        boolean sibling =
            !target.isEmpty() && !target.equals(part) && parent(target).equals(parent(part));
        if (sibling
            && !PARTS
                .getOrDefault(part, Set.of())
                .contains(target.substring(target.indexOf('.') + 1))) {
          found.add(part + " imports " + target);
        }
      }
      if (!PARTS.containsKey(part)) {
        found.add(part + " is not on the map");
      }
    }
    assertThat(found).isEmpty();
  }

  /** For example "weather.log", or nothing for a package that has no parts. */
  private static String part(String packageName) {
    var names = packageName.split("\\.", -1);
    boolean hasParts =
        names.length > 2
            && Set.of(
                    "weather",
                    "development",
                    "generation",
                    "sampling",
                    "stats",
                    "trial",
                    "programme",
                    "course")
                .contains(names[1]);
    return hasParts ? names[1] + "." + names[2] : "";
  }

  private static String parent(String part) {
    return part.substring(0, part.indexOf('.'));
  }

  @ArchTest
  static final ArchRule NO_LUMBER_ROOMS =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..utils..", "..helper..", "..helpers..", "..common..")
          .as("no package is named after nothing in particular");

  @ArchTest
  static final ArchRule CORE_NEVER_SEES_THE_NOTEBOOK =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("agro.notebook..", "java.awt..", "javax.swing..", "jdk.jshell..");

  @ArchTest
  static final ArchRule NOTHING_ASKS_THE_CLOCK =
      noClasses()
          .should()
          .callMethodWhere(
              target(nameMatching("now"))
                  .and(target(owner(nameMatching("java\\.time\\..*"))))
                  .as("the time of day is asked"))
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callConstructor(Date.class)
          .because("the issue date is an argument, so that a page can be made again");

  @ArchTest
  static final ArchRule CHANCE_HAS_A_SEED =
      noClasses()
          .should()
          .callMethod(Math.class, "random")
          .orShould()
          .callConstructor(Random.class)
          .orShould()
          .callMethodWhere(
              target(owner(nameMatching("java\\.util\\.(concurrent\\.ThreadLocalRandom|UUID)")))
                  .and(target(nameMatching("current|randomUUID")))
                  .as("chance without a seed is asked"))
          .because("the same seed gives the same result");

  private static LayeredArchitecture arrows() {
    LayeredArchitecture map =
        layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("agro..")
            .withOptionalLayers(true);
    for (String name : new TreeSet<>(MAY_IMPORT.keySet())) {
      map = map.layer(name).definedBy("agro." + name + "..");
    }
    for (Map.Entry<String, Set<String>> arrow : new TreeMap<>(MAY_IMPORT).entrySet()) {
      String[] below = arrow.getValue().toArray(String[]::new);
      map =
          below.length == 0
              ? map.whereLayer(arrow.getKey()).mayNotAccessAnyLayer()
              : map.whereLayer(arrow.getKey()).mayOnlyAccessLayers(below);
    }
    return map.ensureAllClassesAreContainedInArchitecture();
  }

  private static Set<String> floorAnd(String... higher) {
    return Stream.concat(FLOOR.stream(), Stream.of(higher)).collect(Collectors.toUnmodifiableSet());
  }
}
