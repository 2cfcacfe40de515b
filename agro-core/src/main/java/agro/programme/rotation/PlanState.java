package agro.programme.rotation;

import java.util.Arrays;

/**
 * What the windows so far leave for the next ones: the modes of the last choice, and those sums and
 * last uses that can still matter. Two programmes with the same state can go on in the same ways.
 */
final class PlanState {

  private final int window;
  private final int modesBefore;
  private final int[] keys;
  private final long[] values;
  private final int hash;

  /**
   * A state.
   *
   * @param window index of the next window
   * @param modesBefore which set of modes was chosen in the window before it
   * @param keys what is remembered, ascending
   * @param values what is remembered of each
   */
  PlanState(int window, int modesBefore, int[] keys, long[] values) {
    this.window = window;
    this.modesBefore = modesBefore;
    this.keys = keys;
    this.values = values;
    hash =
        31 * (31 * (31 * window + modesBefore) + Arrays.hashCode(keys)) + Arrays.hashCode(values);
  }

  int window() {
    return window;
  }

  int modesBefore() {
    return modesBefore;
  }

  int size() {
    return keys.length;
  }

  int key(int i) {
    return keys[i];
  }

  long value(int i) {
    return values[i];
  }

  /** What is remembered under a key, or another value where nothing is. */
  long value(int key, long otherwise) {
    int at = Arrays.binarySearch(keys, key);
    return at >= 0 ? values[at] : otherwise;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PlanState state
        && hash == state.hash
        && window == state.window
        && modesBefore == state.modesBefore
        && Arrays.equals(keys, state.keys)
        && Arrays.equals(values, state.values);
  }

  @Override
  public int hashCode() {
    return hash;
  }
}
