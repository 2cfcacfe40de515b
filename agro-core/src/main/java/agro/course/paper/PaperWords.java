package agro.course.paper;

import agro.course.CourseWords;
import agro.source.Reference;
import agro.working.TextLanguage;

/** The words that stand on papers, beside those of the exercises. */
public final class PaperWords {

  private PaperWords() {}

  /**
   * The words of papers.
   *
   * @param language the language
   * @return the words
   */
  public static CourseWords of(TextLanguage language) {
    return CourseWords.of(language).in(PaperWords.class, "paper");
  }

  /**
   * Where a fact comes from, and how well it is backed, in one language.
   *
   * @param source the source
   * @param words words of papers
   * @return author, year and standing; the standing alone where nobody has published it
   */
  public static String cite(Reference source, CourseWords words) {
    var standing = words.say("standing." + source.standing().name());
    if (source.year() == 0) {
      return standing;
    }
    int comma = source.authors().indexOf(',');
    var author = comma < 0 ? source.authors() : source.authors().substring(0, comma);
    return author + " " + source.year() + " (" + standing + ")";
  }
}
