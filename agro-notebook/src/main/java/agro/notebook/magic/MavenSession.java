package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import eu.maveniverse.maven.mima.context.Context;
import eu.maveniverse.maven.mima.context.ContextOverrides;
import eu.maveniverse.maven.mima.context.Runtimes;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import org.eclipse.aether.DefaultRepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.collection.CollectRequest;
import org.eclipse.aether.collection.DependencyCollectionException;
import org.eclipse.aether.graph.Dependency;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.repository.RepositoryPolicy;
import org.eclipse.aether.resolution.ArtifactRequest;
import org.eclipse.aether.resolution.ArtifactResolutionException;
import org.eclipse.aether.resolution.ArtifactResult;
import org.eclipse.aether.util.graph.visitor.PreorderNodeListGenerator;
import org.eclipse.aether.util.repository.SimpleResolutionErrorPolicy;

/** The resolver, set up as the user's Maven is: settings, mirrors, proxies, local repository. */
final class MavenSession {

  private static final Set<String> RUNTIME = Set.of("compile", "runtime");

  private final Context context;
  private final boolean offline;
  private final List<RemoteRepository> repositories;

  private MavenSession(Context context) {
    this.context = context;
    this.offline = MavenSettings.areOffline(context);
    this.repositories = new ArrayList<>(context.remoteRepositories());
  }

  /** Says which version of a library stands already; by group and artifact. */
  interface Shelf extends BiFunction<String, String, FoundLibrary.Standing> {}

  static MavenSession open(MavenPlace place) throws CellMagicProblem {
    var overrides = ContextOverrides.create().withUserSettings(true);
    place.settings().ifPresent(overrides::withUserSettingsXmlOverride);
    place.localRepository().ifPresent(overrides::withLocalRepositoryOverride);
    try {
      return new MavenSession(Runtimes.INSTANCE.getRuntime().create(overrides.build()));
    } catch (IllegalStateException | IllegalArgumentException badSettings) {
      throw new CellMagicProblem(
          "Maven's settings could not be read: "
              + MavenTrouble.innermost(badSettings)
              + "; mend the settings.xml in the folder .m2 of your home folder",
          badSettings);
    }
  }

  /**
   * Adds a repository, or the mirror that the settings name in its place.
   *
   * @return a sentence about it
   */
  String addRepository(String id, String address) throws CellMagicProblem {
    var policy =
        new RepositoryPolicy(
            true, RepositoryPolicy.UPDATE_POLICY_DAILY, RepositoryPolicy.CHECKSUM_POLICY_WARN);
    var asked = new RemoteRepository.Builder(id, "default", url(address)).setPolicy(policy).build();
    var used = inForce(List.of(asked)).get(0);
    requireUntampered(used);
    repositories.removeIf(known -> known.getId().equals(used.getId()));
    repositories.add(used);
    return "Searching "
        + used.getId()
        + " ("
        + used.getUrl()
        + ")"
        + (used.getId().equals(id) ? "" : ", the mirror of " + id + " in your settings,")
        + " too.";
  }

  private List<RemoteRepository> inForce(List<RemoteRepository> asked) {
    return context
        .repositorySystem()
        .newResolutionRepositories(context.repositorySystemSession(), asked);
  }

  private static String url(String address) throws CellMagicProblem {
    var folder = FilePattern.of(address);
    try {
      var uri = new URI(address);
      if (uri.getScheme() != null && uri.getScheme().length() > 1) {
        return address;
      }
    } catch (URISyntaxException notAnAddress) {
      // A folder, then, whose name need not be an address.
    }
    if (folder.isLiteral() && Files.isDirectory(folder.path())) {
      return folder.path().toUri().toString();
    }
    throw new CellMagicProblem(
        "\""
            + address
            + "\" is neither the address of a repository, such as"
            + " https://repository.example.org/maven, nor a folder");
  }

  private static void requireUntampered(RemoteRepository used) throws CellMagicProblem {
    var local = List.of("localhost", "127.0.0.1", "[::1]", "::1").contains(used.getHost());
    if (used.getProtocol().equalsIgnoreCase("http") && !local) {
      throw new CellMagicProblem(
          "\""
              + used.getUrl()
              + "\" is not encrypted, so anybody on the way could change what is"
              + " fetched; expected https. Maven refuses it too, unless your settings name a mirror");
    }
  }

