package agro.course.sheet;

import agro.reading.SafeFile;
import agro.working.Sheet;
import agro.working.TextLanguage;
import java.nio.file.Path;

/** Something that is printed on one page of A4, in either language. */
public interface PrintableSheet {

  /**
   * The page.
   *
   * @param language language of its words and of its decimal sign
   * @return a page of A4
   */
  Sheet sheet(TextLanguage language);

  /**
   * The page in English.
   *
   * @return a page of A4
   */
  default Sheet sheet() {
    return sheet(TextLanguage.ENGLISH);
  }

  /**
   * Writes the page for a browser to print.
   *
   * @param file the HTML file, replaced if it is there
   * @param language language of the words
   */
  default void saveHtml(Path file, TextLanguage language) {
    SafeFile.writeText(file, sheet(language).toHtml());
  }

  /**
   * Writes the page as a drawing.
   *
   * @param file the SVG file, replaced if it is there
   * @param language language of the words
   */
  default void saveSvg(Path file, TextLanguage language) {
    SafeFile.writeText(file, sheet(language).toSvg());
  }
}
