package agro.notebook.jupyter;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

/** What the kernel says about itself. */
final class KernelInfo {

  private KernelInfo() {}

  /** The content of a {@code kernel_info_reply}. */
  static JsonObject reply() {
    var content = Json.status("ok");
    content.addProperty("protocol_version", WireFormat.PROTOCOL);
    content.addProperty("implementation", "agro-java");
    content.addProperty("implementation_version", version());
    content.add("language_info", language());
    content.addProperty("banner", banner());
    content.addProperty("debugger", false);
    content.add("help_links", helpLinks());
    content.add("supported_features", new JsonArray());
    return content;
  }

  private static String version() {
    var version = KernelInfo.class.getPackage().getImplementationVersion();
    return version == null ? "development" : version;
  }

  private static String banner() {
    return "Java " + javaVersion() + ", agro " + version();
  }

  private static String javaVersion() {
    return System.getProperty("java.version", "");
  }

  /** Cells one after the other are a script of the JDK's shell, so it is saved as one. */
  private static JsonObject language() {
    var language = new JsonObject();
    language.addProperty("name", "java");
    language.addProperty("version", javaVersion());
    language.addProperty("mimetype", "text/x-java");
    language.addProperty("file_extension", ".jshell");
    language.addProperty("pygments_lexer", "java");
    language.addProperty("codemirror_mode", "text/x-java");
    language.addProperty("nbconvert_exporter", "script");
    return language;
  }

  private static JsonArray helpLinks() {
    var feature = Runtime.version().feature();
    var links = new JsonArray();
    links.add(
        link(
            "Java " + feature + " API",
            "https://docs.oracle.com/en/java/javase/" + feature + "/docs/api/"));
    links.add(link("Java tutorials", "https://dev.java/learn/"));
    return links;
  }

  private static JsonObject link(String text, String url) {
    var link = new JsonObject();
    link.addProperty("text", text);
    link.addProperty("url", url);
    return link;
  }
}
