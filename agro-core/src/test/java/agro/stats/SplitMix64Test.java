package agro.stats;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

class SplitMix64Test {

  @Test
  void givesTheNumbersOfTwoOtherWritings() {
    for (long seed : new long[] {0, 1, 8, -1, Long.MIN_VALUE, 0x123456789abcdefL}) {
      var ours = SplitMix64.of(seed);
      var commons = RandomSource.SPLIT_MIX_64.create(seed);
      var java = new SplittableRandom(seed);
      for (int i = 0; i < 1_000; i++) {
        long next = ours.next();
        assertThat(next).isEqualTo(commons.nextLong()).isEqualTo(java.nextLong());
      }
    }
  }
}
