package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import agro.notebook.kernel.CellSource;
import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.Set;

/** Evaluates files of code as if they stood in the cell. */
final class LoadMagic implements CellMagic {

  @Override
  public String name() {
    return "load";
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "file ...";
  }

  @Override
  public String summary() {
    return "evaluates a .java, .jshell or .jsh file, or every cell of code of a Java .ipynb";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context)
      throws CellMagicProblem, IOException {
    if (call.words().isEmpty()) {
      throw new CellMagicProblem(call.written() + " needs a file, for example %load traps.java");
    }
    var sources = new ArrayList<CellSource>();
    for (var word : call.words()) {
      sources.addAll(CodeFile.sources(word));
    }
    return CellMagicAnswer.evaluate(sources);
  }
}
