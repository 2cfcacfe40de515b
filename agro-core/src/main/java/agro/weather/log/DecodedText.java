package agro.weather.log;

import agro.report.InputProblem;
import agro.report.ReadReport;
import agro.report.ReadReport.Deed;
import agro.report.SourceLocation;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * The text of a log and the character set in which it is written: the declared one, or the one that
 * the bytes show. No byte is replaced silently.
 *
 * @param text the text without a byte order mark
 * @param charset the character set
 */
record DecodedText(String text, Charset charset) {

  private static final Charset WESTERN = Charset.forName("windows-1252");

  static DecodedText of(
      byte[] bytes, String name, Optional<Charset> declared, ReadReport.Collector report) {
    var place = SourceLocation.file(name);
    if (declared.isPresent()) {
      return decoded(bytes, declared.get())
          .orElseThrow(
              () -> malformed(place, "bytes that are no text in " + declared.get().name()));
    }
    var marked = marked(bytes).or(() -> unmarkedWide(bytes));
    if (marked.isPresent()) {
      report.add(Deed.NOTED, place, "the character set is " + marked.get().name());
      return decoded(bytes, marked.get())
          .orElseThrow(() -> malformed(place, "bytes that are no text in " + marked.get().name()));
    }
    var usual = decoded(bytes, StandardCharsets.UTF_8);
    if (usual.isPresent()) {
      return usual.get();
    }
    var western = decoded(bytes, WESTERN);
    report.add(
        Deed.ASSUMED, place, "the character set is windows-1252, since the text is not UTF-8");
    return western.orElseThrow(
        () -> malformed(place, "bytes that are text neither in UTF-8 nor in windows-1252"));
  }

  private static InputProblem malformed(SourceLocation place, String read) {
    return InputProblem.at(place, read)
        .expected("text in UTF-8, UTF-16 or windows-1252, or in the character set declared")
        .because("damaged characters may be damaged figures")
        .mend("export the log again, or declare its character set with withCharset");
  }

  private static Optional<Charset> marked(byte[] bytes) {
    int first = bytes.length > 1 ? ((bytes[0] & 0xFF) << 8) | (bytes[1] & 0xFF) : 0;
    if (first == 0xFEFF) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    if (first == 0xFFFE) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    return Optional.empty();
  }

  /** Western text of two bytes a character has a zero byte in nearly every other place. */
  private static Optional<Charset> unmarkedWide(byte[] bytes) {
    int even = 0;
    int odd = 0;
    int length = Math.min(bytes.length, 4096);
    for (int i = 0; i < length; i++) {
      if (bytes[i] == 0) {
        even += 1 - i % 2;
        odd += i % 2;
      }
    }
    if (Math.max(even, odd) < length * 0.4 || Math.min(even, odd) > length * 0.02) {
      return Optional.empty();
    }
    return Optional.of(odd > even ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE);
  }

  private static Optional<DecodedText> decoded(byte[] bytes, Charset charset) {
    return part(bytes, 0, bytes.length, charset)
        .map(
            text -> new DecodedText(text.startsWith("\uFEFF") ? text.substring(1) : text, charset));
  }

  /** Bytes as text; nothing when they are none. */
  static Optional<String> part(byte[] bytes, int from, int end, Charset charset) {
    try {
      return Optional.of(
          charset
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes, from, end - from))
              .toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** Refuses text with zero bytes, which no program writes on purpose. */
  DecodedText requireText(String name) {
    int zero = text.indexOf('\0');
    if (zero >= 0) {
      long line = 1 + text.substring(0, zero).chars().filter(c -> c == '\n').count();
      throw InputProblem.at(SourceLocation.line(name, line), "the text holds a zero byte")
          .expected("plain text in " + charset.name())
          .because("no text holds zero bytes: the file is damaged or in another character set")
          .mend("export the log again as text, or declare its character set with withCharset");
    }
    return this;
  }
}
