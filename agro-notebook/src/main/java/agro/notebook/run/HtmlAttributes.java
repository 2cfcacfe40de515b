package agro.notebook.run;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The attributes that elements of foreign HTML may keep. */
final class HtmlAttributes {

  private static final Pattern ONE =
      Pattern.compile(
          "([^\\s\"'<>/=]+)(?:\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)'|([^\\s\"'>]+)))?", Pattern.DOTALL);

  private static final Set<String> ANYWHERE =
      Set.of(
          ("class id title lang dir style role align valign width height colspan rowspan scope"
                  + " headers span start value reversed open alt datetime border cellpadding"
                  + " cellspacing bgcolor color face size hidden max min low high optimum abbr nowrap")
              .split(" ", -1));

  private static final Pattern CHARACTER =
      Pattern.compile("&#(x[0-9a-f]{1,8}|[0-9]{1,8});?|&(\\w+);");
  private static final Pattern BARE_AMPERSAND = Pattern.compile("&(?!#?\\w+;)");
  private static final Pattern FULL_LINK = Pattern.compile("(?s)(https?://|mailto:|#).*");
  private static final Pattern NEAR_LINK = Pattern.compile("[^:&\\\\]*");
  private static final Pattern ELSEWHERE =
      Pattern.compile("url\\((?!\\s*['\"]?#)|expression|@import|\\\\|javascript:|/\\*");
  private static final Pattern ABOVE_THE_PAGE =
      Pattern.compile("\\s*(position\\s*:\\s*(?!static|relative)|z-index|behavior|-moz-binding).*");

  private HtmlAttributes() {}

  /**
   * The attributes as they are written in a start tag.
   *
   * @param text what stands between name and end of the tag
   * @return values by lower-case name, character references not yet resolved; the first of a name
   */
  static Map<String, String> parsed(String text) {
    var found = new LinkedHashMap<String, String>();
    var matcher = ONE.matcher(text);
    while (matcher.find()) {
      var value = "";
      for (var group = 2; group <= 4; group++) {
        value = matcher.group(group) == null ? value : matcher.group(group);
      }
      found.putIfAbsent(matcher.group(1).toLowerCase(Locale.ROOT), value);
    }
    return found;
  }

  /**
   * The attributes that an element may keep.
   *
   * @param tag the element
   * @param all its attributes
   * @return those that are harmless, links and styles made harmless
   */
  static Map<String, String> harmless(String tag, Map<String, String> all) {
    var kept = new LinkedHashMap<String, String>();
    all.forEach(
        (name, value) -> {
          if (name.equals("style")) {
            var style = style(value);
            if (!style.isEmpty()) {
              kept.put(name, style);
            }
          } else if (isHarmless(tag, name, value)) {
            kept.put(name, value);
          }
        });
    return kept;
  }

  private static boolean isHarmless(String tag, String name, String value) {
    var plain = resolved(value).replaceAll("[\\p{Cntrl}\\s]+", "").toLowerCase(Locale.ROOT);
    if (name.startsWith("on") || !name.matches("[a-z][a-z0-9:_-]*")) {
      return false;
    }
    if (name.endsWith("href")) {
      return HtmlTags.isDrawing(tag) ? plain.startsWith("#") : tag.equals("a") && isLink(plain);
    }
    if (ANYWHERE.contains(name) || name.startsWith("aria-")) {
      return true;
    }
    if (name.equals("type")) {
      return tag.equals("ol") || tag.equals("ul") || tag.equals("li");
    }
    return HtmlTags.isDrawing(tag)
        && !Set.of("src", "action", "formaction", "data", "srcdoc", "ping").contains(name)
        && !ELSEWHERE.matcher(plain).find();
  }

  private static boolean isLink(String plain) {
    return FULL_LINK.matcher(plain).matches() || NEAR_LINK.matcher(plain).matches();
  }

  private static String style(String value) {
    var plain = resolved(value);
    if (ELSEWHERE.matcher(plain.toLowerCase(Locale.ROOT)).find()) {
      plain =
          Arrays.stream(plain.split(";", -1))
              .filter(part -> !ELSEWHERE.matcher(part.toLowerCase(Locale.ROOT)).find())
              .collect(Collectors.joining(";"));
    }
    return Arrays.stream(plain.split(";", -1))
        .filter(part -> !part.isBlank())
        .filter(part -> !ABOVE_THE_PAGE.matcher(part.toLowerCase(Locale.ROOT)).matches())
        .collect(Collectors.joining(";"));
  }

  /**
   * A value with the character references that could hide something resolved.
   *
   * @param value a value as it is written
   * @return the value as a browser reads it, apart from letters with accents and the like
   */
  static String resolved(String value) {
    return CHARACTER
        .matcher(value)
        .replaceAll(
            match -> java.util.regex.Matcher.quoteReplacement(character(match.group(), match)));
  }

  private static String character(String whole, java.util.regex.MatchResult match) {
    if (match.group(1) != null) {
      var digits = match.group(1);
      var isHex = digits.startsWith("x");
      var code = Long.parseLong(isHex ? digits.substring(1) : digits, isHex ? 16 : 10);
      return code <= Character.MAX_CODE_POINT ? Character.toString((int) code) : "\uFFFD";
    }
    return switch (match.group(2)) {
      case "colon" -> ":";
      case "Tab" -> "\t";
      case "NewLine" -> "\n";
      case "amp" -> "&";
      case "lt" -> "<";
      case "gt" -> ">";
      case "quot" -> "\"";
      case "apos" -> "'";
      case "lpar" -> "(";
      case "bsol" -> "\\";
      case "sol" -> "/";
      default -> whole;
    };
  }

  /**
   * Text or a value as it may stand in HTML, with its character references as they are.
   *
   * @param text text as it was written in HTML
   * @return the same without anything that could be read as markup
   */
  static String written(String text) {
    return BARE_AMPERSAND
        .matcher(text)
        .replaceAll("&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;")
        .replace("\u0000", "");
  }
}
