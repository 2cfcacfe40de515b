package agro.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A copy of the folder Bellbird Flat, to be changed for a test. */
final class BellbirdDistrict {

  static final String PEST = "tomato leafminer";
  static final String FLAT = "Bellbird Flat";

  final Path folder;

  BellbirdDistrict(Path folder) {
    this.folder = folder;
    try (var files =
        Files.list(Path.of(BellbirdDistrict.class.getResource("bellbird-flat").toURI()))) {
      Files.createDirectories(folder);
      for (var file : files.toList()) {
        Files.copy(file, folder.resolve(file.getFileName().toString()));
      }
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    } catch (URISyntaxException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  BellbirdDistrict put(String file, String text) {
    try {
      Files.writeString(folder.resolve(file), text, StandardCharsets.UTF_8);
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return this;
  }

  BellbirdDistrict append(String file, String lines) {
    return put(file, SmallFolder.textOf(folder.resolve(file)) + lines);
  }

  /** Adds a cell to each line of a table: the heading, then the same for every line. */
  BellbirdDistrict column(String file, String heading, String cell) {
    var changed = new StringBuilder();
    var headingSeen = false;
    for (var line : SmallFolder.textOf(folder.resolve(file)).lines().toList()) {
      if (line.startsWith("#") || line.isBlank()) {
        changed.append(line);
      } else {
        changed.append(line).append(',').append(headingSeen ? cell : heading);
        headingSeen = true;
      }
      changed.append('\n');
    }
    return put(file, changed.toString());
  }

  /** A second place with a log and traps of its own. */
  BellbirdDistrict withPlace(String name, String log) {
    return put("second.tsv", log)
        .append("places.csv", "second," + name + ",tunnel,,Town mast,-37.9\n")
        .append(
            "logs.csv",
            name + ",second.tsv,daily extremes,[degF],tab,point,Day,d/M/yyyy,Cold,Hot,\n")
        .append("traps.csv", "Z," + name + "," + PEST + ",the grower\n")
        .append(
            "visits.csv", "2023-09-12,Z,set,,\n2023-10-03,Z,working,3,\n2023-10-20,Z,working,9,\n");
  }

  String tunnel() {
    return SmallFolder.textOf(folder.resolve("tunnel.tsv"));
  }

  PestSeasons seasons() {
    return SeasonFolder.read(folder).pestAt(PEST, FLAT);
  }
}
