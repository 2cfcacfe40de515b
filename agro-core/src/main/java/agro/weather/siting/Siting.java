package agro.weather.siting;

import agro.report.InputProblem;
import agro.units.Numbers;
import agro.weather.Medium;
import agro.weather.MediumKind;
import agro.working.Cell;
import agro.working.Presentable;
import agro.working.Presentation;
import agro.working.ResultTable;
import agro.working.ResultTable.Column;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How a thermometer stands and how it is read: what has to agree before two series, or a series and
 * a published requirement, may be compared.
 *
 * @param medium what it stands in, with its height or depth
 * @param shield what keeps the sun off
 * @param extremes what the extremes of a day were taken from
 * @param interval time between readings, zero for a thermometer that follows every moment
 */
public record Siting(Medium medium, SensorShield shield, ExtremeKind extremes, Duration interval)
    implements Presentable {

  /** Heights that differ by more than this factor see different air near the ground. */
  private static final double HEIGHT_FACTOR = 1.5;

  /** Depths that differ by more than this damp the daily swing differently, in m. */
  private static final double DEPTH_METRES = 0.01;

  private static final double MOST_MINUTES = 90;

  /**
   * Checks that the parts fit together.
   *
   * @throws InputProblem when the interval is negative, or soil has a shield against the sun
   */
  public Siting {
    Objects.requireNonNull(medium, "medium");
    Objects.requireNonNull(shield, "shield");
    Objects.requireNonNull(extremes, "extremes");
    boolean buried = shield == SensorShield.SOIL;
    boolean soil = medium.kind() == MediumKind.SOIL;
    if (interval.isNegative() || (buried && !soil)) {
      throw InputProblem.of(
              "a sensor in " + medium.words() + ", " + shield.words() + ", every " + interval)
          .expected("a shield that fits the medium and an interval of zero or more")
          .because("air needs a shield against the sun, soil needs none")
          .mend("take SensorShield.SOIL in soil alone");
    }
  }

  /**
   * A siting of which only the medium is known.
   *
   * @param medium what the thermometer stands in
   * @return the siting
   */
  public static Siting of(Medium medium) {
    return new Siting(
        medium,
        medium.kind() == MediumKind.SOIL ? SensorShield.SOIL : SensorShield.NOT_STATED,
        ExtremeKind.NOT_STATED,
        Duration.ZERO);
  }

  /**
   * This siting with a shield.
   *
   * @param shield what keeps the sun off
   * @return a new siting
   */
  public Siting with(SensorShield shield) {
    return new Siting(medium, shield, extremes, interval);
  }

  /**
   * This siting with the kind of extremes and the time between readings.
   *
   * @param extremes what the extremes were taken from
   * @param interval time between readings
   * @return a new siting
   */
  public Siting reading(ExtremeKind extremes, Duration interval) {
    return new Siting(medium, shield, extremes, interval);
  }

  /**
   * What stands between this siting and another one.
   *
   * @param other another siting
   * @return each difference with what it does to the figures, as sentences; empty when the two may
   *     be compared as they are
   */
  public List<String> differencesFrom(Siting other) {
    var differences = new ArrayList<String>();
    medium(other, differences);
    if (shield.doubt() != other.shield.doubt() || shield.doubt() >= 2) {
      if (medium.kind() == MediumKind.AIR && other.medium.kind() == MediumKind.AIR) {
        differences.add(
            shield.words()
                + " against "
                + other.shield.words()
                + ": sun on a sensor makes maxima too warm by 2 to 4 °C on still, clear days");
      }
    }
    extremes(other, differences);
    return List.copyOf(differences);
  }

  private void medium(Siting other, List<String> differences) {
    if (medium.kind() != other.medium.kind()) {
      differences.add(
          medium.words()
              + " against "
              + other.medium.words()
              + ": soil swings less and lags behind; degree-days of the two are different"
              + " quantities");
    } else if (!medium.getClass().equals(other.medium.getClass())) {
      differences.add(
          medium.words()
              + " against "
              + other.medium.words()
              + ": a crop or a tunnel has its own air; fit an offset from common days first");
    } else if (medium instanceof Medium.Soil one && other.medium instanceof Medium.Soil two) {
      if (Math.abs(one.depthMetres() - two.depthMetres()) > DEPTH_METRES) {
        differences.add(
            one.words() + " against " + two.words() + ": the daily swing fades with depth");
      }
    } else if (ratio(height(medium), height(other.medium)) > HEIGHT_FACTOR) {
      differences.add(
          medium.words()
              + " against "
              + other.medium.words()
              + ": nearer to the ground days are warmer and clear nights colder");
    }
  }

  private static double ratio(double one, double other) {
    return Math.max(one / other, other / one);
  }

  private static double height(Medium medium) {
    if (medium instanceof Medium.ShelterAir air) {
      return air.heightMetres();
    }
    return medium instanceof Medium.CanopyAir air ? air.heightMetres() : 1;
  }

  private void extremes(Siting other, List<String> differences) {
    boolean known = extremes != ExtremeKind.NOT_STATED && other.extremes != ExtremeKind.NOT_STATED;
    double mine = interval.toSeconds() / 60.0;
    double theirs = other.interval.toSeconds() / 60.0;
    if (!known) {
      differences.add(
          "how the extremes were taken is not stated for both: single readings miss the peaks");
    } else if ((extremes != other.extremes && Math.max(mine, theirs) > 15)
        || Math.abs(mine - theirs) > MOST_MINUTES) {
      differences.add(
          readingWords()
              + " against "
              + other.readingWords()
              + ": the rarer the readings, the smaller the range of a day, see SamplingDeficit");
    }
  }

  private String readingWords() {
    return extremes.words()
        + (interval.isZero()
            ? ""
            : ", every " + Numbers.significant(interval.toSeconds() / 60.0, 4) + " min");
  }

  /**
   * Whether two series may be compared as they are.
   *
   * @param other another siting
   * @return true when nothing stands between the two
   */
  public boolean comparableWith(Siting other) {
    return differencesFrom(other).isEmpty();
  }

  /**
   * The comparison as a table.
   *
   * @param other another siting
   * @return both sitings, and below the table what stands between them
   */
  public ResultTable comparison(Siting other) {
    var differences = differencesFrom(other);
    return new ResultTable(
        "Two sitings",
        List.of(Column.of("What"), Column.of("One"), Column.of("Other")),
        List.of(
            row("Medium", medium.words(), other.medium.words()),
            row("Shield", shield.words(), other.shield.words()),
            row("Reading", readingWords(), other.readingWords())),
        differences.isEmpty()
            ? List.of("The two may be compared as they are.")
            : differences.stream().map(line -> line + ".").toList());
  }

  private static List<Cell> row(String what, String one, String other) {
    return List.of(Cell.text(what), Cell.text(one), Cell.text(other));
  }

  @Override
  public Presentation presentation() {
    return Presentation.titled("Siting of a thermometer")
        .fact("Medium", medium.words())
        .fact("Shield", shield.words())
        .fact("Reading", readingWords())
        .build();
  }
}
