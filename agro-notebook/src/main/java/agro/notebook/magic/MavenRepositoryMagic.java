package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Adds a repository to search.
 *
 * @param libraries what uses the repositories
 */
record MavenRepositoryMagic(LibraryShelf libraries) implements CellMagic {

  @Override
  public String name() {
    return "mavenRepo";
  }

  @Override
  public List<String> aliases() {
    return List.of("addMavenRepo");
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "id url";
  }

  @Override
  public String summary() {
    return "adds a repository in which %maven searches";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context)
      throws CellMagicProblem, InterruptedException {
    var words = call.words();
    if (words.size() != 2) {
      throw new CellMagicProblem(
          call.written()
              + " needs a name and an address, but there are "
              + words.size()
              + " words; for example "
              + call.written()
              + " ours https://repository.example.org/maven");
    }
    System.out.println(libraries.addRepository(words.get(0), words.get(1)));
    return CellMagicAnswer.done();
  }
}
