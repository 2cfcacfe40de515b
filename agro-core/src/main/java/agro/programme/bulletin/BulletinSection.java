package agro.programme.bulletin;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A section of a written bulletin.
 *
 * @param kind what it is, for whoever sets it out
 * @param heading its heading
 * @param parts its parts from top to bottom
 */
public record BulletinSection(Kind kind, String heading, List<BulletinPart> parts) {

  /** What a section is. */
  public enum Kind {
    /** Anything else. */
    PLAIN,
    /** What to do. */
    DO,
    /** What not to do. */
    DO_NOT,
    /** The picture of the season. */
    PICTURE,
    /** The cautions. */
    CAUTION
  }

  /** Copies the list. */
  public BulletinSection {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(heading, "heading");
    parts = List.copyOf(parts);
  }

  /** Collects the parts of a section. */
  static final class Builder {
    private final Kind kind;
    private final String heading;
    private final List<BulletinPart> parts = new ArrayList<>();
    private final List<String> points = new ArrayList<>();

    Builder(String heading) {
      this(Kind.PLAIN, heading);
    }

    Builder(Kind kind, String heading) {
      this.kind = kind;
      this.heading = heading;
    }

    Builder say(String text) {
      return add(new BulletinPart.Sentences(text));
    }

    /** Points that follow one another form one list. */
    Builder point(String text) {
      points.add(text);
      return this;
    }

    Builder add(BulletinPart part) {
      endPoints();
      parts.add(part);
      return this;
    }

    private void endPoints() {
      if (!points.isEmpty()) {
        parts.add(new BulletinPart.Points(points));
        points.clear();
      }
    }

    boolean isEmpty() {
      return parts.isEmpty() && points.isEmpty();
    }

    BulletinSection build() {
      endPoints();
      return new BulletinSection(kind, heading, parts);
    }
  }
}
