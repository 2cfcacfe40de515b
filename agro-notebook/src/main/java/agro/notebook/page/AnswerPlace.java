package agro.notebook.page;

import agro.course.ChoiceAnswer;
import agro.course.CourseWords;
import agro.course.ExpectedAnswer;
import agro.course.MeasuredAnswer;
import agro.course.NumberAnswer;
import agro.course.PercentAnswer;
import agro.course.TemperatureAnswer;
import agro.course.ThermalTimeAnswer;
import agro.course.paper.PaperQuestion;
import agro.working.HtmlText;
import java.util.List;
import java.util.stream.IntStream;

/** Where a student writes the answer to a part, or ticks one of several. */
final class AnswerPlace {

  private AnswerPlace() {}

  static String html(PaperQuestion question, int part, CourseWords words) {
    var answer = question.solution().get(part).answer();
    var choices = choices(question, part);
    if (!choices.isEmpty()) {
      return ticks(choices, words);
    }
    return "<div class=\"work "
        + question.exercise().key().difficulty().code()
        + "\"></div>\n<div class=\"answer\"><span>"
        + HtmlText.escape(words.say("sheet.answer"))
        + "</span><span class=\"rule\"></span><span class=\"unit\">"
        + HtmlText.escape(unit(answer))
        + "</span></div>\n";
  }

  /** The unit that stands behind the line; empty where the answer has none. */
  static String unit(ExpectedAnswer answer) {
    if (answer instanceof MeasuredAnswer<?> measured) {
      return measured.unit().symbol();
    }
    if (answer instanceof TemperatureAnswer temperature) {
      return temperature.unit().symbol();
    }
    if (answer instanceof ThermalTimeAnswer sum) {
      return sum.unit().symbol();
    }
    if (answer instanceof NumberAnswer number) {
      return number.of().isEmpty() ? "" : number.of().get(0);
    }
    return answer instanceof PercentAnswer ? "%" : "";
  }

  /** What a student picks from, with letters; none where the answer is written. */
  static List<String> choices(PaperQuestion question, int part) {
    var options = question.options(part);
    if (options.isPresent()) {
      return options.get().options().stream()
          .map(option -> option.letter() + "  " + option.text())
          .toList();
    }
    if (question.solution().get(part).answer() instanceof ChoiceAnswer choice) {
      return IntStream.range(0, choice.choices().size())
          .mapToObj(at -> (char) ('A' + at) + "  " + choice.choices().get(at).text())
          .toList();
    }
    return List.of();
  }

  private static String ticks(List<String> texts, CourseWords words) {
    var html = new StringBuilder(CourseBlocks.paragraph("choose", words.say("sheet.choose")));
    html.append("<ul class=\"ticks\">\n");
    texts.forEach(
        text ->
            html.append("<li><span class=\"tick\"></span>")
                .append(PrintedText.html(text))
                .append("</li>\n"));
    return html.append("</ul>\n").toString();
  }
}
