package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.AnswerTolerance;
import agro.course.ExamAid;
import agro.course.ExerciseContract;
import agro.source.Standing;
import agro.working.TextLanguage;
import org.junit.jupiter.api.Test;

class PaperWordsTest {

  @Test
  void bothLanguagesSayEverything() {
    ExerciseContract.sameKeys(PaperWords.class, "paper");
    for (var language : TextLanguage.values()) {
      var words = PaperWords.of(language);
      for (var aid : ExamAid.values()) {
        assertThat(words.say("aid." + aid.name())).isNotBlank();
      }
      for (var reason : AnswerTolerance.Reason.values()) {
        assertThat(words.say("reason." + reason.name())).isNotBlank();
      }
      for (var standing : Standing.values()) {
        assertThat(words.say("standing." + standing.name())).isNotBlank();
      }
      for (var kind : PaperKind.values()) {
        assertThat(words.say("title." + kind.name())).isNotBlank();
      }
    }
  }
}
