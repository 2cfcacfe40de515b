package agro.notebook.insight;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.element.TypeParameterElement;
import javax.lang.model.type.ExecutableType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/** Names and types as a reader would write them. */
final class Signatures {

  private static final Pattern QUALIFIER =
      Pattern.compile("(?:\\b[\\p{Ll}_][\\p{L}\\p{N}_]*\\.)+(?=[\\p{Lu}$])");
  private static final Pattern INVENTED =
      Pattern.compile(
          "capture#\\d+ of |\\bSession\\$\\.|\\bHere\\$\\.|@[\\p{L}.]+(?:\\([^)]*\\))? ");

  private Signatures() {}

  /**
   * A type in short.
   *
   * @param type a type
   * @return its name without packages
   */
  static String shortName(TypeMirror type) {
    return shortened(type.toString());
  }

  /**
   * A text with types in short.
   *
   * @param text text with full names
   * @return the text without packages
   */
  static String shortened(String text) {
    var plain = INVENTED.matcher(text).replaceAll("");
    return QUALIFIER.matcher(plain).replaceAll("").replaceAll(",(?=\\S)", ", ");
  }

  /**
   * What a list of completions says beside a name.
   *
   * @param element what the name stands for
   * @param type its type as a member of what stands before the dot
   * @return for example {@code plus(int) : Sum}
   */
  static String inList(Element element, TypeMirror type) {
    if (type instanceof ExecutableType call && element instanceof ExecutableElement method) {
      return nameOf(method)
          + "("
          + parameterTypes(call.getParameterTypes(), method.isVarArgs())
          + ")"
          + (method.getKind() == ElementKind.CONSTRUCTOR
              ? ""
              : " : " + shortName(call.getReturnType()));
    }
    if (element instanceof TypeElement declared) {
      return shortenedSession(declared.getQualifiedName().toString());
    }
    return element.getKind() == ElementKind.PACKAGE
        ? element.toString()
        : element.getSimpleName() + " : " + shortName(type);
  }

  private static String shortenedSession(String name) {
    return INVENTED.matcher(name).replaceAll("");
  }

  private static String nameOf(ExecutableElement method) {
    return method.getKind() == ElementKind.CONSTRUCTOR
        ? method.getEnclosingElement().getSimpleName().toString()
        : method.getSimpleName().toString();
  }

  private static String parameterTypes(List<? extends TypeMirror> types, boolean varArgs) {
    var names = types.stream().map(Signatures::shortName).collect(Collectors.joining(", "));
    return varArgs && names.endsWith("[]") ? names.substring(0, names.length() - 2) + "..." : names;
  }

  /**
   * A whole declaration without its body.
   *
   * @param element what is declared
   * @param type its type as a member of what stands before the dot
   * @param parameterNames names of parameters as the source has them; empty when unknown
   * @return one line
   */
  static String declared(Element element, TypeMirror type, List<String> parameterNames) {
    if (element instanceof ExecutableElement method && type instanceof ExecutableType call) {
      return modifiers(element)
          + typeParameters(method.getTypeParameters())
          + (method.getKind() == ElementKind.CONSTRUCTOR
              ? ""
              : shortName(call.getReturnType()) + " ")
          + nameOf(method)
          + "("
          + parameters(method, call, parameterNames)
          + ")"
          + thrown(call);
    }
    if (element instanceof TypeElement declared) {
      return declaredType(declared);
    }
    return element.getKind() == ElementKind.PACKAGE
        ? "package " + element
        : modifiers(element) + shortName(type) + " " + element.getSimpleName();
  }

  private static String parameters(
      ExecutableElement method, ExecutableType call, List<String> parameterNames) {
    var text = new StringBuilder();
    var types = call.getParameterTypes();
    for (var index = 0; index < types.size(); index++) {
      var last = index == types.size() - 1;
      var type = parameterTypes(List.of(types.get(index)), last && method.isVarArgs());
      var name =
          index < parameterNames.size()
              ? parameterNames.get(index)
              : method.getParameters().get(index).getSimpleName().toString();
      text.append(index == 0 ? "" : ", ").append(type);
      text.append(name.matches("arg\\d+") ? "" : " " + name);
    }
    return text.toString();
  }

  private static String thrown(ExecutableType call) {
    return call.getThrownTypes().isEmpty()
        ? ""
        : " throws "
            + call.getThrownTypes().stream()
                .map(Signatures::shortName)
                .collect(Collectors.joining(", "));
  }

  private static String declaredType(TypeElement type) {
    var word =
        switch (type.getKind()) {
          case INTERFACE -> "interface ";
          case ENUM -> "enum ";
          case RECORD -> "record ";
          case ANNOTATION_TYPE -> "@interface ";
          default -> "class ";
        };
    var name = shortenedSession(type.getQualifiedName().toString());
    var components =
        type.getKind() == ElementKind.RECORD
            ? type.getRecordComponents().stream()
                .map(one -> shortName(one.asType()) + " " + one.getSimpleName())
                .collect(Collectors.joining(", ", "(", ")"))
            : "";
    return word
        + name
        + typeParameters(type.getTypeParameters()).strip()
        + components
        + parents(type);
  }

  private static String parents(TypeElement type) {
    var parent = type.getSuperclass();
    var hasParent =
        type.getKind() == ElementKind.CLASS
            && parent.getKind() == TypeKind.DECLARED
            && !parent.toString().equals("java.lang.Object");
    var interfaces =
        type.getInterfaces().stream().map(Signatures::shortName).collect(Collectors.joining(", "));
    var word = type.getKind().isInterface() ? " extends " : " implements ";
    return (hasParent ? " extends " + shortName(parent) : "")
        + (interfaces.isEmpty() ? "" : word + interfaces);
  }

  private static String typeParameters(List<? extends TypeParameterElement> parameters) {
    return parameters.isEmpty()
        ? ""
        : parameters.stream()
            .map(
                one -> {
                  var bounds =
                      one.getBounds().stream()
                          .map(Signatures::shortName)
                          .filter(bound -> !bound.equals("Object"))
                          .collect(Collectors.joining(" & "));
                  return one + (bounds.isEmpty() ? "" : " extends " + bounds);
                })
            .collect(Collectors.joining(", ", "<", "> "));
  }

  private static String modifiers(Element element) {
    var words =
        element.getModifiers().stream()
            .filter(
                modifier ->
                    modifier == Modifier.STATIC
                        || (modifier == Modifier.FINAL && !(element instanceof ExecutableElement))
                        || modifier == Modifier.DEFAULT)
            .map(Modifier::toString)
            .collect(Collectors.joining(" "));
    return words.isEmpty() ? "" : words + " ";
  }

  /**
   * What a name stands for.
   *
   * @param element a declaration
   * @return its kind
   */
  static NameKind kindOf(Element element) {
    return switch (element.getKind()) {
      case PACKAGE, MODULE -> NameKind.PACKAGE;
      case ENUM -> NameKind.ENUM;
      case CLASS -> NameKind.CLASS;
      case RECORD -> NameKind.RECORD;
      case INTERFACE -> NameKind.INTERFACE;
      case ANNOTATION_TYPE -> NameKind.ANNOTATION;
      case TYPE_PARAMETER -> NameKind.TYPE_PARAMETER;
      case METHOD, CONSTRUCTOR -> NameKind.METHOD;
      case ENUM_CONSTANT -> NameKind.CONSTANT;
      case FIELD ->
          element.getEnclosingElement().getSimpleName().contentEquals(SessionText.CLASS)
              ? NameKind.VARIABLE
              : NameKind.FIELD;
      default -> NameKind.VARIABLE;
    };
  }
}
