package agro.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;

/** A small season folder that is right, to be spoilt in one place for a test. */
final class SmallFolder {
  private final Map<String, String> files = new LinkedHashMap<>();

  SmallFolder() {
    files.put(
        "places.csv",
        """
        place,medium,sensor_m,neighbour
        Long Acre,shelter air,2,Hill Top
        Hill Top,shelter air,2,
        Deep Bed,soil,0.06,
        """);
    files.put(
        "logs.csv",
        """
        file,place,kind,time_column,min_column,max_column,unit
        logs/long-acre.csv,Long Acre,daily extremes,day,min,max,°C
        logs/hill-top.csv,Hill Top,daily extremes,day,min,max,°C
        """);
    files.put(
        "pests.csv",
        """
        pest,medium,lower_c,cutoff,threshold_source,egg_to_adult_c_d,egg_to_adult_source,\
        first_egg_c_d,first_egg_source,season_start,season_end
        red moth,air,7,none,invented for demonstration,400,invented for demonstration,\
        50,invented for demonstration,03-01,10-31
        root fly,soil,6,none,invented for demonstration,500,invented for demonstration,\
        20,invented for demonstration,03-01,10-31
        """);
    files.put(
        "traps.csv",
        """
        trap,place,pest
        T1,Long Acre,red moth
        T2,Long Acre,red moth
        T3,Long Acre,root fly
        """);
    files.put(
        "visits.csv",
        """
        trap,date,state,count,lure_renewed
        T1,2024-04-01,set,,yes
        T1,2024-04-05,working,0,
        T1,2024-04-09,working,3,
        T1,2024-04-13,failed,,
        T1,2024-04-17,full,40,yes
        T2,2024-04-01,set,,
        T2,2024-04-09,working,2,no
        """);
    put("logs/long-acre.csv", days(LocalDate.of(2024, 2, 20), LocalDate.of(2024, 4, 17), 4));
    put("logs/hill-top.csv", days(LocalDate.of(2023, 1, 1), LocalDate.of(2024, 4, 20), 3));
  }

  SmallFolder put(String file, String text) {
    files.put(file, text);
    return this;
  }

  SmallFolder without(String file) {
    files.remove(file);
    return this;
  }

  SmallFolder replacing(String file, String old, String by) {
    var text = files.get(file);
    if (!text.contains(old)) {
      throw new IllegalArgumentException(file + " does not hold " + old);
    }
    return put(file, text.replace(old, by));
  }

  Path writeTo(Path folder) {
    for (var left :
        new String[] {
          "places.csv",
          "logs.csv",
          "pests.csv",
          "traps.csv",
          "visits.csv",
          "logs/hill-top.csv",
          "logs/long-acre.csv"
        }) {
      try {
        Files.deleteIfExists(folder.resolve(left));
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    files.forEach(
        (name, text) -> {
          try {
            Files.createDirectories(folder.resolve(name).getParent());
            Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        });
    return folder;
  }

  static String textOf(Path file) {
    try {
      return Files.readString(file, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Daily extremes that differ from day to day. */
  static String days(LocalDate first, LocalDate last, int minimum) {
    var text = new StringBuilder("day,min,max\n");
    for (var day = first; !day.isAfter(last); day = day.plusDays(1)) {
      int warmth = minimum + day.getDayOfYear() % 5;
      text.append(day).append(',').append(warmth).append(',').append(warmth + 11).append('\n');
    }
    return text.toString();
  }
}
