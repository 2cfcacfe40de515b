package agro.notebook.magic;

import agro.notebook.kernel.CellMagic;
import agro.notebook.kernel.CellMagicAnswer;
import agro.notebook.kernel.CellMagicCall;
import agro.notebook.kernel.CellMagicContext;
import agro.notebook.kernel.CellMagicProblem;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.Set;

/** Says how long a line or a cell takes. */
final class TimeMagic implements CellMagic {

  private static final double NANOS_PER_MILLISECOND = 1e6;
  private static final double NANOS_PER_SECOND = 1e9;

  @Override
  public String name() {
    return "time";
  }

  @Override
  public Set<Form> forms() {
    return EnumSet.allOf(Form.class);
  }

  @Override
  public String arguments() {
    return "code";
  }

  @Override
  public String summary() {
    return "evaluates the code and says how long it took, compiling included; keeps its value";
  }

  @Override
  public CellMagicAnswer run(CellMagicCall call, CellMagicContext context) throws CellMagicProblem {
    if (call.arguments().isBlank() && call.body().isBlank()) {
      throw new CellMagicProblem(
          call.written()
              + " has nothing to time; write code behind it"
              + (call.form() == Form.CELL ? " or on the lines below" : ""));
    }
    var cpuBefore = processCpuNanos();
    var before = System.nanoTime();
    return CellMagicAnswer.evaluateOwnCode(
        () -> {
          var wall = System.nanoTime() - before;
          var cpu = processCpuNanos();
          System.out.println(
              "Wall time: "
                  + words(Duration.ofNanos(wall))
                  + (cpu.isPresent() && cpuBefore.isPresent()
                      ? ", CPU time of all threads: "
                          + words(Duration.ofNanos(cpu.getAsLong() - cpuBefore.getAsLong()))
                      : ""));
        });
  }

  /** Of the whole process, because streams and pools compute on threads of their own. */
  private static OptionalLong processCpuNanos() {
    return ManagementFactory.getOperatingSystemMXBean()
                instanceof com.sun.management.OperatingSystemMXBean system
            && system.getProcessCpuTime() >= 0
        ? OptionalLong.of(system.getProcessCpuTime())
        : OptionalLong.empty();
  }

  /**
   * A duration for people.
   *
   * @param duration not negative
   * @return three digits and a unit below a minute, minutes and seconds above
   */
  static String words(Duration duration) {
    var nanos = (double) duration.toNanos();
    if (nanos < NANOS_PER_MILLISECOND) {
      return String.format(Locale.ROOT, "%.0f µs", nanos / 1e3);
    }
    if (nanos < NANOS_PER_SECOND) {
      return threeDigits(nanos / NANOS_PER_MILLISECOND) + " ms";
    }
    if (duration.compareTo(Duration.ofMinutes(1)) < 0) {
      return threeDigits(nanos / NANOS_PER_SECOND) + " s";
    }
    return duration.toMinutes() + " min " + duration.toSecondsPart() + " s";
  }

  private static String threeDigits(double number) {
    var decimals = number < 10 ? 2 : number < 100 ? 1 : 0;
    return String.format(Locale.ROOT, "%." + decimals + "f", number);
  }
}
