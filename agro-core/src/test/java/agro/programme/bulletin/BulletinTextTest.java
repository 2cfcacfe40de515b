package agro.programme.bulletin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.dose.LimitScope;
import agro.dose.tank.TankLoad;
import agro.generation.FlightShare;
import agro.programme.BeeRule;
import agro.programme.interval.LimitRule;
import agro.programme.interval.Permission;
import agro.programme.rotation.RotationRule;
import agro.programme.rotation.WindowBasis;
import agro.sampling.SamplingUnit;
import agro.sampling.injury.TreatmentVerdict;
import agro.working.Caution;
import agro.working.TextLanguage;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The two languages say the same, completely. */
class BulletinTextTest {

  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  private static Properties words(TextLanguage language) throws IOException {
    var words = new Properties();
    var name = "bulletin_" + language.code() + ".properties";
    try (var stream = BulletinText.class.getResourceAsStream(name)) {
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    }
    return words;
  }

  private static java.util.Set<String> places(String text) {
    var names = new TreeSet<String>();
    var matcher = PLACE.matcher(text);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  @Test
  void everyKeyStandsInBothLanguagesWithTheSamePlaces() throws IOException {
    var english = words(TextLanguage.ENGLISH);
    var german = words(TextLanguage.GERMAN);
    assertThat(german.stringPropertyNames())
        .containsExactlyInAnyOrderElementsOf(english.stringPropertyNames());
    for (var key : english.stringPropertyNames()) {
      assertThat(places(german.getProperty(key)))
          .as(key)
          .isEqualTo(places(english.getProperty(key)));
      assertThat(german.getProperty(key)).as(key).isNotBlank().doesNotContain("??");
    }
  }

  @Test
  void noKeyStandsTwice() throws IOException {
    for (var language : TextLanguage.values()) {
      var name = "bulletin_" + language.code() + ".properties";
      try (var stream = BulletinText.class.getResourceAsStream(name)) {
        var text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        var keys =
            text.lines()
                .filter(line -> line.contains("=") && !line.startsWith("#"))
                .map(line -> line.substring(0, line.indexOf('=')))
                .toList();
        assertThat(keys).doesNotHaveDuplicates();
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void everyConstantThatIsPrintedHasItsWords(TextLanguage language) {
    var keys = BulletinText.of(language).keys();
    for (var each : Caution.values()) {
      assertThat(keys).contains("caution." + each.name());
    }
    all(keys, "rule.", LimitRule.values());
    all(keys, "rotation.", RotationRule.values());
    all(keys, "rotation.basis.", WindowBasis.values());
    all(keys, "permission.", Permission.values());
    all(keys, "verdict.", TreatmentVerdict.values());
    all(keys, "message.", TreatmentVerdict.values());
    all(keys, "unit.", SamplingUnit.Kind.values());
    all(keys, "share.", FlightShare.values());
    all(keys, "scope.", LimitScope.values());
    all(keys, "bees.", BeeRule.values());
    all(keys, "load.", TankLoad.LoadKind.values());
    all(keys, "missing.", MissingPart.values());
    all(keys, "level.", ReadingLevel.values());
  }

  private static void all(Set<String> keys, String start, Enum<?>[] constants) {
    for (var each : constants) {
      assertThat(keys).contains(start + each.name());
    }
  }

  @Test
  void cautionsInEnglishAreThoseOfTheLibrary() {
    var text = BulletinText.of(TextLanguage.ENGLISH);
    for (var each : Caution.values()) {
      assertThat(text.say("caution." + each.name())).isEqualTo(each.line());
    }
  }

  @Test
  void datesAndNumbersFollowTheLanguageAndNotTheMachine() {
    var english = BulletinText.of(TextLanguage.ENGLISH);
    var german = BulletinText.of(TextLanguage.GERMAN);
    var day = LocalDate.of(2026, 7, 3);
    assertThat(english.fullDay(day)).isEqualTo("Friday, 3 Jul 2026");
    assertThat(german.fullDay(day)).isEqualTo("Freitag, 3. Juli 2026");
    assertThat(english.number(1234.5, 1)).isEqualTo("1234.5");
    assertThat(german.number(1234.5, 1)).isEqualTo("1234,5");
    assertThat(german.quantity("0.75 L/ha, Product A.B")).isEqualTo("0,75 L/ha, Product A.B");
    assertThat(german.hours(Duration.ofMinutes(90))).isEqualTo("1,5 Std.");
    assertThat(english.hours(Duration.ofHours(12))).isEqualTo("12 h");
  }

  @Test
  void chancesAreNeverSaidToBeCertain() {
    var text = BulletinText.of(TextLanguage.ENGLISH);
    assertThat(text.chance(0)).isEqualTo("less than 1 in 10");
    assertThat(text.chance(0.31)).isEqualTo("3 in 10");
    assertThat(text.chance(1)).isEqualTo("more than 9 in 10");
  }

  @Test
  void aValueIsNeverReadAsAPattern() {
    var text = BulletinText.of(TextLanguage.ENGLISH);
    assertThat(text.say("title", "field", "{day} $1 \\")).isEqualTo("Field bulletin: {day} $1 \\");
    assertThatThrownBy(() -> text.say("title"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("field");
    assertThatThrownBy(() -> text.say("title", "field", "A", "day", "B"))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
