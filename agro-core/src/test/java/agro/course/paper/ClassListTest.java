package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.reading.DelimitedFormat;
import agro.report.InputProblem;
import org.junit.jupiter.api.Test;

class ClassListTest {

  private static ClassList parse(String text) {
    return ClassList.parse("class.csv", text, DelimitedFormat.COMMA);
  }

  @Test
  void namesAndGroupsAreOptional() {
    var list = parse("student,name,group\nS1,\"One, A.\",north\n 02 ,,\n");
    assertThat(list.students())
        .containsExactly(new CourseStudent("S1", "One, A.", "north"), CourseStudent.of("02"));
    assertThat(parse("student\nS1\n").students()).containsExactly(CourseStudent.of("S1"));
    assertThat(list.student("s1")).contains(list.students().get(0));
    assertThat(list.student("2")).isEmpty();
  }

  @Test
  void idsComeOnceAndAreNeverBlank() {
    assertThatThrownBy(() -> parse("student,name\nS1,x\n,y\n"))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("line 3");
    assertThatThrownBy(() -> parse("student\nS1\nS2\ns1\n"))
        .hasMessageContaining("line 4")
        .hasMessageContaining("in line 2");
    assertThatThrownBy(() -> ClassList.of("S1", "S1")).hasMessageContaining("\"S1\"");
    assertThatThrownBy(() -> parse("student\n")).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> parse("name\nx\n")).hasMessageContaining("student");
  }

  @Test
  void anIdThatLooksLikeAFormulaIsFoundAgain() {
    var list = parse("student\n=1+1\n");
    assertThat(list.student("'=1+1")).contains(CourseStudent.of("=1+1"));
  }
}
