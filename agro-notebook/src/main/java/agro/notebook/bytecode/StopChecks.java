package agro.notebook.bytecode;

import java.util.Arrays;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Puts a {@link StopCheck} at the beginning of every method and before every jump back, except in
 * short loops that end by themselves. The check takes nothing from the operand stack and leaves
 * nothing on it, so frames stay as they are.
 */
final class StopChecks extends ClassVisitor {

  private static final String CHECK = Type.getInternalName(StopCheck.class);

  StopChecks(ClassVisitor next) {
    super(Opcodes.ASM9, next);
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String type, String signature, String[] exceptions) {
    return new Checked(super.visitMethod(access, name, type, signature, exceptions));
  }

  private static final class Checked extends MethodVisitor {
    private final InstructionTrail trail = new InstructionTrail();

    Checked(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    private void check() {
      super.visitMethodInsn(Opcodes.INVOKESTATIC, CHECK, "goOn", "()V", false);
    }

    @Override
    public void visitCode() {
      super.visitCode();
      check();
    }

    @Override
    public void visitLabel(Label label) {
      trail.label(label);
      super.visitLabel(label);
    }

    @Override
    public void visitJumpInsn(int code, Label target) {
      if (trail.hasPassed(target) && !(code == Opcodes.GOTO && trail.endsWithItsArray(target))) {
        check();
      }
      if (isOrder(code) && !trail.hasPassed(target)) {
        trail.order();
      } else {
        trail.branchOrCall();
      }
      super.visitJumpInsn(code, target);
    }

    private static boolean isOrder(int code) {
      return (code >= Opcodes.IF_ICMPLT && code <= Opcodes.IF_ICMPLE)
          || (code >= Opcodes.IFLT && code <= Opcodes.IFLE);
    }

    private void choose(Label other, Label... targets) {
      if (trail.hasPassed(other) || Arrays.stream(targets).anyMatch(trail::hasPassed)) {
        check();
      }
      trail.branchOrCall();
    }

    @Override
    public void visitTableSwitchInsn(int lowest, int highest, Label other, Label... targets) {
      choose(other, targets);
      super.visitTableSwitchInsn(lowest, highest, other, targets);
    }

    @Override
    public void visitLookupSwitchInsn(Label other, int[] keys, Label[] targets) {
      choose(other, targets);
      super.visitLookupSwitchInsn(other, keys, targets);
    }

    @Override
    public void visitInsn(int code) {
      var readsArray = code >= Opcodes.IALOAD && code <= Opcodes.SALOAD;
      // The index of "a[i] += x" is doubled together with its array.
      if (readsArray || code == Opcodes.DUP2) {
        trail.array();
      } else {
        trail.other();
      }
      super.visitInsn(code);
    }

    @Override
    public void visitVarInsn(int code, int variable) {
      if (code == Opcodes.ILOAD) {
        trail.load(variable);
      } else if (code == Opcodes.ISTORE) {
        trail.store(variable);
      } else {
        trail.other();
      }
      super.visitVarInsn(code, variable);
    }

    @Override
    public void visitIincInsn(int variable, int increment) {
      trail.count(variable, increment);
      super.visitIincInsn(variable, increment);
    }

    @Override
    public void visitMethodInsn(
        int code, String holder, String name, String type, boolean isInterface) {
      trail.branchOrCall();
      super.visitMethodInsn(code, holder, name, type, isInterface);
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String type, Handle bootstrap, Object... arguments) {
      trail.branchOrCall();
      super.visitInvokeDynamicInsn(name, type, bootstrap, arguments);
    }

    @Override
    public void visitFieldInsn(int code, String holder, String name, String type) {
      trail.other();
      super.visitFieldInsn(code, holder, name, type);
    }

    @Override
    public void visitIntInsn(int code, int operand) {
      trail.other();
      super.visitIntInsn(code, operand);
    }

    @Override
    public void visitTypeInsn(int code, String type) {
      trail.other();
      super.visitTypeInsn(code, type);
    }

    @Override
    public void visitLdcInsn(Object value) {
      trail.other();
      super.visitLdcInsn(value);
    }

    @Override
    public void visitMultiANewArrayInsn(String type, int dimensions) {
      trail.other();
      super.visitMultiANewArrayInsn(type, dimensions);
    }
  }
}
