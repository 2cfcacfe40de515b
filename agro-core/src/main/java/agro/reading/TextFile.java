package agro.reading;

import agro.report.InputProblem;
import agro.report.SourceLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Text files in a declared character set, decoded strictly: no byte is replaced silently. */
public final class TextFile {

  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private TextFile() {}

  /**
   * Reads a whole file. A byte order mark at its start is left out.
   *
   * @param file the file
   * @param name name of the file in messages and reports
   * @param charset character set in which the file is written
   * @return the text, without other changes
   * @throws InputProblem when the file does not exist, is a folder or may not be read, or when its
   *     bytes are no text in that character set
   * @throws UncheckedIOException when reading fails for another reason
   */
  public static String read(Path file, String name, Charset charset) {
    refuseUnreadable(file, name);
    byte[] bytes;
    try {
      bytes = Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(name + " could not be read", e);
    }
    refuseOtherByteOrderMark(bytes, name, charset);
    return decode(bytes, name, charset);
  }

  private static void refuseUnreadable(Path file, String name) {
    var place = SourceLocation.file(name);
    if (Files.isDirectory(file)) {
      throw InputProblem.at(place, "this is a folder")
          .expected("a text file")
          .because("only a file can be read")
          .mend("name the file inside the folder");
    }
    if (!Files.exists(file)) {
      throw InputProblem.at(place, "there is no such file")
          .expected("a text file of this name")
          .because("nothing can be read from it")
          .mend("check the spelling and the folder: looked for " + file.toAbsolutePath());
    }
    if (!Files.isReadable(file)) {
      throw InputProblem.at(place, "the file may not be read")
          .expected("a text file that this user may open")
          .because("the system refuses access to it")
          .mend("change the permissions of the file");
    }
  }

  private static void refuseOtherByteOrderMark(byte[] bytes, String name, Charset charset) {
    var declared = charset.name();
    var marked = markedCharset(bytes);
    if (!marked.isEmpty() && !declared.startsWith(marked)) {
      throw InputProblem.at(
              SourceLocation.file(name), "the file begins with the byte order mark of " + marked)
          .expected("text in " + declared + ", as declared")
          .because("the text would be decoded wrongly")
          .mend("declare " + marked + " as the character set of this file");
    }
  }

  private static String markedCharset(byte[] bytes) {
    int first = bytes.length > 1 ? ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF) : 0;
    if (first == 0xFEFF || first == 0xFFFE) {
      return "UTF-16";
    }
    return first == 0xEFBB && bytes.length > 2 && (bytes[2] & 0xFF) == 0xBF ? "UTF-8" : "";
  }

  private static String decode(byte[] bytes, String name, Charset charset) {
    var decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    var in = ByteBuffer.wrap(bytes);
    var out =
        CharBuffer.allocate((int) Math.ceil(bytes.length * (double) decoder.maxCharsPerByte()));
    var result = decoder.decode(in, out, true);
    if (!result.isError()) {
      result = decoder.flush(out);
    }
    var text = out.flip().toString();
    if (result.isError()) {
      throw malformed(text, in, name, charset);
    }
    refuseZeroBytes(text, name, charset);
    return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
  }

  private static InputProblem malformed(
      String before, ByteBuffer in, String name, Charset charset) {
    var octet =
        in.hasRemaining()
            ? String.format(Locale.ROOT, "byte 0x%02X", in.get(in.position()))
            : "end";
    var cure =
        charset.equals(StandardCharsets.UTF_8)
            ? "save the file as UTF-8, or declare its character set, often windows-1252 or"
                + " ISO-8859-1"
            : "declare the character set in which the file was saved, often UTF-8";
    return InputProblem.at(
            SourceLocation.line(name, lineAtEnd(before)),
            "the " + octet + " is no text in " + charset.name())
        .expected("text in " + charset.name())
        .because("the character that was meant is unknown, and a guess would change names silently")
        .mend(cure);
  }

  private static void refuseZeroBytes(String text, String name, Charset charset) {
    int zero = text.indexOf('\0');
    if (zero >= 0) {
      throw InputProblem.at(
              SourceLocation.line(name, lineAtEnd(text.substring(0, zero))),
              "the text holds a zero byte")
          .expected("plain text in " + charset.name())
          .because("no text holds zero bytes: the file is in another character set or damaged")
          .mend(
              "declare UTF-16LE if the file was saved as \"Unicode\", else export it again as"
                  + " text");
    }
  }

  /** The number of the line on which a text ends; CR LF, LF and CR each end a line. */
  private static long lineAtEnd(String text) {
    long line = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean first = c == '\n' && (i == 0 || text.charAt(i - 1) != '\r');
      line += c == '\r' || first ? 1 : 0;
    }
    return line;
  }
}
