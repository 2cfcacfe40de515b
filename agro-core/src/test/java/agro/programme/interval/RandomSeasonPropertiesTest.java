package agro.programme.interval;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;

class RandomSeasonPropertiesTest {

  @Tag("slow")
  @Property(tries = 2000, seed = "2027", shrinking = ShrinkingMode.OFF)
  void rulesAgreeWithAWalkOverAllDays(@ForAll long seed) {
    agree(seed);
  }

  @Property(tries = 25, seed = "2029", shrinking = ShrinkingMode.OFF)
  void rulesOfAFewSeasonsAgreeWithAWalkOverAllDays(@ForAll long seed) {
    agree(seed);
  }

  private static void agree(long seed) {
    var season = new RandomSeason(seed);
    var rules = season.rules();
    for (int i = 0; i < season.uses.size(); i++) {
      var expected = DayByDayChecker.check(season, i);
      var found = byRule(rules.check(rules.programme().sprayings().get(i)));
      for (var rule : expected.keySet()) {
        assertThat(found.get(rule))
            .as("seed %d, application %d, %s: %s", seed, i, rule, season)
            .isEqualTo(expected.get(rule));
      }
    }
  }

  private static Map<LimitRule, Permission> byRule(ApplicationVerdict verdict) {
    var found = new EnumMap<LimitRule, Permission>(LimitRule.class);
    for (var each : verdict.findings()) {
      found.merge(each.rule(), each.permission(), Permission::and);
    }
    return found;
  }

  @Property(tries = 25, seed = "2028")
  void theOrderOfEntriesNeverMatters(@ForAll long seed) {
    var season = new RandomSeason(seed);
    var rules = season.rules();
    var shuffled = new java.util.ArrayList<>(rules.programme().sprayings());
    Collections.shuffle(shuffled, new Random(seed));
    var other = rules.with(rules.programme().withSprayings(shuffled));
    var verdicts =
        other.checkAll().stream()
            .collect(Collectors.toMap(each -> each.spraying().name(), each -> each.permission()));
    for (var verdict : rules.checkAll()) {
      assertThat(verdicts.get(verdict.spraying().name())).isEqualTo(verdict.permission());
    }
  }
}
