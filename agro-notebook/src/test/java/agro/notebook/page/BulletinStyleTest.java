package agro.notebook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Contrast after the Web Content Accessibility Guidelines 2.1, success criterion 1.4.3. */
class BulletinStyleTest {

  private static final double AA = 4.5;

  private static double channel(String colour, int at) {
    double value = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return value <= 0.03928 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }

  private static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double contrast(String one, String other) {
    double light = Math.max(luminance(one), luminance(other));
    double dark = Math.min(luminance(one), luminance(other));
    return (light + 0.05) / (dark + 0.05);
  }

  @Test
  void theFormulaGivesTheGuidelinesOwnEnds() {
    assertThat(contrast("#000000", "#ffffff")).isCloseTo(21, within(1e-9));
    assertThat(contrast("#777777", "#777777")).isCloseTo(1, within(1e-9));
    // The well-known lightest grey on white that passes.
    assertThat(contrast("#767676", "#ffffff")).isGreaterThan(AA);
    assertThat(contrast("#777777", "#ffffff")).isLessThan(AA);
  }

  @Test
  void everyPairOfTextAndGroundReachesAa() {
    for (var pair : BulletinStyle.pairs()) {
      assertThat(contrast(pair.ink(), pair.ground())).as("%s", pair).isGreaterThanOrEqualTo(AA);
    }
  }

  @Test
  void everyColourOfTheSheetIsAmongThePairs() {
    var known =
        BulletinStyle.pairs().stream()
            .flatMap(pair -> Stream.of(pair.ink(), pair.ground()))
            .toList();
    var matcher =
        Pattern.compile("(?<![-a-z])(?:color|background): ([^;}]+)").matcher(BulletinStyle.css());
    int found = 0;
    while (matcher.find()) {
      assertThat(known).contains(matcher.group(1).strip());
      found++;
    }
    assertThat(found).isGreaterThan(6);
  }

  @Test
  void nothingIsFetchedAndNoNameIsLeft() {
    assertThat(BulletinStyle.css())
        .doesNotContain("url(")
        .doesNotContain("@import")
        .doesNotContainPattern("[A-Z]{3,}: |: [A-Z]{3,};");
  }
}
