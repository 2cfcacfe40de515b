package agro.notebook.kernel;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Leads the calls of a cell that would end the process to {@link ProcessEnd}. */
final class ExitCalls extends ClassVisitor {

  private static final String REPLACEMENT = Type.getInternalName(ProcessEnd.class);

  private ExitCalls(ClassVisitor next) {
    super(Opcodes.ASM9, next);
  }

  /**
   * Changes a class.
   *
   * @param bytecode the class file
   * @return the class file to be loaded in its place
   */
  static byte[] refused(byte[] bytecode) {
    var reader = new ClassReader(bytecode);
    var writer = new ClassWriter(reader, 0);
    reader.accept(new ExitCalls(writer), 0);
    return writer.toByteArray();
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String type, String signature, String[] exceptions) {
    return new Calls(super.visitMethod(access, name, type, signature, exceptions));
  }

  private static final class Calls extends MethodVisitor {
    Calls(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    @Override
    public void visitMethodInsn(
        int code, String holder, String name, String type, boolean isInterface) {
      if (holder.equals("java/lang/System") && name.equals("exit")) {
        super.visitMethodInsn(code, REPLACEMENT, "refuse", type, false);
      } else if (holder.equals("java/lang/Runtime")
          && (name.equals("exit") || name.equals("halt"))) {
        super.visitMethodInsn(
            Opcodes.INVOKESTATIC, REPLACEMENT, "refuse", "(Ljava/lang/Runtime;I)V", false);
      } else {
        super.visitMethodInsn(code, holder, name, type, isInterface);
      }
    }
  }
}
