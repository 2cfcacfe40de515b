package agro.dose.sprayer;

import agro.report.InputProblem;
import java.util.OptionalInt;

/**
 * What is stamped on a flat-fan nozzle: the spray angle in degrees, if it is given, followed by the
 * size. {@code "11003"} is 110° and size 03, {@code "8002"} is 80° and 02.
 *
 * @param angleDegrees spray angle, if stamped
 * @param size size
 */
public record NozzleMark(OptionalInt angleDegrees, NozzleSize size) {

  private static final int NARROWEST = 15;
  private static final int WIDEST = 160;

  /**
   * Reads a mark.
   *
   * @param text digits, a dash or space between angle and size allowed
   * @return angle and size
   * @throws InputProblem if the text is not an angle and a known size
   */
  public static NozzleMark parse(String text) {
    var digits = text.replaceAll("[\\s°-]", "");
    if (!digits.matches("[0-9]+")) {
      throw unreadable(text);
    }
    for (var size : NozzleSize.values()) {
      if (digits.equals(size.code())) {
        return new NozzleMark(OptionalInt.empty(), size);
      }
    }
    for (var size : NozzleSize.values()) {
      int split = digits.length() - size.code().length();
      if (digits.endsWith(size.code()) && (split == 2 || split == 3)) {
        int angle = Integer.parseInt(digits.substring(0, split));
        if (angle >= NARROWEST && angle <= WIDEST && digits.charAt(0) != '0') {
          return new NozzleMark(OptionalInt.of(angle), size);
        }
      }
    }
    throw unreadable(text);
  }

  private static InputProblem unreadable(String text) {
    var sizes = new StringBuilder();
    for (var size : NozzleSize.values()) {
      sizes.append(sizes.isEmpty() ? "" : ", ").append(size.code());
    }
    return InputProblem.of("the nozzle mark is \"" + text + "\"")
        .expected("a spray angle and a size, such as \"110-03\", or a size alone: " + sizes)
        .because("flow and colour follow from the size")
        .mend("read the digits on the nozzle; leave out the letters before them");
  }

  @Override
  public String toString() {
    return angleDegrees.isPresent() ? angleDegrees.getAsInt() + "-" + size.code() : size.code();
  }
}
