package agro.programme.bulletin;

import agro.working.Sheet;
import java.util.List;
import java.util.Objects;

/** A piece of a written bulletin. All texts are plain; whoever prints them escapes them. */
public sealed interface BulletinPart {

  /**
   * One or more sentences.
   *
   * @param text the sentences
   */
  record Sentences(String text) implements BulletinPart {
    /** Refuses null. */
    public Sentences {
      Objects.requireNonNull(text, "text");
    }
  }

  /**
   * A list of points.
   *
   * @param points one text each
   */
  record Points(List<String> points) implements BulletinPart {
    /** Copies the list. */
    public Points {
      points = List.copyOf(points);
    }
  }

  /**
   * A table. On a narrow screen a printer may lay each row out as a list with the headings.
   *
   * @param caption what it shows
   * @param headings headings of the columns
   * @param rows cells, as many in each row as headings
   */
  record Grid(String caption, List<String> headings, List<List<String>> rows)
      implements BulletinPart {
    /** Copies the lists and refuses rows of another length. */
    public Grid {
      Objects.requireNonNull(caption, "caption");
      headings = List.copyOf(headings);
      rows = rows.stream().map(List::copyOf).toList();
      for (var row : rows) {
        if (row.size() != headings.size()) {
          throw new IllegalArgumentException(
              "a row of " + row.size() + " cells under " + headings.size() + " headings");
        }
      }
    }
  }

  /**
   * A picture.
   *
   * @param drawing the drawing
   * @param caption what is drawn and how it is to be read, for readers who do not see it as well
   */
  record Picture(Sheet drawing, String caption) implements BulletinPart {
    /** Refuses nulls. */
    public Picture {
      Objects.requireNonNull(drawing, "drawing");
      Objects.requireNonNull(caption, "caption");
    }
  }
}
