package agro.stats.multiple;

import static agro.ReferenceTable.number;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.NamedCsvRecord;

/** Holds numbers against printed ones, to the last printed digit. */
final class Printed {

  private static final double SHARE_OF_LAST_DIGIT = 0.501;

  private Printed() {}

  static void check(double found, NamedCsvRecord line, String column) {
    var text = line.getField(column);
    assertThat(found)
        .as("%s in %s", column, line)
        .isCloseTo(number(line, column), within(tolerance(text)));
  }

  /** The same for values whose own relative error is wider than their last digit. */
  static void check(double found, NamedCsvRecord line, String column, double relative) {
    double expected = number(line, column);
    double tolerance = Math.max(tolerance(line.getField(column)), relative * expected);
    assertThat(found).as("%s in %s", column, line).isCloseTo(expected, within(tolerance));
  }

  static double tolerance(String text) {
    int exponentAt = text.indexOf('e');
    var digits = exponentAt < 0 ? text : text.substring(0, exponentAt);
    int exponent = exponentAt < 0 ? 0 : Integer.parseInt(text.substring(exponentAt + 1));
    int point = digits.indexOf('.');
    int decimals = point < 0 ? 0 : digits.length() - point - 1;
    if (digits.equals("1")) {
      return 1e-12;
    }
    return SHARE_OF_LAST_DIGIT * Math.pow(10, exponent - decimals);
  }
}
