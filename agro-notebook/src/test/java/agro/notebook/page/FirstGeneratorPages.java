package agro.notebook.page;

import agro.course.GeneratorVersion;
import agro.course.paper.Blueprint;
import agro.course.paper.ClassList;
import agro.course.paper.ClassPapers;
import agro.course.paper.PaperKind;
import agro.course.paper.PaperPlan;
import agro.course.topic.ExerciseCatalogue;
import agro.reading.DelimitedFormat;
import agro.report.Progress;
import agro.working.TextLanguage;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** What the first generator prints for a small class, all types being named. */
final class FirstGeneratorPages {

  private static final String BLUEPRINT =
      """
      topic,difficulty,questions,marks,form,type
      dose,basic,1,2,,dose-field
      efficacy,basic,1,3,options,efficacy-survivors
      efficacy,basic,1,1,,efficacy-formula
      efficacy,routine,1,5,,efficacy-blocks
      probit,basic,1,2,,probit-transform
      """;

  private FirstGeneratorPages() {}

  static Path folder() {
    return Path.of(System.getProperty("basedir", "."))
        .resolve("src/test/resources/agro/notebook/page/first");
  }

  static PaperPlan plan(TextLanguage language) {
    var list =
        ClassList.parse(
            "class.csv", "student,name,group\nS1,<b>N & M,A\nS2,,\n", DelimitedFormat.COMMA);
    return PaperPlan.of(Blueprint.parse("b.csv", BLUEPRINT, DelimitedFormat.COMMA), list, 8)
        .in(language)
        .as(PaperKind.EXAM)
        .from(ExerciseCatalogue.of(GeneratorVersion.FIRST));
  }

  static CourseFiles files(TextLanguage language) {
    return CourseFiles.sheets(ClassPapers.of(plan(language)), Progress.silent());
  }

  /** The sheets of the class and the notebooks of one student, by name with the language. */
  static Map<String, String> texts() {
    var texts = new TreeMap<String, String>();
    for (var language : TextLanguage.values()) {
      var files = files(language).texts();
      texts.put("questions." + language.code() + ".html", files.get("questions.html"));
      texts.put("solutions." + language.code() + ".html", files.get("solutions.html"));
      texts.put("S1." + language.code() + ".ipynb", files.get("notebooks/S1.ipynb"));
    }
    return texts;
  }
}
