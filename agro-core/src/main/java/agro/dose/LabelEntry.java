package agro.dose;

import java.util.Objects;

/**
 * What is known of one limit: its value, that the label says there is none, or that nobody has
 * looked. The last is never taken for the second.
 *
 * @param <T> type of the value
 */
public sealed interface LabelEntry<T> {

  /**
   * The label states a value.
   *
   * @param value the value
   * @param <T> type of the value
   */
  record Stated<T>(T value) implements LabelEntry<T> {
    /** Refuses null. */
    public Stated {
      Objects.requireNonNull(value, "value");
    }

    @Override
    public String toString() {
      return value.toString();
    }
  }

  /**
   * The label says in words that there is no such limit.
   *
   * @param <T> type of the value
   */
  record LabelSaysNone<T>() implements LabelEntry<T> {
    @Override
    public String toString() {
      return "the label says none";
    }
  }

  /**
   * The label was not read for this, or the record was left empty.
   *
   * @param <T> type of the value
   */
  record NotRecorded<T>() implements LabelEntry<T> {
    @Override
    public String toString() {
      return "not recorded";
    }
  }

  /**
   * A value that the label states.
   *
   * @param value the value
   * @param <T> its type
   * @return the entry
   */
  static <T> LabelEntry<T> stated(T value) {
    return new Stated<>(value);
  }

  /**
   * The label says that there is no such limit.
   *
   * @param <T> type of the value
   * @return the entry
   */
  static <T> LabelEntry<T> none() {
    return new LabelSaysNone<>();
  }

  /**
   * Nobody has recorded what the label says.
   *
   * @param <T> type of the value
   * @return the entry
   */
  static <T> LabelEntry<T> notRecorded() {
    return new NotRecorded<>();
  }
}
