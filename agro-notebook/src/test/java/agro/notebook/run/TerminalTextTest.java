package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TerminalTextTest {

  private static final String ESCAPE = "\u001b";

  @Test
  void overwrittenLinesShowTheirLastState() {
    assertThat(TerminalText.settled("10 %\r55 %\r100 %\ndone\n")).isEqualTo("100 %\ndone\n");
    assertThat(TerminalText.settled("abcdef\rxy")).isEqualTo("xycdef");
    assertThat(TerminalText.settled("one\r\ntwo\r\n")).isEqualTo("one\ntwo\n");
    assertThat(TerminalText.settled("abc\b\bX")).isEqualTo("aXc");
    assertThat(TerminalText.settled("\b\b°C")).isEqualTo("°C");
    assertThat(TerminalText.settled("long line\r" + ESCAPE + "[Kshort")).isEqualTo("short");
    assertThat(TerminalText.settled("long line" + ESCAPE + "[2K\rnew")).isEqualTo("new");
    assertThat(TerminalText.settled("plain\ttext\n")).isEqualTo("plain\ttext\n");
    assertThat(TerminalText.settled("")).isEmpty();
  }

  @Test
  void coloursStay() {
    var red = ESCAPE + "[31mred" + ESCAPE + "[0m";
    assertThat(TerminalText.settled(red)).isEqualTo(red);
    assertThat(TerminalText.settled("x\r" + red)).isEqualTo(red);
  }

  @Test
  void manyStatesOfALineAreNoTrouble() {
    var progress = new StringBuilder();
    for (var i = 0; i <= 200_000; i++) {
      progress.append('\r').append(i);
    }
    assertThat(TerminalText.settled(progress.toString())).isEqualTo("200000");
  }

  @Test
  void coloursBecomeColoursOfThePage() {
    assertThat(AnsiText.html(ESCAPE + "[1;31mbad" + ESCAPE + "[0m < good"))
        .isEqualTo("<span style=\"color:#a3201b;font-weight:bold\">bad</span> &lt; good");
    assertThat(AnsiText.html(ESCAPE + "[38;5;196mx" + ESCAPE + "[39my"))
        .isEqualTo("<span style=\"color:#ff0000\">x</span>y");
    assertThat(AnsiText.html(ESCAPE + "[48;2;1;2;3mx")).contains("background:#010203");
    assertThat(AnsiText.html(ESCAPE + "[4;9mx" + ESCAPE + "[24;29my"))
        .isEqualTo("<span style=\"text-decoration:underline line-through\">x</span>y");
  }

  @Test
  void otherSignalsVanish() {
    var link = ESCAPE + "]8;;http://a.example" + ESCAPE + "\\text" + ESCAPE + "]8;;\u0007";
    assertThat(AnsiText.html(link + "\u0007" + ESCAPE + "[?25l" + ESCAPE + "(B" + ESCAPE))
        .isEqualTo("text");
    assertThat(AnsiText.html(ESCAPE + "[38;5mx" + ESCAPE + "[999my" + ESCAPE + "[38m"))
        .isEqualTo("xy");
    assertThat(AnsiText.plain(ESCAPE + "[31mred" + ESCAPE + "[0m")).isEqualTo("red");
  }
}
