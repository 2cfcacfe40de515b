package agro.notebook.magic;

import agro.notebook.display.Display;
import agro.notebook.display.MimeBundle;
import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicContext.Declaration;
import agro.notebook.kernel.CellMagicContext.Kind;
import agro.notebook.kernel.CellMagicProblem;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Lists what cells have declared. */
final class ListMagic implements CellMagic {

  private static final int LONGEST = 60;

  private record Variable(String name, String type, String value) {}

  private record Method(String name, String signature) {}

  private record Type(String name, String kind) {}

  private record Import(String name) {}

  @Override
  public String name() {
    return "list";
  }

  @Override
  public List<String> aliases() {
    return List.of("vars", "variables", "methods", "types", "imports");
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.of(Form.LINE);
  }

  @Override
  public String arguments() {
    return "[variables | methods | types | imports]";
  }

  @Override
  public String summary() {
    return "lists what cells have declared, or one kind of it";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context) throws CellMagicProblem {
    var kinds = EnumSet.noneOf(Kind.class);
    for (var word : call.words()) {
      kinds.add(kind(word));
    }
    if (!call.name().equals(name())) {
      kinds.add(kind(call.name()));
    }
    var all = kinds.isEmpty();
    for (var kind : all ? EnumSet.allOf(Kind.class) : kinds) {
      show(kind, context.declarations(), all);
    }
    return CellMagicAnswer.done();
  }

  private static Kind kind(String word) throws CellMagicProblem {
    return switch (word.toLowerCase(Locale.ROOT)) {
      case "vars", "variables", "variable" -> Kind.VARIABLE;
      case "methods", "method" -> Kind.METHOD;
      case "types", "type", "classes" -> Kind.TYPE;
      case "imports", "import" -> Kind.IMPORT;
      default ->
          throw new CellMagicProblem(
              "\""
                  + word
                  + "\" is not a kind of declaration; expected variables, methods, types"
                  + " or imports");
    };
  }

  private static void show(Kind kind, List<Declaration> declarations, boolean onlySome) {
    var some = declarations.stream().filter(one -> one.kind() == kind).toList();
    if (!some.isEmpty()) {
      Display.display(some.stream().map(ListMagic::row).toList());
    } else if (!onlySome) {
      System.out.println("No " + word(kind) + " so far.");
    }
  }

  private static String word(Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT) + "s";
  }

  private static Record row(Declaration one) {
    return switch (one.kind()) {
      case VARIABLE -> new Variable(one.name(), one.description(), inShort(one.value()));
      case METHOD -> new Method(one.name(), one.description());
      case TYPE -> new Type(one.name(), one.description());
      case IMPORT -> new Import(one.description());
    };
  }

  private static String inShort(Object value) {
    var text = text(value).strip();
    var line = text.lines().findFirst().orElse("");
    var whole = line.equals(text) && line.length() <= LONGEST;
    return whole ? line : line.substring(0, Math.min(line.length(), LONGEST)) + " ...";
  }

  /**
   * Only what its toString would not tell is rendered: drawing a figure for one line takes long.
   */
  private static String text(Object value) {
    var hidden = value instanceof Collection<?> || value instanceof Map<?, ?>;
    if (hidden || (value != null && value.getClass().isArray())) {
      return Display.render(value).get(MimeBundle.TEXT).orElse("");
    }
    try {
      return String.valueOf(value);
    } catch (RuntimeException | Error itsOwnTrouble) {
      return "(its toString threw " + itsOwnTrouble.getClass().getName() + ")";
    }
  }
}
