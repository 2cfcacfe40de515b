package agro.notebook.command;

import agro.generation.skill.HindcastPlan;
import agro.generation.skill.HindcastScheme;
import agro.generation.skill.LeadTime;
import agro.reading.SafeFile;
import agro.season.Ledger;
import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints how good forecasts of past seasons would have been, and how good kept ones were. */
@Command(
    name = "hindcast",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = {
      "Forecast the past seasons of a season folder anew, each from what was known on the day,",
      "and print how good the forecasts would have been; score kept forecasts as they were."
    })
final class HindcastCommand implements Callable<Integer> {

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
        "As 2026-06-16; nothing later is looked at.",
        "Default: the newest day in the folder."
      })
  private LocalDate asOf;

  @Option(
      names = "--lead",
      paramLabel = "DAYS",
      split = ",",
      description = {
        "Days before an event on which forecasts are issued, apart by commas.",
        "Default: 7,14,28,56. The season's first day is always one of them."
      })
  private List<Integer> leads = List.of(7, 14, 28, 56);

  @Option(
      names = "--scheme",
      paramLabel = "NAME",
      description = {
        "leave_one_out: learn from later seasons too;",
        "only_earlier: never. Default: both."
      })
  private HindcastScheme scheme;

  @Option(
      names = "--seed",
      paramLabel = "NUMBER",
      defaultValue = "1",
      description = "Seed of what is left to chance. Default: ${DEFAULT-VALUE}")
  private long seed;

  @Option(
      names = "--rows",
      paramLabel = "FILE",
      description = "Write every single forecast beside what came, as CSV.")
  private Path rows;

  @Override
  public Integer call() {
    var plan = plan();
    var ledger = Ledger.read(folder);
    var all = asOf == null ? SeasonFolder.read(folder) : SeasonFolder.read(folder, asOf);
    var archive = all.archive(pest, place).withSeed(seed);
    var hindcast = plan.of(archive, new PhaseProgress(spec.commandLine().getErr()));
    var out = spec.commandLine().getOut();
    out.println(hindcast.presentation().toText());
    if (!ledger.entries().isEmpty()) {
      out.println();
      out.println(
          ledger
              .score(archive.pest(), archive.place(), hindcast.observed())
              .presentation()
              .toText());
    }
    if (rows != null) {
      SafeFile.writeText(rows, hindcast.rows().toCsv());
    }
    out.flush();
    return 0;
  }

  private HindcastPlan plan() {
    var wanted = new ArrayList<LeadTime>();
    for (var days : leads) {
      if (days < 1) {
        throw new ParameterException(
            spec.commandLine(), "--lead takes days of 1 and more, not " + days);
      }
      wanted.add(LeadTime.days(days));
    }
    wanted.add(LeadTime.SEASON_START);
    var plan = HindcastPlan.usual().withLeads(wanted.toArray(LeadTime[]::new));
    return scheme == null ? plan : plan.withSchemes(scheme);
  }
}
