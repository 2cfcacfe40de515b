package agro.notebook.insight;

import agro.notebook.insight.CellNames.Name;
import agro.notebook.insight.Completions.Candidate;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.IdentifierTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import jdk.jshell.JShell;

/** Finds how the word at the cursor may go on. */
final class CompletionSearch {

  private static final Set<String> BEFORE_TYPE =
      Set.of("extends", "implements", "throws", "instanceof", "permits");
  private static final int UNIMPORTED = 20;

  private final JShell shell;
  private final SourceCompiler compiler;
  private final Supplier<TypeIndex> index;

  CompletionSearch(JShell shell, SourceCompiler compiler, Supplier<TypeIndex> index) {
    this.shell = shell;
    this.compiler = compiler;
    this.index = index;
  }

  /**
   * The candidates at a position.
   *
   * @param code Java, without lines for the notebook
   * @param cursor a position in it
   * @return the candidates, best first
   */
  Completions at(String code, int cursor) {
    var word = CursorWord.at(code, cursor);
    if (word.inText()) {
      return Completions.none(cursor);
    }
    var parts = CellParts.of(code);
    var part = CellParts.around(parts, word.from());
    var creates = afterNew(code, word);
    var reference = word.follows(code, ":", ":");
    var cut =
        reference ? word.before().get(word.before().size() - 2).start() : cutFor(code, word, part);
    var mark = (reference ? "." : "") + CellNames.MARK + (creates ? "()" : "");
    var text = SessionText.of(shell, code, parts, part, mark, cut);
    var found = CellNames.at(compiler.analyzed(text.text()));
    if (found.isEmpty() || found.get().isNewName()) {
      return Completions.none(cursor);
    }
    var names = found.get();
    var ranking =
        new CandidateRanking(
            names.types(), new ExpectedTypes(names).atMark(), word.typed(), creates);
    var inImport = part.kind() == CellParts.PartKind.IMPORT;
    ranking.addAll(fitting(names, code, word, creates, inImport));
    addPackages(ranking, names, word, inImport);
    if (names.isAfterArray()) {
      ranking.add(
          new Candidate("length", NameKind.FIELD, "length : int"), -CandidateRanking.OTHER_TYPE);
    }
    if (!word.follows(code, ".") && !reference && !inImport) {
      addConstants(ranking, names);
      addWords(ranking, code, word, creates);
      addUnimported(ranking, names, word, creates, word.follows(code, "@"));
    }
    return new Completions(
        word.from(), word.typed().isEmpty() ? cursor : word.to(), ranking.best());
  }

  /** Types are looked for at the beginning of a statement, where a parser expects them anyway. */
  private static int cutFor(String code, CursorWord word, CellParts.Part part) {
    var typeOnly =
        !word.before().isEmpty()
            && (BEFORE_TYPE.contains(lastOf(code, word)) || word.follows(code, "@"));
    return typeOnly && part.kind() != CellParts.PartKind.STATEMENT
        ? part.start()
        : word.follows(code, "@") ? word.from() - 1 : word.from();
  }

  private static String lastOf(String code, CursorWord word) {
    return word.before().isEmpty() ? "" : word.before().get(word.before().size() - 1).in(code);
  }

  /** Whether the word, with what qualifies it, follows {@code new}. */
  private static boolean afterNew(String code, CursorWord word) {
    var at = word.before().size() - 1;
    while (at >= 1 && word.before().get(at).is(code, ".")) {
      at -= 2;
    }
    return at >= 0 && word.before().get(at).is(code, "new");
  }

  private static List<Name> fitting(
      CellNames names, String code, CursorWord word, boolean creates, boolean inImport) {
    Predicate<Element> fits = element -> true;
    if (word.follows(code, "@")) {
      fits = element -> element.getKind() == ElementKind.ANNOTATION_TYPE;
    } else if (creates || BEFORE_TYPE.contains(lastOf(code, word))) {
      fits = element -> element instanceof TypeElement && element.getKind() != ElementKind.ENUM;
    } else if (word.follows(code, ":", ":")) {
      fits = element -> element.getKind() == ElementKind.METHOD;
    } else if (inImport) {
      var outermost = !word.follows(code, ".");
      var isStatic = word.before().stream().anyMatch(one -> one.is(code, "static"));
      fits = element -> !outermost && (isStatic || element instanceof TypeElement);
    }
    var allowed = fits;
    return names.names(word.follows(code, ":", ":")).stream()
        .filter(name -> CandidateRanking.begins(name.element(), word.typed()))
        .filter(name -> allowed.test(name.element()))
        .toList();
  }

