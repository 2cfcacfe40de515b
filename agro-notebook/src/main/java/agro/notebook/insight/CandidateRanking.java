package agro.notebook.insight;

import agro.notebook.insight.CellNames.Name;
import agro.notebook.insight.Completions.Candidate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Types;

/** Puts candidates into order: what has the wanted type first, then the nearest. */
final class CandidateRanking {

  private static final int LIMIT = 300;
  private static final int OTHER_CASE = 400;
  static final int OTHER_TYPE = 1000;
  private static final int DISTANCE = 10;
  private static final int TYPE_ITSELF = 5;
  private static final int CONSTANTS = 10_000;

  private record Ranked(Candidate candidate, int rank) {}

  private final Types types;
  private final List<TypeMirror> expected;
  private final String typed;
  private final boolean creates;
  private final Map<String, Ranked> ranked = new LinkedHashMap<>();
  private final Map<String, Integer> overloads = new HashMap<>();
  private final Set<String> typeNames = new HashSet<>();
  private int constants;

  CandidateRanking(Types types, List<TypeMirror> expected, String typed, boolean creates) {
    this.types = types;
    this.expected = List.copyOf(expected);
    this.typed = typed;
    this.creates = creates;
  }

  List<TypeMirror> expected() {
    return expected;
  }

  boolean hasType(String fullName) {
    return typeNames.contains(fullName);
  }

  static boolean begins(Element element, String typed) {
    var name = element.getSimpleName().toString();
    return begins(name, typed) && (!name.startsWith("$") || typed.startsWith("$"));
  }

  private static boolean begins(String name, String typed) {
    return name.regionMatches(true, 0, typed, 0, typed.length());
  }

  void addAll(List<Name> names) {
    names.forEach(this::add);
  }

  private void add(Name name) {
    var element = name.element();
    if (element instanceof TypeElement type) {
      typeNames.add(type.getQualifiedName().toString());
    }
    var fits = expected.stream().anyMatch(type -> fits(name, type));
    var candidate =
        new Candidate(
            element.getSimpleName().toString(), Signatures.kindOf(element), signature(name));
    var behindValues = element instanceof TypeElement && !creates ? TYPE_ITSELF : 0;
    put(
        candidate,
        rank(candidate.text())
            + name.distance() * DISTANCE
            + behindValues
            + (fits ? 0 : OTHER_TYPE));
  }

  private String signature(Name name) {
    if (creates && name.element() instanceof TypeElement type) {
      for (var member : type.getEnclosedElements()) {
        if (member instanceof ExecutableElement constructor
            && constructor.getKind() == ElementKind.CONSTRUCTOR
            && !constructor.getModifiers().contains(Modifier.PRIVATE)) {
          return Signatures.inList(constructor, constructor.asType());
        }
      }
    }
    return Signatures.inList(name.element(), name.type());
  }

  private boolean fits(Name name, TypeMirror wanted) {
    try {
      if (name.element() instanceof TypeElement type) {
        return creates
            ? !type.getModifiers().contains(Modifier.ABSTRACT)
                && types.isAssignable(types.erasure(type.asType()), types.erasure(wanted))
            : wanted instanceof DeclaredType declared && declared.asElement().equals(type);
      }
      var value = CellNames.valueOf(name);
      return ExpectedTypes.isUsable(value) && types.isAssignable(value, wanted);
    } catch (IllegalArgumentException noValue) {
      return false;
    }
  }

  /**
   * Adds a candidate that is no declared name in sight.
   *
   * @param candidate the candidate; left out unless it begins as the word does
   * @param distance how far back it belongs
   */
  void add(Candidate candidate, int distance) {
    var simple = candidate.text().substring(candidate.text().lastIndexOf('.') + 1);
    if (begins(simple, typed) && !ranked.containsKey(candidate.text())) {
      put(candidate, rank(simple) + distance + OTHER_TYPE);
    }
  }

  /**
   * Adds a constant of an enum that is wanted; constants come first, in the order of the enum.
   *
   * @param name its name
   * @param text how it is written here
   * @param owner the name of the enum
   */
  void addConstant(String name, String text, String owner) {
    if (begins(name, typed) || begins(text, typed)) {
      put(new Candidate(text, NameKind.CONSTANT, name + " : " + owner), constants - CONSTANTS);
      constants++;
    }
  }

  private int rank(String name) {
    return name.startsWith(typed) ? 0 : OTHER_CASE;
  }

  private void put(Candidate candidate, int rank) {
    var before = ranked.get(candidate.text());
    if (before == null) {
      ranked.put(candidate.text(), new Ranked(candidate, rank));
      return;
    }
    if (candidate.kind() == NameKind.METHOD
        && before.candidate().kind() == NameKind.METHOD
        && !before.candidate().signature().equals(candidate.signature())) {
      overloads.merge(candidate.text(), 1, Integer::sum);
    }
    if (rank < before.rank()) {
      ranked.put(candidate.text(), new Ranked(candidate, rank));
    }
  }

  /**
   * The candidates in order.
   *
   * @return at most a few hundred
   */
  List<Candidate> best() {
    var sorted = new ArrayList<>(ranked.values());
    sorted.sort(
        Comparator.comparingInt(Ranked::rank)
            .thenComparing(one -> one.candidate().text().toLowerCase(Locale.ROOT))
            .thenComparing(one -> one.candidate().text()));
    return sorted.stream().limit(LIMIT).map(this::withOverloads).toList();
  }

  private Candidate withOverloads(Ranked one) {
    var candidate = one.candidate();
    var others = overloads.getOrDefault(candidate.text(), 0);
    return others == 0
        ? candidate
        : new Candidate(
            candidate.text(), candidate.kind(), candidate.signature() + ", " + others + " more");
  }
}
