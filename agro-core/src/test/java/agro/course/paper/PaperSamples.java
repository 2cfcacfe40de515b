package agro.course.paper;

import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.reading.DelimitedFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

/** Small classes and blueprints for tests. */
final class PaperSamples {

  private PaperSamples() {}

  static Blueprint blueprint() {
    return Blueprint.parse(
        "blueprint.csv",
        """
        topic,difficulty,questions,marks,form,type
        dose,basic,1,2,,dose-field
        efficacy,basic,1,3,options,efficacy-survivors
        efficacy,routine,2,5,,
        """,
        DelimitedFormat.COMMA);
  }

  static Blueprint onlyDose(int questions) {
    return Blueprint.parse(
        "blueprint.csv",
        "topic,difficulty,questions,marks,type\ndose,basic," + questions + ",2,dose-field\n",
        DelimitedFormat.COMMA);
  }

  static Blueprint efficacy(int questions) {
    return Blueprint.empty().with(CourseTopic.EFFICACY, Difficulty.ROUTINE, questions, 4);
  }

  static ClassList students(int count) {
    return ClassList.of(
        IntStream.rangeClosed(1, count).mapToObj(i -> "S" + i).toArray(String[]::new));
  }

  /** The right answers as a wide file, in the language of the papers. */
  static String rightAnswers(ClassPapers papers) {
    var text = new StringBuilder("student");
    papers.labels().forEach(label -> text.append(';').append(label));
    for (var paper : papers.papers()) {
      text.append('\n').append(paper.student().id());
      var own = right(paper);
      papers.labels().forEach(label -> text.append(';').append(own.getOrDefault(label, "")));
    }
    return text.append('\n').toString();
  }

  static Map<String, String> right(StudentPaper paper) {
    var own = new LinkedHashMap<String, String>();
    var words = PaperWords.of(paper.plan().language());
    for (var question : paper.questions()) {
      for (int part = 0; part < question.solution().size(); part++) {
        own.put(question.label(part), question.solution().get(part).answer().print(words));
      }
    }
    return own;
  }
}
