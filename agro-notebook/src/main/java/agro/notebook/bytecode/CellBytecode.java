package agro.notebook.bytecode;

import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassTooLargeException;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.MethodTooLargeException;

/** Makes the class files of cells ready to be loaded: they can be stopped and end no process. */
public final class CellBytecode {

  private CellBytecode() {}

  /**
   * Changes a class. A class and its later versions are changed alike, so that one can be redefined
   * as the other.
   *
   * @param bytecode the class file as compiled
   * @return the class file to be loaded in its place
   */
  public static byte[] prepared(byte[] bytecode) {
    try {
      return changed(bytecode, true);
    } catch (MethodTooLargeException | ClassTooLargeException noRoomForChecks) {
      return changed(bytecode, false);
    }
  }

  private static byte[] changed(byte[] bytecode, boolean stoppable) {
    var reader = new ClassReader(bytecode);
    var writer = new ClassWriter(reader, 0);
    ClassVisitor exits = new ExitCalls(writer);
    reader.accept(stoppable ? new StopChecks(exits) : exits, 0);
    return writer.toByteArray();
  }
}
