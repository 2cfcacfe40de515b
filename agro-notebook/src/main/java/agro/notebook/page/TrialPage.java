package agro.notebook.page;

import agro.reading.SafeFile;
import agro.trial.FieldTrial;
import agro.trial.analysis.AnalysedTrial;
import agro.trial.analysis.TrialReport;
import agro.trial.efficacy.EfficacyCourse;
import agro.trial.load.LoadYieldLine;
import agro.trial.load.TrialLoad;
import agro.trial.load.TrialValue;
import agro.working.ResultTable;
import java.nio.file.Path;

/**
 * The report of a whole trial as one page of HTML that needs nothing besides itself and prints on
 * A4 upright: a front sheet that stands for itself, and behind it the data, checks, tests and
 * figures on which it rests. A part that is not given is left out. Immutable.
 */
public final class TrialPage {

  private final TrialParts parts;

  private TrialPage(TrialParts parts) {
    this.parts = parts;
  }

  /**
   * A page of the design, the findings and the corrections of a trial.
   *
   * @param trial the trial, corrected as it was analysed
   * @return the page
   */
  public static TrialPage of(FieldTrial trial) {
    return new TrialPage(TrialParts.of(trial));
  }

  /**
   * A page of a report: its trial, the analysis of each of its days, efficacy and load where it has
   * them.
   *
   * @param report the report
   * @return the page, with the first day on the front sheet
   */
  public static TrialPage of(TrialReport report) {
    var parts = TrialParts.of(report.trial());
    for (var day : report.course().days()) {
      parts = parts.with(day);
    }
    if (report.efficacy().isPresent()) {
      parts = parts.with(report.efficacy().get());
    }
    return new TrialPage(report.load().isPresent() ? parts.with(report.load().get()) : parts);
  }

  /**
   * This page under another title than the name of the trial.
   *
   * @param title the title
   * @return a new page
   */
  public TrialPage titled(String title) {
    return new TrialPage(parts.titled(title));
  }

  /**
   * This page with an analysis. The first one given stands on the front sheet.
   *
   * @param analysed the analysis of a variable on a day
   * @return a new page
   */
  public TrialPage with(AnalysedTrial analysed) {
    return new TrialPage(parts.with(analysed));
  }

  /**
   * This page with the efficacy over days.
   *
   * @param course efficacy on the dates of counting
   * @return a new page
   */
  public TrialPage with(EfficacyCourse course) {
    return new TrialPage(parts.with(course));
  }

  /**
   * This page with the pest load.
   *
   * @param load loads of the plots
   * @return a new page
   */
  public TrialPage with(TrialLoad load) {
    return new TrialPage(parts.with(load));
  }

  /**
   * This page with the line of yield on load.
   *
   * @param line the line
   * @return a new page
   */
  public TrialPage with(LoadYieldLine line) {
    return new TrialPage(parts.with(line));
  }

  /**
   * This page with the value of the treatments.
   *
   * @param value what the treatments were worth
   * @return a new page
   */
  public TrialPage with(TrialValue value) {
    return new TrialPage(parts.with(value));
  }

  /**
   * This page with a paragraph of its author on the front sheet.
   *
   * @param text one or more sentences
   * @return a new page
   */
  public TrialPage withRemark(String text) {
    return new TrialPage(parts.withRemark(text));
  }

  /**
   * The table of the front sheet: a line for each treatment, with what each part says of it.
   *
   * @return the table
   */
  public ResultTable summary() {
    return SummaryTable.of(parts);
  }

  /**
   * The page as a document.
   *
   * @return HTML with its style and pictures inside; all text from data is escaped
   */
  public String html() {
    return TrialDocument.of(parts);
  }

  /**
   * The page as a part of another page, such as a notebook.
   *
   * @return HTML elements with their style before them
   */
  public String fragment() {
    return TrialDocument.fragment(parts);
  }

  /**
   * Writes the page, whole or not at all.
   *
   * @param file the HTML file, replaced if it is there; missing folders are made
   */
  public void write(Path file) {
    SafeFile.writeText(file, html());
  }

  @Override
  public String toString() {
    return "Page of " + parts.title() + ": " + parts.contents();
  }
}
