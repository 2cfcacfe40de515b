package agro.notebook.kernel;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.VarSnippet;

/**
 * Gives up the values of expressions to which nobody gave a name, so that memory does not grow with
 * every cell. The shell calls them {@code $1}, {@code $2} and so on. The last one of a cell can be
 * used until the next cell has ended, the others until their own cell has; one that a declaration
 * or another such value refers to is kept as long as that is there.
 */
final class UnnamedResults {

  private static final Pattern NAME = Pattern.compile("\\$\\d+\\b");

  private final JShell shell;
  private final VariableGuard guard;
  private final Map<Snippet, Set<String>> mentions = new HashMap<>();
  private final Set<String> givenUp = new HashSet<>();
  private final List<VarSnippet> ofThisCell = new ArrayList<>();
  private final List<VarSnippet> due = new ArrayList<>();

  UnnamedResults(JShell shell, VariableGuard guard) {
    this.shell = shell;
    this.guard = guard;
  }

  /**
   * Takes note of a snippet that was evaluated.
   *
   * @param snippet the snippet
   */
  void heard(Snippet snippet) {
    if (snippet instanceof VarSnippet variable
        && variable.subKind() == Snippet.SubKind.TEMP_VAR_EXPRESSION_SUBKIND) {
      ofThisCell.add(variable);
    }
    if (snippet.kind().isPersistent() && snippet.source().indexOf('$') >= 0) {
      var names = NAME.matcher(snippet.source()).results().map(MatchResult::group);
      mentions.put(snippet, names.collect(Collectors.toSet()));
    }
  }

  /** Gives up what is due at the end of a cell. */
  void cellEnded() {
    var last = ofThisCell.isEmpty() ? null : ofThisCell.remove(ofThisCell.size() - 1);
    due.addAll(ofThisCell);
    ofThisCell.clear();
    for (var index = due.size() - 1; index >= 0; index--) {
      if (!isMentioned(due.get(index).name())) {
        giveUp(due.remove(index));
      }
    }
    if (last != null) {
      due.add(last);
    }
  }

  private boolean isMentioned(String name) {
    mentions.keySet().removeIf(snippet -> !shell.status(snippet).isActive());
    return mentions.values().stream().anyMatch(names -> names.contains(name));
  }

  private void giveUp(VarSnippet result) {
    guard.clear(result);
    shell.drop(result);
    mentions.remove(result);
    givenUp.add(result.name());
  }

  /**
   * Why code may not have been compiled.
   *
   * @param code the refused code
   * @return a sentence about the first value in it that was given up; empty when there is none
   */
  Optional<String> explained(String code) {
    return NAME.matcher(code)
        .results()
        .map(MatchResult::group)
        .filter(givenUp::contains)
        .findFirst()
        .map(
            name ->
                name
                    + " was a result without a name, which is kept only until the next cell has"
                    + " ended; give such a result a name: var result = ...");
  }
}
