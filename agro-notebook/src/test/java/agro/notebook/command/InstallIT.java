package agro.notebook.command;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.install.KernelSpec;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Installing, checking and removing the kernel with the jar as a user has it. */
@Tag("slow")
class InstallIT {

  private static final Path JAR = Path.of("target", "agro-notebook.jar").toAbsolutePath();

  @TempDir private static Path folder;
  private static Path installed;
  private static Told first;

  private record Told(int status, String out, String err) {}

  private static Told tell(String... arguments) throws IOException, InterruptedException {
    var command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                JAR.toString()));
    command.addAll(List.of(arguments));
    var out = Files.createTempFile(folder, "out", ".txt");
    var err = Files.createTempFile(folder, "err", ".txt");
    var builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().put("JUPYTER_DATA_DIR", folder.resolve("my-data").toString());
    var process = builder.start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    return new Told(
        process.exitValue(),
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @BeforeAll
  static void install() throws IOException, InterruptedException {
    first = tell("install");
    installed = folder.resolve("my-data/kernels/agro-java");
  }

  private static KernelSpec spec(Path kernel) throws IOException {
    return KernelSpec.parse(Files.readString(kernel.resolve("kernel.json"), StandardCharsets.UTF_8))
        .orElseThrow();
  }

  /** Puts another text into the spec for one check. */
  private static Told checkWith(String before, String after)
      throws IOException, InterruptedException {
    var file = installed.resolve("kernel.json");
    var text = Files.readString(file, StandardCharsets.UTF_8);
    assertThat(text).contains(before);
    Files.writeString(file, text.replace(before, after), StandardCharsets.UTF_8);
    try {
      return tell("check");
    } finally {
      Files.writeString(file, text, StandardCharsets.UTF_8);
    }
  }

  @Test
  void theKernelIsInstalledForTheUserAndAllIsWell() throws IOException, InterruptedException {
    assertThat(first.err).doesNotContain("Exception");
    assertThat(first.status).isZero();
    assertThat(first.out)
        .startsWith("installed: " + installed)
        .contains("install --remove", "jupyter kernelspec remove agro-java")
        .doesNotContain("more slowly");
    assertThat(spec(installed).arguments())
        .allSatisfy(argument -> assertThat(argument).doesNotContain(".part"))
        .noneMatch(argument -> argument.equals(JAR.toString()));
    try (var files = Files.list(installed)) {
      assertThat(files).hasSize(5);
    }
    var check = tell("check");
    assertThat(check.out)
        .contains("ok: The class-data archive is used", "ok: The kernel starts")
        .doesNotContain("problem: ");
    assertThat(check.status).isZero();
  }

  @Test
  void whatIsGoneIsNamedWithACure() throws IOException, InterruptedException {
    var noArchive = checkWith(".jsa", ".gone");
    assertThat(noArchive.status).isEqualTo(1);
    assertThat(noArchive.out)
        .contains("problem: The class-data archive is gone", "ok: The kernel starts");
    var noJava = checkWith("bin/java", "bin/no-java");
    assertThat(noJava.status).isEqualTo(1);
    assertThat(noJava.out).contains("problem: The Java that the kernel spec names is gone");
    var noJar = checkWith(".jar", ".gone");
    assertThat(noJar.status).isEqualTo(1);
    assertThat(noJar.out).contains("problem: The program that the kernel spec names is gone");
  }

  @Test
  void anArchiveThatDoesNotFitIsFound() throws IOException, InterruptedException {
    var line = spec(installed).arguments();
    var jar = Path.of(line.get(line.indexOf("-jar") + 1));
    var copy = Files.copy(jar, folder.resolve("moved.jar"));
    var moved = checkWith(jar.toString(), copy.toString());
    assertThat(moved.status).isEqualTo(1);
    assertThat(moved.out)
        .contains("problem: The class-data archive does not fit", "ok: The kernel starts");
    var option = checkWith("-XX:+UseSerialGC", "-XX:NoSuchOption");
    assertThat(option.status).isEqualTo(1);
    assertThat(option.out).contains("problem: The kernel was started for a trial", "NoSuchOption");
  }

  @Test
  void anOptionThatTheMachineRefusesInstallsNothing() throws IOException, InterruptedException {
    var prefix = folder.resolve("refused");
    var told = tell("install", "--prefix", prefix.toString(), "--jvm-option=-XX:NoSuchOption");
    assertThat(told.status).isEqualTo(1);
    assertThat(told.err).contains("NoSuchOption", "nothing was installed").doesNotContain("\tat ");
    assertThat(prefix.resolve("share/jupyter/kernels/agro-java")).doesNotExist();
  }

  @Test
  void installedIntoAnEnvironmentInstalledAgainAndRemoved()
      throws IOException, InterruptedException {
    var prefix = folder.resolve("an environment").toString();
    var options = List.of("--prefix", prefix, "--name", "field-course");
    var install = new ArrayList<>(List.of("install"));
    install.addAll(options);
    install.addAll(List.of("--no-archive", "--in-place", "--jvm-option=-Xmx1g"));
    assertThat(tell(install.toArray(String[]::new)).status).isZero();
    var kernel = Path.of(prefix, "share/jupyter/kernels/field-course");
    assertThat(spec(kernel).arguments()).contains("-Xmx1g", JAR.toString());
    install.set(install.indexOf("--jvm-option=-Xmx1g"), "--jvm-option=-Xmx900m");
    assertThat(tell(install.toArray(String[]::new)).out).startsWith("installed again: ");
    assertThat(spec(kernel).arguments()).contains("-Xmx900m").doesNotContain("-Xmx1g");
    var check = tell("check", "--prefix", prefix, "--name", "field-course");
    assertThat(check.out).contains("note: There is no class-data archive", "ok: The kernel starts");
    assertThat(check.status).isZero();
    var remove = tell("install", "--remove", "--prefix", prefix, "--name", "field-course");
    assertThat(remove.status).isZero();
    assertThat(kernel).doesNotExist();
    assertThat(JAR).isRegularFile();
    var again = tell("install", "--remove", "--prefix", prefix, "--name", "field-course");
    assertThat(again.status).isEqualTo(1);
    assertThat(again.err).contains("no kernel is here");
  }

  @Test
  void twoPlacesAtOnceAreRefused() throws IOException, InterruptedException {
    assertThat(tell("install", "--user", "--prefix", "x").status).isEqualTo(2);
    assertThat(tell("check", "--name", "No Name").status).isEqualTo(1);
  }
}
