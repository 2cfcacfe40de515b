package agro.notebook.adapter;

import java.util.Collections;
import java.util.Set;
import java.util.WeakHashMap;
import org.dflib.jjava.jupyter.Extension;
import org.dflib.jjava.jupyter.kernel.BaseKernel;
import org.dflib.jjava.jupyter.kernel.display.RenderContext;
import org.dflib.jjava.jupyter.kernel.display.Renderer;
import org.dflib.jjava.jupyter.kernel.display.mime.MIMEType;

/**
 * Shows our results in the JJava kernel, which finds it as a service when this jar is added to the
 * class path.
 */
public final class ExtensionDisplay implements Extension {

  private static final Set<Renderer> KNOWN = Collections.newSetFromMap(new WeakHashMap<>());

  /** Made by the kernel. */
  public ExtensionDisplay() {}

  /**
   * Registers our renderers, once for each kernel.
   *
   * @param kernel the kernel
   */
  @Override
  public void install(BaseKernel kernel) {
    synchronized (KNOWN) {
      var renderer = kernel.getRenderer();
      if (KNOWN.add(renderer)) {
        for (var type : ShownTypes.all()) {
          renderer
              .createRegistration(type)
              .preferring(ShownTypes.FORMATS)
              .register((value, context) -> fill(context, value));
        }
      }
    }
  }

  private static void fill(RenderContext context, Object value) {
    ShownTypes.formats(value)
        .forEach(
            (format, content) -> context.renderIfRequested(MIMEType.parse(format), () -> content));
  }
}
