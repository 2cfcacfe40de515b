package agro.notebook.page;

import java.util.List;

/** Colours and layout of a bulletin: readable in grey, on paper and on a phone. */
final class BulletinStyle {

  /** Text. */
  static final String INK = "#1a1a1a";

  /** Text of less weight. */
  static final String QUIET_INK = "#454545";

  /** Behind everything. */
  static final String PAPER = "#ffffff";

  /** Behind headings of tables and behind cautions. */
  static final String SHADE = "#eeeeee";

  /** Heading and edge of what to do; told from what not to do by words and the form of the edge. */
  static final String DO = INK;

  /** Heading and edge of what not to do. */
  static final String DO_NOT = INK;

  /** Lines. */
  private static final String LINE = "#767676";

  private static final String SHEET =
      """
        @page { size: A4; margin: 9mm 13mm }
        * { box-sizing: border-box }
        html { background: PAPER; color: INK; -webkit-text-size-adjust: 100% }
        body { margin: 0 auto; max-width: 52rem; padding: 1rem; overflow-wrap: anywhere;
          font: 1rem/1.4 "Liberation Sans", Arial, Helvetica, sans-serif }
        h1 { font-size: 1.6rem; line-height: 1.2; margin: 0 }
        h2 { font-size: 1.1rem; line-height: 1.25; margin: 0 0 .3rem }
        section { margin: 0 0 1rem }
        p { margin: .3rem 0 }
        .subtitle { margin: .2rem 0 1rem }
        .quiet, figcaption, footer { color: QUIET; font-size: .85rem }
        ul { margin: 0; padding-left: 1.2rem }
        li { margin: .15rem 0 }
        .do, .do-not { border-left: .35rem solid; padding-left: .7rem; break-inside: avoid }
        .do { border-color: DOES }
        .do h2 { color: DOES }
        .do-not { border-left-style: double; border-color: NOT }
        .do-not h2 { color: NOT }
        .caution { background: SHADE; border: 1px solid LINE; padding: .5rem .8rem;
          break-inside: avoid }
        table { border-collapse: collapse; width: 100%; margin: .3rem 0 .6rem; font-size: .9rem }
        caption { text-align: left; font-weight: bold; padding: .2rem 0 }
        th, td { border: 1px solid LINE; padding: .2rem .4rem; text-align: left;
          vertical-align: top; font-weight: normal; min-width: 4.4em }
        tbody th { min-width: 6.5em }
        thead th { background: SHADE; font-weight: bold }
        tr { break-inside: avoid }
        thead { display: table-header-group }
        h2, caption { break-after: avoid }
        figure { margin: .3rem 0; break-inside: avoid }
        figure svg { display: block; width: 100%; max-width: 34rem; height: auto }
        @media (min-width: 45rem), print {
          .board .picture { float: left; width: 42%; margin-right: 1.2rem }
          .board .caution { overflow: hidden }
          .board footer { clear: both }
          .pair { display: grid; grid-template-columns: 1fr 1fr; gap: 0 1.2rem }
        }
        @media screen and (max-width: 40rem) {
          body { padding: .7rem }
          table, caption, tbody, tr, th, td { display: block }
          thead { display: none }
          tr { border: 1px solid LINE; margin: 0 0 .5rem }
          th, td { min-width: 0 }
          tbody th, td { border: 0 }
          tbody th { background: SHADE; font-weight: bold }
          td::before { content: attr(data-heading) ": "; color: QUIET }
        }
        @media print {
          html { font-size: 8.5pt }
          body { max-width: none; padding: 0; line-height: 1.3 }
          section { margin-bottom: .6rem }
          p, figure, table { margin-top: .15rem; margin-bottom: .15rem }
          .caution { padding: .3rem .8rem; margin-bottom: .3rem }
          a { color: INK; text-decoration: none }
        }
        """;

  private BulletinStyle() {}

  /**
   * A pair of colours of which the first is written on the second.
   *
   * @param ink colour of the text
   * @param ground colour behind it
   */
  record Pair(String ink, String ground) {}

  /** Every pair in which text is set. */
  static List<Pair> pairs() {
    return List.of(
        new Pair(INK, PAPER),
        new Pair(INK, SHADE),
        new Pair(QUIET_INK, PAPER),
        new Pair(QUIET_INK, SHADE),
        new Pair(DO, PAPER),
        new Pair(DO_NOT, PAPER));
  }

  static String css() {
    return SHEET
        .replace("PAPER", PAPER)
        .replace("QUIET", QUIET_INK)
        .replace("INK", INK)
        .replace("SHADE", SHADE)
        .replace("DOES", DO)
        .replace("NOT", DO_NOT)
        .replace("LINE", LINE);
  }
}
