package agro.course;

import agro.units.Quantity;
import agro.units.Temperature;
import agro.units.ThermalTime;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;

/** What was answered, once it has been read: the right value or a student's own. */
public sealed interface AnswerValue {

  /**
   * An amount with a unit.
   *
   * @param quantity the amount
   */
  record OfQuantity(Quantity<?> quantity) implements AnswerValue {
    /** Refuses nothing. */
    public OfQuantity {
      Objects.requireNonNull(quantity, "quantity");
    }
  }

  /**
   * A sum of degree-days.
   *
   * @param sum the sum
   */
  record OfThermalTime(ThermalTime sum) implements AnswerValue {
    /** Refuses nothing. */
    public OfThermalTime {
      Objects.requireNonNull(sum, "sum");
    }
  }

  /**
   * A temperature.
   *
   * @param temperature the temperature
   */
  record OfTemperature(Temperature temperature) implements AnswerValue {
    /** Refuses nothing. */
    public OfTemperature {
      Objects.requireNonNull(temperature, "temperature");
    }
  }

  /**
   * A number: a mean, a count, a sum of money, per cent as 0 to 100.
   *
   * @param number a finite number
   */
  record OfNumber(double number) implements AnswerValue {
    /** Refuses what is no number. */
    public OfNumber {
      if (!Double.isFinite(number)) {
        throw new IllegalArgumentException("an answer is a finite number, but got " + number);
      }
    }
  }

  /**
   * A day.
   *
   * @param day the day
   */
  record OfDay(LocalDate day) implements AnswerValue {
    /** Refuses nothing. */
    public OfDay {
      Objects.requireNonNull(day, "day");
    }
  }

  /**
   * One of several statements.
   *
   * @param code code of the statement
   */
  record OfChoice(String code) implements AnswerValue {
    /** Refuses nothing. */
    public OfChoice {
      Objects.requireNonNull(code, "code");
    }
  }

  /**
   * Several codes, such as groups of modes of action, in any order.
   *
   * @param codes the codes, possibly none
   */
  record OfCodes(Set<String> codes) implements AnswerValue {
    /** Copies the set. */
    public OfCodes {
      codes = Set.copyOf(codes);
    }
  }
}
