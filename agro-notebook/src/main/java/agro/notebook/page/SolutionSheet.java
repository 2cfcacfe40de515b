package agro.notebook.page;

import agro.course.AnswerTolerance;
import agro.course.ChoiceAnswer;
import agro.course.CourseWords;
import agro.course.DayAnswer;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.paper.PaperQuestion;
import agro.course.paper.PaperWords;
import agro.course.paper.StudentPaper;
import agro.working.HtmlText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;

/** The worked solutions of one student's paper. */
final class SolutionSheet {

  private final StudentPaper paper;
  private final CourseWords words;

  private SolutionSheet(StudentPaper paper) {
    this.paper = paper;
    this.words = CourseDocument.words(paper);
  }

  static String html(StudentPaper paper) {
    return CourseDocument.sheet(paper, "sheet.solutions", new SolutionSheet(paper).content());
  }

  private String content() {
    var html = new StringBuilder("<header>\n<h1>");
    html.append(HtmlText.escape(paper.plan().heading() + ": " + words.say("sheet.solutions")));
    html.append("</h1>\n<div class=\"student\"><span class=\"given\">");
    html.append(HtmlText.escape(paper.student().heading())).append("</span></div>\n</header>\n");
    paper.questions().forEach(question -> html.append(question(question)));
    var sources = sources(paper, words);
    html.append(sources.isEmpty() ? "" : CourseBlocks.paragraph("key", sources));
    return html.append(QuestionSheet.cautions(paper, words)).toString();
  }

  private String question(PaperQuestion question) {
    var key = question.exercise().key();
    var html = new StringBuilder("<section class=\"solved\">\n<div class=\"lead\">\n");
    html.append(QuestionSheet.lead(question, words)).append("</div>\n");
    for (int part = 0; part < question.solution().size(); part++) {
      html.append("<div class=\"part\">\n").append(QuestionSheet.asked(question, part, words));
      html.append("<div class=\"solution\">\n");
      html.append(CourseBlocks.steps(question.solution().get(part).working()));
      html.append(answer(question, part)).append(slips(question, part));
      html.append("</div>\n</div>\n");
    }
    html.append(
        CourseBlocks.paragraph(
            "key", words.say("solution.key", "type", key.type(), "seed", key.seed())));
    return html.append("</section>\n").toString();
  }

  private String answer(PaperQuestion question, int part) {
    var answer = question.solution().get(part).answer();
    var option = option(question, part, words);
    return "<p class=\"right\"><b>"
        + PrintedText.html(answer.print(words) + option)
        + "</b> <span class=\"accepted\">"
        + PrintedText.html(option.isEmpty() ? accepted(answer, words) : "")
        + "</span></p>\n";
  }

  /** The letter of the right option in parentheses; empty where there is nothing to choose from. */
  static String option(PaperQuestion question, int part, CourseWords words) {
    return question
        .options(part)
        .map(all -> all.right().letter())
        .map(letter -> " (" + words.say("solution.option", "letter", letter) + ")")
        .orElse("");
  }

  private String slips(PaperQuestion question, int part) {
    var html = new StringBuilder("<div class=\"slips\"><span>");
    html.append(HtmlText.escape(words.say("solution.slips"))).append("</span>\n<ul>\n");
    for (var slip : question.solution().get(part).slips()) {
      var printed = PrintedText.html(slip.answer().print(words));
      var phrase = PrintedText.html(slip.mistake().phrase(words));
      // Statements to choose from are too long to stand before the phrase.
      boolean isLong = slip.answer() instanceof ChoiceAnswer;
      html.append(
          isLong ? "<li>" + phrase + ": " + printed : "<li><b>" + printed + "</b> " + phrase);
      html.append("</li>\n");
    }
    return html.append("</ul></div>\n").toString();
  }

  /** What else is taken for right, and why; nothing where only the answer itself is. */
  static String accepted(ExpectedAnswer answer, CourseWords words) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return accepted(measured.number(), measured.tolerance(), measured.unit().symbol(), words);
    }
    if (answer instanceof TemperatureAnswer temperature) {
      var unit = temperature.unit().symbol();
      return accepted(temperature.number(), temperature.tolerance(), unit, words);
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return accepted(sum.number(), sum.tolerance(), sum.unit().symbol(), words);
    }
    if (answer instanceof PercentAnswer percent) {
      return accepted(percent.percent(), percent.tolerance(), "%", words);
    }
    if (answer instanceof NumberAnswer number) {
      return accepted(number.number(), number.tolerance(), "", words);
    }
    if (answer instanceof DayAnswer day && day.days() > 0) {
      return day.days() == 1
          ? words.say("solution.days.one")
          : words.say("solution.days", "days", day.days());
    }
    return "";
  }

  private static String accepted(
      double number, AnswerTolerance tolerance, String unit, CourseWords words) {
    if (tolerance.amount() == 0) {
      return words.say("solution.exact");
    }
    var behind = unit.isEmpty() ? "" : " " + unit;
    return words.say(
        "solution.accepted",
        "low",
        words.exact(rounded(number - tolerance.amount(), tolerance)),
        "high",
        words.exact(rounded(number + tolerance.amount(), tolerance)) + behind,
        "reason",
        words.say("reason." + tolerance.reason().name()));
  }

  /** An end of the range with one digit more than the tolerance has. */
  private static double rounded(double value, AnswerTolerance tolerance) {
    int scale = 1 - (int) Math.floor(Math.log10(tolerance.amount()));
    return BigDecimal.valueOf(value).setScale(scale, RoundingMode.HALF_EVEN).doubleValue();
  }

  /** All sources of a paper in one sentence; empty where it has none. */
  static String sources(StudentPaper paper, CourseWords words) {
    var sources = new LinkedHashSet<String>();
    for (var question : paper.questions()) {
      question
          .exercise()
          .body()
          .sources()
          .forEach(each -> sources.add(PaperWords.cite(each, words)));
    }
    return sources.isEmpty()
        ? ""
        : words.say("solution.sources") + " " + String.join("; ", sources);
  }
}
