package agro.notebook.install;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KernelIconTest {

  private static final int ALPHA = 24;

  @ParameterizedTest
  @ValueSource(ints = {32, 64})
  void aDrawingOnAClearGround(int size) throws IOException {
    var image = ImageIO.read(new ByteArrayInputStream(KernelIcon.png(size)));
    assertThat(image.getWidth()).isEqualTo(size);
    assertThat(image.getHeight()).isEqualTo(size);
    assertThat(image.getRGB(0, 0) >>> ALPHA).isZero();
    assertThat(image.getRGB(size / 2, size / 3) >>> ALPHA).isEqualTo(255);
  }
}
