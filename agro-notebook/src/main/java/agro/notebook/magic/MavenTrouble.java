package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.collection.DependencyCollectionException;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.resolution.ArtifactResolutionException;
import org.eclipse.aether.transfer.ArtifactNotFoundException;
import org.eclipse.aether.transfer.ArtifactTransferException;
import org.eclipse.aether.transfer.RepositoryOfflineException;

/** Says in words why a library could not be fetched, and what to do. */
final class MavenTrouble {

  private MavenTrouble() {}

  static CellMagicProblem resolving(
      ArtifactResolutionException trouble, List<RemoteRepository> from, boolean offline) {
    var lines = new ArrayList<String>();
    for (var result : trouble.getResults()) {
      if (!result.isResolved()) {
        lines.add(
            reason(
                result.getArtifact(),
                result.getRequest().getArtifact(),
                from,
                result.getExceptions(),
                offline));
      }
    }
    return new CellMagicProblem(String.join("\n", lines), trouble);
  }

  static CellMagicProblem collecting(
      DependencyCollectionException trouble, List<RemoteRepository> from, boolean offline) {
    for (Throwable cause = trouble; cause != null; cause = cause.getCause()) {
      if (cause instanceof ArtifactResolutionException unresolved) {
        return resolving(unresolved, from, offline);
      }
    }
    var request = trouble.getResult().getRequest();
    var asked =
        request.getDependencies().stream()
            .map(dependency -> name(dependency.getArtifact()))
            .collect(Collectors.joining(", "));
    return new CellMagicProblem(
        asked
            + " could not be fetched: "
            + innermost(trouble)
            + advice(offline)
            + ". Check the spelling of group, artifact and version",
        trouble);
  }

  private static String reason(
      Artifact found,
      Artifact asked,
      List<RemoteRepository> from,
      List<Exception> exceptions,
      boolean offline) {
    var name = name(found == null ? asked : found);
    if (offline || exceptions.stream().anyMatch(MavenTrouble::isOffline)) {
      return name
          + " is not in the local repository, and Maven is set to work offline; fetch it once"
          + " while online, or take <offline> out of your settings.xml";
    }
    var broken =
        exceptions.stream()
            .filter(one -> one instanceof ArtifactTransferException)
            .filter(one -> !(one instanceof ArtifactNotFoundException))
            .map(ArtifactTransferException.class::cast)
            .findFirst();
    if (broken.isPresent()) {
      return name
          + " could not be fetched from "
          + words(broken.get().getRepository())
          + ": "
          + innermost(broken.get())
          + ". Check that this machine is online and that mirrors and proxies in your settings.xml"
          + " are right";
    }
    var version = exceptions.stream().map(MavenTrouble::innermost).findFirst().orElse("");
    var places = from.stream().map(MavenTrouble::words).collect(Collectors.joining(", "));
    return name
        + " was not found in "
        + (places.isEmpty() ? "any repository" : places)
        + ". Check the spelling of group, artifact and version; %mavenRepo adds a repository"
        + (exceptions.stream().allMatch(one -> one instanceof ArtifactNotFoundException)
            ? ""
            : " (" + version + ")");
  }

  private static String words(RemoteRepository repository) {
    return repository == null
        ? "a repository"
        : repository.getId() + " (" + repository.getUrl() + ")";
  }

  private static String advice(boolean offline) {
    return offline ? " (Maven is set to work offline in your settings.xml)" : "";
  }

  private static boolean isOffline(Throwable trouble) {
    for (var cause = trouble; cause != null; cause = cause.getCause()) {
      if (cause instanceof RepositoryOfflineException) {
        return true;
      }
    }
    return false;
  }

  /** The coordinates as a reader writes them, also when it is their description that is missing. */
  private static String name(Artifact artifact) {
    var plain = artifact.getClassifier().isEmpty();
    var extension = artifact.getExtension();
    var packaging = plain && Set.of("jar", "pom").contains(extension) ? "" : ":" + extension;
    return artifact.getGroupId()
        + ":"
        + artifact.getArtifactId()
        + packaging
        + (plain ? "" : ":" + artifact.getClassifier())
        + ":"
        + artifact.getVersion();
  }

  /** What the innermost cause says. */
  static String innermost(Throwable trouble) {
    var cause = trouble;
    for (var depth = 0; cause.getCause() != null && depth < 20; depth++) {
      cause = cause.getCause();
    }
    var message = cause.getMessage();
    return message == null || message.isBlank() ? cause.getClass().getSimpleName() : message;
  }
}
