package agro.notebook.insight;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class DocMarkupTest {

  private final DocMarkup markup = new DocMarkup();

  @Test
  void textIsEscapedInHtmlAlone() {
    markup.text("a < b & \"c\"");
    markup.finish();
    assertThat(markup.html()).isEqualTo("a &lt; b &amp; &quot;c&quot;");
    assertThat(markup.plain()).isEqualTo("a < b & \"c\"");
  }

  @Test
  void whatIsNotHarmlessIsLeftOut() {
    markup.open("script");
    markup.text("alert(1)");
    markup.close("script");
    markup.open("iframe");
    markup.close("div");
    markup.finish();
    assertThat(markup.html()).isEqualTo("alert(1)");
  }

  @Test
  void everythingThatIsOpenedIsClosed() {
    markup.open("p");
    markup.text("one");
    markup.open("ul");
    markup.open("li");
    markup.text("two");
    markup.open("li");
    markup.open("b");
    markup.text("three");
    markup.finish();
    assertThat(markup.html()).isEqualTo("<p>one</p><ul><li>two</li><li><b>three</b></li></ul>");
    assertThat(markup.plain()).isEqualTo("one\n- two\n- three");
  }

  @Test
  void entitiesAreLetters() {
    markup.entity("le");
    markup.entity("#176");
    markup.entity("#x41");
    markup.entity("unheard");
    markup.entity("#9999999");
    assertThat(markup.plain()).isEqualTo("\u2264\u00b0A&unheard;&#9999999;");
    assertThat(markup.html()).isEqualTo("\u2264\u00b0A&amp;unheard;&amp;#9999999;");
  }

  @Test
  void aListingKeepsItsLines() {
    markup.text("before");
    markup.open("pre");
    markup.text("a\n  b");
    markup.close("pre");
    markup.text("after\nthat");
    markup.finish();
    assertThat(markup.plain()).isEqualTo("before\n\na\n  b\n\nafter that");
    assertThat(markup.html()).isEqualTo("before<pre>a\n  b</pre>after\nthat");
  }
}
