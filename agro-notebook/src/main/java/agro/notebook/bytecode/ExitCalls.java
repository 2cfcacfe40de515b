package agro.notebook.bytecode;

import java.util.Arrays;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Leads the calls of a cell that would end the process to {@link ProcessEnd}, method references
 * among them. Calls by reflection and calls within libraries are out of its reach.
 */
final class ExitCalls extends ClassVisitor {

  private static final String REPLACEMENT = Type.getInternalName(ProcessEnd.class);
  private static final String WITH_RUNTIME = "(Ljava/lang/Runtime;I)V";

  ExitCalls(ClassVisitor next) {
    super(Opcodes.ASM9, next);
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String name, String type, String signature, String[] exceptions) {
    return new Calls(super.visitMethod(access, name, type, signature, exceptions));
  }

  private static boolean isStaticExit(String holder, String name) {
    return holder.equals("java/lang/System") && name.equals("exit");
  }

  private static boolean isExitOfRuntime(String holder, String name) {
    return holder.equals("java/lang/Runtime") && (name.equals("exit") || name.equals("halt"));
  }

  private static final class Calls extends MethodVisitor {
    Calls(MethodVisitor next) {
      super(Opcodes.ASM9, next);
    }

    @Override
    public void visitMethodInsn(
        int code, String holder, String name, String type, boolean isInterface) {
      if (isStaticExit(holder, name)) {
        super.visitMethodInsn(code, REPLACEMENT, "refuse", type, false);
      } else if (isExitOfRuntime(holder, name)) {
        super.visitMethodInsn(Opcodes.INVOKESTATIC, REPLACEMENT, "refuse", WITH_RUNTIME, false);
      } else {
        super.visitMethodInsn(code, holder, name, type, isInterface);
      }
    }

    @Override
    public void visitInvokeDynamicInsn(
        String name, String type, Handle bootstrap, Object... arguments) {
      var replaced = Arrays.stream(arguments).map(Calls::replaced).toArray();
      super.visitInvokeDynamicInsn(name, type, bootstrap, replaced);
    }

    @Override
    public void visitLdcInsn(Object value) {
      super.visitLdcInsn(replaced(value));
    }

    private static Object replaced(Object constant) {
      if (constant instanceof Handle handle) {
        return replaced(handle);
      }
      return constant instanceof ConstantDynamic dynamic ? replaced(dynamic) : constant;
    }

    private static Handle replaced(Handle handle) {
      if (isStaticExit(handle.getOwner(), handle.getName())) {
        return refusing(handle.getDesc());
      }
      return isExitOfRuntime(handle.getOwner(), handle.getName()) ? refusing(WITH_RUNTIME) : handle;
    }

    private static Handle refusing(String type) {
      return new Handle(Opcodes.H_INVOKESTATIC, REPLACEMENT, "refuse", type, false);
    }

    private static ConstantDynamic replaced(ConstantDynamic constant) {
      var arguments = new Object[constant.getBootstrapMethodArgumentCount()];
      for (var index = 0; index < arguments.length; index++) {
        arguments[index] = replaced(constant.getBootstrapMethodArgument(index));
      }
      return new ConstantDynamic(
          constant.getName(), constant.getDescriptor(), constant.getBootstrapMethod(), arguments);
    }
  }
}
