package agro.dose.tank;

import agro.source.Reference;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Orders of mixing that were printed. They disagree: on capsule suspensions before or after
 * emulsifiable concentrates, and on soluble liquids before or after them.
 */
public enum PublishedMixingOrder {
  /** Capsules and solutions before emulsifiable concentrates. */
  OKLAHOMA_STATE("Oklahoma State University Extension", TankSources.OKLAHOMA_STATE),
  /** Capsules after emulsifiable concentrates. */
  SOUTH_DAKOTA_STATE("South Dakota State University Extension", TankSources.SOUTH_DAKOTA_STATE),
  /** Solutions before emulsifiable concentrates; capsules not named. */
  MANITOBA("Manitoba guide to crop protection", TankSources.MANITOBA),
  /** Solutions after emulsifiable concentrates, with the surfactants. */
  CANADIAN_FARM_PRESS("Canadian farm press", TankSources.CANADIAN_FARM_PRESS),
  /** With high-load salts; value from memory. */
  RECALLED("teaching, from memory", TankSources.RECALLED);

  private static final String TABLE = "mixing-orders.csv";

  private final String title;
  private final Reference source;

  PublishedMixingOrder(String title, Reference source) {
    this.title = title;
    this.source = source;
  }

  private static final class Table {
    static final Map<PublishedMixingOrder, MixingOrder> ORDERS = read();

    private Table() {}
  }

  /**
   * The order with its steps.
   *
   * @return the order
   */
  public MixingOrder order() {
    return Table.ORDERS.get(this);
  }

  /**
   * All orders.
   *
   * @return the orders, in the order of this enum
   */
  static List<MixingOrder> all() {
    return List.copyOf(Table.ORDERS.values());
  }

  private static Map<PublishedMixingOrder, MixingOrder> read() {
    var stream =
        Objects.requireNonNull(PublishedMixingOrder.class.getResourceAsStream(TABLE), TABLE);
    var reader = new InputStreamReader(stream, StandardCharsets.UTF_8);
    try (var csv =
        CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(reader)) {
      var lines = csv.stream().toList();
      var orders = new EnumMap<PublishedMixingOrder, MixingOrder>(PublishedMixingOrder.class);
      for (var each : values()) {
        orders.put(each, each.from(lines));
      }
      return orders;
    } catch (IOException problem) {
      throw new UncheckedIOException(problem);
    }
  }

  private MixingOrder from(List<NamedCsvRecord> lines) {
    var steps =
        lines.stream()
            .filter(line -> line.getField("order").equals(name()))
            .map(PublishedMixingOrder::step)
            .toList();
    return new MixingOrder(title, steps, source);
  }

  private static MixingStep step(NamedCsvRecord line) {
    var low = line.getField("water_low");
    Optional<MixingStep.WaterShare> share =
        low.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new MixingStep.WaterShare(
                    Double.parseDouble(low), Double.parseDouble(line.getField("water_high"))));
    return new MixingStep(line.getField("words"), classes(line.getField("classes")), share);
  }

  private static List<MixClass> classes(String words) {
    return Arrays.stream(words.split(" ", -1))
        .filter(word -> !word.isEmpty())
        .map(MixClass::valueOf)
        .toList();
  }
}
