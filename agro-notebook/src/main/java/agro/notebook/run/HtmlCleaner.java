package agro.notebook.run;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * Makes foreign HTML harmless: only elements and attributes that show something stay, and every
 * element that is open is closed, so that nothing can reach beyond its place in the page.
 */
final class HtmlCleaner {

  /**
   * HTML that is fit for a page.
   *
   * @param html the HTML
   * @param complete whether nothing was taken away
   * @param visible whether there is anything to see
   */
  record Cleaned(String html, boolean complete, boolean visible) {}

  private static final Pattern TAG =
      Pattern.compile(
          "<(/?)([a-zA-Z][a-zA-Z0-9:-]*+)((?:[^\"'>]++|\"[^\"]*\"|'[^']*')*+)>", Pattern.DOTALL);

  private final String source;
  private final Function<String, Optional<String>> pictures;
  private final StringBuilder html = new StringBuilder();
  private final Deque<String> open = new ArrayDeque<>();
  private boolean complete = true;
  private boolean visible;
  private int at;

  private HtmlCleaner(String source, Function<String, Optional<String>> pictures) {
    this.source = source;
    this.pictures = pictures;
  }

  /**
   * Cleans HTML.
   *
   * @param html a fragment or a whole document
   * @param pictures finds the content of a picture, as a data URL, from its source
   * @return what is harmless of it
   */
  static Cleaned clean(String html, Function<String, Optional<String>> pictures) {
    return new HtmlCleaner(html, pictures).whole();
  }

  private Cleaned whole() {
    var tag = TAG.matcher(source);
    while (at < source.length()) {
      var next = source.indexOf('<', at);
      text(source.substring(at, next < 0 ? source.length() : next));
      at = next < 0 ? source.length() : next;
      if (next >= 0) {
        if (source.startsWith("<!", at) || source.startsWith("<?", at)) {
          at = endOfRemark();
        } else if (tag.region(at, source.length()).lookingAt()) {
          at = tag.end();
          tag(!tag.group(1).isEmpty(), tag.group(2).toLowerCase(Locale.ROOT), tag.group(3));
        } else {
          text("<");
          at++;
        }
      }
    }
    while (!open.isEmpty()) {
      close();
    }
    return new Cleaned(html.toString(), complete, visible);
  }

  private int endOfRemark() {
    var mark = source.startsWith("<!--", at) ? "-->" : ">";
    var end = source.indexOf(mark, at);
    return end < 0 ? source.length() : end + mark.length();
  }

  private void text(String text) {
    if (!text.isEmpty()) {
      visible |= !text.isBlank();
      html.append(HtmlAttributes.written(text));
    }
  }

  private void tag(boolean isEnd, String name, String attributes) {
    if (HtmlTags.DROPPED_WHOLE.contains(name)) {
      complete = false;
      if (!isEnd) {
        at = endOfDropped(name);
      }
    } else if (!HtmlTags.isAllowed(name)) {
      complete = false;
    } else if (isEnd) {
      end(name);
    } else {
      start(name, attributes);
    }
  }

  private int endOfDropped(String name) {
    var end = Pattern.compile("</" + name + "\\b[^>]*>?", Pattern.CASE_INSENSITIVE).matcher(source);
    return end.find(at) ? end.end() : source.length();
  }

  private void start(String name, String text) {
    while (!open.isEmpty() && HtmlTags.endsBefore(open.peek(), name)) {
      close();
    }
    var all = HtmlAttributes.parsed(text);
    if (name.equals("img")) {
      picture(all);
      return;
    }
    var kept = HtmlAttributes.harmless(name, all);
    complete &= kept.equals(all);
    if (name.equals("a") && kept.containsKey("href")) {
      kept.put("rel", "noopener noreferrer");
    }
    visible |= name.equals("svg") || name.equals("hr") || name.equals("meter");
    html.append('<').append(name);
    kept.forEach(this::attribute);
    var closesItself = HtmlTags.isDrawing(name) && text.endsWith("/");
    html.append(closesItself ? "/>" : ">");
    if (!closesItself && !HtmlTags.VOID.contains(name)) {
      open.push(name);
    }
  }

  private void attribute(String name, String value) {
    html.append(' ').append(name).append("=\"").append(HtmlAttributes.written(value)).append('"');
  }

  private void picture(Map<String, String> all) {
    var kept = HtmlAttributes.harmless("img", all);
    var words = all.getOrDefault("alt", all.getOrDefault("title", "")).strip();
    var content = pictures.apply(HtmlAttributes.resolved(all.getOrDefault("src", "")).strip());
    visible = true;
    if (content.isEmpty()) {
      complete = false;
      html.append("<span class=\"missing\">[picture: ")
          .append(HtmlAttributes.written(words.isEmpty() ? "not part of this page" : words))
          .append("]</span>");
      return;
    }
    kept.put("alt", words.isEmpty() ? PagePictures.WITHOUT_WORDS : words);
    html.append("<img");
    attribute("src", content.get());
    kept.forEach(this::attribute);
    html.append('>');
  }

  private void end(String name) {
    for (var element : open) {
      if (element.equals(name)) {
        while (!open.peek().equals(name)) {
          close();
        }
        close();
        return;
      }
      if (HtmlTags.WALLS.contains(element) && !HtmlTags.TABLE_PARTS.contains(name)) {
        return;
      }
    }
  }

  private void close() {
    html.append("</").append(open.pop()).append('>');
  }
}
