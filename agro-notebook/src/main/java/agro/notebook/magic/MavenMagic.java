package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Fetches libraries with what they need.
 *
 * @param libraries what was fetched so far
 */
record MavenMagic(LibraryShelf libraries) implements CellMagic {

  @Override
  public String name() {
    return "maven";
  }

  @Override
  public List<String> aliases() {
    return List.of("addMavenDependencies", "addMavenDependency");
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "group:artifact[:packaging[:classifier]]:version ...";
  }

  @Override
  public String summary() {
    return "adds libraries from Maven's repositories, with what they need at run time";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context)
      throws CellMagicProblem, InterruptedException {
    var coordinates = new ArrayList<MavenCoordinates>();
    for (var word : call.words()) {
      coordinates.add(MavenCoordinates.of(word));
    }
    if (coordinates.isEmpty()) {
      throw new CellMagicProblem(
          call.written()
              + " needs at least one library, for example "
              + call.written()
              + " org.apache.commons:commons-text:1.12.0");
    }
    return CellMagicAnswer.addToClassPath(libraries.fetch(coordinates));
  }
}
