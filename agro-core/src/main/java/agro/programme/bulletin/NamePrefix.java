package agro.programme.bulletin;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Names that begin like another: "Mill Field plot 1" is a part of "Mill Field". */
final class NamePrefix {

  private NamePrefix() {}

  /** The longest of some names that a name is, or begins with before a space. */
  static Optional<String> longest(String name, Collection<String> others) {
    return others.stream()
        .filter(other -> !other.isEmpty())
        .filter(other -> name.equals(other) || name.startsWith(other + " "))
        .max(Comparator.comparingInt(String::length));
  }
}
