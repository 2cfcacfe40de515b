package agro.notebook.installed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;

/**
 * A notebook that is open in a browser. The scripts use what the page of the notebook server offers
 * to its own menu.
 *
 * @param browser the browser
 */
record NotebookPage(Browser browser) {

  private static final Duration PATIENCE = Duration.ofMinutes(3);
  private static final long PAUSE_MILLIS = 200;

  static NotebookPage open(Browser browser, String address)
      throws IOException, InterruptedException {
    browser.go(address);
    var page = new NotebookPage(browser);
    page.await(
        "return !!(window.Jupyter && Jupyter.notebook && Jupyter.notebook.kernel"
            + " && Jupyter.notebook.kernel.is_connected() && Jupyter.notebook._fully_loaded"
            + " && !Jupyter.notebook.kernel_busy)");
    return page;
  }

  /** Waits until a script returns true. */
  void await(String condition) throws IOException, InterruptedException {
    var end = System.nanoTime() + PATIENCE.toNanos();
    while (System.nanoTime() < end) {
      if (browser.script(condition).getAsBoolean()) {
        return;
      }
      Thread.sleep(PAUSE_MILLIS);
    }
    assertThat(false).as("within %s: %s", PATIENCE, condition).isTrue();
  }

  /** Runs all cells and waits for the last. */
  void runAll() throws IOException, InterruptedException {
    browser.script("Jupyter.notebook.execute_all_cells()");
    await(
        "return Jupyter.notebook.get_cells().every(c => c.cell_type !== 'code'"
            + " || !c.get_text().trim() || /^[0-9]+$/.test(c.input_prompt_number)"
            + " || c.output_area.outputs.some(o => o.output_type === 'error'))");
    await("return !Jupyter.notebook.kernel_busy");
  }

  /** The errors that are shown by cells which are not meant to fail, one a line. */
  String errorsNotMeant() throws IOException, InterruptedException {
    return browser
        .script(
            "return Jupyter.notebook.get_cells()"
                + ".filter(c => !(c.metadata.tags || []).includes('raises-exception'))"
                + ".flatMap(c => Array.from(c.element[0].querySelectorAll('.output_error')))"
                + ".map(e => e.textContent).join('\\n')")
        .getAsString();
  }

  /** Adds a cell at the end and runs it, without waiting. */
  void start(String code) throws IOException, InterruptedException {
    browser.script(
        "var c = Jupyter.notebook.insert_cell_at_bottom('code'); c.set_text(arguments[0]);"
            + " c.execute(); c.element[0].scrollIntoView();",
        code);
  }

  /** Waits until the last cell has ended. */
  String outputOfLast() throws IOException, InterruptedException {
    await(
        "var c = Jupyter.notebook.get_cells().at(-1);"
            + " return /^[0-9]+$/.test(c.input_prompt_number) && !Jupyter.notebook.kernel_busy");
    return browser
        .script("return Jupyter.notebook.get_cells().at(-1).element.find('.output').text()")
        .getAsString();
  }

  String text(String selector) throws IOException, InterruptedException {
    return browser
        .script(
            "return Array.from(document.querySelectorAll(arguments[0]))"
                + ".map(e => e.textContent).join('\\n')",
            selector)
        .getAsString();
  }

  int count(String selector) throws IOException, InterruptedException {
    return browser
        .script("return document.querySelectorAll(arguments[0]).length", selector)
        .getAsInt();
  }

  /** The smallest width in pixels that the file of a shown picture has; 0 when one is broken. */
  int smallestPicture() throws IOException, InterruptedException {
    return browser
        .script(
            "return Math.min(...Array.from(document.querySelectorAll('.output_area img'))"
                + ".map(e => e.naturalWidth))")
        .getAsInt();
  }

  /** Writes a picture of each cell that has shown something, as name-NN.png. */
  void pictures(Path folder, String name) throws IOException, InterruptedException {
    browser.picture(folder.resolve(name + ".png"));
    var cells = browser.script("return Jupyter.notebook.get_cells().length").getAsInt();
    for (var i = 0; i < cells; i++) {
      var cell = "var e = Jupyter.notebook.get_cells()[" + i + "].element[0];";
      var shown = cell + " return e.querySelectorAll('.output_subarea').length > 0";
      if (browser.script(shown).getAsBoolean()) {
        browser.picture(folder.resolve(name + "-" + i + ".png"), cell + " return e");
      }
    }
  }
}
