package agro.notebook.page;

import agro.programme.bulletin.BulletinText;
import agro.programme.bulletin.FieldBulletin;
import agro.programme.bulletin.ReadingLevel;
import agro.working.HtmlText;
import agro.working.TextLanguage;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * The files of all bulletins of a season folder: a page for each field, reader and language, the
 * short messages, and a list of them all. The same bulletins give the same bytes.
 *
 * @param texts text by name of file, in order
 */
public record BulletinFiles(Map<String, String> texts) {

  /** Name of the list of pages. */
  public static final String INDEX = "index.html";

  /** Keeps the order. */
  public BulletinFiles {
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
  }

  /**
   * The files of some bulletins.
   *
   * @param bulletins the bulletins, one for a field
   * @param languages languages, at least one; the list of pages is in the first
   * @param levels for whom
   * @return the files
   */
  public static BulletinFiles of(
      List<FieldBulletin> bulletins, List<TextLanguage> languages, List<ReadingLevel> levels) {
    var texts = new LinkedHashMap<String, String>();
    var first = BulletinText.of(languages.get(0));
    var rows = new ArrayList<String>();
    var names = new LinkedHashSet<String>();
    for (var bulletin : bulletins) {
      var name = free(name(bulletin.field()), names);
      var links = new ArrayList<String>();
      for (var language : new LinkedHashSet<>(languages)) {
        add(bulletin, name, language, levels, texts, links);
      }
      rows.add(
          "<tr><th scope=\"row\">"
              + HtmlText.escape(bulletin.field())
              + "</th><td data-heading=\""
              + HtmlText.escape(first.say("index.pages"))
              + "\">"
              + String.join(", ", links)
              + "</td></tr>\n");
    }
    texts.put(INDEX, index(bulletins, first, rows));
    return new BulletinFiles(texts);
  }

  private static void add(
      FieldBulletin bulletin,
      String name,
      TextLanguage language,
      List<ReadingLevel> levels,
      Map<String, String> texts,
      List<String> links) {
    var words = BulletinText.of(language);
    var messages = new LinkedHashSet<String>();
    for (var level : new LinkedHashSet<>(levels)) {
      var written = bulletin.write(language, level);
      messages.addAll(written.messages());
      var file = name + "-" + level.word() + "." + language.code() + ".html";
      texts.put(file, BulletinPage.html(written));
      links.add(link(file, words.say("level." + level.name()), language));
    }
    var file = name + "-message." + language.code() + ".txt";
    texts.put(file, messages.isEmpty() ? "" : String.join("\n", messages) + "\n");
    links.add(link(file, words.say("level.message"), language));
  }

  private static String link(String file, String words, TextLanguage language) {
    return "<a href=\""
        + HtmlText.escape(file)
        + "\">"
        + HtmlText.escape(words)
        + " ("
        + language.code()
        + ")</a>";
  }

  private static String index(
      List<FieldBulletin> bulletins, BulletinText words, List<String> rows) {
    var title = words.say("index.title");
    var body = new StringBuilder("<header>\n<h1>").append(HtmlText.escape(title)).append("</h1>\n");
    bulletins.stream()
        .findFirst()
        .ifPresent(
            each ->
                body.append("<p class=\"subtitle\">")
                    .append(
                        HtmlText.escape(
                            words.say("subtitle.day", "day", words.fullDay(each.asOf()))))
                    .append("</p>\n"));
    body.append("</header>\n<main>\n<table>\n<thead>\n<tr><th scope=\"col\">")
        .append(HtmlText.escape(words.say("index.field")))
        .append("</th><th scope=\"col\">")
        .append(HtmlText.escape(words.say("index.pages")))
        .append("</th></tr>\n</thead>\n<tbody>\n");
    rows.forEach(body::append);
    body.append("</tbody>\n</table>\n</main>\n");
    return BulletinPage.document(words.language().code(), title, "index", body.toString());
  }

  /** A name that every file system takes. */
  static String name(String field) {
    var plain =
        Normalizer.normalize(field, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}", "")
            .toLowerCase(Locale.ROOT)
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? "field" : plain.substring(0, Math.min(60, plain.length()));
  }

  private static String free(String name, Set<String> names) {
    var free = name;
    for (int i = 2; !names.add(free); i++) {
      free = name + "-" + i;
    }
    return free;
  }
}
