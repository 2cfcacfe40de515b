package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.report.InputProblem;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * The folders against the tables of the Jupyter documentation, chapter "Common directories and file
 * locations", and of the documentation of jupyter_client, chapter "Making kernels for Jupyter". The
 * rules of every system are tried on any, since paths are text here.
 */
class DataFoldersTest {

  private static Surroundings linux(Map<String, String> variables) {
    return new Surroundings(SystemKind.LINUX, variables, "/home/ada");
  }

  private static Surroundings mac(Map<String, String> variables) {
    return new Surroundings(SystemKind.MACOS, variables, "/Users/ada");
  }

  private static Surroundings windows(Map<String, String> variables) {
    return new Surroundings(SystemKind.WINDOWS, variables, "C:\\Users\\Ada Byron");
  }

  @Test
  void theUsersFolderOnEachSystem() {
    assertThat(DataFolders.user(linux(Map.of()))).isEqualTo("/home/ada/.local/share/jupyter");
    assertThat(DataFolders.user(mac(Map.of()))).isEqualTo("/Users/ada/Library/Jupyter");
    assertThat(
            DataFolders.user(windows(Map.of("APPDATA", "C:\\Users\\Ada Byron\\AppData\\Roaming"))))
        .isEqualTo("C:\\Users\\Ada Byron\\AppData\\Roaming\\jupyter");
  }

  @Test
  void theEnvironmentNamesTheHomeFolder() {
    assertThat(DataFolders.user(linux(Map.of("HOME", "/srv/ada/"))))
        .isEqualTo("/srv/ada/.local/share/jupyter");
    assertThat(DataFolders.user(windows(Map.of("USERPROFILE", "D:\\Ada", "HOME", "/c/elsewhere"))))
        .isEqualTo("D:\\Ada\\.jupyter\\data");
  }

  @Test
  void variablesOfJupyterAndOfTheDesktopComeFirst() {
    assertThat(DataFolders.user(linux(Map.of("XDG_DATA_HOME", "/data/ada"))))
        .isEqualTo("/data/ada/jupyter");
    assertThat(
            DataFolders.user(
                linux(Map.of("XDG_DATA_HOME", "/data/ada", "JUPYTER_DATA_DIR", "/own"))))
        .isEqualTo("/own");
    assertThat(DataFolders.user(mac(Map.of("JUPYTER_DATA_DIR", "/own")))).isEqualTo("/own");
    assertThat(DataFolders.user(windows(Map.of("JUPYTER_DATA_DIR", "D:\\own", "APPDATA", "C:\\a"))))
        .isEqualTo("D:\\own");
    assertThat(DataFolders.user(mac(Map.of("XDG_DATA_HOME", "/data"))))
        .as("macOS has its own custom")
        .isEqualTo("/Users/ada/Library/Jupyter");
  }

  @Test
  void anEmptyVariableIsNoVariable() {
    assertThat(DataFolders.user(linux(Map.of("JUPYTER_DATA_DIR", "", "XDG_DATA_HOME", ""))))
        .isEqualTo("/home/ada/.local/share/jupyter");
  }

  @Test
  void windowsWithoutApplicationDataFallsBackToTheSettings() {
    assertThat(DataFolders.user(windows(Map.of())))
        .isEqualTo("C:\\Users\\Ada Byron\\.jupyter\\data");
    assertThat(DataFolders.user(windows(Map.of("JUPYTER_CONFIG_DIR", "D:\\set"))))
        .isEqualTo("D:\\set\\data");
  }

  @Test
  void windowsDoesNotMindTheCaseOfVariables() {
    assertThat(DataFolders.user(windows(Map.of("AppData", "C:\\a")))).isEqualTo("C:\\a\\jupyter");
    assertThat(DataFolders.user(linux(Map.of("jupyter_data_dir", "/own"))))
        .isEqualTo("/home/ada/.local/share/jupyter");
  }

  @Test
  void foldersByTheCustomOfThePlatformOnRequest() {
    assertThat(DataFolders.user(mac(Map.of("JUPYTER_PLATFORM_DIRS", "1"))))
        .isEqualTo("/Users/ada/Library/Application Support/Jupyter");
    assertThat(
            DataFolders.user(
                windows(Map.of("JUPYTER_PLATFORM_DIRS", "1", "LOCALAPPDATA", "C:\\local"))))
        .isEqualTo("C:\\local\\Jupyter");
    assertThat(DataFolders.user(mac(Map.of("JUPYTER_PLATFORM_DIRS", "0"))))
        .isEqualTo("/Users/ada/Library/Jupyter");
  }

  @Test
  void kernelsAreLookedForFromTheOwnToTheShared() {
    assertThat(DataFolders.search(linux(Map.of("JUPYTER_PATH", "/first: /second :"))))
        .containsExactly(
            "/first",
            "/second",
            "/home/ada/.local/share/jupyter",
            "/usr/local/share/jupyter",
            "/usr/share/jupyter");
    assertThat(
            DataFolders.search(
                windows(
                    Map.of(
                        "JUPYTER_PATH",
                        "D:\\one;D:\\two",
                        "APPDATA",
                        "C:\\a",
                        "PROGRAMDATA",
                        "C:\\ProgramData"))))
        .containsExactly("D:\\one", "D:\\two", "C:\\a\\jupyter", "C:\\ProgramData\\jupyter");
  }

  @Test
  void anActiveEnvironmentComesBeforeTheUserUnlessToldOtherwise() {
    var folder = "/venv/share/jupyter";
    assertThat(DataFolders.search(linux(Map.of("VIRTUAL_ENV", "/venv"))))
        .startsWith(folder, "/home/ada/.local/share/jupyter")
        .doesNotHaveDuplicates();
    assertThat(
            DataFolders.search(
                linux(Map.of("CONDA_PREFIX", "/venv", "JUPYTER_PREFER_ENV_PATH", "no"))))
        .startsWith("/home/ada/.local/share/jupyter", folder);
  }

  @Test
  void destinations() {
    var at = linux(Map.of("VIRTUAL_ENV", "/venv"));
    assertThat(new Destination.CurrentUser().dataFolder(at))
        .isEqualTo("/home/ada/.local/share/jupyter");
    assertThat(new Destination.ActiveEnvironment().dataFolder(at)).isEqualTo("/venv/share/jupyter");
    assertThat(new Destination.Prefix("/opt/lab/").dataFolder(at))
        .isEqualTo("/opt/lab/share/jupyter");
    assertThat(new Destination.Prefix("C:\\lab\\").dataFolder(windows(Map.of())))
        .isEqualTo("C:\\lab\\share\\jupyter");
    assertThatThrownBy(() -> new Destination.ActiveEnvironment().dataFolder(linux(Map.of())))
        .isInstanceOf(InputProblem.class)
        .hasMessageContaining("VIRTUAL_ENV");
  }

  @Test
  void systemsAreKnownByTheNamesThatJavaGivesThem() {
    assertThat(SystemKind.of("Linux")).isEqualTo(SystemKind.LINUX);
    assertThat(SystemKind.of("FreeBSD")).isEqualTo(SystemKind.LINUX);
    assertThat(SystemKind.of("Mac OS X")).isEqualTo(SystemKind.MACOS);
    assertThat(SystemKind.of("Darwin")).isEqualTo(SystemKind.MACOS);
    assertThat(SystemKind.of("Windows 11")).isEqualTo(SystemKind.WINDOWS);
    assertThat(SystemKind.of("WINDOWS NT")).isEqualTo(SystemKind.WINDOWS);
    assertThat(SystemKind.WINDOWS.javaProgram()).isEqualTo("java.exe");
  }
}
