package agro.weather.log;

import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a single line of a log that is being detected: a temperature that is written in an unusual
 * way or stands for a missing one. Lines that are unusual in any other way are not taken, since how
 * the table and its times are written is found from all lines together.
 */
final class DetectedLine implements OddLine {

  private final byte[] bytes;
  private final ReadingScan.Layout layout;
  private final CellSeparator separator;
  private final FixedTime time;
  private final Optional<Set<String>> declaredMissing;
  private final Set<String> missingWords = new TreeSet<>();
  private final Map<Integer, NumberCell> numbers = new HashMap<>();

  DetectedLine(
      byte[] bytes,
      ReadingScan.Layout layout,
      CellSeparator separator,
      FixedTime time,
      Optional<Set<String>> declaredMissing) {
    this.bytes = bytes;
    this.layout = layout;
    this.separator = separator;
    this.time = time;
    this.declaredMissing = declaredMissing;
  }

  /** What stood for a missing value besides empty cells, as written. */
  Set<String> missingWords() {
    return missingWords;
  }

  /** Numbers that were read here, by their lines. */
  Map<Integer, NumberCell> numbers() {
    return numbers;
  }

  @Override
  public Optional<Found> read(int from, int end, int line) {
    if (!isPlain(from, end)) {
      return Optional.empty();
    }
    var text = new String(bytes, from, end - from, StandardCharsets.US_ASCII);
    var cells = new TableRow(line, separator.split(text, java.util.List.of()));
    if (cells.cells().size() != layout.cells()) {
      return Optional.empty();
    }
    var written = cells.cell(layout.timeCell()).getBytes(StandardCharsets.US_ASCII);
    long second = written.length == time.length() ? time.localSecond(written, 0) : FixedTime.NONE;
    return second == FixedTime.NONE ? Optional.empty() : reading(cells, second);
  }

  /** Whether the bytes are ASCII without quotes, and neither blank nor a comment. */
  private boolean isPlain(int from, int end) {
    boolean isPlain = from < end && Character.isLetterOrDigit(bytes[from]);
    for (int i = from; i < end; i++) {
      isPlain &= bytes[i] > 0 && bytes[i] != '"';
    }
    return isPlain;
  }

  private Optional<Found> reading(TableRow cells, long second) {
    int offset = time.hasOffset() ? time.lastOffset() : 0;
    var text = cells.cell(layout.valueCell());
    boolean isMissing =
        declaredMissing
            .map(codes -> text.isEmpty() || codes.contains(text))
            .orElseGet(() -> MissingWords.isWord(text));
    if (isMissing) {
      if (!text.isEmpty() && declaredMissing.isEmpty()) {
        missingWords.add(text);
      }
      return Optional.of(new Found(true, second, offset, Double.NaN, -1));
    }
    var number = NumberCell.of(text);
    boolean hasUsualMark =
        number.isPresent()
            && (number.get().mark() == 0 || number.get().mark() == layout.decimalMark());
    if (!hasUsualMark) {
      return Optional.empty();
    }
    numbers.put(cells.line(), number.get());
    return Optional.of(
        new Found(true, second, offset, number.get().value(), number.get().decimals()));
  }
}
