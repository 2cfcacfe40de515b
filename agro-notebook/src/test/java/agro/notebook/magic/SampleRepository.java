package agro.notebook.magic;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A repository in a folder, laid out as Maven wants it, filled by a test. */
record SampleRepository(Path folder) {

  /**
   * A library with one class {@code vale.NAME} whose method {@code version()} gives its version.
   */
  SampleRepository library(String artifact, String version, String dependencies)
      throws IOException {
    var type = artifact.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + artifact.substring(1);
    SampleJar.with("vale." + type, "public static String version() { return \"" + version + "\"; }")
        .writeTo(file(artifact, version, ".jar"));
    return pom(artifact, version, dependencies);
  }

  SampleRepository pom(String artifact, String version, String parts) throws IOException {
    return project(artifact, version, "<dependencies>" + parts + "</dependencies>");
  }

  SampleRepository project(String artifact, String version, String parts) throws IOException {
    var pom = file(artifact, version, ".pom");
    Files.createDirectories(pom.getParent());
    Files.writeString(
        pom,
        "<project><modelVersion>4.0.0</modelVersion><groupId>vale</groupId><artifactId>"
            + artifact
            + "</artifactId><version>"
            + version
            + "</version>"
            + parts
            + "</project>",
        StandardCharsets.UTF_8);
    return this;
  }

  Path file(String artifact, String version, String ending) {
    return folder.resolve(
        "vale/" + artifact + "/" + version + "/" + artifact + "-" + version + ending);
  }

  static String dependency(String artifact, String version, String scope) {
    return "<dependency><groupId>vale</groupId><artifactId>"
        + artifact
        + "</artifactId>"
        + (version.isEmpty() ? "" : "<version>" + version + "</version>")
        + (scope.isEmpty() ? "" : "<scope>" + scope + "</scope>")
        + "</dependency>";
  }

  String address() {
    return folder.toUri().toString();
  }
}
