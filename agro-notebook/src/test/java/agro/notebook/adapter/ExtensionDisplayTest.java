package agro.notebook.adapter;

import static org.assertj.core.api.Assertions.assertThat;

import agro.working.Cell;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.ServiceLoader;
import org.dflib.jjava.jupyter.Extension;
import org.dflib.jjava.jupyter.kernel.BaseKernel;
import org.dflib.jjava.jupyter.kernel.JupyterIO;
import org.dflib.jjava.jupyter.kernel.LanguageInfo;
import org.dflib.jjava.jupyter.kernel.ReplacementOptions;
import org.dflib.jjava.jupyter.kernel.comm.CommManager;
import org.dflib.jjava.jupyter.kernel.display.DisplayData;
import org.dflib.jjava.jupyter.kernel.display.Renderer;
import org.dflib.jjava.jupyter.kernel.display.mime.MIMEType;
import org.dflib.jjava.jupyter.kernel.magic.MagicsRegistry;
import org.dflib.jjava.jupyter.kernel.util.StringStyler;
import org.junit.jupiter.api.Test;

/** Against the renderer and the service of the other kernel itself. */
class ExtensionDisplayTest {

  private static final class OtherKernel extends BaseKernel {
    OtherKernel() {
      super(
          "other",
          "1",
          new LanguageInfo.Builder("java").build(),
          List.of(),
          null,
          new JupyterIO(StandardCharsets.UTF_8),
          new CommManager(),
          new Renderer(),
          null,
          new MagicsRegistry(),
          false,
          new StringStyler.Builder().build());
    }

    @Override
    public Object evalRaw(String code) {
      return code;
    }

    @Override
    public DisplayData inspect(String code, int at, boolean detailed) {
      return DisplayData.EMPTY;
    }

    @Override
    public ReplacementOptions complete(String code, int at) {
      return null;
    }

    @Override
    public String isComplete(String code) {
      return IS_COMPLETE_YES;
    }
  }

  private static ResultTable table() {
    return ResultTable.of("Catches", List.of(Column.of("Trap")), List.of(List.of(Cell.text("A"))));
  }

  @Test
  void theKernelFindsItAndShowsOurResults() {
    var extensions = ServiceLoader.load(Extension.class).stream().map(ServiceLoader.Provider::get);
    var ours = extensions.filter(ExtensionDisplay.class::isInstance).findFirst().orElseThrow();
    var kernel = new OtherKernel();
    ours.install(kernel);
    ours.install(kernel);
    var data = kernel.getRenderer().render(table());
    assertThat(data.getData(MIMEType.TEXT_HTML).toString().split("<caption", -1)).hasSize(2);
    assertThat(data.getData(MIMEType.TEXT_PLAIN).toString()).contains("Catches");
    assertThat(kernel.getRenderer().render(List.of(1)).getData(MIMEType.TEXT_PLAIN))
        .isEqualTo("[1]");
  }
}
