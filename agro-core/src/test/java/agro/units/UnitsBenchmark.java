package agro.units;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.Locale;

/**
 * What reading and converting costs, in processor time of this thread, so that other programs do
 * not disturb the figure: {@code java -cp target/classes:target/test-classes
 * agro.units.UnitsBenchmark}. With the argument {@code first} it measures the first use in a fresh
 * JVM, without it the steady state.
 */
public final class UnitsBenchmark {

  private static final List<String> TEXTS =
      List.of(
          "0.75 L/ha",
          "250-300 ml/acre",
          "0.3 g per litre",
          "2 pt/100 gal (US)",
          "1 in 500",
          "0.2 % v/v",
          "5 kg/t",
          "2 US gal per acre",
          "25 mL/bigha (West Bengal)");

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private UnitsBenchmark() {}

  /** Prints the figures. */
  public static void main(String[] arguments) {
    THREADS.getCurrentThreadCpuTime();
    if (arguments.length > 0) {
      firstUse();
    } else {
      for (int round = 0; round < 5; round++) {
        parsing();
        converting();
      }
    }
  }

  private static void firstUse() {
    long start = THREADS.getCurrentThreadCpuTime();
    var rate = VolumePerArea.parse("250 ml/acre");
    long parsed = THREADS.getCurrentThreadCpuTime();
    double perAcre = rate.in(VolumePerAreaUnit.US_FLUID_OUNCE_PER_ACRE);
    long converted = THREADS.getCurrentThreadCpuTime();
    var print = QuantityStyle.US.print(rate);
    long printed = THREADS.getCurrentThreadCpuTime();
    System.out.printf(
        Locale.ROOT,
        "first use: reading %.1f ms, converting %.1f ms, printing %.1f ms (%s, %.3f)%n",
        (parsed - start) / 1e6,
        (converted - parsed) / 1e6,
        (printed - converted) / 1e6,
        print,
        perAcre);
  }

  private static void parsing() {
    int times = 100_000;
    for (var text : TEXTS) {
      double sum = 0;
      long start = THREADS.getCurrentThreadCpuTime();
      for (int i = 0; i < times; i++) {
        sum += QuantityText.parse(text).numbers().low();
      }
      long end = THREADS.getCurrentThreadCpuTime();
      System.out.printf(
          Locale.ROOT, "%-28s %6.0f ns (%.1f)%n", text, (end - start) / (double) times, sum);
    }
  }

  private static void converting() {
    int times = 5_000_000;
    var units = VolumePerAreaUnit.values();
    double sum = 0;
    long start = THREADS.getCurrentThreadCpuTime();
    for (int i = 0; i < times; i++) {
      sum += VolumePerArea.of(i, units[i % units.length]).in(units[(i + 3) % units.length]);
    }
    long end = THREADS.getCurrentThreadCpuTime();
    System.out.printf(
        Locale.ROOT, "conversion %.1f ns (%.1f)%n", (end - start) / (double) times, sum);
  }
}
