package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.topic.ExerciseCatalogue;
import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BlueprintTest {

  private static Blueprint parse(String lines) {
    return Blueprint.parse(
        "blueprint.csv",
        "topic;difficulty;questions;marks;form;type\n" + lines,
        DelimitedFormat.SEMICOLON);
  }

  @Test
  void marksOfALineAreThoseOfEachQuestion() {
    var blueprint = PaperSamples.blueprint();
    assertThat(blueprint.questions()).isEqualTo(4);
    assertThat(blueprint.marks()).isEqualTo(2 + 3 + 2 * 5.0);
    assertThat(blueprint.presentation().toText()).contains("4 questions for 15 marks");
  }

  @Test
  void aFileAndCodeSayTheSame() {
    var read = parse("dose;basic;2;1,5;;\n").lines().get(0);
    var written = Blueprint.empty().with(CourseTopic.DOSE, Difficulty.BASIC, 2, 1.5).lines().get(0);
    assertThat(read).usingRecursiveComparison().ignoringFields("location").isEqualTo(written);
    assertThat(parse("DOSE;Basic;1;1;OPTIONS;\n").lines().get(0).form())
        .isEqualTo(QuestionForm.OPTIONS);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "brewing;basic;1;1;; | the topic \"brewing\" | degree-days",
        "dose;fiendish;1;1;; | the difficulty \"fiendish\" | demanding",
        "dose;basic;0;1;; | 0 questions | 1 question or more",
        "dose;basic;-1;1;; | -1 | 0 or more",
        "dose;basic;1,5;1;; | 1,5 | whole number",
        "dose;basic;1;0;; | 0.0 marks | above zero",
        "dose;basic;1;many;; | many | number",
        "dose;basic;1;1;guess; | guess | options",
        "dose;basic;200;1;; | 201 questions | at most 200",
      })
  void whatCannotBeAskedIsRefused(String line, String read, String expected) {
    assertThatThrownBy(() -> parse("dose;basic;1;1;;\n" + line + "\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining(read.strip())
        .hasMessageContaining(expected.strip());
  }

  @Test
  void aLineIsNamedWhereItIsWrong() {
    assertThatThrownBy(() -> parse("dose;basic;1;1;;\nbrewing;basic;1;1;;\n"))
        .hasMessageContaining("blueprint.csv")
        .hasMessageContaining("line 3");
  }

  @Test
  void theCatalogueHasToKnowWhatIsAsked() {
    var catalogue = ExerciseCatalogue.latest();
    assertThatThrownBy(() -> parse("probit;basic;1;1;;dose-field\n").check(catalogue))
        .hasMessageContaining("line 2")
        .hasMessageContaining("no type \"dose-field\"")
        .hasMessageContaining("probit-");
    assertThatThrownBy(() -> parse("dose;demanding;1;1;;dose-field\n").check(catalogue))
        .hasMessageContaining("line 2")
        .hasMessageContaining("dose-field is never demanding");
    assertThatThrownBy(() -> parse("dose;basic;1;1;;dose-feild\n").check(catalogue))
        .hasMessageContaining("write \"dose-field\"");
    var none =
        new ExerciseCatalogue(
            catalogue.version(), catalogue.types(CourseTopic.PROBIT, Difficulty.BASIC));
    assertThatThrownBy(() -> parse("probit;routine;1;1;;\n").check(none))
        .hasMessageContaining("no routine exercises")
        .hasMessageContaining("basic for probit");
    assertThatThrownBy(() -> Blueprint.empty().check(catalogue))
        .hasMessageContaining("asks for nothing");
    PaperSamples.blueprint().check(catalogue);
  }
}
