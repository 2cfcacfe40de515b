package agro.programme.diary;

import static org.assertj.core.api.Assertions.assertThat;

import agro.reading.DelimitedFormat;
import agro.reading.DelimitedText;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class DiaryTextPropertiesTest {

  @Property(seed = "8", tries = 1000)
  void anyTextSurvives(@ForAll String text) {
    var cell = DiaryText.cell(text);
    var parsed =
        DelimitedText.parse("cell", "a,b\n" + cell + ",x\n", DelimitedFormat.COMMA, List.of("a"));
    assertThat(DiaryText.read(parsed.lines().get(0).optionalText("a").orElse(""))).isEqualTo(text);
    assertThat(cell.lines().count()).isLessThanOrEqualTo(1);
  }
}
