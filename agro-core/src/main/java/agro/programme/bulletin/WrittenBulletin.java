package agro.programme.bulletin;

import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.TextLanguage;
import java.util.List;
import java.util.Objects;

/**
 * A bulletin in the words of one language for one reader.
 *
 * @param language the language
 * @param level for whom
 * @param title the title
 * @param subtitle crop, place and day of issue
 * @param sections its sections from top to bottom
 * @param messages the same in at most 160 characters, one text for each pest
 * @param footer what the page was made from
 */
public record WrittenBulletin(
    TextLanguage language,
    ReadingLevel level,
    String title,
    String subtitle,
    List<BulletinSection> sections,
    List<String> messages,
    String footer)
    implements Presentable {

  /** Copies the lists. */
  public WrittenBulletin {
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(level, "level");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(subtitle, "subtitle");
    sections = List.copyOf(sections);
    messages = List.copyOf(messages);
    Objects.requireNonNull(footer, "footer");
  }

  /** The same words without the pictures. */
  @Override
  public Presentation presentation() {
    return BulletinPresentation.of(this);
  }
}
