package agro.notebook;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/**
 * The package map of the notebook. The kernel and the runner know no agronomy: they would run
 * anybody's notebook. Only the commands join the two.
 */
@AnalyzeClasses(packages = "agro.notebook", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  private static final String[] AGRONOMY = {
    "agro.course..",
    "agro.programme..",
    "agro.season..",
    "agro.generation..",
    "agro.sampling..",
    "agro.development..",
    "agro.trial..",
    "agro.dose..",
    "agro.weather..",
    "agro.stats.."
  };
  private static final String[] WORKING = {
    "agro.working..", "agro.units..", "agro.report..", "agro.source.."
  };

  @ArchTest
  static final ArchRule ARROWS =
      layeredArchitecture()
          .consideringOnlyDependenciesInAnyPackage("agro..")
          .withOptionalLayers(true)
          .layer("command")
          .definedBy("agro.notebook.command..")
          .layer("page")
          .definedBy("agro.notebook.page..")
          .layer("figure")
          .definedBy("agro.notebook.figure..")
          .layer("table")
          .definedBy("agro.notebook.table..")
          .layer("run")
          .definedBy("agro.notebook.run..")
          .layer("jupyter")
          .definedBy("agro.notebook.jupyter..")
          .layer("magic")
          .definedBy("agro.notebook.magic..")
          .layer("install")
          .definedBy("agro.notebook.install..")
          .layer("hint")
          .definedBy("agro.notebook.hint..")
          .layer("adapter")
          .definedBy("agro.notebook.adapter..")
          .layer("kernel")
          .definedBy("agro.notebook.kernel..")
          .layer("insight")
          .definedBy("agro.notebook.insight..")
          .layer("bytecode")
          .definedBy("agro.notebook.bytecode..")
          .layer("display")
          .definedBy("agro.notebook.display..")
          .layer("agronomy")
          .definedBy(AGRONOMY)
          .layer("reading")
          .definedBy("agro.reading..")
          .layer("working")
          .definedBy(WORKING)
          .whereLayer("command")
          .mayNotBeAccessedByAnyLayer()
          .whereLayer("page")
          .mayOnlyAccessLayers("figure", "table", "display", "agronomy", "reading", "working")
          .whereLayer("figure")
          .mayOnlyAccessLayers("display", "agronomy", "reading", "working")
          .whereLayer("table")
          .mayOnlyAccessLayers("display", "agronomy", "reading", "working")
          .whereLayer("run")
          .mayOnlyAccessLayers("kernel", "display", "reading", "working")
          .whereLayer("jupyter")
          .mayOnlyAccessLayers("kernel", "insight", "display", "working")
          .whereLayer("magic")
          .mayOnlyAccessLayers("kernel", "display")
          .whereLayer("install")
          .mayOnlyAccessLayers("reading", "working")
          .whereLayer("hint")
          .mayOnlyAccessLayers("display", "agronomy", "reading", "working")
          .whereLayer("adapter")
          .mayOnlyAccessLayers("display")
          .whereLayer("kernel")
          .mayOnlyAccessLayers("bytecode", "insight", "display")
          .whereLayer("insight")
          .mayOnlyAccessLayers("display")
          .whereLayer("bytecode")
          .mayNotAccessAnyLayer()
          .whereLayer("display")
          .mayOnlyAccessLayers("working")
          .ensureAllClassesAreContainedInArchitecture()
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule NO_CIRCLES =
      slices().matching("agro.notebook.(**)").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule NO_LUMBER_ROOMS =
      noClasses()
          .should()
          .resideInAnyPackage("..util..", "..utils..", "..helper..", "..helpers..", "..common..")
          .allowEmptyShould(true)
          .as("no package is named after nothing in particular");

  @ArchTest
  static final ArchRule TABLES_AND_CHARTS_STAY_AT_THE_EDGE =
      noClasses()
          .that()
          .resideInAnyPackage(
              "agro.notebook.run..", "agro.notebook.kernel..", "agro.notebook.display..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tech.tablesaw..", "org.knowm.xchart..")
          .allowEmptyShould(true);
}
