package agro.programme.rotation;

import java.util.Arrays;

/** Gathers what a state remembers. */
final class PlanMemory {

  private int[] keys;
  private long[] values;
  private int size;

  PlanMemory(PlanState state) {
    keys = new int[state.size() + 8];
    values = new long[state.size() + 8];
    for (int i = 0; i < state.size(); i++) {
      keys[i] = state.key(i);
      values[i] = state.value(i);
    }
    size = state.size();
  }

  void put(int key, long value) {
    int at = Arrays.binarySearch(keys, 0, size, key);
    if (at < 0) {
      at = -at - 1;
      if (size == keys.length) {
        keys = Arrays.copyOf(keys, 2 * size);
        values = Arrays.copyOf(values, 2 * size);
      }
      System.arraycopy(keys, at, keys, at + 1, size - at);
      System.arraycopy(values, at, values, at + 1, size - at);
      keys[at] = key;
      size++;
    }
    values[at] = value;
  }

  int size() {
    return size;
  }

  int key(int i) {
    return keys[i];
  }

  long value(int i) {
    return values[i];
  }

  void remove(int i) {
    System.arraycopy(keys, i + 1, keys, i, size - i - 1);
    System.arraycopy(values, i + 1, values, i, size - i - 1);
    size--;
  }

  PlanState state(int window, int modesBefore) {
    return new PlanState(
        window, modesBefore, Arrays.copyOf(keys, size), Arrays.copyOf(values, size));
  }
}
