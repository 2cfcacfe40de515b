package agro.notebook.jupyter;

import com.google.gson.JsonArray;
import com.google.gson.JsonNull;
import com.google.gson.JsonParseException;
import com.google.gson.JsonPrimitive;
import io.github.spencerpark.jupyter.kernel.history.HistoryEntry;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * The cells of earlier and other kernels, one JSON array a line: session, number, input, output. A
 * lock beside the file keeps kernels that run at the same time apart. Beyond four million
 * characters the older half is forgotten. A line that is not whole, as after a power cut, is passed
 * over.
 */
final class HistoryFile {

  private static final Object ONE_KERNEL_OF_THIS_PROCESS = new Object();
  private static final long LIMIT = 4_000_000;

  private final Path file;
  private final Path lock;

  HistoryFile(Path folder) {
    file = folder.resolve("history.jsonl");
    lock = folder.resolve("history.lock");
  }

  /** What is done while no other kernel touches the file. */
  private interface Work<T> {
    T run() throws IOException;
  }

  /** Reads all entries, oldest first. */
  List<HistoryEntry> read() throws IOException {
    return alone(this::entries);
  }

  /**
   * Takes the next free session number and notes that it is taken.
   *
   * @return the number, from 1
   */
  int beginSession() throws IOException {
    return alone(
        () -> {
          var session = 1 + entries().stream().mapToInt(HistoryEntry::getSession).max().orElse(0);
          append(line(new HistoryEntry(session, 0, "")));
          return session;
        });
  }

  /** Adds a cell. */
  void add(HistoryEntry entry) throws IOException {
    alone(
        () -> {
          append(line(entry));
          if (Files.size(file) > LIMIT) {
            forgetOlderHalf();
          }
          return null;
        });
  }

  private <T> T alone(Work<T> work) throws IOException {
    synchronized (ONE_KERNEL_OF_THIS_PROCESS) {
      Files.createDirectories(file.getParent());
      try (var channel =
              FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          var held = channel.lock()) {
        if (!held.isValid()) {
          throw new IOException("no lock on " + lock);
        }
        return work.run();
      }
    }
  }

  private void append(String line) throws IOException {
    if (!Files.exists(file)) {
      createForUserAlone(file);
    }
    try (var channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      var end = channel.size();
      var cut = end > 0 && lastByte(channel, end) != '\n';
      var bytes = ((cut ? "\n" : "") + line + "\n").getBytes(StandardCharsets.UTF_8);
      var buffer = ByteBuffer.wrap(bytes);
      channel.position(end);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
    }
  }

  private static byte lastByte(FileChannel channel, long end) throws IOException {
    var last = ByteBuffer.allocate(1);
    channel.read(last, end - 1);
    return last.get(0);
  }

  private static void createForUserAlone(Path path) throws IOException {
    if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
      Files.createFile(
          path, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
    } else {
      Files.createFile(path);
    }
  }

  private List<HistoryEntry> entries() throws IOException {
    if (!Files.exists(file)) {
      return List.of();
    }
    var entries = new ArrayList<HistoryEntry>();
    // Decoded leniently: one damaged byte must not cost all other lines.
    var text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    for (var line : text.lines().toList()) {
      var entry = entry(line);
      if (entry != null) {
        entries.add(entry);
      }
    }
    return entries;
  }

  private void forgetOlderHalf() throws IOException {
    var kept = new ArrayDeque<String>();
    var length = 0L;
    var all = entries();
    for (var at = all.size() - 1; at >= 0 && length < LIMIT / 2; at--) {
      kept.addFirst(line(all.get(at)));
      length += kept.getFirst().length() + 1;
    }
    var fresh = file.resolveSibling("history.new");
    Files.deleteIfExists(fresh);
    createForUserAlone(fresh);
    Files.write(fresh, kept);
    Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
  }

  private static String line(HistoryEntry entry) {
    var array = new JsonArray();
    array.add(entry.getSession());
    array.add(entry.getCellNumber());
    array.add(entry.getInput());
    array.add(entry.hasOutput() ? new JsonPrimitive(entry.getOutput()) : JsonNull.INSTANCE);
    return array.toString();
  }

  private static HistoryEntry entry(String line) {
    try {
      if (Json.parse(line) instanceof JsonArray array && array.size() == 4) {
        var output = array.get(3).isJsonNull() ? null : array.get(3).getAsString();
        return new HistoryEntry(
            array.get(0).getAsInt(), array.get(1).getAsInt(), array.get(2).getAsString(), output);
      }
      return null;
    } catch (JsonParseException | IllegalStateException | NumberFormatException notWhole) {
      return null;
    }
  }
}
