package agro.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import org.junit.jupiter.api.Test;

/** The four parts of a problem, and places in words. */
class InputProblemTest {

  private static InputProblem atLine() {
    return InputProblem.at(SourceLocation.line("log.csv", 7).column("minimum"), "the minimum is 31")
        .expected("at most the maximum, 20")
        .because("a day cannot be colder than its coldest hour")
        .mend("swap the two numbers");
  }

  @Test
  void messageHasPlaceAndFourParts() {
    assertThat(atLine())
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage(
            """
            log.csv, line 7, column "minimum": the minimum is 31.
              Expected: at most the maximum, 20.
              Why: a day cannot be colder than its coldest hour.
              Mend: swap the two numbers.""");
  }

  @Test
  void partsAreKept() {
    var problem = atLine();
    assertThat(problem.location()).isEqualTo(new SourceLocation("log.csv", 7, "minimum"));
    assertThat(problem.read()).isEqualTo("the minimum is 31");
    assertThat(problem.expected()).isEqualTo("at most the maximum, 20");
    assertThat(problem.why()).isEqualTo("a day cannot be colder than its coldest hour");
    assertThat(problem.cure()).isEqualTo("swap the two numbers");
  }

  @Test
  void valueFromCodeHasNoPlace() {
    var problem = InputProblem.of("the share is 2").expected("0 to 1").because("x").mend("y");
    assertThat(problem.location()).isEqualTo(SourceLocation.NONE);
    assertThat(problem).hasMessageStartingWith("the share is 2.\n");
  }

  @Test
  void partsSurviveSerialization() throws IOException, ClassNotFoundException {
    var bytes = new ByteArrayOutputStream();
    try (var out = new ObjectOutputStream(bytes)) {
      out.writeObject(atLine());
    }
    try (var in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      var copy = (InputProblem) in.readObject();
      assertThat(copy).hasMessage(atLine().getMessage());
      assertThat(copy.cure()).isEqualTo("swap the two numbers");
      assertThat(copy.location()).isEqualTo(SourceLocation.NONE);
    }
  }

  @Test
  void placesInWords() {
    assertThat(SourceLocation.NONE).hasToString("");
    assertThat(SourceLocation.file("log.csv")).hasToString("log.csv");
    assertThat(SourceLocation.line("log.csv", 3)).hasToString("log.csv, line 3");
    assertThat(SourceLocation.file("log.csv").column("date"))
        .hasToString("log.csv, column \"date\"");
    assertThat(SourceLocation.line("", 3).column("date")).hasToString("line 3, column \"date\"");
    assertThat(SourceLocation.NONE.column("date")).hasToString("column \"date\"");
  }

  @Test
  void linesCountFromOne() {
    assertThatThrownBy(() -> SourceLocation.line("log.csv", -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("line numbers count from 1, but got -1");
  }
}
