package agro.notebook.command;

import agro.notebook.page.BulletinFiles;
import agro.programme.bulletin.FieldBulletin;
import agro.programme.bulletin.ReadingLevel;
import agro.programme.bulletin.SeasonBulletins;
import agro.reading.SafeFile;
import agro.season.Ledger;
import agro.working.TextLanguage;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the pages of every field of a season folder. */
@Command(
    name = "bulletin",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = {
      "Write a page for each field of a season folder: where its pests stand, the next dates,",
      "what the labels allow. Pages print on A4; a browser's print makes a PDF."
    })
final class BulletinCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FOLDER", description = "A season folder; see the command template.")
  private Path folder;

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      description = "Where the pages go. Default: bulletins in the season folder.")
  private Path out;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = {
        "Day of issue, as 2026-06-16; nothing later is looked at.",
        "Default: the newest day in the folder."
      })
  private LocalDate asOf;

  @Option(
      names = "--language",
      paramLabel = "NAME",
      split = ",",
      description = "Languages, apart by commas: ${COMPLETION-CANDIDATES}. Default: english.")
  private List<TextLanguage> languages = List.of(TextLanguage.ENGLISH);

  @Option(
      names = "--level",
      paramLabel = "NAME",
      split = ",",
      description = {
        "Readers, apart by commas: board (short), adviser (full).",
        "Default: board,adviser."
      })
  private List<ReadingLevel> levels = List.of(ReadingLevel.values());

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "Seed of what is left to chance. Default: ${DEFAULT-VALUE}")
  private long seed;

  @Option(
      names = "--keep",
      description = {
        "Add the forecasts to the ledger of the folder, forecasts.csv,",
        "so that the next page can tell what changed."
      })
  private boolean keep;

  @Override
  public Integer call() {
    var asked = SeasonBulletins.of(folder).withSeed(seed);
    var bulletins =
        (asOf == null ? asked : asked.asOf(asOf))
            .make(new PhaseProgress(spec.commandLine().getErr()));
    var files = BulletinFiles.of(bulletins, languages, levels);
    var target = out == null ? folder.resolve("bulletins") : out;
    write(files, target);
    var terminal = spec.commandLine().getOut();
    terminal.println(files.texts().size() + " files written to " + target + ".");
    for (var bulletin : bulletins) {
      bulletin.write(languages.get(0), ReadingLevel.BOARD).messages().forEach(terminal::println);
    }
    if (keep) {
      keep(bulletins, terminal);
    }
    terminal.flush();
    return bulletins.isEmpty() ? 1 : 0;
  }

  private static void write(BulletinFiles files, Path target) {
    try {
      Files.createDirectories(target);
    } catch (IOException e) {
      throw new UncheckedIOException("the folder " + target + " could not be made", e);
    }
    files.texts().forEach((name, text) -> SafeFile.writeText(target.resolve(name), text));
  }

  /** Fields of one place share a forecast, which is kept once. */
  private void keep(List<FieldBulletin> bulletins, PrintWriter terminal) {
    var ledger = Ledger.read(folder);
    var seen = new HashSet<List<String>>();
    for (var bulletin : bulletins) {
      for (var pest : bulletin.pests()) {
        if (pest.forecast().isPresent() && seen.add(List.of(pest.pest(), bulletin.place()))) {
          var kept = ledger.keep(pest.forecast().get(), "bulletin");
          ledger = kept.ledger();
          terminal.println(pest.pest() + ", " + bulletin.place() + ": " + kept.words());
        }
      }
    }
  }
}
