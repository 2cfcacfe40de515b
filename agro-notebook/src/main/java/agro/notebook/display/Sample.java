package agro.notebook.display;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.NavigableSet;
import java.util.RandomAccess;

/**
 * The first and the last values of a collection, taken without reading more of it than is shown.
 * Whatever the collection does, lying about its size included, taking a sample ends and does not
 * throw.
 *
 * @param first the first values
 * @param last the last values, possibly none although there are more
 * @param size how many values it says it has; -1 when it does not say
 * @param complete whether the sample holds all values
 * @param trouble what it threw while it was read, or null
 */
record Sample(
    List<Object> first, List<Object> last, int size, boolean complete, Throwable trouble) {

  /** Up to this size a collection without access to its end is read through for the last values. */
  private static final int READ_THROUGH = 10_000;

  /**
   * Takes a sample.
   *
   * @param values any collection
   * @param head values wanted from the beginning
   * @param tail values wanted from the end
   * @return the sample; all values when there are at most one more than {@code head + tail}
   */
  static Sample of(Collection<?> values, int head, int tail) {
    var first = new ArrayList<Object>();
    var last = new ArrayList<Object>();
    var size = -1;
    try {
      size = values.size();
      var most = size > head + tail + 1 ? head : head + tail + 1;
      var iterator = values.iterator();
      while (first.size() < most && iterator.hasNext()) {
        first.add(iterator.next());
      }
      var complete = first.size() < most || !iterator.hasNext();
      if (!complete && size > first.size()) {
        last.addAll(end(values, size, tail, iterator, first.size()));
      }
      return new Sample(first, last, size, complete, null);
    } catch (RuntimeException | Error trouble) {
      Interruption.passOn(trouble);
      return new Sample(first, last, size, false, trouble);
    }
  }

  private static List<Object> end(
      Collection<?> values, int size, int tail, Iterator<?> onwards, int read) {
    if (values instanceof List<?> list && values instanceof RandomAccess) {
      return new ArrayList<>(list.subList(size - tail, size));
    }
    if (values instanceof Deque<?> deque) {
      return backwards(deque.descendingIterator(), tail);
    }
    if (values instanceof NavigableSet<?> sorted) {
      return backwards(sorted.descendingIterator(), tail);
    }
    var last = new ArrayList<Object>();
    for (var at = read; size <= READ_THROUGH && at < size && onwards.hasNext(); at++) {
      var value = onwards.next();
      if (at >= size - tail) {
        last.add(value);
      }
    }
    return last;
  }

  private static List<Object> backwards(Iterator<?> fromTheEnd, int tail) {
    var last = new ArrayList<Object>();
    while (last.size() < tail && fromTheEnd.hasNext()) {
      last.add(0, fromTheEnd.next());
    }
    return last;
  }

  /**
   * A part of this sample, so that a collection need not be read again.
   *
   * @param head values wanted from the beginning, at most as many as here
   * @param tail values wanted from the end
   * @return the smaller sample; all values when there are at most one more than {@code head + tail}
   */
  Sample shortened(int head, int tail) {
    var all = all();
    if (all.size() <= head + tail + 1 && (complete || last.isEmpty())) {
      return this;
    }
    var beginning = first.subList(0, Math.min(head, first.size()));
    var known = complete ? all : last;
    var end = known.subList(Math.max(0, known.size() - tail), known.size());
    var said = complete ? Math.max(size, all.size()) : size;
    return new Sample(beginning, end, said, false, trouble);
  }

  /**
   * All values of the sample.
   *
   * @return the first, then the last ones
   */
  List<Object> all() {
    var all = new ArrayList<>(first);
    all.addAll(last);
    return all;
  }

  /** Whether the values that were read are as many as the collection says. */
  boolean isAsLongAsItSays() {
    return !complete || size == first.size();
  }
}
