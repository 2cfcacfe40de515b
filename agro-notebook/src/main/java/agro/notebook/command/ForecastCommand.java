package agro.notebook.command;

import agro.generation.FlightTiming;
import agro.generation.GenerationForecast;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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

  @Parameters(paramLabel = "FOLDER", description = "A season folder; see the command template.")
  private Path folder;

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

  @Override
  public Integer call() {
    var all = SeasonFolder.read(folder);
    var season = (asOf == null ? all : all.upTo(asOf)).chosen(pest, place);
    var ahead = season.ahead(seed);
    var progress = new PhaseProgress(spec.commandLine().getErr());
    var fit = FlightTiming.searching(season.pest().range()).fit(season.past(), progress);
    var forecast = GenerationForecast.of(fit, ahead.underWay(), List.of(), progress);
    var out = spec.commandLine().getOut();
    out.println(season.report());
    if (!ahead.report().entries().isEmpty()) {
      out.println(ahead.report());
    }
    out.println();
    out.println(fit.presentation().toText());
    out.println();
    out.println(forecast.presentation().toText());
    out.flush();
    return 0;
  }
}
