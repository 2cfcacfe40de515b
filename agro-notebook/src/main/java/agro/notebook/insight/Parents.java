package agro.notebook.insight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;

/** The types that a type extends and implements, directly or not. */
final class Parents {

  private Parents() {}

  /**
   * All parents, the nearest first.
   *
   * @param type a type
   * @return the types, without the type itself
   */
  static Set<TypeElement> of(TypeElement type) {
    Set<TypeElement> all = new LinkedHashSet<>();
    List<TypeElement> level = List.of(type);
    while (!level.isEmpty()) {
      var next = new ArrayList<TypeElement>();
      for (var one : level) {
        add(one.getSuperclass(), next);
        one.getInterfaces().forEach(parent -> add(parent, next));
      }
      next.removeIf(one -> !all.add(one));
      level = next;
    }
    return all;
  }

  private static void add(TypeMirror parent, List<TypeElement> parents) {
    if (parent instanceof DeclaredType declared
        && declared.asElement() instanceof TypeElement type) {
      parents.add(type);
    }
  }
}
