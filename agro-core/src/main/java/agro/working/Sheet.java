package agro.working;

import agro.units.Numbers;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A page to print: lines, boxes, grey areas and words at places in millimetres from the upper left
 * corner. Words stay words in print, so that they can be searched, copied and read aloud; all of
 * them are escaped. Only greys are used, since sheets are copied.
 *
 * @param title name of the page
 * @param widthMm width of the paper
 * @param heightMm height of the paper
 * @param marks what is on it, the later above the earlier
 */
public record Sheet(String title, double widthMm, double heightMm, List<Mark> marks) {

  private static final double A4_WIDTH = 210;
  private static final double A4_HEIGHT = 297;

  /** Something on the page. */
  public sealed interface Mark {}

  /**
   * A straight line.
   *
   * @param from where it begins
   * @param to where it ends
   * @param pen how it is drawn
   */
  public record Line(Place from, Place to, Pen pen) implements Mark {}

  /**
   * An outlined box.
   *
   * @param corner upper left corner
   * @param widthMm width
   * @param heightMm height
   * @param pen how it is drawn
   */
  public record Box(Place corner, double widthMm, double heightMm, Pen pen) implements Mark {}

  /**
   * A filled area without an outline.
   *
   * @param corners its corners in order, at least three
   * @param grey 0 for black to 1 for white
   */
  public record Shade(List<Place> corners, double grey) implements Mark {
    /** Makes the list immutable. */
    public Shade {
      corners = List.copyOf(corners);
    }
  }

  /**
   * One line of words.
   *
   * @param at where the words stand on their base line
   * @param text any text, shown on one line
   * @param type size, weight and alignment
   */
  public record Words(Place at, String text, Type type) implements Mark {}

  /**
   * A place on the page.
   *
   * @param x millimetres from the left edge
   * @param y millimetres from the upper edge
   */
  public record Place(double x, double y) {}

  /**
   * How a line is drawn.
   *
   * @param widthMm width of the line
   * @param grey 0 for black to 1 for white
   * @param dashed whether it is broken
   */
  public record Pen(double widthMm, double grey, boolean dashed) {}

  /**
   * How words are set.
   *
   * @param sizeMm size of the type
   * @param bold whether it is bold
   * @param align which part of the words stands at their place
   */
  public record Type(double sizeMm, boolean bold, Align align) {}

  /** Which part of the words stands at their place. */
  public enum Align {
    /** The words begin there. */
    START,
    /** The words are centred there. */
    MIDDLE,
    /** The words end there. */
    END
  }

  /** Refuses paper without a size and makes the list immutable. */
  public Sheet {
    Objects.requireNonNull(title, "title");
    marks = List.copyOf(marks);
    if (!(widthMm > 0 && heightMm > 0)) {
      throw new IllegalArgumentException(
          "paper has a size, but got " + widthMm + " mm by " + heightMm + " mm");
    }
  }

  /**
   * An empty page of A4, upright.
   *
   * @param title name of the page
   * @return a builder
   */
  public static Builder a4(String title) {
    return new Builder(title, A4_WIDTH, A4_HEIGHT);
  }

  /**
   * The page as a drawing with words in it, ready to be printed or turned into another format.
   *
   * @return an SVG file
   */
  public String toSvg() {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + SheetForms.svg(this) + "\n";
  }

  /**
   * The page as a web page that prints on one sheet of paper.
   *
   * @return an HTML file that needs no other
   */
  public String toHtml() {
    return SheetForms.html(this);
  }

  /**
   * How wide words are, near enough to break lines by.
   *
   * @param text the words
   * @param type size and weight
   * @return millimetres
   */
  public static double width(String text, Type type) {
    return SheetForms.width(text) * type.sizeMm() * (type.bold() ? 1.07 : 1);
  }

  /**
   * Words broken into lines.
   *
   * @param text any text
   * @param type size and weight
   * @param widthMm greatest width of a line; a longer word stands alone
   * @return the lines
   */
  public static List<String> wrap(String text, Type type, double widthMm) {
    var lines = new ArrayList<String>();
    var line = new StringBuilder();
    for (var word : PlainText.oneLine(text).split(" ", -1)) {
      var longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer, type) > widthMm) {
        lines.add(line.toString());
        line.setLength(0);
        line.append(word);
      } else {
        line.setLength(0);
        line.append(longer);
      }
    }
    lines.add(line.toString());
    return List.copyOf(lines);
  }

  /** Collects what is on a page, from back to front; not thread-safe. */
  public static final class Builder {
    private final String title;
    private final double widthMm;
    private final double heightMm;
    private final List<Mark> marks = new ArrayList<>();

    private Builder(String title, double widthMm, double heightMm) {
      this.title = title;
      this.widthMm = widthMm;
      this.heightMm = heightMm;
    }

    /**
     * Draws a line.
     *
     * @param x1 where it begins
     * @param y1 where it begins
     * @param x2 where it ends
     * @param y2 where it ends
     * @param pen how
     * @return this builder
     */
    public Builder line(double x1, double y1, double x2, double y2, Pen pen) {
      return add(new Line(new Place(x1, y1), new Place(x2, y2), pen));
    }

    /**
     * Draws a box.
     *
     * @param x left edge
     * @param y upper edge
     * @param width width
     * @param height height
     * @param pen how
     * @return this builder
     */
    public Builder box(double x, double y, double width, double height, Pen pen) {
      return add(new Box(new Place(x, y), width, height, pen));
    }

    /**
     * Fills an area.
     *
     * @param corners corners in order, at least three
     * @param grey 0 for black to 1 for white
     * @return this builder
     */
    public Builder shade(List<Place> corners, double grey) {
      return add(new Shade(corners, grey));
    }

    /**
     * Writes words on one line.
     *
     * @param x where they stand
     * @param y their base line
     * @param text any text
     * @param type how
     * @return this builder
     */
    public Builder words(double x, double y, String text, Type type) {
      return add(new Words(new Place(x, y), text, type));
    }

    /**
     * Writes words on as many lines as they need.
     *
     * @param x where each line stands
     * @param y base line of the first
     * @param text any text
     * @param type how
     * @param widthMm greatest width of a line
     * @return base line that a next line would have
     */
    public double paragraph(double x, double y, String text, Type type, double widthMm) {
      double base = y;
      for (var line : wrap(text, type, widthMm)) {
        words(x, base, line, type);
        base += 1.32 * type.sizeMm();
      }
      return base;
    }

    private Builder add(Mark mark) {
      marks.add(mark);
      return this;
    }

    /**
     * The finished page.
     *
     * @return an immutable page
     */
    public Sheet build() {
      return new Sheet(title, widthMm, heightMm, marks);
    }
  }

  @Override
  public String toString() {
    return title
        + ", "
        + Numbers.plain(widthMm)
        + " mm by "
        + Numbers.plain(heightMm)
        + " mm with "
        + marks.size()
        + " marks";
  }
}
