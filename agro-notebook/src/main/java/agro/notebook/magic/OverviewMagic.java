package agro.notebook.magic;

import agro.notebook.display.Display;
import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Lists the magics. */
final class OverviewMagic implements CellMagic {

  private record Magic(String call, String alsoCalled, String whatItDoes) {}

  @Override
  public String name() {
    return "magics";
  }

  @Override
  public List<String> aliases() {
    return List.of("help", "lsmagic");
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "";
  }

  @Override
  public String summary() {
    return "lists what there is";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context) {
    Display.display(context.magics().stream().map(OverviewMagic::row).toList());
    return CellMagicAnswer.done();
  }

  private static Magic row(CellMagic magic) {
    var calls =
        magic.forms().stream()
            .map(form -> (form.mark() + magic.name() + " " + magic.arguments()).strip())
            .collect(Collectors.joining(" or "));
    var others =
        magic.aliases().stream().map(alias -> "%" + alias).collect(Collectors.joining(", "));
    return new Magic(calls, others, magic.summary());
  }
}
