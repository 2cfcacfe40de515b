package agro.dose.sprayer;

import agro.report.InputProblem;
import agro.units.Length;
import java.util.Objects;

/**
 * The nozzles of a sprayer and the widths that one pass covers. The treated width is what gets wet;
 * the field width is the part of the field that the pass accounts for. They differ where bands are
 * sprayed: the volume per treated hectare is then larger than the volume per hectare of field.
 */
public sealed interface SprayLayout
    permits SprayLayout.Boom, SprayLayout.Lance, SprayLayout.Band, SprayLayout.Orchard {

  /**
   * Nozzles that spray at the same time.
   *
   * @return 1 or more
   */
  int nozzles();

  /**
   * The width that is sprayed in one pass.
   *
   * @return the width, above zero
   */
  Length treatedWidth();

  /**
   * The width of field that one pass accounts for.
   *
   * @return the width, not below the treated width
   */
  Length fieldWidth();

  /**
   * The layout in words.
   *
   * @param units units in which widths are printed
   * @return a phrase without a full stop
   */
  String words(SprayUnits units);

  /**
   * The share of the field that gets wet.
   *
   * @return treated width ÷ field width, below 1 for bands and 1 otherwise
   */
  default double treatedShare() {
    return treatedWidth().ratioTo(fieldWidth());
  }

  /**
   * A boom that covers the whole ground.
   *
   * @param nozzles nozzles on the boom
   * @param spacing distance from nozzle to nozzle, not the width of the boom
   * @return the layout
   */
  static Boom boom(int nozzles, Length spacing) {
    return new Boom(nozzles, spacing);
  }

  /**
   * A lance or a short boom carried by hand.
   *
   * @param nozzles nozzles on the lance
   * @param swath width that the operator wets in one pass, as measured on dry ground
   * @return the layout
   */
  static Lance lance(int nozzles, Length swath) {
    return new Lance(nozzles, swath);
  }

  /**
   * Bands over the rows.
   *
   * @param rows rows sprayed in one pass
   * @param nozzlesPerRow nozzles over one row
   * @param bandWidth width of one band
   * @param rowSpacing distance from row to row
   * @return the layout
   */
  static Band band(int rows, int nozzlesPerRow, Length bandWidth, Length rowSpacing) {
    return new Band(rows, nozzlesPerRow, bandWidth, rowSpacing);
  }

  /**
   * An orchard or vineyard.
   *
   * @param nozzles nozzles that spray at the same time, both sides counted
   * @param rowDistance distance from row to row
   * @param pattern how the rows are passed
   * @return the layout
   */
  static Orchard orchard(int nozzles, Length rowDistance, AlleyPattern pattern) {
    return new Orchard(nozzles, rowDistance, pattern);
  }

  private static Length width(Length length, String what) {
    return SprayerChecks.aboveZero(
        length,
        what,
        "the volume per area is the flow divided by speed and width",
        "measure the " + what + " on the ground");
  }

  private static int count(int number, String what) {
    return SprayerChecks.oneOrMore(
        number, what, "each pass has to put out something", "count the " + what);
  }

  /**
   * A boom that covers the whole ground.
   *
   * @param nozzles nozzles on the boom
   * @param spacing distance from nozzle to nozzle
   */
  record Boom(int nozzles, Length spacing) implements SprayLayout {
    /** Refuses a boom without nozzles or spacing. */
    public Boom {
      count(nozzles, "nozzles");
      width(spacing, "nozzle spacing");
    }

    @Override
    public Length treatedWidth() {
      return spacing.times(nozzles);
    }

    @Override
    public Length fieldWidth() {
      return treatedWidth();
    }

    @Override
    public String words(SprayUnits units) {
      return "boom of " + nozzles + " nozzles every " + units.width(spacing);
    }
  }

  /**
   * A lance or a short boom carried by hand.
   *
   * @param nozzles nozzles on the lance
   * @param swath width wetted in one pass
   */
  record Lance(int nozzles, Length swath) implements SprayLayout {
    /** Refuses a lance without nozzles or swath. */
    public Lance {
      count(nozzles, "nozzles");
      width(swath, "swath");
    }

    @Override
    public Length treatedWidth() {
      return swath;
    }

    @Override
    public Length fieldWidth() {
      return swath;
    }

    @Override
    public String words(SprayUnits units) {
      return (nozzles == 1 ? "one nozzle" : nozzles + " nozzles")
          + " over a swath of "
          + units.width(swath);
    }
  }

  /**
   * Bands over the rows.
   *
   * @param rows rows sprayed in one pass
   * @param nozzlesPerRow nozzles over one row
   * @param bandWidth width of one band, not above the row spacing
   * @param rowSpacing distance from row to row
   */
  record Band(int rows, int nozzlesPerRow, Length bandWidth, Length rowSpacing)
      implements SprayLayout {
    /** Refuses bands that overlap. */
    public Band {
      count(rows, "rows");
      count(nozzlesPerRow, "nozzles per row");
      width(bandWidth, "band width");
      width(rowSpacing, "row spacing");
      if (bandWidth.compareTo(rowSpacing) > 0) {
        throw InputProblem.of("the band is " + bandWidth + " wide on rows of " + rowSpacing)
            .expected("a band that is at most as wide as the row spacing")
            .because(
                "bands that overlap are a spray over the whole ground, and band width and row"
                    + " spacing are easily written in the wrong places")
            .mend("write the band width first and the row spacing second, or describe a boom");
      }
    }

    @Override
    public int nozzles() {
      return rows * nozzlesPerRow;
    }

    @Override
    public Length treatedWidth() {
      return bandWidth.times(rows);
    }

    @Override
    public Length fieldWidth() {
      return rowSpacing.times(rows);
    }

    @Override
    public String words(SprayUnits units) {
      return "bands of "
          + units.width(bandWidth)
          + " on rows of "
          + units.width(rowSpacing)
          + ", "
          + rows
          + " at a time";
    }
  }

  /**
   * An orchard or vineyard.
   *
   * @param nozzles nozzles that spray at the same time, both sides counted
   * @param rowDistance distance from row to row
   * @param pattern how the rows are passed
   */
  record Orchard(int nozzles, Length rowDistance, AlleyPattern pattern) implements SprayLayout {
    /** Refuses an orchard without nozzles or rows. */
    public Orchard {
      count(nozzles, "nozzles");
      width(rowDistance, "row distance");
      Objects.requireNonNull(pattern, "pattern");
    }

    @Override
    public Length treatedWidth() {
      return rowDistance.times(pattern.rowsPerPass());
    }

    @Override
    public Length fieldWidth() {
      return treatedWidth();
    }

    @Override
    public String words(SprayUnits units) {
      return "rows every " + units.width(rowDistance) + ", " + pattern.words();
    }
  }
}
