package agro.notebook.display;

import java.util.Base64;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing to look at, in several formats, so that each reader takes the best one that it can
 * show.
 *
 * @param data content by media type, in order of preference; text formats and JSON as they are,
 *     binary formats such as PNG in Base64
 */
public record MimeBundle(Map<String, String> data) {

  /** Plain text. */
  public static final String TEXT = "text/plain";

  /** A fragment of HTML, without script. */
  public static final String HTML = "text/html";

  /** Markdown with tables. */
  public static final String MARKDOWN = "text/markdown";

  /** LaTeX. */
  public static final String LATEX = "text/latex";

  /** A picture of points. */
  public static final String PNG = "image/png";

  /** JSON as text. */
  public static final String JSON = "application/json";

  /** A bundle that shows nothing. */
  public static final MimeBundle EMPTY = new MimeBundle(Map.of());

  /**
   * Keeps the order.
   *
   * @throws agro.report.InputProblem when content that calls itself JSON is none
   */
  public MimeBundle {
    var copy = new LinkedHashMap<String, String>();
    data.forEach(
        (type, content) -> {
          Objects.requireNonNull(content, "content");
          if (isJson(Objects.requireNonNull(type, "media type"))) {
            JsonCheck.require(content);
          }
          copy.put(type, content);
        });
    data = Collections.unmodifiableMap(copy);
  }

  private static boolean isJson(String type) {
    return type.equals(JSON) || type.endsWith("+json");
  }

  /**
   * A bundle of one format.
   *
   * @param type media type
   * @param content the content in that format
   * @return the bundle
   */
  public static MimeBundle of(String type, String content) {
    return new MimeBundle(Map.of(type, content));
  }

  /**
   * A bundle of plain text.
   *
   * @param text the text
   * @return the bundle
   */
  public static MimeBundle text(String text) {
    return of(TEXT, text);
  }

  /**
   * This bundle with one more format, or with that format replaced.
   *
   * @param type media type
   * @param content the content in that format
   * @return a new bundle
   */
  public MimeBundle with(String type, String content) {
    var more = new LinkedHashMap<>(data);
    more.put(type, content);
    return new MimeBundle(more);
  }

  /**
   * This bundle with one more binary format.
   *
   * @param type media type, for example {@link #PNG}
   * @param content the bytes of the file
   * @return a new bundle that holds the bytes in Base64
   */
  public MimeBundle withBytes(String type, byte[] content) {
    return with(type, Base64.getEncoder().encodeToString(content));
  }

  /**
   * This bundle in some of its formats only; plain text stays, for readers without a page.
   *
   * @param types media types in the order of preference; {@code image/*} stands for all pictures.
   *     None means all.
   * @return a new bundle
   */
  public MimeBundle only(String... types) {
    if (types.length == 0) {
      return this;
    }
    var chosen = new LinkedHashMap<String, String>();
    for (var wanted : types) {
      data.forEach(
          (type, content) -> {
            if (isLike(type, wanted)) {
              chosen.put(type, content);
            }
          });
    }
    get(TEXT).ifPresent(text -> chosen.putIfAbsent(TEXT, text));
    return new MimeBundle(chosen);
  }

  private static boolean isLike(String type, String wanted) {
    return wanted.endsWith("/*")
        ? type.startsWith(wanted.substring(0, wanted.length() - 1))
        : type.equals(wanted);
  }

  /**
   * The content in one format.
   *
   * @param type media type
   * @return the content, or empty when the bundle does not have it
   */
  public Optional<String> get(String type) {
    return Optional.ofNullable(data.get(type));
  }

  /**
   * The content as plain text.
   *
   * @return the plain text, or an empty text when the bundle has none
   */
  public String plainText() {
    return data.getOrDefault(TEXT, "");
  }

  /**
   * Whether there is nothing to show.
   *
   * @return true for a bundle without formats
   */
  public boolean isEmpty() {
    return data.isEmpty();
  }
}
