package agro.course.paper;

import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.ExerciseType;
import agro.course.topic.ExerciseCatalogue;
import agro.reading.NearestWord;
import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Some questions of a paper that are alike.
 *
 * @param topic what they are about
 * @param difficulty how much they ask for
 * @param questions how many, 1 or more
 * @param marks marks of each of them, above zero
 * @param form how they are answered
 * @param type code of one certain type of exercise; empty for any of the topic
 * @param location where the line was read
 */
public record BlueprintLine(
    CourseTopic topic,
    Difficulty difficulty,
    int questions,
    double marks,
    QuestionForm form,
    Optional<String> type,
    SourceLocation location) {

  /** Refuses lines without questions or marks. */
  public BlueprintLine {
    Objects.requireNonNull(topic, "topic");
    Objects.requireNonNull(difficulty, "difficulty");
    Objects.requireNonNull(form, "form");
    Objects.requireNonNull(type, "type");
    Objects.requireNonNull(location, "location");
    if (questions < 1) {
      throw InputProblem.at(location, "there are " + questions + " questions")
          .expected("1 question or more")
          .because("a line of a blueprint asks for something")
          .mend("write how many, or remove the line");
    }
    if (!(marks > 0 && Double.isFinite(marks))) {
      throw InputProblem.at(location, "a question has " + marks + " marks")
          .expected("marks above zero for each question")
          .because("the marks of a paper are added up from them")
          .mend("write the marks of one question of this line");
    }
  }

  /**
   * The types that may be asked.
   *
   * @param catalogue types to choose from
   * @return at least one
   * @throws InputProblem if the catalogue has none, with what it has
   */
  List<ExerciseType> types(ExerciseCatalogue catalogue) {
    return type.isEmpty() ? ofTopic(catalogue) : List.of(certain(catalogue, type.get()));
  }

  private List<ExerciseType> ofTopic(ExerciseCatalogue catalogue) {
    var fitting = catalogue.types(topic, difficulty);
    if (fitting.isEmpty()) {
      var has =
          Arrays.stream(Difficulty.values())
              .filter(each -> !catalogue.types(topic, each).isEmpty())
              .map(Difficulty::code)
              .collect(Collectors.joining(" or "));
      throw InputProblem.at(
              location, "the topic " + topic.code() + " has no " + difficulty.code() + " exercises")
          .expected(has.isEmpty() ? "a topic with exercises" : has + " for " + topic.code())
          .because("generator " + catalogue.version().number() + " has no others")
          .mend("change the difficulty, or ask for another topic");
    }
    return fitting;
  }

  private ExerciseType certain(ExerciseCatalogue catalogue, String code) {
    var known =
        catalogue.types().stream().filter(each -> each.topic() == topic).map(ExerciseType::code);
    var codes = known.toList();
    if (!codes.contains(code)) {
      throw InputProblem.at(location, "the topic " + topic.code() + " has no type \"" + code + "\"")
          .expected("one of " + String.join(", ", codes))
          .because("generator " + catalogue.version().number() + " has no others")
          .mend(
              NearestWord.to(code, codes)
                  .map(near -> "write \"" + near + "\" if that is meant")
                  .orElse("leave the type empty to have any of the topic"));
    }
    var found = catalogue.type(code);
    if (!found.difficulties().contains(difficulty)) {
      throw InputProblem.at(location, "the type " + code + " is never " + difficulty.code())
          .expected(
              found.difficulties().stream()
                  .sorted()
                  .map(Difficulty::code)
                  .collect(Collectors.joining(" or ")))
          .because("a type sets only difficulties that suit it")
          .mend("change the difficulty, or leave the type empty");
    }
    return found;
  }
}