  /** Fetches libraries with all that they need at run time. */
  List<FoundLibrary> fetch(List<MavenCoordinates> wanted, Shelf shelf) throws CellMagicProblem {
    var request = new CollectRequest();
    for (var one : wanted) {
      var artifact =
          new DefaultArtifact(
              one.group(), one.artifact(), one.classifier(), one.packaging(), one.version());
      request.addDependency(new Dependency(artifact, "runtime"));
    }
    return fetched(request, RUNTIME, repositories, shelf);
  }

  /** Fetches the dependencies of a project. */
  List<FoundLibrary> fetchDependencies(Path file, String name, Set<String> scopes, Shelf shelf)
      throws CellMagicProblem {
    var project = ProjectFile.read(file, name, context, offline, repositories);
    var request = new CollectRequest();
    project.getDependencies().stream()
        .filter(dependency -> scopes.contains(dependency.getScope()))
        .forEach(request::addDependency);
    if (request.getDependencies().isEmpty()) {
      throw new CellMagicProblem(
          name
              + " names no dependency of scope "
              + String.join(" or ", scopes.stream().sorted().toList())
              + "; expected <dependencies> with at least one");
    }
    request.setManagedDependencies(project.getManagedDependencies());
    var more = new ArrayList<>(repositories);
    for (var own : inForce(project.getRepositories())) {
      if (more.stream().noneMatch(known -> known.getId().equals(own.getId()))) {
        requireUntampered(own);
        more.add(own);
      }
    }
    var all = new HashSet<>(RUNTIME);
    all.addAll(scopes);
    return fetched(request, all, more, shelf);
  }

  private List<FoundLibrary> fetched(
      CollectRequest request, Set<String> scopes, List<RemoteRepository> from, Shelf shelf)
      throws CellMagicProblem {
    request.setRepositories(from);
    var transfers = new TransferReport(Thread.currentThread());
    var session = session(transfers);
    var order = new PreorderNodeListGenerator();
    try {
      var collected = context.repositorySystem().collectDependencies(session, request);
      collected.getRoot().accept(order);
    } catch (DependencyCollectionException trouble) {
      throw MavenTrouble.collecting(trouble, from, session.isOffline());
    }
    Map<Artifact, Optional<FoundLibrary>> found = new LinkedHashMap<>();
    var requests = new ArrayList<ArtifactRequest>();
    for (var dependency : order.getDependencies(true)) {
      var artifact = dependency.getArtifact();
      var standing = shelf.apply(artifact.getGroupId(), artifact.getArtifactId());
      if (!scopes.contains(dependency.getScope())) {
        continue;
      }
      if (standing.owner() != FoundLibrary.Owner.NOBODY && artifact.getClassifier().isEmpty()) {
        found.put(artifact, Optional.of(library(artifact, Optional.empty(), standing, transfers)));
      } else {
        found.put(artifact, Optional.empty());
        requests.add(new ArtifactRequest(artifact, from, null));
      }
    }
    for (var result : resolved(session, requests, from)) {
      var asked = result.getRequest().getArtifact();
      var path = Optional.of(result.getArtifact().getFile().toPath());
      found.put(
          asked,
          Optional.of(library(result.getArtifact(), path, FoundLibrary.Standing.NONE, transfers)));
    }
    return found.values().stream()
        .flatMap(Optional::stream)
        .filter(
            one -> one.file().isEmpty() || FilePattern.endsWith(one.file().get(), ".jar", ".zip"))
        .toList();
  }

  private List<ArtifactResult> resolved(
      DefaultRepositorySystemSession session,
      List<ArtifactRequest> requests,
      List<RemoteRepository> from)
      throws CellMagicProblem {
    try {
      return context.repositorySystem().resolveArtifacts(session, requests);
    } catch (ArtifactResolutionException trouble) {
      throw MavenTrouble.resolving(trouble, from, session.isOffline());
    }
  }

  private static FoundLibrary library(
      Artifact artifact,
      Optional<Path> file,
      FoundLibrary.Standing standing,
      TransferReport transfers) {
    return new FoundLibrary(
        artifact.getGroupId(),
        artifact.getArtifactId(),
        artifact.getVersion(),
        file,
        standing,
        transfers.source(artifact));
  }

  /**
   * A session for one call. Earlier failures are not remembered: the reader may have mended them.
   */
  private DefaultRepositorySystemSession session(TransferReport transfers) {
    var session = new DefaultRepositorySystemSession(context.repositorySystemSession());
    session.setOffline(offline);
    session.setTransferListener(transfers);
    session.setRepositoryListener(transfers.artifacts());
    session.setResolutionErrorPolicy(new SimpleResolutionErrorPolicy(false, false));
    return session;
  }
}
