package agro.notebook.command;

import agro.course.CourseSetting;
import agro.course.GeneratorVersion;
import agro.course.paper.AnswerFile;
import agro.course.paper.Blueprint;
import agro.course.paper.ClassList;
import agro.course.paper.ClassPapers;
import agro.course.paper.MarkSheet;
import agro.course.paper.PaperKind;
import agro.course.paper.PaperPlan;
import agro.course.paper.SettingFile;
import agro.course.topic.ExerciseCatalogue;
import agro.notebook.page.CourseFiles;
import agro.reading.DelimitedFormat;
import agro.reading.SafeFile;
import agro.report.Progress;
import agro.working.TextLanguage;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Sets the papers of a class, and marks them. */
@Command(
    name = "class-papers",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = {
      "Set exercises for a class, each student with numbers of his or her own: question sheets,",
      "worked solutions, notebooks, and a file for the answers. With --answers, mark them.",
      "The same seed, class list and blueprint give the same papers again."
    })
final class ClassPapersCommand implements Callable<Integer> {

  private static final String TEMPLATE = "answers.csv";

  @Spec private CommandSpec spec;

  @Option(
      names = "--class",
      required = true,
      paramLabel = "FILE",
      description = "The class, a CSV file: student, and if wanted name and group.")
  private Path classFile;

  @Option(
      names = "--blueprint",
      required = true,
      paramLabel = "FILE",
      description = {
        "What is asked, a CSV file: topic, difficulty, questions, marks (of each question),",
        "and if wanted form (open, options) and type."
      })
  private Path blueprintFile;

  @Option(
      names = "--seed",
      required = true,
      paramLabel = "NUMBER",
      description = "Seed of all numbers, printed on each page.")
  private long seed;

  @Option(
      names = "--to",
      required = true,
      paramLabel = "FOLDER",
      description = {
        "Where everything goes. Sheets of an earlier run are replaced;",
        "the file for the answers is not."
      })
  private Path folder;

  @Option(
      names = "--setting",
      paramLabel = "FILE",
      description = {
        "Your own place and units, a CSV file of key and value: place, fields, crops, pests,",
        "currency, units (metric, us), land_unit. Default: an invented valley, metric."
      })
  private Path settingFile;

  @Option(
      names = "--language",
      paramLabel = "NAME",
      converter = Language.class,
      description = "en or de. Default: en.")
  private TextLanguage language = TextLanguage.ENGLISH;

  @Option(
      names = "--exam",
      description = "For a room without computers: a pocket calculator and printed tables do.")
  private boolean exam;

  @Option(
      names = "--title",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "What stands above the papers.")
  private String title;

  @Option(
      names = "--sitting",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "2 and more for a resit, clear of all sittings before. Default: 1.")
  private int sitting;

  @Option(
      names = "--own-types",
      description = "Other types of exercises for each student, not the same for all.")
  private boolean ownTypes;

  @Option(
      names = "--student",
      paramLabel = "ID",
      split = ",",
      description = "Only these students of the class, apart by commas.")
  private List<String> only = List.of();

  @Option(
      names = "--generator",
      paramLabel = "NUMBER",
      description = "Version of the generator, as printed on older papers. Default: the newest.")
  private Integer generator;

  @Option(
      names = "--semicolon",
      description = "All CSV files have semicolons between cells and decimal commas.")
  private boolean semicolon;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = {
        "Mark these answers: a CSV file with a column for each part, or with a row for each answer",
        "(student, part, answer), or a folder of such files."
      })
  private Path answersFile;

  /** Languages by the code that stands in names of files, or by name. */
  static final class Language implements ITypeConverter<TextLanguage> {
    @Override
    public TextLanguage convert(String text) {
      return Arrays.stream(TextLanguage.values())
          .filter(each -> each.code().equalsIgnoreCase(text) || each.name().equalsIgnoreCase(text))
          .findFirst()
          .orElseThrow(
              () -> new TypeConversionException("\"" + text + "\" is no language; take en or de"));
    }
  }

  @Override
  public Integer call() {
    var progress = new PhaseProgress(spec.commandLine().getErr());
    var out = spec.commandLine().getOut();
    var all = ClassPapers.of(plan(out), progress);
    var papers = only.isEmpty() ? all : all.only(only);
    if (answersFile == null) {
      sheets(papers, progress, out);
    } else {
      marks(papers, progress, out);
    }
    out.flush();
    return 0;
  }

  private DelimitedFormat format() {
    return semicolon ? DelimitedFormat.SEMICOLON : DelimitedFormat.COMMA;
  }

  private PaperPlan plan(PrintWriter out) {
    var catalogue =
        ExerciseCatalogue.of(
            generator == null ? GeneratorVersion.latest() : GeneratorVersion.of(generator));
    var plan =
        PaperPlan.of(
                Blueprint.read(blueprintFile, format()), ClassList.read(classFile, format()), seed)
            .in(language)
            .as(exam ? PaperKind.EXAM : PaperKind.HOMEWORK)
            .titled(title)
            .forSitting(sitting)
            .from(catalogue);
    var mixed = ownTypes ? plan.withTypesOfTheirOwn() : plan;
    return settingFile == null ? mixed : mixed.at(setting(out));
  }

  private CourseSetting setting(PrintWriter out) {
    var read = SettingFile.read(settingFile, format(), language);
    out.println(read.report());
    return read.setting();
  }

  private void sheets(ClassPapers papers, Progress progress, PrintWriter out) {
    var files = new LinkedHashMap<>(CourseFiles.sheets(papers, progress).texts());
    var template = folder.resolve(TEMPLATE);
    // Somebody may have filled it in already.
    boolean kept = Files.exists(template);
    if (!kept) {
      files.put(TEMPLATE, AnswerFile.template(papers, format()));
    }
    write(files, out);
    if (kept) {
      out.println(template + " was there and is left as it is.");
    }
  }

  private void marks(ClassPapers papers, Progress progress, PrintWriter out) {
    var answers = AnswerFile.readAll(answersFile, format(), papers);
    if (!answers.report().entries().isEmpty()) {
      out.println(answers.report());
    }
    var sheet = MarkSheet.of(papers, answers, progress);
    var files = new LinkedHashMap<String, String>();
    files.put("marks.csv", sheet.marksFile(format()));
    files.put("details.csv", sheet.detailsFile(format()));
    files.putAll(CourseFiles.feedback(sheet).texts());
    write(files, out);
    out.println();
    out.println(sheet.summary().presentation().toText());
  }

  private void write(Map<String, String> files, PrintWriter out) {
    files.forEach((name, text) -> SafeFile.writeText(folder.resolve(name), text));
    var folders = new LinkedHashMap<String, Integer>();
    for (var name : files.keySet()) {
      int slash = name.indexOf('/');
      if (slash < 0) {
        out.println(folder.resolve(name));
      } else {
        folders.merge(name.substring(0, slash), 1, Integer::sum);
      }
    }
    folders.forEach((name, count) -> out.println(folder.resolve(name) + ": " + count + " files"));
  }
}
