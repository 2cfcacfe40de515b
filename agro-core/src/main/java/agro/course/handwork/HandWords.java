package agro.course.handwork;

import agro.source.Reference;
import agro.source.Standing;
import agro.units.Numbers;
import agro.working.Cell;
import agro.working.ResultTable.Column;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.util.Collection;
import java.util.stream.Collectors;

/** Words and numbers of this package in one language. */
record HandWords(Wording words) {

  static HandWords in(TextLanguage language) {
    return new HandWords(Wording.of(HandWords.class, "handwork", language));
  }

  String say(String key, Object... namesAndValues) {
    return words.say(key, namesAndValues);
  }

  /** A number with a true minus sign. */
  String number(double value, int decimals) {
    return Double.isFinite(value)
        ? words.quantity(Numbers.fixed(value, decimals)).replace('-', '−')
        : say("not.defined");
  }

  String significant(double value, int digits) {
    return Double.isFinite(value)
        ? words.quantity(Numbers.significant(value, digits)).replace('-', '−')
        : say("not.defined");
  }

  /** A number put into a formula, in brackets where it is negative. */
  String inFormula(double value, int decimals) {
    var printed = number(value, decimals);
    return printed.startsWith("−") ? "(" + printed + ")" : printed;
  }

  Column column(String key) {
    return Column.of(say(key));
  }

  /** A cell with the decimal sign of the language; only those of English stay numbers. */
  Cell cell(double value, int decimals) {
    return words.language() == TextLanguage.ENGLISH
        ? Cell.number(value, decimals)
        : Cell.text(number(value, decimals));
  }

  /** Sources in one paragraph, with their standing in this language. */
  String sources(Collection<Reference> references) {
    return say(
        "sources",
        "sources",
        references.stream().map(this::citation).collect(Collectors.joining("; ")));
  }

  private String citation(Reference reference) {
    var plain =
        new Reference(
                reference.authors(),
                reference.year(),
                reference.title(),
                reference.place(),
                Standing.READ)
            .citation();
    return reference.standing() == Standing.READ
        ? plain
        : plain + " [" + say("standing." + reference.standing().name()) + "]";
  }
}
