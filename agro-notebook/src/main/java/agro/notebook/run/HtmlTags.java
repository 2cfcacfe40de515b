package agro.notebook.run;

import java.util.Set;

/**
 * What HTML that comes out of cells may be made of: elements that show something and do nothing.
 */
final class HtmlTags {

  /** Elements without an end. */
  static final Set<String> VOID = Set.of("br", "hr", "img", "wbr", "col");

  static final Set<String> HTML =
      words(
          """
          a abbr address article aside b bdi bdo big blockquote br caption center cite code col
          colgroup data dd del details dfn div dl dt em figcaption figure font footer h1 h2 h3 h4
          h5 h6 header hgroup hr i img ins kbd li main mark menu meter nav ol p pre progress q rp
          rt ruby s samp section small span strike strong sub summary sup table tbody td tfoot th
          thead time tr tt u ul var wbr
          """);

  static final Set<String> SVG =
      words(
          """
          svg g path rect circle ellipse line polyline polygon text tspan textpath defs
          lineargradient radialgradient stop clippath mask pattern marker symbol use desc
          """);

  static final Set<String> MATH =
      words(
          """
          math semantics annotation mrow mi mn mo mtext ms mspace mfrac msqrt mroot msub msup
          msubsup munder mover munderover mmultiscripts mprescripts mtable mtr mtd mstyle mpadded
          mphantom menclose merror none
          """);

  /** Elements that go with all that they hold: code, other pages, questions to the reader. */
  static final Set<String> DROPPED_WHOLE =
      words(
          """
          script style iframe object embed applet template noscript noembed noframes textarea
          select title xmp plaintext audio video canvas frameset foreignobject annotation-xml
          """);

  /** Elements in whose attributes drawings and formulas say how they look. */
  static boolean isDrawing(String tag) {
    return SVG.contains(tag) || MATH.contains(tag);
  }

  static boolean isAllowed(String tag) {
    return HTML.contains(tag) || isDrawing(tag);
  }

  static final Set<String> TABLE_PARTS =
      Set.of("table", "thead", "tbody", "tfoot", "tr", "td", "th", "caption", "colgroup");

  /** What an end tag of something else does not reach beyond. */
  static final Set<String> WALLS = Set.of("td", "th", "caption", "svg", "math");

  private static final Set<String> BLOCKS =
      words(
          """
          address article aside blockquote center details div dl figure footer h1 h2 h3 h4 h5 h6
          header hr main menu nav ol p pre section table ul
          """);

  /**
   * Whether an element ends where another begins, although nobody wrote its end.
   *
   * @param open the innermost open element
   * @param next the element that begins
   * @return true when the open one has to be closed first
   */
  static boolean endsBefore(String open, String next) {
    return switch (open) {
      case "p" -> BLOCKS.contains(next) || isPart(next);
      case "li" -> next.equals("li");
      case "dt", "dd" -> next.equals("dt") || next.equals("dd");
      case "td", "th" -> isPart(next);
      case "tr" -> isPart(next) && !next.equals("td") && !next.equals("th");
      case "thead", "tbody", "tfoot", "colgroup", "caption" ->
          Set.of("thead", "tbody", "tfoot", "colgroup", "caption").contains(next)
              || (open.equals("caption") && next.equals("tr"));
      default -> false;
    };
  }

  private static boolean isPart(String tag) {
    return TABLE_PARTS.contains(tag) && !tag.equals("table");
  }

  private static Set<String> words(String text) {
    return Set.of(text.strip().split("\\s+", -1));
  }

  private HtmlTags() {}
}
