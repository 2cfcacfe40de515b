package agro.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

/** A listener hears every step and may end the work. */
class ProgressTest {

  @Test
  void listenerHearsEveryStep() {
    List<String> heard = new ArrayList<>();
    Progress progress = (what, done, total) -> heard.add(what + " " + done + "/" + total);
    progress.step("fit", 1, 2);
    progress.step("fit", 2, 2);
    assertThat(heard).containsExactly("fit 1/2", "fit 2/2");
  }

  @Test
  void listenerEndsTheWork() {
    Progress impatient = (what, done, total) -> done < 3;
    assertThatCode(() -> impatient.step("forecast", 2, 10)).doesNotThrowAnyException();
    assertThatThrownBy(() -> impatient.step("forecast", 3, 10))
        .isInstanceOf(CancellationException.class)
        .hasMessage("forecast was cancelled after 3 of 10");
  }

  @Test
  void silentListenerEndsOnlyAnInterruptedThread() {
    var silent = Progress.silent();
    assertThatCode(() -> silent.step("fit", 0, 1)).doesNotThrowAnyException();
    try {
      Thread.currentThread().interrupt();
      assertThatThrownBy(() -> silent.step("fit", 0, 1)).isInstanceOf(CancellationException.class);
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
  }
}
