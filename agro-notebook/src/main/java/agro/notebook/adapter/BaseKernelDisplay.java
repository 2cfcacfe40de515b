package agro.notebook.adapter;

import io.github.spencerpark.jupyter.kernel.BaseKernel;
import io.github.spencerpark.jupyter.kernel.display.RenderContext;
import io.github.spencerpark.jupyter.kernel.display.Renderer;
import io.github.spencerpark.jupyter.kernel.display.mime.MIMEType;
import java.util.Collections;
import java.util.Set;
import java.util.WeakHashMap;

/**
 * Shows our results in Java kernels built on {@code jupyter-jvm-basekernel}. A notebook calls
 * {@link #install()} once, after this jar was added to the class path.
 */
public final class BaseKernelDisplay {

  private static final String KERNEL = "io.github.spencerpark.ijava.IJava";

  private BaseKernelDisplay() {}

  /**
   * Registers our renderers with the IJava kernel that runs here. Without such a kernel it says so
   * and does nothing; a second time it does nothing.
   */
  public static void install() {
    try {
      var kernel = Class.forName(KERNEL).getMethod("getKernelInstance").invoke(null);
      if (kernel != null) {
        install(kernel);
        return;
      }
    } catch (ReflectiveOperationException | LinkageError noSuchKernel) {
      // Told below, in the same words as a kernel that has not started.
    }
    System.err.println(
        "No IJava kernel runs here, so there is nothing to install. In the kernel of this project"
            + " results are shown without it; in another kernel pass the kernel to install(kernel).");
  }

  /**
   * Registers our renderers with a kernel.
   *
   * @param kernel a kernel built on {@code jupyter-jvm-basekernel}, or its renderer
   * @throws IllegalArgumentException when it is neither
   */
  public static void install(Object kernel) {
    try {
      Registry.install(kernel);
    } catch (NoClassDefFoundError otherKernel) {
      throw new IllegalArgumentException(
          "jupyter-jvm-basekernel is not on the class path, so a "
              + kernel.getClass().getName()
              + " is no kernel built on it",
          otherKernel);
    }
  }

  /** All that needs the other kernel's classes. */
  private static final class Registry {
    private static final Set<Renderer> KNOWN = Collections.newSetFromMap(new WeakHashMap<>());

    static synchronized void install(Object kernel) {
      if (kernel instanceof BaseKernel base) {
        register(base.getRenderer());
      } else if (kernel instanceof Renderer renderer) {
        register(renderer);
      } else {
        throw new IllegalArgumentException(
            "a "
                + (kernel == null ? "null" : kernel.getClass().getName())
                + " is no kernel built on jupyter-jvm-basekernel, and no renderer of one");
      }
    }

    private static void register(Renderer renderer) {
      if (KNOWN.add(renderer)) {
        for (var type : ShownTypes.all()) {
          renderer
              .createRegistration(type)
              .preferring(ShownTypes.FORMATS)
              .register((value, context) -> fill(context, value));
        }
      }
    }

    private static void fill(RenderContext context, Object value) {
      ShownTypes.formats(value)
          .forEach(
              (format, content) ->
                  context.renderIfRequested(MIMEType.parse(format), () -> content));
    }
  }
}
