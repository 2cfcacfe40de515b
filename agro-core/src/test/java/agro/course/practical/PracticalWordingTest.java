package agro.course.practical;

import static org.assertj.core.api.Assertions.assertThat;

import agro.source.Standing;
import agro.working.Caution;
import agro.working.TextLanguage;
import agro.working.Wording;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PracticalWordingTest {

  private static final Pattern NAMES = Pattern.compile("\\{([^}]*)\\}");

  @Test
  void bothLanguagesSayTheSameWithTheSameNames() {
    var english = bundle(TextLanguage.ENGLISH);
    var german = bundle(TextLanguage.GERMAN);
    assertThat(german.keySet()).isEqualTo(english.keySet());
    for (var key : english.keySet()) {
      assertThat(names(german.getString(key))).as(key).isEqualTo(names(english.getString(key)));
      assertThat(german.getString(key)).as(key).isNotBlank();
    }
  }

  @Test
  void everyConstantHasItsWords() {
    var words = Wording.of(ClassCalibration.class, "practical", TextLanguage.GERMAN);
    var keys =
        Stream.of(
                keys("slip.", ArithmeticSlip.values()),
                keys("dose.slip.", CommonSlip.values()),
                keys("slips.family.", SlipFamily.values()),
                keys("slips.basis.", SlipBasis.values()),
                keys("verdict.", GroupVerdict.values()),
                keys("benchmark.", CalibrationBenchmark.values()),
                keys("column.from.", CalibrationBenchmark.values()),
                keys("remark.dose.", CalibrationBenchmark.values()),
                keys("standing.", Standing.values()),
                keys("caution.", Caution.values()))
            .flatMap(stream -> stream);
    assertThat(keys).allMatch(words::has);
  }

  @Test
  void cautionsInEnglishAreThoseOfAllPages() {
    var words = Wording.of(ClassCalibration.class, "practical", TextLanguage.ENGLISH);
    for (var caution : Caution.all()) {
      assertThat(words.say("caution." + caution.name())).isEqualTo(caution.line());
    }
  }

  private static Stream<String> keys(String prefix, Enum<?>... constants) {
    return Arrays.stream(constants).map(constant -> prefix + constant.name());
  }

  private static Set<String> names(String text) {
    var found = new TreeSet<String>();
    var matcher = NAMES.matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  private static PropertyResourceBundle bundle(TextLanguage language) {
    var file = "practical_" + language.code() + ".properties";
    var stream = Objects.requireNonNull(ClassCalibration.class.getResourceAsStream(file), file);
    try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return new PropertyResourceBundle(reader);
    } catch (IOException problem) {
      throw new AssertionError(problem);
    }
  }
}
