package agro.course.practical;

import agro.dose.ProductPerArea;
import agro.source.Reference;
import agro.source.Standing;
import agro.units.Area;
import agro.units.Numbers;
import agro.units.Quantity;
import agro.units.QuantityStyle;
import agro.units.Unit;
import agro.working.Block;
import agro.working.Caution;
import agro.working.Cell;
import agro.working.Presentation;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.ArrayList;
import java.util.List;

/** Words, numbers and quantities of the practical in the language and units of a reader. */
final class PracticalWords {

  private final Wording words;
  private final QuantityStyle style;

  PracticalWords(TextLanguage language, QuantityStyle style) {
    this.words = wording(language);
    this.style = style;
  }

  static Wording wording(TextLanguage language) {
    return Wording.of(PracticalWords.class, "practical", language);
  }

  String say(String key, Object... namesAndValues) {
    return words.say(key, namesAndValues);
  }

  boolean isEnglish() {
    return words.language() == TextLanguage.ENGLISH;
  }

  /** A number with so many significant digits at most. */
  String significant(double value, int digits) {
    return words.quantity(Numbers.significant(value, digits));
  }

  /** Printed words with the decimal sign of the language. */
  String decimals(String printed) {
    return words.quantity(printed);
  }

  <Q extends Quantity<Q>> String in(Q quantity, Unit<Q> unit, int digits) {
    return significant(quantity.in(unit), digits) + " " + unit.symbol();
  }

  /** A share in per cent with its sign. */
  String departure(double share) {
    double percent = 100 * share;
    var size = words.number(Math.abs(percent), Math.abs(percent) < 99.95 ? 1 : 0);
    return (percent < 0 ? "\u2212" : "+") + size + "\u00a0%";
  }

  /** A share in per cent without a sign. */
  String percent(double share, int decimals) {
    return words.number(100 * share, decimals) + "\u00a0%";
  }

  /** A multiple, as "x 2.47" with a proper sign. */
  String times(double ratio) {
    return "\u00d7\u00a0" + significant(ratio, 3);
  }

  /** A dose per unit of land. */
  String dose(ProductPerArea dose) {
    var land = Area.of(1, style.land());
    return words.quantity(dose.on(land).print(style).replace(" to ", "\u2013"))
        + "/"
        + style.land().symbol();
  }

  /** A number in a table: right-aligned in English, with the decimal sign of the language. */
  Cell number(double value, int decimals) {
    return isEnglish() ? Cell.number(value, decimals) : Cell.text(words.number(value, decimals));
  }

  Cell none() {
    return Cell.text("\u2013");
  }

  /** A source as it is printed, with its standing in the language of print. */
  String citation(Reference source) {
    if (isEnglish()) {
      return source.citation();
    }
    var standing = source.standing();
    var own = "source." + PracticalSources.key(source);
    var bare =
        new Reference(
                source.authors(), source.year(), source.title(), source.place(), Standing.READ)
            .citation();
    var text = words.has(own) ? words.say(own) : bare;
    return standing == Standing.READ
        ? text
        : text + " [" + words.say("standing." + standing.name()) + "]";
  }

  /** Sources below a page. */
  void sources(Presentation.Builder page, List<Reference> sources) {
    if (isEnglish()) {
      page.sources(sources);
      return;
    }
    var facts = new ArrayList<Block.Fact>();
    sources.stream()
        .distinct()
        .map(this::citation)
        .forEach(text -> facts.add(new Block.Fact(Integer.toString(facts.size() + 1), text)));
    page.paragraph(words.say("sources")).block(new Block.Facts(facts));
  }

  /** The usual cautions below a page. */
  void cautions(Presentation.Builder page) {
    if (isEnglish()) {
      page.cautions(Caution.all());
      return;
    }
    page.paragraph(words.say("cautions"));
    Caution.all().forEach(caution -> page.paragraph(words.say("caution." + caution.name())));
  }
}
