package agro.dose;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The record of a label as a table; every number is invented. */
class LabelLimitsPageTest {

  @Test
  void daysAndHoursAreNamed() {
    var page =
        LabelLimits.of("Product A")
            .with(IntervalLimit.ofDays(10))
            .with(IntervalLimit.ofDays(1).per(LimitScope.SEASON))
            .with(ReEntryLimit.ofHours(24))
            .with(PreHarvestLimit.ofDays(14))
            .presentation()
            .toText();
    assertThat(page)
        .containsPattern("between applications per crop +10 days")
        .containsPattern("between applications per season +1 day ")
        .containsPattern("re-entry interval +24 h")
        .contains("14 days")
        .doesNotContain("PT24H");
  }

  @Test
  void whatIsOpenAndWhatIsNoneStaysApart() {
    var page =
        LabelLimits.of("Product B")
            .with(IntervalLimit.none())
            .with(ReEntryLimit.notRecorded())
            .presentation()
            .toText();
    assertThat(page)
        .containsPattern("between applications per crop +the label says none")
        .containsPattern("re-entry interval +not recorded");
  }
}
