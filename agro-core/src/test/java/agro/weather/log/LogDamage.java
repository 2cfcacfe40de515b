package agro.weather.log;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Ways in which a log gets damaged or rearranged. */
enum LogDamage {
  /** One bit of one to three bytes. */
  BITS_FLIPPED,
  /** Some bytes overwritten by others. */
  BYTES_OVERWRITTEN,
  BYTE_REMOVED,
  BYTE_REPEATED,
  LINE_CUT,
  LINE_REMOVED,
  LINE_REPEATED,
  LINES_SWAPPED,
  BLOCKS_SWAPPED,
  NEWEST_FIRST,
  CELLS_SWAPPED,
  COLUMNS_SWAPPED,
  SEPARATOR_CHANGED_IN_A_LINE,
  SEPARATOR_CHANGED,
  TRUNCATED;

  /** One of the ways, each as likely. */
  static LogDamage any(Random random) {
    var all = List.of(values());
    return all.get(random.nextInt(all.size()));
  }

  /** Whether each line says afterwards what it said before, in whatever form. */
  boolean keepsWhatLinesSay() {
    return this == COLUMNS_SWAPPED || this == SEPARATOR_CHANGED;
  }

  /**
   * The damaged log.
   *
   * @param log the log
   * @param random source of chance
   * @return its bytes
   */
  byte[] damaged(SmallLog log, Random random) {
    var lines = new ArrayList<>(log.lines());
    int head = log.headLines();
    int one = head + random.nextInt(lines.size() - head);
    int other = head + random.nextInt(lines.size() - head);
    switch (this) {
      case LINE_CUT -> {
        var line = lines.get(one);
        lines.set(one, line.substring(0, random.nextInt(line.length())));
      }
      case LINE_REMOVED -> lines.remove(one);
      case LINE_REPEATED -> lines.add(other, lines.get(one));
      case LINES_SWAPPED -> Collections.swap(lines, one, other);
      case BLOCKS_SWAPPED -> Collections.rotate(lines.subList(head, lines.size()), one);
      case NEWEST_FIRST -> Collections.reverse(lines.subList(head, lines.size()));
      case CELLS_SWAPPED -> lines.set(one, swapped(lines.get(one), log.separator(), random));
      case COLUMNS_SWAPPED -> swapColumns(lines, log, random);
      case SEPARATOR_CHANGED_IN_A_LINE ->
          lines.set(one, lines.get(one).replace(log.separator(), anySeparator(random)));
      case SEPARATOR_CHANGED -> {
        char another =
            log.text(lines).contains(",") && log.separator() != ',' ? '|' : anySeparator(random);
        lines.replaceAll(line -> line.replace(log.separator(), another));
      }
      default -> {
        return damagedBytes(log.text(lines).getBytes(StandardCharsets.UTF_8), random);
      }
    }
    return log.text(lines).getBytes(StandardCharsets.UTF_8);
  }

  private static char anySeparator(Random random) {
    return ",;|\t".charAt(random.nextInt(4));
  }

  private static String swapped(String line, char separator, Random random) {
    var cells = new ArrayList<>(List.of(line.split(String.valueOf("[" + separator + "]"), -1)));
    Collections.swap(cells, random.nextInt(cells.size()), random.nextInt(cells.size()));
    return String.join(String.valueOf(separator), cells);
  }

  private static void swapColumns(List<String> lines, SmallLog log, Random random) {
    int cells = lines.get(log.headLines()).split("[" + log.separator() + "]", -1).length;
    int one = random.nextInt(cells);
    int other = random.nextInt(cells);
    for (int i = 0; i < lines.size(); i++) {
      var row = new ArrayList<>(List.of(lines.get(i).split("[" + log.separator() + "]", -1)));
      // Between blanks there are as many empty cells as the width of the number leaves.
      if (row.size() == cells && log.separator() != ' ') {
        Collections.swap(row, one, other);
        lines.set(i, String.join(String.valueOf(log.separator()), row));
      }
    }
  }

  private byte[] damagedBytes(byte[] bytes, Random random) {
    int at = random.nextInt(bytes.length);
    switch (this) {
      case BITS_FLIPPED -> {
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
          bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return bytes;
      }
      case BYTES_OVERWRITTEN -> {
        int length = Math.min(bytes.length - at, 1 + random.nextInt(6));
        for (int i = at; i < at + length; i++) {
          bytes[i] = (byte) random.nextInt(256);
        }
        return bytes;
      }
      case BYTE_REMOVED -> {
        return joined(bytes, at, at + 1);
      }
      case BYTE_REPEATED -> {
        return joined(bytes, at + 1, at);
      }
      default -> {
        return java.util.Arrays.copyOf(bytes, at);
      }
    }
  }

  private static byte[] joined(byte[] bytes, int end, int start) {
    var result = new byte[end + bytes.length - start];
    System.arraycopy(bytes, 0, result, 0, end);
    System.arraycopy(bytes, start, result, end, bytes.length - start);
    return result;
  }
}
