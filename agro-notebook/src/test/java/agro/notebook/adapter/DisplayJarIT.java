package agro.notebook.adapter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.notebook.magic.SampleJar;
import com.google.gson.Gson;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.slf4j.Logger;
import org.zeromq.ZContext;

/**
 * The display jar as another kernel sees it: in a process of its own, with nothing else of ours.
 */
class DisplayJarIT {

  private static final Path JAR = Path.of("target", "agro-display.jar").toAbsolutePath();

  private static final String VALUES =
      "static Object table() { return agro.working.ResultTable.of(\"Catches\","
          + " java.util.List.of(agro.working.ResultTable.Column.of(\"Trap\")),"
          + " java.util.List.of(java.util.List.of(agro.working.Cell.text(\"A\")))); }"
          + "static Object figure() { return agro.notebook.display.FigureBundle.of("
          + "new byte[] {1}, \"Two flights\", \"Flights\","
          + " (agro.working.ResultTable) table()).shownAt(300); }";

  @TempDir private Path folder;

  private static Path jarOf(Class<?> type) {
    return Path.of(
        java.net.URI.create(type.getProtectionDomain().getCodeSource().getLocation().toString()));
  }

  private String run(SampleJar program, Path... others) throws Exception {
    var entries = new ArrayList<Path>(List.of(JAR, program.writeTo(folder.resolve("probe.jar"))));
    entries.addAll(List.of(others));
    var classPath =
        entries.stream().map(Path::toString).collect(Collectors.joining(File.pathSeparator));
    var output = folder.resolve("output.txt");
    var process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Dfile.encoding=UTF-8",
                "-cp",
                classPath,
                "probe.Probe")
            .redirectErrorStream(true)
            .redirectOutput(output.toFile())
            .start();
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return Files.readString(output, StandardCharsets.UTF_8);
  }

  @Test
  void theStockKernelShowsOurResultsAfterOneCall() throws Exception {
    var program =
        SampleJar.with(
                "probe.Probe",
                VALUES
                    + "public static void main(String[] none) {"
                    + "agro.notebook.adapter.BaseKernelDisplay.install();"
                    + "agro.notebook.adapter.BaseKernelDisplay.install();"
                    + "var renderer = io.github.spencerpark.ijava.IJava.getKernelInstance()"
                    + ".getRenderer();"
                    + "System.out.println(renderer.render(table()).getData("
                    + "io.github.spencerpark.jupyter.kernel.display.mime.MIMEType.TEXT_HTML));"
                    + "System.out.println(renderer.render(figure()).getData("
                    + "io.github.spencerpark.jupyter.kernel.display.mime.MIMEType.TEXT_HTML)); }")
            .and(
                "io.github.spencerpark.ijava.IJava",
                "extends io.github.spencerpark.jupyter.kernel.BaseKernel",
                "static final IJava ONE = new IJava();"
                    + "public static IJava getKernelInstance() { return ONE; }"
                    + "public io.github.spencerpark.jupyter.kernel.display.DisplayData eval(String c)"
                    + "{ return null; }"
                    + "public io.github.spencerpark.jupyter.kernel.LanguageInfo getLanguageInfo()"
                    + "{ return null; }");
    var base = jarOf(io.github.spencerpark.jupyter.kernel.BaseKernel.class);
    assertThat(run(program, base, jarOf(Gson.class), jarOf(ZContext.class)))
        .contains("<caption>Catches</caption>", "alt=\"Two flights\"", "width=\"300\"")
        .doesNotContain("Exception", "Error");
  }

  @Test
  void theForkFindsTheJarByItself() throws Exception {
    var program =
        SampleJar.with(
                "probe.Probe",
                VALUES
                    + "public static void main(String[] none) {"
                    + "var renderer = new org.dflib.jjava.jupyter.kernel.display.Renderer();"
                    + "var kernel = new probe.Kernel(renderer);"
                    + "for (var each : java.util.ServiceLoader.load("
                    + "org.dflib.jjava.jupyter.Extension.class)) { each.install(kernel); }"
                    + "System.out.println(renderer.render(table()).getData("
                    + "org.dflib.jjava.jupyter.kernel.display.mime.MIMEType.TEXT_HTML)); }")
            .and(
                "probe.Kernel",
                "extends org.dflib.jjava.jupyter.kernel.BaseKernel",
                "public Kernel(org.dflib.jjava.jupyter.kernel.display.Renderer renderer) {"
                    + "super(\"k\", \"1\","
                    + "new org.dflib.jjava.jupyter.kernel.LanguageInfo.Builder(\"java\").build(),"
                    + "java.util.List.of(), null,"
                    + "new org.dflib.jjava.jupyter.kernel.JupyterIO("
                    + "java.nio.charset.StandardCharsets.UTF_8),"
                    + "new org.dflib.jjava.jupyter.kernel.comm.CommManager(), renderer, null,"
                    + "new org.dflib.jjava.jupyter.kernel.magic.MagicsRegistry(), false,"
                    + "new org.dflib.jjava.jupyter.kernel.util.StringStyler.Builder().build()); }"
                    + "public Object evalRaw(String c) { return c; }"
                    + "public org.dflib.jjava.jupyter.kernel.display.DisplayData inspect("
                    + "String c, int a, boolean d) { return null; }"
                    + "public org.dflib.jjava.jupyter.kernel.ReplacementOptions complete("
                    + "String c, int a) { return null; }"
                    + "public String isComplete(String c) { return \"\"; }");
    var base = jarOf(org.dflib.jjava.jupyter.kernel.BaseKernel.class);
    assertThat(run(program, base, jarOf(Gson.class), jarOf(ZContext.class), jarOf(Logger.class)))
        .contains("<caption>Catches</caption>")
        .doesNotContain("Exception", "Error");
  }

  @Test
  void itLoadsWithoutAnyKernel() throws Exception {
    var program =
        SampleJar.with(
            "probe.Probe",
            VALUES
                + "public static void main(String[] none) {"
                + "agro.notebook.adapter.BaseKernelDisplay.install();"
                + "System.out.println(agro.notebook.display.Display.render(table()).data()"
                + ".keySet());"
                + "var chart = new org.knowm.xchart.XYChartBuilder().build();"
                + "chart.addSeries(\"a\", new double[] {1, 2}, new double[] {3, 4});"
                + "System.out.println(agro.notebook.display.Display.render(chart).data()"
                + ".keySet()); }");
    assertThat(run(program))
        .contains("No IJava kernel runs here")
        .contains("[text/html, text/markdown, text/plain]")
        .contains("image/png")
        .doesNotContain("Exception", "Error");
  }

  @Test
  void itHoldsWhatResultsNeedAndNothingOfTheKernel() throws IOException {
    try (var jar = new JarFile(JAR.toFile())) {
      var names = jar.stream().map(entry -> entry.getName()).toList();
      assertThat(names)
          .contains(
              "agro/notebook/adapter/ExtensionDisplay.class",
              "agro/working/ResultTable.class",
              "org/knowm/xchart/XYChart.class",
              "META-INF/LICENSE")
          .noneMatch(
              name ->
                  name.matches(
                      "(agro/notebook/(kernel|run|jupyter|command|magic|insight|bytecode|hint)|"
                          + "com/google/gson|org/zeromq|zmq|picocli|io/github/spencerpark|"
                          + "org/dflib|org/eclipse/aether|tech/tablesaw)/.+"));
    }
  }
}
