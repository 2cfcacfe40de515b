package agro.reading;

import agro.report.InputProblem;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/**
 * How a delimited text file is written. The format is declared, never guessed from the content.
 * Cells may stand in double quotes after RFC 4180; lines that start with {@code #} are comments.
 *
 * @param separator character between cells; no letter, digit, space, quote, sign, point or {@code
 *     #}
 * @param decimalMark {@code '.'} or {@code ','}
 * @param charset character set of the file
 */
public record DelimitedFormat(char separator, char decimalMark, Charset charset) {

  /** Comma between cells, decimal point, UTF-8. */
  public static final DelimitedFormat COMMA = new DelimitedFormat(',', '.', StandardCharsets.UTF_8);

  /** Semicolon between cells, decimal comma, UTF-8. */
  public static final DelimitedFormat SEMICOLON =
      new DelimitedFormat(';', ',', StandardCharsets.UTF_8);

  /** Refuses separators and decimal marks that could be taken for content. */
  public DelimitedFormat {
    Objects.requireNonNull(charset, "charset");
    if (Character.isLetterOrDigit(separator) || " \"'#.+-\r\n\0".indexOf(separator) >= 0) {
      throw InputProblem.of("the cell separator is " + shown(separator))
          .expected("a comma, a semicolon, a tab or another sign that no cell contains")
          .because("the cells could not be told from the separators")
          .mend("declare the character that stands between the cells");
    }
    if (decimalMark != '.' && decimalMark != ',') {
      throw InputProblem.of("the decimal mark is " + shown(decimalMark))
          .expected("a point or a comma")
          .because("numbers in files are written with one of these")
          .mend("declare '.' or ','");
    }
  }

  /**
   * This format with another separator.
   *
   * @param newSeparator character between cells
   * @return a new format
   */
  public DelimitedFormat withSeparator(char newSeparator) {
    return new DelimitedFormat(newSeparator, decimalMark, charset);
  }

  /**
   * This format with another decimal mark.
   *
   * @param newDecimalMark {@code '.'} or {@code ','}
   * @return a new format
   */
  public DelimitedFormat withDecimalMark(char newDecimalMark) {
    return new DelimitedFormat(separator, newDecimalMark, charset);
  }

  /**
   * This format with another character set.
   *
   * @param newCharset character set of the file
   * @return a new format
   */
  public DelimitedFormat withCharset(Charset newCharset) {
    return new DelimitedFormat(separator, decimalMark, newCharset);
  }

  /**
   * A character as it is shown in messages.
   *
   * @param character any character
   * @return the character in single quotes, or its name
   */
  static String shown(char character) {
    return switch (character) {
      case '\t' -> "a tab";
      case ' ' -> "a space";
      case '\n', '\r' -> "a line break";
      case '\0' -> "a zero byte";
      default -> "'" + character + "'";
    };
  }
}
