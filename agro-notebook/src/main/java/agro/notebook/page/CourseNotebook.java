package agro.notebook.page;

import agro.course.CourseWords;
import agro.course.Exercise;
import agro.course.paper.PaperQuestion;
import agro.course.paper.StudentPaper;
import agro.working.Caution;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;

/**
 * A student's paper as a notebook that runs in the Java kernel: questions to be answered in cells,
 * or the same with the working and the right answers.
 */
final class CourseNotebook {

  private final StudentPaper paper;
  private final CourseWords words;
  private final NotebookText notebook;

  private CourseNotebook(StudentPaper paper, String name) {
    this.paper = paper;
    this.words = CourseDocument.words(paper);
    // Ids of cells take few signs and no more than 64 of them.
    this.notebook = new NotebookText(name.substring(0, Math.min(40, name.length())));
  }

  static String questions(StudentPaper paper, String name) {
    return new CourseNotebook(paper, name).questions("answers-" + name + ".csv");
  }

  static String solutions(StudentPaper paper, String name) {
    return new CourseNotebook(paper, name + "-s").solutions();
  }

  private String questions(String file) {
    head(paper.plan().heading(), words.say("notebook.intro"), words.say("notebook.begin"));
    notebook.code(
        """
        import agro.course.paper.AnswerFile;
        import java.util.LinkedHashMap;
        var answers = new LinkedHashMap<String, String>();""");
    for (var question : paper.questions()) {
      notebook.markdown(lead(question));
      for (int part = 0; part < question.solution().size(); part++) {
        notebook.markdown(asked(question, part));
        notebook.code(put(question.label(part), ""));
      }
    }
    notebook.markdown(end(words.say("notebook.save", "file", file)));
    notebook.code(
        "AnswerFile.save(Path.of("
            + NotebookText.literal(file)
            + "), "
            + NotebookText.literal(paper.student().id())
            + ", answers);");
    return notebook.json();
  }

  private String solutions() {
    var title = paper.plan().heading() + ": " + words.say("sheet.solutions");
    head(title, words.say("notebook.solution.intro"), "");
    notebook.code(
        "import java.util.LinkedHashMap;\nvar answers = new LinkedHashMap<String, String>();");
    for (var question : paper.questions()) {
      notebook.markdown(lead(question));
      for (int part = 0; part < question.solution().size(); part++) {
        notebook.markdown(asked(question, part) + "\n\n" + solved(question, part));
        var answer = question.solution().get(part).answer().print(words);
        notebook.code(put(question.label(part), answer));
      }
    }
    var end = end(SolutionSheet.sources(paper, words));
    if (!end.isBlank()) {
      notebook.markdown(end);
    }
    return notebook.json();
  }

  private static String put(String label, String answer) {
    return "answers.put("
        + NotebookText.literal(label)
        + ", "
        + NotebookText.literal(answer)
        + ");";
  }

  private void head(String title, String intro, String begin) {
    var lines = new ArrayList<String>();
    lines.add("# " + CourseBlocks.escaped(title));
    lines.add(
        "**"
            + CourseBlocks.escaped(paper.student().heading())
            + "**, "
            + CourseDocument.marks(words, paper.marks()));
    lines.add(CourseBlocks.escaped(intro));
    lines.add(CourseBlocks.escaped(paper.plan().origin()));
    if (!begin.isEmpty()) {
      lines.add(CourseBlocks.escaped(begin));
    }
    notebook.markdown(CourseBlocks.joined(lines));
  }

  private String lead(PaperQuestion question) {
    var exercise = question.exercise();
    var lines = new ArrayList<String>();
    lines.add(
        "## "
            + question.number()
            + "  "
            + CourseBlocks.escaped(exercise.title())
            + " ("
            + CourseDocument.marks(words, question.marks())
            + ")");
    exercise.body().story().forEach(each -> lines.add(CourseBlocks.escaped(each)));
    exercise.body().exhibits().forEach(each -> lines.add(CourseBlocks.markdown(each, words)));
    return CourseBlocks.joined(lines);
  }

  private String asked(PaperQuestion question, int part) {
    var lines = new ArrayList<String>();
    lines.add(
        "**"
            + question.label(part)
            + "** "
            + CourseBlocks.escaped(question.exercise().parts().get(part).question())
            + " ["
            + words.number(question.marks(part))
            + "]");
    var choices = AnswerPlace.choices(question, part);
    if (!choices.isEmpty()) {
      lines.add(list(choices));
    }
    return CourseBlocks.joined(lines);
  }

  private static String list(List<String> texts) {
    return String.join(
        "\n", texts.stream().map(text -> "- " + CourseBlocks.escaped(text)).toList());
  }

  private String solved(PaperQuestion question, int part) {
    var solved = question.solution().get(part);
    var lines = new ArrayList<String>();
    lines.add(CourseBlocks.stepsMarkdown(solved.working()));
    var said =
        words.say(
            "solution.answer",
            "part",
            question.number() + Exercise.letter(part),
            "answer",
            solved.answer().print(words) + SolutionSheet.option(question, part, words));
    lines.add("**" + CourseBlocks.escaped(said) + "**");
    lines.add(CourseBlocks.escaped(words.say("solution.slips") + ":"));
    lines.add(
        list(
            solved.slips().stream()
                .map(slip -> slip.answer().print(words) + ": " + slip.mistake().phrase(words))
                .toList()));
    return CourseBlocks.joined(lines);
  }

  private String end(String first) {
    var cautions = new LinkedHashSet<Caution>();
    paper.questions().forEach(one -> cautions.addAll(one.exercise().body().cautions()));
    var lines = new ArrayList<String>();
    if (!first.isEmpty()) {
      lines.add(CourseBlocks.escaped(first));
    }
    if (!cautions.isEmpty()) {
      lines.add(
          "**"
              + CourseBlocks.escaped(words.say("caution.heading"))
              + ".** "
              + CourseBlocks.escaped(String.join(" ", words.cautions(List.copyOf(cautions)))));
    }
    return CourseBlocks.joined(lines);
  }
}
