package agro.notebook.command;

import agro.season.SeasonFolder;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes an empty season folder with a page that explains it. */
@Command(
    name = "template",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true,
    description = "Write an empty season folder, with a page that explains every file and column.")
final class TemplateCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FOLDER",
      description = "The folder, made if need be; nothing in it is overwritten.")
  private Path folder;

  @Override
  public Integer call() {
    SeasonFolder.template(folder);
    var out = spec.commandLine().getOut();
    out.println(folder.resolve("README.md"));
    out.flush();
    return 0;
  }
}
