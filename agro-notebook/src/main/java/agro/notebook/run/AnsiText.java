package agro.notebook.run;

import agro.working.HtmlText;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Printed text as HTML: colours of a terminal become colours of the page, other signals vanish. */
final class AnsiText {

  /** Black to white, each dark enough to be read on paper. */
  private static final List<String> DARK =
      List.of(
          "#1c1c1a", "#a3201b", "#1a6b33", "#7a5b00", "#0a4d9c", "#86227a", "#0b6470", "#5c5c57");

  private static final List<String> LIGHT =
      List.of(
          "#8a8a84", "#f6cfcb", "#cfe8d5", "#f3e6b8", "#cfe0f5", "#f0d3ec", "#cdeaee", "#f0f0ea");

  private static final int[] CUBE = {0, 95, 135, 175, 215, 255};

  private final StringBuilder html = new StringBuilder();
  private String ink = "";
  private String ground = "";
  private boolean bold;
  private boolean faint;
  private boolean italic;
  private boolean underlined;
  private boolean struck;
  private boolean inverse;

  private AnsiText() {}

  /**
   * Turns printed text into HTML.
   *
   * @param text printed text
   * @return escaped text with spans for its colours
   */
  static String html(String text) {
    return new AnsiText().whole(TerminalText.settled(text));
  }

  /**
   * Printed text without colours.
   *
   * @param text printed text
   * @return what can be read of it
   */
  static String plain(String text) {
    return TerminalText.ESCAPE.matcher(TerminalText.settled(text)).replaceAll("");
  }

  private String whole(String text) {
    var escape = TerminalText.ESCAPE.matcher(text);
    var from = 0;
    while (escape.find()) {
      piece(text.substring(from, escape.start()));
      from = escape.end();
      if ("m".equals(escape.group(2))) {
        change(escape.group(1));
      }
    }
    piece(text.substring(from));
    return html.toString();
  }

  private void piece(String text) {
    // Signals that mean something to a terminal alone, such as the bell.
    var readable = text.replaceAll("[\\p{Cc}&&[^\\t\\n]]", "");
    if (readable.isEmpty()) {
      return;
    }
    var style = style();
    var escaped = HtmlText.escape(readable);
    html.append(style.isEmpty() ? escaped : "<span style=\"" + style + "\">" + escaped + "</span>");
  }

  private String style() {
    var front = inverse ? (ground.isEmpty() ? "#fff" : ground) : ink;
    var back = inverse ? (ink.isEmpty() ? DARK.get(0) : ink) : ground;
    var lines =
        Stream.of(underlined ? "underline" : "", struck ? "line-through" : "")
            .filter(line -> !line.isEmpty())
            .collect(Collectors.joining(" "));
    return Stream.of(
            front.isEmpty() ? "" : "color:" + front,
            back.isEmpty() ? "" : "background:" + back,
            bold ? "font-weight:bold" : "",
            faint ? "opacity:0.75" : "",
            italic ? "font-style:italic" : "",
            lines.isEmpty() ? "" : "text-decoration:" + lines)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(";"));
  }

  private void change(String numbers) {
    var codes = Arrays.stream(numbers.split("[;:]", -1)).mapToInt(AnsiText::number).toArray();
    for (var i = 0; i < codes.length; i++) {
      var isWide = (codes[i] == 38 || codes[i] == 48) && i + 1 < codes.length;
      if (isWide) {
        var colour = wide(codes, i + 1);
        if (codes[i] == 38) {
          ink = colour;
        } else {
          ground = colour;
        }
        i += codes[i + 1] == 2 ? 4 : 2;
      } else {
        change(codes[i]);
      }
    }
  }

  private static int number(String digits) {
    return digits.matches("\\d{1,3}") ? Integer.parseInt(digits) : 0;
  }

  private void change(int code) {
    switch (code) {
      case 0 -> reset();
      case 1 -> bold = true;
      case 2 -> faint = true;
      case 3 -> italic = true;
      case 4 -> underlined = true;
      case 7 -> inverse = true;
      case 9 -> struck = true;
      case 22 -> {
        bold = false;
        faint = false;
      }
      case 23 -> italic = false;
      case 24 -> underlined = false;
      case 27 -> inverse = false;
      case 29 -> struck = false;
      case 39 -> ink = "";
      case 49 -> ground = "";
      default -> colour(code);
    }
  }

  private void reset() {
    ink = "";
    ground = "";
    bold = false;
    faint = false;
    italic = false;
    underlined = false;
    struck = false;
    inverse = false;
  }

  private void colour(int code) {
    if (code >= 30 && code <= 37) {
      ink = DARK.get(code - 30);
    } else if (code >= 90 && code <= 97) {
      ink = DARK.get(code - 90);
    } else if (code >= 40 && code <= 47) {
      ground = LIGHT.get(code - 40);
    } else if (code >= 100 && code <= 107) {
      ground = LIGHT.get(code - 100);
    }
  }

  /** A colour of the table of 256, or one of red, green and blue. */
  private static String wide(int[] codes, int at) {
    if (codes[at] == 2 && at + 3 < codes.length) {
      return rgb(codes[at + 1], codes[at + 2], codes[at + 3]);
    }
    if (codes[at] != 5 || at + 1 >= codes.length) {
      return "";
    }
    var index = Math.min(codes[at + 1], 255);
    if (index < 16) {
      return DARK.get(index % 8);
    }
    if (index >= 232) {
      var grey = 8 + 10 * (index - 232);
      return rgb(grey, grey, grey);
    }
    var cube = index - 16;
    return rgb(CUBE[cube / 36], CUBE[cube / 6 % 6], CUBE[cube % 6]);
  }

  private static String rgb(int red, int green, int blue) {
    return String.format(
        Locale.ROOT,
        "#%02x%02x%02x",
        Math.min(red, 255),
        Math.min(green, 255),
        Math.min(blue, 255));
  }
}
