package agro.trial;

import static org.assertj.core.api.Assertions.assertThat;

import agro.trial.NearTreatment.Difference;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Two spellings of one treatment are offered; two treatments are left alone. */
class NearNamesTest {

  @ParameterizedTest
  @CsvSource({
    "untreated,Untreated,WRITING",
    "neem oil,neem  oil,WRITING",
    "neem oil,neemoil,WRITING",
    "neem-oil,neem oil,WRITING",
    "témoin,temoin,WRITING",
    "kaolin.,kaolin,WRITING",
    "T10,T1O,LOOK_ALIKES",
    "untreated,untraeted,LETTERS",
    "kaolin,kaolim,LETTERS",
    "spinosad early,spinosat early,LETTERS",
    "pyrethrum,pyretrum,LETTERS"
  })
  void twoSpellingsAreNear(String one, String other, Difference difference) {
    assertThat(NearNames.difference(one, other)).contains(difference);
    assertThat(NearNames.difference(other, one)).contains(difference);
  }

  @ParameterizedTest
  @CsvSource({
    "product A,product B",
    "soap 1 %,soap 2 %",
    "soap 0.5 %,soap 5 %",
    "A,B",
    "T1,T2",
    "N,NP",
    "oil,soil",
    "early,late",
    "untreated,treated late",
    "neem,neem and soap",
    "soap + oil,soap",
    "+K,-K"
  })
  void twoTreatmentsAreNotNear(String one, String other) {
    assertThat(NearNames.difference(one, other)).isEmpty();
  }

  @Property(seed = "8", tries = 200)
  void aSwapOfTwoLettersIsFoundWhateverTheName(
      @ForAll @AlphaChars @StringLength(min = 5, max = 14) String name,
      @ForAll @IntRange(max = 3) int at) {
    var letters = name.toCharArray();
    char moved = letters[at];
    letters[at] = letters[at + 1];
    letters[at + 1] = moved;

    assertThat(NearNames.difference(name, new String(letters))).isPresent();
  }

  @Property(seed = "8", tries = 100)
  void capitalsAndSpacesAreFoundWhateverTheName(
      @ForAll @AlphaChars @StringLength(min = 1, max = 12) String name) {
    assertThat(NearNames.difference(name, " " + name.toUpperCase(Locale.ROOT) + " "))
        .contains(Difference.WRITING);
  }

  @Test
  void theRarerNameIsOfferedForRenaming() {
    var lines = new ArrayList<String>();
    lines.add("plot,block,treatment,larvae");
    for (int block = 1; block <= 4; block++) {
      lines.add(2 * block - 1 + "," + block + "," + (block == 3 ? "kaolim" : "kaolin") + ",1");
      lines.add(2 * block + "," + block + ",water,1");
    }

    var trial = FieldTrial.parse("t", String.join("\n", lines), PlotColumns.ofCounts("larvae"));

    assertThat(trial.nearTreatments())
        .containsExactly(
            new NearTreatment("treatment", "kaolim", "kaolin", 1, 3, Difference.LETTERS));
    assertThat(trial.review().findings(TrialFinding.Kind.NEAR_NAMES).get(0).text())
        .contains("plot 5", "line 6");
    assertThat(trial.withRenamed("kaolim", "kaolin").review().design())
        .isEqualTo(new TrialDesign.CompleteBlocks(List.of("treatment")));
  }
}
