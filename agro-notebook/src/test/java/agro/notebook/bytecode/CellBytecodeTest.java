package agro.notebook.bytecode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Compiled code that was made ready to be loaded. */
class CellBytecodeTest {

  @TempDir private Path folder;

  private final AtomicBoolean over = new AtomicBoolean();

  @AfterEach
  void endRequests() {
    over.set(true);
    StopCheck.forgetWhatIsOver();
  }

  private byte[] compiled(String body) throws IOException {
    var file = folder.resolve("Sample.java");
    Files.writeString(file, "public class Sample { " + body + " }", StandardCharsets.UTF_8);
    var status =
        ToolProvider.getSystemJavaCompiler().run(null, null, null, "-nowarn", file.toString());
    assertThat(status).isZero();
    return Files.readAllBytes(folder.resolve("Sample.class"));
  }

  private static Object call(byte[] bytecode) throws Throwable {
    var loader =
        new ClassLoader(CellBytecodeTest.class.getClassLoader()) {
          Class<?> defined() {
            return defineClass("Sample", bytecode, 0, bytecode.length);
          }
        };
    try {
      return loader.defined().getMethod("go").invoke(null);
    } catch (InvocationTargetException thrown) {
      throw thrown.getCause();
    }
  }

  private void stopThisThread() {
    var stopped = Thread.currentThread();
    StopCheck.raise(
        new StopRequest() {
          @Override
          public boolean concernsThisThread() {
            return !over.get() && Thread.currentThread() == stopped;
          }

          @Override
          public boolean isOver() {
            return over.get();
          }
        });
  }

  /** The checks in the method go, by the number of jumps that came before each. */
  private List<Integer> checks(String body) throws IOException {
    var found = new ArrayList<Integer>();
    new ClassReader(CellBytecode.prepared(compiled(body)))
        .accept(
            new ClassVisitor(Opcodes.ASM9) {
              @Override
              public MethodVisitor visitMethod(
                  int access, String name, String type, String signature, String[] exceptions) {
                return name.equals("go") ? counting(found) : null;
              }
            },
            0);
    return found;
  }

  private static MethodVisitor counting(List<Integer> found) {
    return new MethodVisitor(Opcodes.ASM9) {
      private int jumps;

      @Override
      public void visitMethodInsn(
          int code, String holder, String name, String type, boolean isInterface) {
        if (holder.endsWith("StopCheck")) {
          found.add(jumps);
        }
      }

      @Override
      public void visitJumpInsn(int code, org.objectweb.asm.Label target) {
        jumps++;
      }
    };
  }

  @Test
  void codeDoesWhatItDidBefore() throws Throwable {
    var bytecode =
        compiled(
            "public static Object go() { long s = 0; for (int i = 0; i < 10; i++) { int j = i;"
                + " do { switch (j % 3) { case 0: s += 2; break; case 1: s += j; default: s++; }"
                + " } while (j-- > 0); } return s; }");
    assertThat(call(CellBytecode.prepared(bytecode))).isEqualTo(call(bytecode));
  }

  @Test
  void aStopIsThrownAgainUntilItIsOver() throws Throwable {
    var bytecode =
        CellBytecode.prepared(
            compiled(
                "public static Object go() { while (true) { try { while (true) { } } catch"
                    + " (Throwable again) { } } }"));
    stopThisThread();
    assertThatThrownBy(() -> call(bytecode))
        .isInstanceOf(CellStopped.class)
        .hasMessage("the cell was interrupted by its reader");
  }

  @Test
  void aRequestThatConcernsOthersLetsThisThreadGoOn() throws Throwable {
    var other = new Thread(this::stopThisThread);
    other.start();
    other.join();
    var bytecode =
        compiled("public static Object go() { int n = 0; while (n < 9) n++; return n; }");
    assertThat(call(CellBytecode.prepared(bytecode))).isEqualTo(9);
  }

  @Test
  void methodsAndJumpsBackAreChecked() throws IOException {
    assertThat(checks("public static Object go() { return 1; }")).containsExactly(0);
    assertThat(checks("public static Object go() { int n = 0; while (n < 9) n++; return n; }"))
        .containsExactly(0, 1);
    assertThat(checks("public static Object go() { for (;;) { } }")).containsExactly(0, 0);
    assertThat(
            checks(
                "public static Object go() { for (int i = 0; i < 9; i++) { String.valueOf(i); }"
                    + " return 1; }"))
        .containsExactly(0, 1);
  }

  @Test
  void aLoopThatEndsWithItsArrayNeedsNoCheck() throws IOException {
    var head = "public static Object go() { double[] a = new double[9]; double s = 0; ";
    assertThat(checks(head + "for (int i = 0; i < a.length; i++) { s += a[i]; } return s; }"))
        .containsExactly(0);
    assertThat(checks(head + "for (int i = 0; i < 9; i++) { a[i] *= 2; } return s; }"))
        .containsExactly(0);
    assertThat(checks(head + "for (int i = 0; i < 9; i++) { s += a[i]; i--; } return s; }"))
        .hasSize(2);
    assertThat(checks(head + "for (int i = 0; i < 9; i += 0) { s += a[i]; } return s; }"))
        .hasSize(2);
    assertThat(checks(head + "for (int i = 0; i < 9; i++) { s += a[0]; } return s; }")).hasSize(2);
    assertThat(checks(head + "for (int i = 0; i < 9; i++) { if (s < 1) s += a[i]; } return s; }"))
        .hasSize(2);
  }

  @Test
  void theProcessIsNotEnded() throws Throwable {
    for (var body :
        List.of(
            "System.exit(3);",
            "Runtime.getRuntime().halt(3);",
            "java.util.function.IntConsumer c = System::exit; c.accept(3);",
            "java.util.function.IntConsumer c = Runtime.getRuntime()::exit; c.accept(3);",
            "java.util.function.BiConsumer<Runtime, Integer> c = Runtime::halt;"
                + " c.accept(Runtime.getRuntime(), 3);")) {
      var bytecode = compiled("public static Object go() { " + body + " return 1; }");
      assertThatThrownBy(() -> call(CellBytecode.prepared(bytecode)))
          .isInstanceOf(IllegalStateException.class)
          .hasMessageContaining("status 3");
    }
  }

  @Test
  void aMethodWithoutRoomForChecksIsLoadedWithoutThem() throws Throwable {
    // Almost 64 KiB of bytecode in one method, with many jumps back.
    var code = new StringBuilder("public static Object go() { int n = 0; ");
    for (var loop = 0; loop < 3_800; loop++) {
      code.append("while (n > 99_999) n -= 1; n++; ");
    }
    var bytecode = compiled(code + "return n; }");
    assertThat(call(CellBytecode.prepared(bytecode))).isEqualTo(3_800);
  }
}
