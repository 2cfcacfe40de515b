package agro.notebook.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HtmlCleanerTest {

  private static HtmlCleaner.Cleaned clean(String html) {
    return HtmlCleaner.clean(html, PagePictures::inData);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "<b>a & b < c &eacute;</b>|<b>a &amp; b &lt; c &eacute;</b>",
        "<p>one<p>two|<p>one</p><p>two</p>",
        "<ul><li>a<li>b<ul><li>c</ul></ul>|<ul><li>a</li><li>b<ul><li>c</li></ul></li></ul>",
        "<table><tr><td>a<td>b<tr><td>c</table>"
            + "|<table><tr><td>a</td><td>b</td></tr><tr><td>c</td></tr></table>",
        "</div></main>out|out",
        "<table><tr><td></div>x</td></tr></table>|<table><tr><td>x</td></tr></table>",
        "<div><b>open|<div><b>open</b></div>",
        "<b><i>cross</b></i>|<b><i>cross</i></b>",
        "<td colspan=2 onclick=\"x()\">a</td>|<td colspan=\"2\">a</td>",
        "<TABLE Border=1></TABLE>|<table border=\"1\"></table>",
        "a<!-- <b> -->b<!DOCTYPE html>c<?xml?>d|abcd",
        "<p style=\"color:red;background:url(x);position:fixed\">a</p>|<p style=\"color:red\">a</p>",
        "<a href=\"#x\">a</a>|<a href=\"#x\" rel=\"noopener noreferrer\">a</a>",
        "<a href=\" jAva&#x73;cript&colon;x\">a</a>|<a>a</a>",
        "<a href=\"data:text/html,x\">a</a>|<a>a</a>",
        "<body><form action=x><input><button>b</button></form></body>|b",
        "<img src=\"data:image/png;base64,AQI=\">"
            + "|<img src=\"data:image/png;base64,AQI=\" alt=\"A picture without a text\">",
        "<img src=http://a.example/x.png alt=\"a map\">"
            + "|<span class=\"missing\">[picture: a map]</span>",
        "<svg viewBox=\"0 0 9 9\"><path d=\"M0 0\" fill=\"url(#g)\"/></svg>"
            + "|<svg viewbox=\"0 0 9 9\"><path d=\"M0 0\" fill=\"url(#g)\"/></svg>",
        "<svg><use href=\"http://x\"/><script>x</script></svg>|<svg><use/></svg>"
      })
  void whatIsLeft(String html, String cleaned) {
    assertThat(clean(html).html()).isEqualTo(cleaned);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "<SCRIPT SRC=x></SCRIPT >",
        "<scr<script>ipt>alert(1)</script>",
        "<img src=x onerror=alert(1)>",
        "<img src=\"x\"onerror=alert(1)>",
        "<svg/onload=alert(1)>",
        "<svg><animate onbegin=alert(1) attributeName=x>",
        "<svg><a xlink:href=\"javascript:alert(1)\"><text>x</text></a></svg>",
        "<math><a href=\"javascript:alert(1)\">x</a></math>",
        "<iframe src=\"javascript:alert(1)\"></iframe>",
        "<iframe srcdoc=\"<script>alert(1)</script>\">",
        "<meta http-equiv=refresh content=\"0;url=javascript:alert(1)\">",
        "<link rel=stylesheet href=x><base href=//x><style>*{display:none}</style>",
        "<form action=\"javascript:alert(1)\"><input autofocus onfocus=alert(1)></form>",
        "<object data=\"javascript:alert(1)\"><embed src=x></object>",
        "<a href=\"java\nscript:alert(1)\">x</a>",
        "<a href=\"&#106avascript:alert(1)\">x</a>",
        "<a href=\"vbscript:x\" style=\"width:expression(alert(1))\">x</a>",
        "<div style=\"background:\\75rl(javascript:alert(1))\">x</div>",
        "<noscript><p title=\"</noscript><img src=x onerror=alert(1)>\">",
        "<textarea><img title=\"</textarea><script>alert(1)</script>\"></textarea>",
        "<template><script>alert(1)</script></template>",
        "<details open ontoggle=alert(1)>x</details>",
        "<p title=\"a\" onmouseover = 'alert(1)'>x</p>",
        "<math><annotation-xml encoding=text/html><script>x</script></annotation-xml></math>"
      })
  void nothingActs(String html) {
    var cleaned = clean(html);
    var left = cleaned.html().toLowerCase(Locale.ROOT);
    assertThat(cleaned.complete()).isFalse();
    assertThat(left)
        .doesNotContain(
            "<script", "<iframe", "<style", "<meta", "<form", "<link", "<base", "<object")
        .doesNotContain("javascript:", "vbscript:", "url(", "expression(");
    assertThat(left.replaceAll("&[a-z]+;", "")).doesNotContainPattern("<[^>]*\\son[a-z]+\\s*=");
  }

  @Test
  void whatShowsNothingIsNotVisible() {
    assertThat(clean("<div id=\"plot\"></div><script>draw()</script>").visible()).isFalse();
    assertThat(clean("<div> \n </div>").visible()).isFalse();
    assertThat(clean("<div>a</div>").visible()).isTrue();
    assertThat(clean("<svg></svg>").visible()).isTrue();
  }

  @Test
  void whatIsFitIsComplete() {
    assertThat(clean("<table class=\"a\"><tr><th scope=\"col\">a</th></tr></table>").complete())
        .isTrue();
    assertThat(clean("<b onclick=\"a\">b</b>").complete()).isFalse();
  }

  @Test
  void longAndDeepTextsAreNoTrouble() {
    var deep = "<div>".repeat(20_000) + "x";
    assertThat(clean(deep).html()).startsWith("<div>").endsWith("</div>");
    var data = "A".repeat(2_000_000);
    assertThat(clean("<img alt=\"a\" src=\"data:image/png;base64," + data + "\">").html())
        .contains(data);
    assertThat(clean("<".repeat(20_000)).html()).contains("&lt;&lt;");
  }
}
