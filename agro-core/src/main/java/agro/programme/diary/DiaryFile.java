package agro.programme.diary;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Files that are whole at every moment. A change is written to a draft beside the file, forced to
 * the disk and moved over the file in one step, under a lock that other threads and other processes
 * respect.
 */
final class DiaryFile {

  private static final String LOCK = ".diary.lock";
  private static final Map<Path, ReentrantLock> THREADS = new ConcurrentHashMap<>();

  private DiaryFile() {}

  /** Runs a change while no other thread or process changes the folder. */
  static <T> T locked(Path folder, Supplier<T> change) {
    try {
      Files.createDirectories(folder);
      var real = folder.toRealPath();
      // A lock on a file belongs to the process, so threads of this one need their own.
      var threads = THREADS.computeIfAbsent(real, path -> new ReentrantLock());
      threads.lock();
      try (var channel =
              FileChannel.open(
                  real.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          var lock = channel.lock()) {
        return lock.isValid() ? change.get() : null;
      } finally {
        threads.unlock();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("the diary in " + folder + " could not be changed", e);
    }
  }

  /** Puts a new text in place of the file, whole or not at all. */
  static void replace(Path file, String text) {
    try {
      var target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
      var draft = target.resolveSibling("." + target.getFileName() + ".part");
      write(draft, text.getBytes(StandardCharsets.UTF_8));
      move(draft, target);
      forceFolder(target.getParent());
    } catch (IOException e) {
      throw new UncheckedIOException(file + " could not be written", e);
    }
  }

  private static void write(Path draft, byte[] content) throws IOException {
    // Under the lock a draft that is there already was left by a process that ended.
    try (var channel =
        FileChannel.open(
            draft,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      var bytes = ByteBuffer.wrap(content);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
  }

  private static void move(Path draft, Path target) throws IOException {
    try {
      Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Makes the move last over a loss of power; systems that cannot open a folder do without. */
  private static void forceFolder(Path folder) {
    try (var channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      // The content of the file itself has been forced already.
    }
  }
}
