package agro.notebook.installed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The notebooks in Debian's notebook server and Chromium, as a reader meets them. */
@Tag("browser")
class BrowserIT {

  private static final Path SCREENSHOTS = Path.of("target", "screenshots").toAbsolutePath();

  private static NotebookServer server;
  private static Browser browser;

  @BeforeAll
  static void openBoth() throws IOException, InterruptedException {
    var kernel = InstalledKernel.once();
    server = NotebookServer.start(kernel, kernel.newFolder("notebooks"));
    browser = Browser.open(kernel.newFolder("browser"), 1300, 2200);
  }

  @AfterAll
  static void closeBoth() throws IOException {
    try (var first = browser;
        var second = server) {
      assertThat(first).isNotNull();
      assertThat(second).isNotNull();
    }
  }

  @Test
  void theForecastNotebookIsRunReadInterruptedAndRestarted()
      throws IOException, InterruptedException {
    var page = NotebookPage.open(browser, server.address("01-the-next-generation.ipynb"));
    assertThat(page.text(".kernel_indicator_name")).isEqualTo("Java (agro)");
    page.runAll();
    page.pictures(SCREENSHOTS, "01");
    assertThat(page.text(".output_error")).isEmpty();
    assertThat(page.count(".output_area img")).isGreaterThanOrEqualTo(3);
    assertThat(page.smallestPicture()).isGreaterThan(600);
    assertThat(page.count(".output_area table")).isGreaterThanOrEqualTo(3);
    assertThat(page.text(".output_area table")).contains("9 in 10");

    page.start("long n = 0;\nwhile (true) { n++; }");
    page.await("return Jupyter.notebook.kernel_busy");
    Thread.sleep(500);
    browser.script("Jupyter.notebook.kernel.interrupt()");
    assertThat(page.outputOfLast()).containsIgnoringCase("interrupted");
    browser.picture(SCREENSHOTS.resolve("01-interrupted.png"));
    page.start("forecast == null ? \"lost\" : \"kept\"");
    assertThat(page.outputOfLast()).contains("kept");

    browser.script(
        "window.isReady = false; Jupyter.notebook.events.one('kernel_ready.Kernel',"
            + " () => { window.isReady = true; }); Jupyter.notebook.kernel.restart();");
    page.await("return window.isReady");
    page.start("int forecast = 40; forecast + 2");
    assertThat(page.outputOfLast()).contains("42");
    browser.picture(SCREENSHOTS.resolve("01-restarted.png"));
  }

  @Test
  void theNotebookOnDegreeDaysShowsItsWorkings() throws IOException, InterruptedException {
    var page = NotebookPage.open(browser, server.address("02-degree-days.ipynb"));
    page.runAll();
    page.pictures(SCREENSHOTS, "02");
    assertThat(page.errorsNotMeant()).isEmpty();
    assertThat(page.count(".output_error")).isEqualTo(2);
    assertThat(page.count(".output_area img")).isGreaterThanOrEqualTo(3);
    assertThat(page.smallestPicture()).isGreaterThan(600);
    assertThat(page.text(".output_area")).contains("°C·d");
  }
}
