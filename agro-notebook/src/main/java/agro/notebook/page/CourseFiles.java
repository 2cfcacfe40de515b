package agro.notebook.page;

import agro.course.paper.ClassPapers;
import agro.course.paper.CourseStudent;
import agro.course.paper.MarkSheet;
import agro.course.paper.MarkedPaper;
import agro.course.paper.PaperWords;
import agro.course.paper.StudentPaper;
import agro.report.Progress;
import java.text.Normalizer;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The files of a class: sheets and notebooks for each student, and one file of all sheets to print.
 * The same papers give the same bytes.
 *
 * @param texts text by name of file, in order
 */
public record CourseFiles(Map<String, String> texts) {

  /** Keeps the order. */
  public CourseFiles {
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
  }

  /**
   * Question and solution sheets, and the same as notebooks.
   *
   * @param papers papers of a class
   * @param progress hears after each kind of file
   * @return the files
   */
  public static CourseFiles sheets(ClassPapers papers, Progress progress) {
    var files = new LinkedHashMap<String, String>();
    var aids = AidPages.of(papers.papers());
    add(
        files,
        papers,
        new Kind("questions", "", paper -> QuestionSheet.html(paper, aids), aids::drawings));
    progress.step("writing sheets", 1, 4);
    // Solutions need no empty paper.
    add(files, papers, new Kind("solutions", "sheet.solutions", SolutionSheet::html, some -> ""));
    progress.step("writing sheets", 2, 4);
    notebooks(files, papers);
    progress.step("writing sheets", 4, 4);
    return new CourseFiles(files);
  }

  /**
   * Feedback for each student who handed in something, and for the class.
   *
   * @param sheet marks of a class
   * @return the files
   */
  public static CourseFiles feedback(MarkSheet sheet) {
    var names = names(sheet.papers());
    var files = new LinkedHashMap<String, String>();
    var words = sheet.words();
    var title = sheet.papers().plan().heading() + ": " + words.say("sheet.feedback");
    var all = new StringBuilder();
    for (int i = 0; i < sheet.marked().size(); i++) {
      MarkedPaper marked = sheet.marked().get(i);
      if (!marked.handedIn()) {
        // Whoever still has to sit is not told the right answers.
        continue;
      }
      var html = FeedbackSheet.html(marked);
      all.append(html);
      files.put("feedback/" + names.get(i) + ".html", ofOne(sheet.papers(), title, html));
    }
    files.put("feedback.html", document(sheet.papers(), title, all.toString()));
    files.put(
        "summary.html", document(sheet.papers(), title, ClassSummaryPage.html(sheet.summary())));
    return new CourseFiles(files);
  }

  /** One kind of sheets: folder, key of the title, sheet of a student, drawings that it uses. */
  private record Kind(
      String folder,
      String title,
      Function<StudentPaper, String> sheet,
      Function<List<StudentPaper>, String> drawings) {}

  private static void add(Map<String, String> files, ClassPapers papers, Kind kind) {
    var words = PaperWords.of(papers.plan().language());
    var heading =
        papers.plan().heading() + (kind.title.isEmpty() ? "" : ": " + words.say(kind.title));
    var all = papers.papers();
    var names = names(papers);
    var sheets = all.parallelStream().map(kind.sheet).toList();
    files.put(
        kind.folder + ".html",
        document(papers, heading, kind.drawings.apply(all) + String.join("", sheets)));
    for (int i = 0; i < sheets.size(); i++) {
      var own = kind.drawings.apply(List.of(all.get(i)));
      files.put(
          kind.folder + "/" + names.get(i) + ".html", ofOne(papers, heading, own + sheets.get(i)));
    }
  }

  private static void notebooks(Map<String, String> files, ClassPapers papers) {
    var all = papers.papers();
    var names = names(papers);
    var texts =
        IntStream.range(0, all.size())
            .parallel()
            .mapToObj(
                i ->
                    List.of(
                        CourseNotebook.questions(all.get(i), names.get(i)),
                        CourseNotebook.solutions(all.get(i), names.get(i))))
            .toList();
    for (int i = 0; i < all.size(); i++) {
      files.put("notebooks/" + names.get(i) + ".ipynb", texts.get(i).get(0));
      files.put("notebooks/" + names.get(i) + "-solutions.ipynb", texts.get(i).get(1));
    }
  }

  private static String ofOne(ClassPapers papers, String title, String body) {
    return CourseDocument.ofOne(papers.plan().language().code(), title, body);
  }

  private static String document(ClassPapers papers, String title, String body) {
    return CourseDocument.of(papers.plan().language().code(), title, body);
  }

  /**
   * Names that every file system takes, each once, whatever the ids are. They come from the whole
   * class, so that a student's files keep their names when few papers are printed.
   */
  private static List<String> names(ClassPapers papers) {
    var names = new HashMap<CourseStudent, String>();
    var taken = new HashSet<String>();
    for (var student : papers.plan().classList().students()) {
      var plain =
          Normalizer.normalize(student.id(), Normalizer.Form.NFKD)
              .replaceAll("\\p{M}", "")
              .replaceAll("[^A-Za-z0-9]+", "-")
              .replaceAll("^-|-$", "");
      var start = plain.isEmpty() ? "student" : plain.substring(0, Math.min(40, plain.length()));
      var free = start;
      for (int i = 2; !taken.add(free.toLowerCase(Locale.ROOT)); i++) {
        free = start + "-" + i;
      }
      names.put(student, free);
    }
    return papers.papers().stream().map(paper -> names.get(paper.student())).toList();
  }
}
