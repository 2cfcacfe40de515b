package agro.source;

import java.util.Objects;

/**
 * One cited source and how well the figure taken from it is backed.
 *
 * @param authors authors as cited, for example {@code "Baskerville, G. L. & Emin, P."}; empty when
 *     the source names none
 * @param year year of publication, or 0 when there is none (common practice, invented data)
 * @param title title of the work, or a sentence that says what the practice is
 * @param place journal with volume and pages, publisher, or DOI; may be empty
 * @param standing how well the figure is backed
 */
public record Reference(String authors, int year, String title, String place, Standing standing) {

  /** Checks that the reference can be printed. */
  public Reference {
    Objects.requireNonNull(authors, "authors");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(place, "place");
    Objects.requireNonNull(standing, "standing");
    if (title.isBlank()) {
      throw new IllegalArgumentException("a reference needs a title");
    }
  }

  /**
   * A work whose figure was read in the source.
   *
   * @param authors authors as cited
   * @param year year of publication
   * @param title title of the work
   * @param place journal with volume and pages, or publisher
   * @return the reference with standing {@link Standing#READ}
   */
  public static Reference read(String authors, int year, String title, String place) {
    return new Reference(authors, year, title, place, Standing.READ);
  }

  /**
   * A work whose figure is quoted from memory.
   *
   * @param authors authors as cited
   * @param year year of publication
   * @param title title of the work
   * @param place journal with volume and pages, or publisher
   * @return the reference with standing {@link Standing#FROM_MEMORY}
   */
  public static Reference fromMemory(String authors, int year, String title, String place) {
    return new Reference(authors, year, title, place, Standing.FROM_MEMORY);
  }

  /**
   * A habit of the trade that no publication known to us backs.
   *
   * @param practice what is done, as a sentence
   * @return the reference with standing {@link Standing#COMMON_PRACTICE}
   */
  public static Reference commonPractice(String practice) {
    return new Reference("", 0, practice, "", Standing.COMMON_PRACTICE);
  }

  /**
   * A figure that was made up for a demonstration.
   *
   * @param what what was made up, as a sentence
   * @return the reference with standing {@link Standing#INVENTED}
   */
  public static Reference invented(String what) {
    return new Reference("", 0, what, "", Standing.INVENTED);
  }

  /**
   * The reference as one line for print, with its standing in brackets unless it was read.
   *
   * @return authors, year, title, place, each only where known
   */
  public String citation() {
    var line = new StringBuilder(authors);
    if (year > 0) {
      line.append(line.isEmpty() ? "" : " ").append('(').append(year).append(')');
    }
    line.append(line.isEmpty() ? "" : ". ").append(title);
    if (!place.isBlank()) {
      line.append(". ").append(place);
    }
    if (standing != Standing.READ) {
      line.append(" [").append(standing.words()).append(']');
    }
    return line.toString();
  }

  /**
   * The reference in a few words, for a cell of a table.
   *
   * @return family name of the first author and year with the standing in brackets, or the standing
   *     alone where there is no year
   */
  public String shortCitation() {
    if (year == 0) {
      return standing.words();
    }
    int comma = authors.indexOf(',');
    return (comma < 0 ? authors : authors.substring(0, comma))
        + " "
        + year
        + " ("
        + standing.words()
        + ")";
  }
}
