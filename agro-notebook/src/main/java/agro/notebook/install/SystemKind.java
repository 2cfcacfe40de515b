package agro.notebook.install;

import java.util.List;
import java.util.Locale;

/** The families of operating systems that put Jupyter's folders in different places. */
public enum SystemKind {
  /** Linux, and every other system with the same customs. */
  LINUX("/", ":", "java", List.of("")),
  /** macOS. */
  MACOS("/", ":", "java", List.of("")),
  /** Windows. */
  WINDOWS("\\", ";", "java.exe", List.of(".exe", ".cmd", ".bat"));

  private final String separator;
  private final String listSeparator;
  private final String javaProgram;
  private final List<String> programEndings;

  SystemKind(
      String separator, String listSeparator, String javaProgram, List<String> programEndings) {
    this.separator = separator;
    this.listSeparator = listSeparator;
    this.javaProgram = javaProgram;
    this.programEndings = programEndings;
  }

  /**
   * The family of a system.
   *
   * @param name the name that Java gives it in {@code os.name}
   * @return its family
   */
  public static SystemKind of(String name) {
    var lower = name.toLowerCase(Locale.ROOT);
    if (lower.startsWith("windows")) {
      return WINDOWS;
    }
    return lower.startsWith("mac") || lower.startsWith("darwin") ? MACOS : LINUX;
  }

  /**
   * Joins a folder and names below it.
   *
   * @param folder the folder, with or without a separator at its end
   * @param names the names below it
   * @return the path
   */
  public String join(String folder, String... names) {
    var path = new StringBuilder(folder);
    for (var name : names) {
      if (!endsWithSeparator(path)) {
        path.append(separator);
      }
      path.append(name);
    }
    return path.toString();
  }

  private boolean endsWithSeparator(CharSequence path) {
    if (path.length() == 0) {
      return false;
    }
    var last = path.charAt(path.length() - 1);
    return last == '/' || (this == WINDOWS && last == '\\');
  }

  /**
   * Splits a list of folders, as an environment variable holds it.
   *
   * @param folders the list; parts that are blank are left out
   * @return the folders in their order
   */
  public List<String> split(String folders) {
    return List.of(folders.split(listSeparator, -1)).stream()
        .map(String::strip)
        .filter(folder -> !folder.isEmpty())
        .toList();
  }

  /**
   * The file name of the Java launcher.
   *
   * @return {@code java} or {@code java.exe}
   */
  public String javaProgram() {
    return javaProgram;
  }

  /**
   * What the file names of programs end in.
   *
   * @return the endings, in the order in which they are tried
   */
  public List<String> programEndings() {
    return programEndings;
  }
}