  private void addPackages(
      CandidateRanking ranking, CellNames names, CursorWord word, boolean inImport) {
    var before = names.packageBefore();
    var outermost =
        inImport
            || (word.typed().length() > 1 && Character.isLowerCase(word.typed().codePointAt(0)));
    var parent = before.map(Object::toString).orElse("");
    if (before.isPresent() || (outermost && names.place().getLeaf() instanceof IdentifierTree)) {
      for (var name : index.get().packagesBelow(parent)) {
        ranking.add(
            new Candidate(name, NameKind.PACKAGE, parent.isEmpty() ? name : parent + "." + name),
            40);
      }
    }
  }

  /** The constants of an enum that is wanted here, with the name of the enum where it is needed. */
  private static void addConstants(CandidateRanking ranking, CellNames names) {
    var parent = names.place().getParentPath();
    var holder = ExpectedTypes.isLabel(parent.getLeaf()) ? parent.getParentPath() : parent;
    var inCase = holder.getLeaf() instanceof CaseTree;
    for (var type : ranking.expected()) {
      if (type instanceof DeclaredType declared
          && declared.asElement().getKind() == ElementKind.ENUM) {
        var owner = declared.asElement().getSimpleName().toString();
        for (var member : declared.asElement().getEnclosedElements()) {
          if (member.getKind() == ElementKind.ENUM_CONSTANT) {
            var name = member.getSimpleName().toString();
            ranking.addConstant(name, inCase ? name : owner + "." + name, owner);
          }
        }
      }
    }
  }

  private static void addWords(
      CandidateRanking ranking, String code, CursorWord word, boolean creates) {
    var last = lastOf(code, word);
    if (word.typed().isEmpty() || creates || last.equals("@") || BEFORE_TYPE.contains(last)) {
      return;
    }
    var begins = last.isEmpty() || ";{})>:".contains(last) || JavaWords.isReserved(last);
    for (var one : JavaWords.at(begins)) {
      ranking.add(new Candidate(one, NameKind.KEYWORD, ""), 25);
    }
  }

  /** Types that could be named in full; long lists of them help nobody. */
  private void addUnimported(
      CandidateRanking ranking,
      CellNames names,
      CursorWord word,
      boolean creates,
      boolean annotation) {
    var typed = word.typed();
    if (typed.length() < 2 || !Character.isUpperCase(typed.codePointAt(0))) {
      return;
    }
    var added = 0;
    for (var fullName : index.get().typesBeginning(typed)) {
      var element = names.elements().getTypeElement(fullName);
      if (added < UNIMPORTED
          && element != null
          && element.getModifiers().contains(Modifier.PUBLIC)
          && !ranking.hasType(fullName)
          && (!creates || element.getKind() == ElementKind.CLASS)
          && (!annotation || element.getKind() == ElementKind.ANNOTATION_TYPE)) {
        ranking.add(new Candidate(fullName, Signatures.kindOf(element), fullName), 60 + added);
        added++;
      }
    }
  }

  /**
   * The names that could stand at a position, for a reader who has misspelt one.
   *
   * @param code Java, without lines for the notebook
   * @param at where the misspelt name begins
   * @return all names, in no order
   */
  List<String> namesAt(String code, int at) {
    var parts = CellParts.of(code);
    var part = CellParts.around(parts, at);
    var text = SessionText.of(shell, code, parts, part, CellNames.MARK, at);
    return CellNames.at(compiler.analyzed(text.text())).map(CellNames::names).stream()
        .flatMap(List::stream)
        .map(name -> name.element().getSimpleName().toString())
        .distinct()
        .toList();
  }

  /**
   * How what has a name can be called, for a reader whose call does not fit.
   *
   * @param code Java, without lines for the notebook
   * @param at where the name begins
   * @param name the name
   * @return how the methods of that name are called
   */
  List<String> signaturesAt(String code, int at, String name) {
    var parts = CellParts.of(code);
    var part = CellParts.around(parts, at);
    var word = CursorWord.at(code, at);
    var creates = afterNew(code, word);
    var mark = CellNames.MARK + (creates ? "()" : "");
    var text = SessionText.of(shell, code, parts, part, mark, at);
    return CellNames.at(compiler.analyzed(text.text())).stream()
        .flatMap(names -> names.names().stream())
        .filter(one -> one.element().getSimpleName().contentEquals(name))
        .flatMap(one -> calls(one, creates).stream())
        .distinct()
        .toList();
  }

  private static List<String> calls(Name name, boolean creates) {
    var calls = new ArrayList<String>();
    if (creates) {
      for (var member : name.element().getEnclosedElements()) {
        if (member.getKind() == ElementKind.CONSTRUCTOR) {
          calls.add("new " + Signatures.inList(member, member.asType()));
        }
      }
    } else if (name.element().getKind() == ElementKind.METHOD) {
      calls.add(Signatures.inList(name.element(), name.type()).replaceAll(" : .*", ""));
    }
    return calls;
  }
}
