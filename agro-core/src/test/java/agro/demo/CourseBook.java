package agro.demo;

import agro.course.ChoiceAnswer;
import agro.course.EarlierAnswers;
import agro.course.ExpectedAnswer;
import agro.course.SolvedPart;
import agro.course.marking.AnswerOptions;
import agro.course.paper.Blueprint;
import agro.course.paper.ClassList;
import agro.course.paper.ClassPapers;
import agro.course.paper.PaperPlan;
import agro.course.paper.PaperQuestion;
import agro.course.paper.PaperWords;
import agro.course.paper.SettingFile;
import agro.reading.DelimitedFormat;
import agro.working.TextLanguage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A course in the vale: a class of students without names, what their paper asks, the place with a
 * local unit of land, and what they typed. Most answers are right, some come of typical slips, some
 * lack their unit, and one student was not there.
 */
final class CourseBook {

  private static final int STUDENTS = 24;
  private static final String ABSENT = "S17";
  private static final int FIRST = 4;

  private static final String BLUEPRINT =
      """
      topic,difficulty,questions,marks,form,type
      dose,basic,1,2,open,dose-field
      efficacy,basic,1,2,options,efficacy-survivors
      efficacy,routine,1,4,open,efficacy-blocks
      probit,basic,1,2,open,probit-transform
      units,basic,1,2,open,units-rate
      calibration,routine,1,4,open,calibration-boom
      sampling,routine,1,4,open,sampling-stop-reading
      injury-level,basic,1,2,options,injury-level-formula
      degree-days,routine,1,4,open,degree-days-offset
      development,basic,1,2,open,development-days
      rotation,basic,1,2,options,rotation-limit
      """;

  private static final String SETTING =
      """
      key,value
      place,Lower Osmere
      fields,Reed Piece; Long Acre; Well Close; Goose Green
      crops,leek; cabbage
      pests,leek moth; diamondback moth
      currency,EUR
      units,metric
      land_unit,1 osmere rood = 1180 m2
      """;

  private CourseBook() {}

  static Map<String, String> tables(long seed) {
    var files = new LinkedHashMap<String, String>();
    files.put("class-list.csv", students(Draws.of(seed, "class list")));
    files.put("course-blueprint.csv", BLUEPRINT);
    files.put("course-setting.csv", SETTING);
    files.put("course-answers.csv", answers(seed, files.get("class-list.csv")));
    return files;
  }

  private static String students(Draws draws) {
    var lines = new StringBuilder("student,group\n");
    for (int i = 1; i <= STUDENTS; i++) {
      lines.append(String.format(Locale.ROOT, "S%02d", i));
      lines.append(draws.uniform() < 0.5 ? ",terrace\n" : ",valley\n");
    }
    return lines.toString();
  }

  private static String answers(long seed, String students) {
    var plan =
        PaperPlan.of(
                Blueprint.parse("blueprint", BLUEPRINT, DelimitedFormat.COMMA),
                ClassList.parse("class", students, DelimitedFormat.COMMA),
                seed)
            .at(
                SettingFile.parse("setting", SETTING, DelimitedFormat.COMMA, TextLanguage.ENGLISH)
                    .setting());
    // Whatever is asked after the first questions leaves the answers to these as they are.
    var first = Draws.of(seed, "course answers");
    var further = Draws.of(seed, "further course answers");
    var lines = new StringBuilder("student,part,answer\n");
    for (var paper : ClassPapers.of(plan).papers()) {
      for (var question : paper.questions()) {
        var typed =
            question.number() <= FIRST ? separate(question, first) : carried(question, further);
        if (!paper.student().id().equals(ABSENT)) {
          for (int part = 0; part < typed.size(); part++) {
            lines.append(paper.student().id()).append(',').append(question.label(part));
            lines.append(',').append(cell(typed.get(part))).append('\n');
          }
        }
      }
    }
    return lines.toString();
  }

  /** Each part on its own, as if a slip were noticed before the next. */
  private static List<String> separate(PaperQuestion question, Draws draws) {
    var typed = new ArrayList<String>();
    for (var solved : question.solution()) {
      typed.add(typed(solved, Fate.of(draws)));
    }
    return typed;
  }

  /** Each part from what the student wrote before, and letters where there are options. */
  private static List<String> carried(PaperQuestion question, Draws draws) {
    var typed = new ArrayList<String>();
    var own = EarlierAnswers.none();
    for (int part = 0; part < question.solution().size(); part++) {
      var fate = Fate.of(draws);
      var solved = question.exercise().parts().get(part).solution().solve(own);
      var written = fate.isSlip() ? fate.slip(solved) : solved.answer();
      own = own.and(written.value());
      typed.add(
          question
              .options(part)
              .filter(options -> !fate.isEmpty())
              .map(options -> letter(options, written))
              .orElseGet(() -> typed(solved, fate)));
    }
    return typed;
  }

  private static String letter(AnswerOptions options, ExpectedAnswer written) {
    return options.options().stream()
        .filter(option -> option.answer().equals(written))
        .findFirst()
        .orElse(options.right())
        .letter();
  }

  private static String cell(String typed) {
    return typed.contains(",") ? '"' + typed + '"' : typed;
  }

  /** What becomes of an answer: right, a slip, without its unit, or none. */
  private record Fate(double chance, double which) {

    /** The number of draws does not depend on what is answered. */
    static Fate of(Draws draws) {
      double chance = draws.uniform();
      return new Fate(chance, draws.uniform());
    }

    boolean isSlip() {
      return chance >= 0.7 && chance < 0.87;
    }

    boolean lacksUnit() {
      return chance >= 0.87 && chance < 0.95;
    }

    boolean isEmpty() {
      return chance >= 0.95;
    }

    ExpectedAnswer slip(SolvedPart solved) {
      return solved.slips().get((int) (which * solved.slips().size())).answer();
    }
  }

  private static String typed(SolvedPart solved, Fate fate) {
    if (fate.isEmpty()) {
      return "";
    }
    var words = PaperWords.of(TextLanguage.ENGLISH);
    var answer = fate.isSlip() ? fate.slip(solved) : solved.answer();
    var printed = answer.print(words);
    boolean hasUnit = !(answer instanceof ChoiceAnswer);
    return fate.lacksUnit() && hasUnit ? printed.replaceAll(" .*", "") : printed;
  }
}
