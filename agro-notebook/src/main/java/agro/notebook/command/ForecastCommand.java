package agro.notebook.command;

import agro.generation.FlightTiming;
import agro.generation.GenerationForecast;
import agro.season.ForecastBatch;
import agro.season.Ledger;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the flights to come from a season folder, without a notebook. */
@Command(
    name = "forecast",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = "Print when the next flights come, from a season folder.")
final class ForecastCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "1..*",
      description = "A season folder; see the command template. Several with --all.")
  private List<Path> folders;

  @Option(
      names = "--all",
      description = {
        "Every pest and place with traps, as one table. A place that cannot be forecast",
        "is told of at the end; the status is 1 only when none can."
      })
  private boolean all;

  @Option(
      names = "--pest",
      paramLabel = "NAME",
      defaultValue = "",
      description = "A pest of the folder. Default: the first one in traps.csv.")
  private String pest;

  @Option(
      names = "--place",
      paramLabel = "NAME",
      defaultValue = "",
      description = "A place of the folder. Default: the first one with traps for the pest.")
  private String place;

  @Option(
      names = "--as-of",
      paramLabel = "DATE",
      description = {
        "Day of issue, as 2026-06-16; nothing later is looked at.",
        "Default: the newest day in the folder."
      })
  private LocalDate asOf;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "Seed of what is left to chance. Default: ${DEFAULT-VALUE}")
  private long seed;

  @Option(
      names = "--keep",
      description = {
        "Add the forecast to the ledger of the folder, forecasts.csv,",
        "to be scored later as it was."
      })
  private boolean keep;

  @Option(
      names = "--note",
      paramLabel = "TEXT",
      defaultValue = "",
      description = "A note that is kept with the forecast.")
  private String note;

  @Override
  public Integer call() {
    if (all) {
      return many();
    }
    if (folders.size() > 1) {
      throw new ParameterException(
          spec.commandLine(), "several folders were named; add --all to forecast them all");
    }
    return one(folders.get(0));
  }

  private int many() {
    // A ledger that cannot be read is told of before the long work.
    var ledgers = new LinkedHashMap<String, Ledger>();
    if (keep) {
      folders.forEach(folder -> ledgers.put(folder.toString(), Ledger.read(folder)));
    }
    var asked = ForecastBatch.ofFolders(folders).only(pest, place).withSeed(seed);
    var batch =
        (asOf == null ? asked : asked.asOf(asOf))
            .run(new PhaseProgress(spec.commandLine().getErr()));
    var out = spec.commandLine().getOut();
    out.println(batch.presentation().toText());
    for (var each : batch.places()) {
      if (keep && each.forecast().isPresent()) {
        var kept = ledgers.get(each.folder()).keep(each.forecast().get(), note);
        ledgers.put(each.folder(), kept.ledger());
        out.println(each.pest() + ", " + each.place() + ": " + kept.words());
      }
    }
    out.flush();
    return batch.forecasts().isEmpty() ? 1 : 0;
  }

  private int one(Path folder) {
    // A ledger that cannot be read is told of before the long work.
    var ledger = keep ? Ledger.read(folder) : null;
    var read = asOf == null ? SeasonFolder.read(folder) : SeasonFolder.read(folder, asOf);
    var season = read.chosen(pest, place);
    var ahead = season.ahead(seed);
    var progress = new PhaseProgress(spec.commandLine().getErr());
    var fit = FlightTiming.searching(season.pest().range()).fit(season.past(), progress);
    var forecast = GenerationForecast.of(fit, ahead.underWay(), season.pest().stages(), progress);
    var out = spec.commandLine().getOut();
    out.println(season.report());
    if (!ahead.report().entries().isEmpty()) {
      out.println(ahead.report());
    }
    out.println();
    out.println(fit.presentation().toText());
    out.println();
    out.println(forecast.presentation().toText());
    if (ledger != null) {
      out.println();
      out.println(ledger.keep(forecast, note).words());
    }
    out.flush();
    return 0;
  }
}
