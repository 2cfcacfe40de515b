package agro.notebook.magic;

import eu.maveniverse.maven.mima.context.Context;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;
import org.apache.maven.settings.building.DefaultSettingsBuildingRequest;
import org.apache.maven.settings.building.SettingsBuilder;
import org.apache.maven.settings.building.SettingsBuildingException;

/** What the user's settings say beyond what the resolver reads in them by itself. */
final class MavenSettings {

  private MavenSettings() {}

  /**
   * Whether Maven is set to work offline.
   *
   * @param context the resolver, which has read the same settings
   * @return true when the settings say so
   */
  static boolean areOffline(Context context) {
    var builder = context.lookup().lookup(SettingsBuilder.class).orElseThrow();
    var request = new DefaultSettingsBuildingRequest();
    request.setUserSettingsFile(context.mavenUserHome().settingsXml().toFile());
    Optional.ofNullable(context.mavenSystemHome())
        .map(home -> home.settingsXml())
        .filter(Files::isRegularFile)
        .map(Path::toFile)
        .ifPresent(request::setGlobalSettingsFile);
    var properties = new Properties();
    properties.putAll(System.getProperties());
    System.getenv().forEach((name, value) -> properties.put("env." + name, value));
    request.setSystemProperties(properties);
    try {
      return builder.build(request).getEffectiveSettings().isOffline();
    } catch (SettingsBuildingException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }
}
