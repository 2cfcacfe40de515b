package agro.notebook;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * A notebook imports all our packages with a star beside those of the JDK, the tables and the
 * charts. So every public type must be known by its simple name alone, and no call may be
 * ambiguous.
 */
class NamesInShellTest {

  private static final List<String> IMPORTED_FROM_JDK =
      List.of(
          "java.lang",
          "java.io",
          "java.math",
          "java.net",
          "java.nio.file",
          "java.util",
          "java.util.concurrent",
          "java.util.function",
          "java.util.prefs",
          "java.util.regex",
          "java.util.stream");
  private static final Set<String> NUMBERS =
      Set.of("byte", "short", "int", "long", "float", "double");

  private static JavaClasses ours;

  @BeforeAll
  static void readOurClasses() {
    ours =
        new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("agro");
  }

  @Test
  void simpleNamesAreOursAlone() throws IOException {
    Map<String, List<String>> byName = new TreeMap<>();
    for (String taken : takenNames()) {
      add(byName, taken);
    }
    assertThat(byName).containsKeys("List", "Flow", "Table", "XYChart", "Preferences");

    Set<String> ourNames =
        ours.stream()
            .filter(type -> isVisible(type) && type.isTopLevelClass())
            .map(JavaClass::getName)
            .collect(Collectors.toSet());
    ourNames.forEach(name -> add(byName, name));

    assertThat(ourNames).isNotEmpty();
    assertThat(byName.values())
        .filteredOn(names -> names.size() > 1 && names.stream().anyMatch(ourNames::contains))
        .as("public types of ours that share a simple name")
        .isEmpty();
  }

  @Test
  void publicMethodsReturnPublicTypes() {
    List<String> hidden = new ArrayList<>();
    for (JavaMethod method : visibleMethods()) {
      for (JavaClass type : method.getReturnType().getAllInvolvedRawTypes()) {
        JavaClass base = type.getBaseComponentType();
        if (base.getPackageName().startsWith("agro") && !isVisible(base)) {
          hidden.add(method.getFullName() + " returns " + base.getName());
        }
      }
    }
    assertThat(hidden).isEmpty();
  }

  @Test
  void overloadsDifferInMoreThanNumberOrFunction() {
    List<JavaMethod> methods = visibleMethods();
    Map<String, List<JavaMethod>> overloads =
        methods.stream()
            .collect(
                Collectors.groupingBy(
                    method -> method.getOwner().getName() + "." + method.getName()));
    List<String> ambiguous = new ArrayList<>();
    for (List<JavaMethod> group : overloads.values()) {
      for (int i = 0; i < group.size(); i++) {
        for (int j = i + 1; j < group.size(); j++) {
          if (looksTheSame(group.get(i), group.get(j))) {
            ambiguous.add(group.get(i).getFullName() + " and " + group.get(j).getFullName());
          }
        }
      }
    }
    assertThat(methods).isNotEmpty();
    assertThat(ambiguous).isEmpty();
  }

  private static boolean looksTheSame(JavaMethod one, JavaMethod other) {
    List<JavaClass> these = one.getRawParameterTypes();
    List<JavaClass> those = other.getRawParameterTypes();
    if (these.size() != those.size()) {
      return false;
    }
    for (int i = 0; i < these.size(); i++) {
      JavaClass a = these.get(i);
      JavaClass b = those.get(i);
      boolean alike =
          a.equals(b)
              || (NUMBERS.contains(a.getName()) && NUMBERS.contains(b.getName()))
              || (isFunctional(a) && isFunctional(b));
      if (!alike) {
        return false;
      }
    }
    return true;
  }

  private static boolean isFunctional(JavaClass type) {
    return type.isInterface()
        && type.getAllMethods().stream()
                .filter(method -> method.getModifiers().contains(JavaModifier.ABSTRACT))
                .count()
            == 1;
  }

  private static List<JavaMethod> visibleMethods() {
    return ours.stream()
        .filter(NamesInShellTest::isVisible)
        .flatMap(type -> type.getMethods().stream())
        .filter(method -> method.getModifiers().contains(JavaModifier.PUBLIC))
        .filter(method -> !method.getModifiers().contains(JavaModifier.SYNTHETIC))
        .toList();
  }

  private static boolean isVisible(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.PUBLIC)
        && type.getEnclosingClass().map(NamesInShellTest::isVisible).orElse(true)
        && !type.getSimpleName().equals("package-info");
  }

  private static void add(Map<String, List<String>> byName, String name) {
    byName
        .computeIfAbsent(name.substring(name.lastIndexOf('.') + 1), key -> new ArrayList<>())
        .add(name);
  }

  private static List<String> takenNames() throws IOException {
    List<String> names = new ArrayList<>();
    for (String packageName : IMPORTED_FROM_JDK) {
      names.addAll(namesInJdk(packageName));
    }
    new ClassFileImporter()
        .importPackages("tech.tablesaw.api", "org.knowm.xchart").stream()
            .filter(type -> isVisible(type) && type.isTopLevelClass())
            .filter(
                type ->
                    type.getPackageName().equals("tech.tablesaw.api")
                        || type.getPackageName().equals("org.knowm.xchart"))
            .map(JavaClass::getName)
            .forEach(names::add);
    return names;
  }

  private static List<String> namesInJdk(String packageName) throws IOException {
    FileSystem jdk = FileSystems.getFileSystem(URI.create("jrt:/"));
    List<String> names = new ArrayList<>();
    try (Stream<Path> modules = Files.list(jdk.getPath("packages", packageName))) {
      for (Path module : modules.toList()) {
        Path folder =
            jdk.getPath("modules", module.getFileName().toString())
                .resolve(packageName.replace('.', '/'));
        if (Files.isDirectory(folder)) {
          try (Stream<Path> files = Files.list(folder)) {
            files
                .map(file -> file.getFileName().toString())
                .filter(file -> file.matches("[A-Z]\\w*\\.class"))
                .map(file -> packageName + "." + file.substring(0, file.length() - 6))
                .filter(NamesInShellTest::isPublicInJdk)
                .forEach(names::add);
          }
        }
      }
    }
    return names;
  }

  private static boolean isPublicInJdk(String name) {
    try {
      return java.lang.reflect.Modifier.isPublic(
          Class.forName(name, false, ClassLoader.getPlatformClassLoader()).getModifiers());
    } catch (ClassNotFoundException e) {
      throw new AssertionError(e);
    }
  }
}
