package agro.notebook.magic;

import agro.notebook.kernel.CellMagicProblem;
import eu.maveniverse.maven.mima.context.Context;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.model.Model;
import org.apache.maven.model.io.xpp3.MavenXpp3Reader;
import org.codehaus.plexus.util.xml.pull.XmlPullParserException;
import org.eclipse.aether.DefaultRepositoryCache;
import org.eclipse.aether.DefaultRepositorySystemSession;
import org.eclipse.aether.artifact.Artifact;
import org.eclipse.aether.artifact.DefaultArtifact;
import org.eclipse.aether.repository.RemoteRepository;
import org.eclipse.aether.repository.WorkspaceReader;
import org.eclipse.aether.repository.WorkspaceRepository;
import org.eclipse.aether.resolution.ArtifactDescriptorException;
import org.eclipse.aether.resolution.ArtifactDescriptorRequest;
import org.eclipse.aether.resolution.ArtifactDescriptorResult;
import org.eclipse.aether.util.repository.SimpleArtifactDescriptorPolicy;

/** Reads what a project needs, with its parents, its managed versions and its properties. */
final class ProjectFile {

  private ProjectFile() {}

  /**
   * Reads a project file.
   *
   * @param file the file
   * @param name how messages call it
   * @param context the resolver
   * @param offline whether nothing may be downloaded
   * @param repositories where parents are looked for
   * @return dependencies, managed dependencies and repositories
   * @throws CellMagicProblem when it is no project file, or a parent is missing
   */
  static ArtifactDescriptorResult read(
      Path file, String name, Context context, boolean offline, List<RemoteRepository> repositories)
      throws CellMagicProblem {
    var model = written(file, name);
    var group = inherited(model.getGroupId(), model, true);
    var version = inherited(model.getVersion(), model, false);
    var artifact = new DefaultArtifact(group, model.getArtifactId(), "pom", version);
    var session = new DefaultRepositorySystemSession(context.repositorySystemSession());
    session.setOffline(offline);
    session.setCache(new DefaultRepositoryCache());
    session.setWorkspaceReader(new OneProject(artifact, file.toFile()));
    session.setArtifactDescriptorPolicy(new SimpleArtifactDescriptorPolicy(false, false));
    try {
      return context
          .repositorySystem()
          .readArtifactDescriptor(
              session, new ArtifactDescriptorRequest(artifact, repositories, null));
    } catch (ArtifactDescriptorException refused) {
      throw new CellMagicProblem(
          "the project in " + name + " could not be understood: " + MavenTrouble.innermost(refused),
          refused);
    }
  }

  private static Model written(Path file, String name) throws CellMagicProblem {
    try (var stream = Files.newInputStream(file)) {
      var model = new MavenXpp3Reader().read(stream);
      if (model.getArtifactId() == null) {
        throw new CellMagicProblem(
            "the project in " + name + " has no <artifactId>; expected a Maven project file");
      }
      return model;
    } catch (XmlPullParserException malformed) {
      throw new CellMagicProblem(
          "the XML in "
              + name
              + " is not that of a Maven project: line "
              + malformed.getLineNumber()
              + ": "
              + malformed.getMessage().replaceAll("(?s)\\s*\\(position:.*", ""),
          malformed);
    } catch (IOException unreadable) {
      throw new CellMagicProblem(name + " could not be read: " + unreadable, unreadable);
    }
  }

  private static String inherited(String own, Model model, boolean group) {
    if (own != null) {
      return own;
    }
    var parent = model.getParent();
    var fromParent = parent == null ? null : group ? parent.getGroupId() : parent.getVersion();
    return fromParent == null ? "unnamed" : fromParent;
  }

  /** Lets the resolver find the project in its own file and not in a repository. */
  private record OneProject(Artifact project, File file) implements WorkspaceReader {
    @Override
    public WorkspaceRepository getRepository() {
      return new WorkspaceRepository("notebook", file);
    }

    @Override
    public File findArtifact(Artifact artifact) {
      return artifact.toString().equals(project.toString()) ? file : null;
    }

    @Override
    public List<String> findVersions(Artifact artifact) {
      return List.of();
    }
  }
}
