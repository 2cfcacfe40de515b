package agro.course.paper;

import agro.course.CourseContext;
import agro.course.CourseSetting;
import agro.course.topic.ExerciseCatalogue;
import agro.report.InputProblem;
import agro.working.TextLanguage;
import java.util.Objects;
import java.util.Optional;

/**
 * Everything that papers of a class depend on. The same plan gives the same papers, byte for byte,
 * for as long as the generator's version is kept.
 *
 * @param blueprint what is asked
 * @param classList who is asked, in order
 * @param seed seed of all numbers
 * @param setting place and units; empty for the invented vale of the demonstration data
 * @param language language of the papers
 * @param kind at home or in a room
 * @param sitting 1 for the first time, 2 and more for resits, at most 20
 * @param sameTypes whether everybody gets the same types of exercises in the same order, with
 *     numbers of his or her own
 * @param title what stands above the papers; empty for the usual words
 * @param catalogue types to choose from, of one version of the generator
 */
public record PaperPlan(
    Blueprint blueprint,
    ClassList classList,
    long seed,
    Optional<CourseSetting> setting,
    TextLanguage language,
    PaperKind kind,
    int sitting,
    boolean sameTypes,
    String title,
    ExerciseCatalogue catalogue) {

  private static final int MOST_SITTINGS = 20;

  /** Refuses sittings that nobody holds. */
  public PaperPlan {
    Objects.requireNonNull(blueprint, "blueprint");
    Objects.requireNonNull(classList, "classList");
    Objects.requireNonNull(setting, "setting");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(catalogue, "catalogue");
    title = title.strip();
    if (sitting < 1 || sitting > MOST_SITTINGS) {
      throw InputProblem.of("sitting " + sitting)
          .expected("1 for the first time, 2 to " + MOST_SITTINGS + " for resits")
          .because("a resit is set apart from all sittings before it")
          .mend("count sittings from 1");
    }
  }

  /**
   * Homework of the first sitting, in English, in the invented vale, from the newest generator.
   *
   * @param blueprint what is asked
   * @param classList who is asked
   * @param seed seed of all numbers
   * @return the plan, to be changed with the methods below
   */
  public static PaperPlan of(Blueprint blueprint, ClassList classList, long seed) {
    return new PaperPlan(
        blueprint,
        classList,
        seed,
        Optional.empty(),
        TextLanguage.ENGLISH,
        PaperKind.HOMEWORK,
        1,
        true,
        "",
        ExerciseCatalogue.latest());
  }

  /**
   * This plan in another place or in other units.
   *
   * @param place the setting
   * @return the changed plan
   */
  public PaperPlan at(CourseSetting place) {
    return new PaperPlan(
        blueprint,
        classList,
        seed,
        Optional.of(place),
        language,
        kind,
        sitting,
        sameTypes,
        title,
        catalogue);
  }

  /**
   * This plan in another language. Numbers stay as they are.
   *
   * @param other the language
   * @return the changed plan
   */
  public PaperPlan in(TextLanguage other) {
    return new PaperPlan(
        blueprint, classList, seed, setting, other, kind, sitting, sameTypes, title, catalogue);
  }

  /**
   * This plan as homework or as an exam.
   *
   * @param other the kind
   * @return the changed plan
   */
  public PaperPlan as(PaperKind other) {
    return new PaperPlan(
        blueprint, classList, seed, setting, language, other, sitting, sameTypes, title, catalogue);
  }

  /**
   * This plan for another sitting. Blueprint, class list, seed and place stay those of the first
   * one, since the sittings before are set again from them in order to keep clear of them.
   *
   * @param number 1 for the first time, 2 and more for resits
   * @return the changed plan
   */
  public PaperPlan forSitting(int number) {
    return new PaperPlan(
        blueprint, classList, seed, setting, language, kind, number, sameTypes, title, catalogue);
  }

  /**
   * This plan with other types of exercises for each student, as far as the topics have several.
   *
   * @return the changed plan
   */
  public PaperPlan withTypesOfTheirOwn() {
    return new PaperPlan(
        blueprint, classList, seed, setting, language, kind, sitting, false, title, catalogue);
  }

  /**
   * This plan with a title of the teacher's.
   *
   * @param words what stands above the papers
   * @return the changed plan
   */
  public PaperPlan titled(String words) {
    return new PaperPlan(
        blueprint, classList, seed, setting, language, kind, sitting, sameTypes, words, catalogue);
  }

  /**
   * This plan with other types to choose from, for example those of an older generator.
   *
   * @param types the types
   * @return the changed plan
   */
  public PaperPlan from(ExerciseCatalogue types) {
    return new PaperPlan(
        blueprint, classList, seed, setting, language, kind, sitting, sameTypes, title, types);
  }

  /**
   * For whom the exercises are set.
   *
   * @return place, units and language
   */
  public CourseContext context() {
    return new CourseContext(
        setting.orElseGet(() -> CourseSetting.osmereVale(language)),
        PaperWords.of(language),
        kind == PaperKind.EXAM);
  }

  /**
   * What stands above the papers.
   *
   * @return the teacher's title or the usual words
   */
  public String heading() {
    return title.isEmpty() ? PaperWords.of(language).say("title." + kind.name()) : title;
  }

  /**
   * What the papers can be set again from, as printed on each page.
   *
   * @return seed, generator and, for a resit, the sitting
   */
  public String origin() {
    var words = PaperWords.of(language);
    var version = catalogue.version().number();
    return sitting == 1
        ? words.say("origin", "seed", seed, "version", version)
        : words.say("origin.resit", "seed", seed, "version", version, "sitting", sitting);
  }
}
