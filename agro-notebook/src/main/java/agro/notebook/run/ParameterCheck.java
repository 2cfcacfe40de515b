package agro.notebook.run;

import agro.notebook.kernel.DeclaredVariable;
import agro.report.InputProblem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.VarSnippet;

/** Looks at the parameters that notebooks declare, without running anything. */
public final class ParameterCheck {

  private final Map<String, String> values;
  private final Map<String, DeclaredVariable> known = new LinkedHashMap<>();
  private final Set<String> used = new LinkedHashSet<>();
  private boolean allRead = true;

  private ParameterCheck(Map<String, String> values) {
    this.values = values;
  }

  /**
   * Gives each notebook the values that it declares a parameter for.
   *
   * @param tasks the notebooks; one that cannot be read keeps all values and fails later
   * @param values values by name, each meant for one or more of the notebooks
   * @return the tasks with their own values
   * @throws InputProblem when no notebook declares a name, or a value does not fit
   */
  public static List<RunTask> shared(List<RunTask> tasks, Map<String, String> values) {
    return values.isEmpty() ? List.copyOf(tasks) : new ParameterCheck(values).shared(tasks);
  }

  private List<RunTask> shared(List<RunTask> tasks) {
    var settled = new ArrayList<RunTask>();
    try (var shell = JShell.builder().executionEngine("local").build()) {
      for (var task : tasks) {
        var notebook = read(task);
        allRead &= notebook.isPresent();
        settled.add(
            task.withParameters(
                notebook.isEmpty() ? values : own(notebook.get(), shell.sourceCodeAnalysis())));
      }
    }
    values.keySet().stream()
        .filter(name -> allRead && !used.contains(name))
        .findFirst()
        .ifPresent(this::refuse);
    return settled;
  }

  private static Optional<NotebookDocument> read(RunTask task) {
    try {
      return Optional.of(NotebookDocument.read(task.file()));
    } catch (InputProblem unreadable) {
      return Optional.empty();
    }
  }

  private Map<String, String> own(NotebookDocument notebook, SourceCodeAnalysis analysis) {
    var declared = new ArrayList<DeclaredVariable>();
    notebook.cells().stream()
        .filter(InjectedParameters::isDeclaredIn)
        .findFirst()
        .ifPresent(cell -> addDeclared(cell.source(), analysis, declared));
    var own = new LinkedHashMap<String, String>();
    for (var variable : declared) {
      known.putIfAbsent(variable.name(), variable);
      if (values.containsKey(variable.name())) {
        own.put(variable.name(), values.get(variable.name()));
      }
    }
    used.addAll(own.keySet());
    new InjectedParameters(notebook.name(), own).check(declared);
    return own;
  }

  private static void addDeclared(
      String code, SourceCodeAnalysis analysis, List<DeclaredVariable> declared) {
    for (var rest = code; !rest.isBlank(); ) {
      var next = analysis.analyzeCompletion(rest);
      if (next.source() == null) {
        return;
      }
      for (var snippet : analysis.sourceToSnippets(next.source())) {
        if (snippet instanceof VarSnippet variable) {
          declared.add(new DeclaredVariable(variable.name(), variable.typeName()));
        }
      }
      rest = next.remaining();
    }
  }

  private void refuse(String name) {
    var names =
        known.values().stream()
            .map(each -> each.name() + " (" + each.type() + ")")
            .collect(Collectors.joining(", "));
    throw InputProblem.of("none of the notebooks has a parameter \"" + name + "\"")
        .expected(names.isEmpty() ? "no parameter at all" : "one of: " + names)
        .because("a misspelt parameter would change nothing, unnoticed")
        .mend(names.isEmpty() ? "leave it out" : "use one of these names");
  }
}
