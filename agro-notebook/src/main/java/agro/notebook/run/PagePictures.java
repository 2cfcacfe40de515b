package agro.notebook.run;

import agro.working.HtmlText;
import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Finds the pictures of a notebook and puts them into the page itself, which loads nothing. */
final class PagePictures {

  /** What is said of a picture of which nothing is said. */
  static final String WITHOUT_WORDS = "A picture without a text";

  private static final String ATTACHMENT = "attachment:";
  private static final Map<String, String> FORMATS =
      Map.of(
          "png", "image/png",
          "jpg", "image/jpeg",
          "jpeg", "image/jpeg",
          "gif", "image/gif",
          "webp", "image/webp",
          "svg", "image/svg+xml");

  private static final Pattern IN_DATA =
      Pattern.compile("data:image/(png|jpeg|gif|webp|svg\\+xml|bmp);base64,[A-Za-z0-9+/=]+");

  private final Path folder;
  private NotebookCell cell;

  /**
   * Pictures of one notebook.
   *
   * @param folder where the notebook lies
   */
  PagePictures(Path folder) {
    this.folder = folder;
  }

  /**
   * Looks for attachments in a cell from now on.
   *
   * @param other the cell, or null for none
   */
  void lookIn(NotebookCell other) {
    cell = other;
  }

  /**
   * A picture in the page itself.
   *
   * @param source how the notebook names it: data, an attachment of its cell, a file beside it
   * @return the content as a data URL; empty when it is somewhere else or nowhere
   */
  Optional<String> find(String source) {
    if (source.startsWith("data:")) {
      return inData(source);
    }
    return source.startsWith(ATTACHMENT)
        ? attached(decoded(source.substring(ATTACHMENT.length())))
        : beside(source);
  }

  private Optional<String> attached(String name) {
    if (cell == null) {
      return Optional.empty();
    }
    return cell.attachment(name).entrySet().stream()
        .filter(each -> FORMATS.containsValue(each.getKey()))
        .flatMap(each -> attached(each.getKey(), each.getValue()).stream())
        .findFirst();
  }

  /** Drawings may be attached as text. */
  private static Optional<String> attached(String format, String content) {
    var data =
        content.contains("<svg")
            ? Optional.of(encoded(content.getBytes(StandardCharsets.UTF_8)))
            : base64(content);
    return data.map(text -> "data:" + format + ";base64," + text);
  }

  private Optional<String> beside(String source) {
    var ending = source.substring(source.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    if (source.contains("://") || !FORMATS.containsKey(ending)) {
      return Optional.empty();
    }
    try {
      var exact = folder.resolve(source);
      var file = Files.isReadable(exact) ? exact : folder.resolve(decoded(source));
      return Optional.of(
          "data:" + FORMATS.get(ending) + ";base64," + encoded(Files.readAllBytes(file)));
    } catch (IOException | InvalidPathException missing) {
      return Optional.empty();
    }
  }

  private static String decoded(String name) {
    try {
      return URLDecoder.decode(name.replace("+", "%2B"), StandardCharsets.UTF_8);
    } catch (IllegalArgumentException noCode) {
      return name;
    }
  }

  private static String encoded(byte[] bytes) {
    return Base64.getEncoder().encodeToString(bytes);
  }

  /**
   * A picture that is given as data.
   *
   * @param source a data URL, possibly broken over lines
   * @return the same on one line; empty when it is no picture
   */
  static Optional<String> inData(String source) {
    var whole = source.replaceAll("\\s+", "");
    return IN_DATA.matcher(whole).matches() ? Optional.of(whole) : Optional.empty();
  }

  /**
   * Base64 on one line.
   *
   * @param content Base64, possibly broken over lines
   * @return empty when it is something else
   */
  static Optional<String> base64(String content) {
    var whole = content.replaceAll("\\s+", "");
    return whole.matches("[A-Za-z0-9+/]+=*") ? Optional.of(whole) : Optional.empty();
  }

  /**
   * A picture.
   *
   * @param format its media type
   * @param data its content in Base64
   * @param words what it shows
   * @return an image element
   */
  static String html(String format, String data, String words) {
    return "<img src=\"data:"
        + format
        + ";base64,"
        + data
        + "\" alt=\""
        + HtmlText.escape(words.isBlank() ? WITHOUT_WORDS : words.strip())
        + "\">";
  }
}
