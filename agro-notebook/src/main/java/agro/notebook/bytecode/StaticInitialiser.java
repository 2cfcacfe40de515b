package agro.notebook.bytecode;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * What a class computes when it is initialised: its static initialiser, every method of its own
 * that the initialiser reaches, and its constants. Redefining a class in place does not run the
 * initialiser again, so a class whose initialiser changed has to be made anew.
 */
public final class StaticInitialiser {

  private static final String INITIALISER = "<clinit>()V";

  private StaticInitialiser() {}

  /**
   * Reads the initialiser of a class.
   *
   * @param bytecode the class file
   * @return the code by method, comparable between two versions of the class
   */
  public static Map<String, List<String>> of(byte[] bytecode) {
    var methods = new MethodTexts();
    new ClassReader(bytecode).accept(methods, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
    var reached = new TreeMap<String, List<String>>();
    reached.put("constants", methods.constants);
    var waiting = new ArrayDeque<>(List.of(INITIALISER));
    while (!waiting.isEmpty()) {
      var name = waiting.pop();
      var text = methods.texts.get(name);
      if (text != null && reached.putIfAbsent(name, text) == null) {
        waiting.addAll(methods.calls.get(name));
      }
    }
    return reached;
  }

  /** The instructions of each method as text, and which methods of the class it names. */
  private static final class MethodTexts extends ClassVisitor {
    private final Map<String, List<String>> texts = new HashMap<>();
    private final Map<String, List<String>> calls = new HashMap<>();
    private final List<String> constants = new ArrayList<>();
    private String owner;

    MethodTexts() {
      super(Opcodes.ASM9);
    }

    @Override
    public void visit(
        int version, int access, String name, String signature, String parent, String[] types) {
      owner = name;
    }

    @Override
    public FieldVisitor visitField(
        int access, String name, String type, String signature, Object value) {
      if (value != null) {
        constants.add(name + " = " + value);
      }
      return null;
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String type, String signature, String[] exceptions) {
      var text = new ArrayList<String>();
      var called = new ArrayList<String>();
      texts.put(name + type, text);
      calls.put(name + type, called);
      return new InstructionTexts(owner, text, called);
    }
  }

  private static final class InstructionTexts extends MethodVisitor {
    private final String owner;
    private final List<String> text;
    private final List<String> called;
    private final Map<Label, Integer> labels = new HashMap<>();

    InstructionTexts(String owner, List<String> text, List<String> called) {
      super(Opcodes.ASM9);
      this.owner = owner;
      this.text = text;
      this.called = called;
    }

    private void add(Object... parts) {
      text.add(Arrays.deepToString(parts));
    }

    private int number(Label label) {
      return labels.computeIfAbsent(label, unseen -> labels.size());
    }

    private int[] numbers(Label[] many) {
      return Arrays.stream(many).mapToInt(this::number).toArray();
    }

    @Override
    public void visitInsn(int code) {
      add(code);
    }

    @Override
    public void visitIntInsn(int code, int operand) {
      add(code, operand);
    }

    @Override
    public void visitVarInsn(int code, int variable) {
      add(code, variable);
    }

    @Override
    public void visitTypeInsn(int code, String type) {
      add(code, type);
    }

    @Override
    public void visitFieldInsn(int code, String holder, String name, String type) {
      add(code, holder, name, type);
    }

    @Override
    public void visitMethodInsn(
        int code, String holder, String name, String type, boolean isInterface) {
      add(code, holder, name, type);
      if (holder.equals(owner)) {
        called.add(name + type);
      }
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String type, Handle bootstrap, Object... arguments) {
      add(name, type, bootstrap, arguments);
      for (var argument : arguments) {
        if (argument instanceof Handle handle && handle.getOwner().equals(owner)) {
          called.add(handle.getName() + handle.getDesc());
        }
      }
    }

    @Override
    public void visitJumpInsn(int code, Label target) {
      add(code, number(target));
    }

    @Override
    public void visitLabel(Label label) {
      add("label", number(label));
    }

    @Override
    public void visitLdcInsn(Object value) {
      add("constant", value);
    }

    @Override
    public void visitIincInsn(int variable, int increment) {
      add("add", variable, increment);
    }

    @Override
    public void visitTableSwitchInsn(int lowest, int highest, Label other, Label... targets) {
      add(lowest, highest, number(other), numbers(targets));
    }

    @Override
    public void visitLookupSwitchInsn(Label other, int[] keys, Label[] targets) {
      add(number(other), keys, numbers(targets));
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, String type) {
      add(number(start), number(end), number(handler), type);
    }

    @Override
    public void visitMultiANewArrayInsn(String type, int dimensions) {
      add(type, dimensions);
    }
  }
}
