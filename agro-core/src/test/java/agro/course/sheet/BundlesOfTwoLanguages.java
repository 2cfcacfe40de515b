package agro.course.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.TextLanguage;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/** Whether a bundle says the same in both languages, completely. */
public final class BundlesOfTwoLanguages {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  private BundlesOfTwoLanguages() {}

  /** Compares keys and places of a bundle beside a class. */
  public static void check(Class<?> owner, String name) throws IOException {
    var english = words(owner, name, TextLanguage.ENGLISH);
    var german = words(owner, name, TextLanguage.GERMAN);
    assertThat(german.stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
    for (var key : english.stringPropertyNames()) {
      assertThat(places(german.getProperty(key)))
          .as(key)
          .isEqualTo(places(english.getProperty(key)));
      assertThat(german.getProperty(key)).as(key).isNotBlank();
    }
  }

  private static Properties words(Class<?> owner, String name, TextLanguage language)
      throws IOException {
    var file = name + "_" + language.code() + ".properties";
    try (var stream = Objects.requireNonNull(owner.getResourceAsStream(file), file)) {
      var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(
              text.lines()
                  .filter(line -> line.contains("=") && !line.startsWith("#"))
                  .map(line -> line.substring(0, line.indexOf('='))))
          .doesNotHaveDuplicates();
      var words = new Properties();
      words.load(new StringReader(text));
      return words;
    }
  }

  private static Set<String> places(String text) {
    var names = new TreeSet<String>();
    PLACE.matcher(text).results().forEach(place -> names.add(place.group(1)));
    return names;
  }
}
