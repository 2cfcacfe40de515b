package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;

import agro.course.ExerciseType;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The sheets of the first generator, byte for byte. Whoever makes this fail has changed papers that
 * teachers have in their drawers: leave the old type in its version and add a new version.
 */
class FirstGeneratorTest {

  static Stream<ExerciseType> types() {
    return FirstGeneratorSheets.types().stream();
  }

  @ParameterizedTest
  @MethodSource("types")
  void sheetsAreThoseThatWerePrinted(ExerciseType type) throws IOException {
    var file = FirstGeneratorSheets.folder().resolve(type.code() + ".txt");
    assertThat(file).as("a new type; write it as WriteFirstGeneratorSheets says").exists();
    assertThat(FirstGeneratorSheets.text(type))
        .as("sheets of %s", type.code())
        .isEqualTo(Files.readString(file, StandardCharsets.UTF_8));
  }

  @Test
  void noTypeIsEverTakenAway() throws IOException {
    var kept = new TreeSet<String>();
    try (var files = Files.list(FirstGeneratorSheets.folder())) {
      files.forEach(file -> kept.add(file.getFileName().toString().replace(".txt", "")));
    }
    assertThat(types().map(ExerciseType::code)).containsExactlyInAnyOrderElementsOf(kept);
  }
}
