package agro.dose.tank;

import agro.dose.ProductAmount;
import agro.report.InputProblem;
import agro.units.Mass;
import agro.units.MeasurementSystem;
import agro.units.Quantity;
import agro.units.QuantityStyle;
import agro.units.Unit;
import agro.units.Volume;
import java.util.Objects;

/** Something that a product is measured with before it goes into the tank. */
public sealed interface MeasuringVessel {

  /**
   * A syringe, cylinder or cup with marks.
   *
   * @param kind what it is
   * @param capacity volume at the highest mark, above zero
   * @param mark volume between two marks, above zero
   */
  record Graduated(GraduatedKind kind, Volume capacity, Volume mark) implements MeasuringVessel {
    /** Refuses marks that are further apart than the vessel is large. */
    public Graduated {
      Objects.requireNonNull(kind, "kind");
      VesselRefusals.requireMarks(kind.words(), capacity, mark);
    }

    @Override
    public String print(QuantityStyle style) {
      return both(capacity, style) + " " + kind.words() + ", marks every " + metric(mark);
    }
  }

  /**
   * A spoon or a bottle cap that is filled level. Spoons of one name have several sizes, so the
   * size is part of it.
   *
   * @param name what it is, for example {@code "bottle cap"}
   * @param content volume when level, above zero
   */
  record Level(String name, Volume content) implements MeasuringVessel {
    /** Refuses a spoon without a name or a size. */
    public Level {
      if (name.isBlank() || !(content.litres() > 0)) {
        throw InputProblem.of("a spoon or cap \"" + name + "\" of " + content)
            .expected("a name and a volume above zero")
            .because("spoons of one name differ by up to 35 % and by three times between names")
            .mend("measure with a syringe what it holds when level, and write that");
      }
    }

    @Override
    public String print(QuantityStyle style) {
      return "level " + name + " of " + both(content, style);
    }
  }

  /**
   * A sachet that is emptied whole.
   *
   * @param content what it holds, one amount above zero
   */
  record Sachet(ProductAmount content) implements MeasuringVessel {
    /** Refuses an empty sachet and one of uncertain size. */
    public Sachet {
      if (!content.isSingle() || !(content.highNumber() > 0)) {
        throw InputProblem.of("a sachet that holds " + content)
            .expected("one amount above zero")
            .because("sachets are emptied whole")
            .mend("copy the content from the sachet");
      }
    }

    @Override
    public String print(QuantityStyle style) {
      return "whole sachet of " + content;
    }
  }

  /**
   * A scale.
   *
   * @param capacity highest mass, above zero
   * @param resolution smallest step that it shows, above zero
   */
  record Scale(Mass capacity, Mass resolution) implements MeasuringVessel {
    /** Refuses a resolution that is coarser than the scale is strong. */
    public Scale {
      VesselRefusals.requireMarks("scale", capacity, resolution);
    }

    @Override
    public String print(QuantityStyle style) {
      return "scale to " + both(capacity, style) + ", steps of " + metric(resolution);
    }
  }

  /** What a vessel with marks is. */
  enum GraduatedKind {
    /** A syringe. */
    SYRINGE("syringe"),
    /** A graduated cylinder. */
    CYLINDER("graduated cylinder"),
    /** A measuring cup or jug. */
    CUP("measuring cup");

    private final String words;

    GraduatedKind(String words) {
      this.words = words;
    }

    /**
     * The kind in words.
     *
     * @return for example {@code "graduated cylinder"}
     */
    public String words() {
      return words;
    }
  }

  /**
   * A spoon by a unit that has one size, such as the US or the metric tablespoon.
   *
   * @param spoon a unit of volume
   * @return the spoon, named with its unit
   */
  static Level spoon(Unit<Volume> spoon) {
    return new Level(spoon.words(), Volume.of(1, spoon));
  }

  /**
   * The vessel in print with its size in metric units.
   *
   * @return for example {@code "100 mL graduated cylinder, marks every 1 mL"}
   */
  default String print() {
    return print(QuantityStyle.METRIC);
  }

  /**
   * The vessel in print with its size in metric units and, where the reader has others, in those
   * too. Marks are printed as they stand on it.
   *
   * @param style units of the reader
   * @return for example {@code "100 mL (3.381 fl oz (US)) graduated cylinder, marks every ..."}
   */
  String print(QuantityStyle style);

  private static <Q extends Quantity<Q>> String both(Q quantity, QuantityStyle style) {
    return style.system() == MeasurementSystem.METRIC
        ? metric(quantity)
        : metric(quantity) + " (" + style.print(quantity) + ")";
  }

  private static <Q extends Quantity<Q>> String metric(Q quantity) {
    return QuantityStyle.METRIC.print(quantity);
  }
}
