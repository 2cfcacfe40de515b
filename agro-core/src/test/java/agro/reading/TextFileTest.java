package agro.reading;

import static agro.report.SourceLocation.file;
import static agro.report.SourceLocation.line;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Decoding without guesses. */
class TextFileTest {

  private static final String BYTE_ORDER_MARK = "\uFEFF";

  @TempDir Path folder;

  private String read(byte[] content, Charset charset) throws IOException {
    var file = Files.write(folder.resolve("log.csv"), content);
    return TextFile.read(file, "log.csv", charset);
  }

  @Test
  void textComesBackUnchanged() throws IOException {
    var text = "°C;Größe;Ђ;\uD83C\uDF3F\r\nnext\rlast\n";
    assertThat(read(text.getBytes(UTF_8), UTF_8)).isEqualTo(text);
  }

  @Test
  void byteOrderMarkIsLeftOut() throws IOException {
    assertThat(read((BYTE_ORDER_MARK + "date").getBytes(UTF_8), UTF_8)).isEqualTo("date");
    assertThat(read((BYTE_ORDER_MARK + "date").getBytes(UTF_16LE), UTF_16LE)).isEqualTo("date");
    assertThat(read("date".getBytes(UTF_16), UTF_16)).isEqualTo("date");
  }

  @Test
  void emptyFileIsEmptyText() throws IOException {
    assertThat(read(new byte[0], UTF_8)).isEmpty();
  }

  @Test
  void missingFile() {
    var missing = folder.resolve("nowhere.csv");
    Refusal.of(() -> TextFile.read(missing, "nowhere.csv", UTF_8))
        .at(file("nowhere.csv"))
        .read("there is no such file")
        .expected("a text file of this name")
        .because("nothing can be read from it")
        .mend("check the spelling and the folder: looked for " + missing.toAbsolutePath());
  }

  @Test
  void folderInsteadOfFile() {
    Refusal.of(() -> TextFile.read(folder, "logs", UTF_8))
        .at(file("logs"))
        .read("this is a folder")
        .expected("a text file")
        .because("only a file can be read")
        .mend("name the file inside the folder");
  }

  @Test
  void malformedUtf8NamesTheLineAndTheByte() {
    byte[] content = "a\r\nb\rc\nGröße".getBytes(ISO_8859_1);
    Refusal.of(() -> read(content, UTF_8))
        .at(line("log.csv", 4))
        .read("the byte 0xF6 is no text in UTF-8")
        .expected("text in UTF-8")
        .because("the character that was meant is unknown, and a guess would change names silently")
        .mend(
            "save the file as UTF-8, or declare its character set, often windows-1252 or"
                + " ISO-8859-1");
  }

  @Test
  void utf8CutInsideACharacter() {
    byte[] content = {'2', '0', (byte) 0xC2};
    Refusal.of(() -> read(content, UTF_8))
        .at(line("log.csv", 1))
        .read("the byte 0xC2 is no text in UTF-8")
        .mend(
            "save the file as UTF-8, or declare its character set, often windows-1252 or"
                + " ISO-8859-1");
  }

  @Test
  void declaredCharsetIsUsed() throws IOException {
    assertThat(read("Größe".getBytes(ISO_8859_1), ISO_8859_1)).isEqualTo("Größe");
  }

  @Test
  void utf8ReadAsAnotherCharsetIsRecognisedByItsMark() {
    Refusal.of(() -> read((BYTE_ORDER_MARK + "date").getBytes(UTF_8), ISO_8859_1))
        .at(file("log.csv"))
        .read("the file begins with the byte order mark of UTF-8")
        .expected("text in ISO-8859-1, as declared")
        .because("the text would be decoded wrongly")
        .mend("declare UTF-8 as the character set of this file");
  }

  @Test
  void utf16IsRecognisedByItsMark() {
    Refusal.of(() -> read("date".getBytes(UTF_16), UTF_8))
        .read("the file begins with the byte order mark of UTF-16")
        .mend("declare UTF-16 as the character set of this file");
  }

  @Test
  void utf16WithoutMarkIsRecognisedByItsZeroBytes() {
    Refusal.of(() -> read("a\nb".getBytes(UTF_16LE), UTF_8))
        .at(line("log.csv", 1))
        .read("the text holds a zero byte")
        .expected("plain text in UTF-8")
        .because("no text holds zero bytes: the file is in another character set or damaged")
        .mend(
            "declare UTF-16LE if the file was saved as \"Unicode\", else export it again as text");
  }
}
