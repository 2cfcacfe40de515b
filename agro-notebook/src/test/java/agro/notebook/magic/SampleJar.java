package agro.notebook.magic;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/** A jar made for a test: classes compiled from a few lines, and resources. */
public final class SampleJar {

  private final Map<String, String> sources = new LinkedHashMap<>();
  private final Map<String, byte[]> resources = new LinkedHashMap<>();

  public static SampleJar with(String className, String members) {
    return new SampleJar().and(className, "", members);
  }

  public SampleJar and(String className, String extending, String members) {
    var dot = className.lastIndexOf('.');
    sources.put(
        className,
        "package "
            + className.substring(0, dot)
            + "; public class "
            + className.substring(dot + 1)
            + " "
            + extending
            + " { "
            + members
            + " }");
    return this;
  }

  public SampleJar resource(String name, String text) {
    resources.put(name, text.getBytes(StandardCharsets.UTF_8));
    return this;
  }

  public Path writeTo(Path jar) throws IOException {
    Files.createDirectories(jar.getParent());
    try (var out = new JarOutputStream(Files.newOutputStream(jar))) {
      for (var file : files().entrySet()) {
        out.putNextEntry(new JarEntry(file.getKey()));
        out.write(file.getValue());
      }
    }
    return jar;
  }

  void writeClassesTo(Path folder) throws IOException {
    for (var file : files().entrySet()) {
      var path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      Files.write(path, file.getValue());
    }
  }

  private Map<String, byte[]> files() {
    var files = new LinkedHashMap<>(resources);
    var compiled = new LinkedHashMap<String, ByteArrayOutputStream>();
    List<Source> units = new ArrayList<>();
    sources.forEach((name, text) -> units.add(new Source(name, text)));
    var compiler = ToolProvider.getSystemJavaCompiler();
    var manager = new InMemory(compiler.getStandardFileManager(null, null, null), compiled);
    var options = List.of("--release", "17", "-proc:none");
    if (!compiler.getTask(null, manager, null, options, null, units).call()) {
      throw new AssertionError("the sample does not compile: " + sources);
    }
    compiled.forEach(
        (name, bytes) -> files.put(name.replace('.', '/') + ".class", bytes.toByteArray()));
    return files;
  }

  private static final class Source extends SimpleJavaFileObject {
    private final String text;

    Source(String className, String text) {
      super(URI.create("memory:///" + className.replace('.', '/') + ".java"), Kind.SOURCE);
      this.text = text;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return text;
    }
  }

  private static final class InMemory extends ForwardingJavaFileManager<JavaFileManager> {
    private final Map<String, ByteArrayOutputStream> compiled;

    InMemory(JavaFileManager manager, Map<String, ByteArrayOutputStream> compiled) {
      super(manager);
      this.compiled = compiled;
    }

    @Override
    public JavaFileObject getJavaFileForOutput(
        Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
      var bytes = new ByteArrayOutputStream();
      compiled.put(className, bytes);
      return new SimpleJavaFileObject(URI.create("memory:///" + className), kind) {
        @Override
        public OutputStream openOutputStream() {
          return bytes;
        }
      };
    }
  }
}
