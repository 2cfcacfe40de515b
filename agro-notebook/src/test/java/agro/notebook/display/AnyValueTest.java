package agro.notebook.display;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.AbstractCollection;
import java.util.AbstractList;
import java.util.AbstractMap;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Whatever a value does when it is looked at, a reader sees something and nothing breaks. */
@Timeout(60)
class AnyValueTest {

  private static String text(Object value) {
    return Display.render(value).plainText();
  }

  /** A collection that says and does what it is told. */
  private static Collected collection(int size, Iterator<Object> values) {
    return new Collected(size, values);
  }

  private static final class Collected extends AbstractCollection<Object> {
    private final int size;
    private final Iterator<Object> values;

    Collected(int size, Iterator<Object> values) {
      this.size = size;
      this.values = values;
    }

    @Override
    public Iterator<Object> iterator() {
      return values;
    }

    @Override
    public int size() {
      return size;
    }
  }

  @Test
  void containersThatHoldThemselves() {
    var list = new ArrayList<Object>();
    list.add(1);
    list.add(list);
    assertThat(text(list)).isEqualTo("[1, (itself)]");
    var map = new HashMap<String, Object>();
    map.put("me", map);
    assertThat(text(map)).isEqualTo("{me=(itself)}");
    var array = new Object[1];
    array[0] = array;
    assertThat(text(array)).isEqualTo("[(itself)]");
    list.set(1, Optional.of(list));
    assertThat(text(list)).isEqualTo("[1, (itself)]");
    record Node(String name, List<Object> next) {}
    var node = new Node("a", new ArrayList<>());
    node.next().add(node);
    assertThat(text(node)).contains("could not be shown").contains("StackOverflowError");
  }

  @Test
  void endlessIteratorsEnd() {
    assertThat(text(collection(5, Stream.<Object>generate(() -> 1).iterator())))
        .contains("1, 1")
        .contains("more than the 5 that its size() says");
    assertThat(text(collection(Integer.MAX_VALUE, Stream.<Object>generate(() -> 1).iterator())))
        .endsWith("1, ...] (2147483647 values)");
  }

  @Test
  void sizesThatLie() {
    assertThat(text(collection(9, List.<Object>of(1, 2).iterator())))
        .isEqualTo("[1, 2] (its size() says 9)");
    assertThat(text(collection(1, List.<Object>of(1, 2).iterator())))
        .isEqualTo("[1, 2] (its size() says 1)");
    assertThat(text(collection(-3, List.<Object>of(1, 2).iterator()))).contains("1, 2");
  }

  @Test
  void iteratorsThatFailOnTheWay() {
    var failing =
        Stream.<Object>iterate(
                1,
                n -> {
                  if ((int) n == 3) {
                    throw new IllegalStateException("gone");
                  }
                  return (int) n + 1;
                })
            .iterator();
    assertThat(text(collection(10, failing)))
        .isEqualTo("[1, 2, 3, ... (then it failed with java.lang.IllegalStateException: gone)]");
    var broken =
        new AbstractMap<String, String>() {
          @Override
          public Set<Map.Entry<String, String>> entrySet() {
            throw new UnsupportedOperationException("none");
          }
        };
    assertThat(text(broken)).contains("UnsupportedOperationException: none");
  }

  @Test
  void errorsOfElementsLeaveTheOthers() {
    var bad =
        new Object() {
          @Override
          public String toString() {
            throw new LinkageError("bad");
          }
        };
    var shown = Display.render(List.of(1, bad, 2));
    assertThat(shown.plainText())
        .startsWith("[1, A value of type ")
        .endsWith("LinkageError: bad, 2]");
    assertThat(Display.render(Map.of("k", bad)).get(MimeBundle.HTML).orElseThrow())
        .contains("LinkageError: bad");
  }

  @Test
  void hugeTextsAreCut() {
    var huge = "ab".repeat(25_000_000);
    assertThat(text(huge)).hasSizeLessThan(110_000).contains("of 50000000 characters");
    assertThat(text(List.of(huge, 2))).hasSizeLessThan(110_000).endsWith(", 2]");
    assertThat(Display.render(Map.of("k", huge)).get(MimeBundle.HTML).orElseThrow())
        .hasSizeLessThan(3_000);
    var moths = text("a" + "😀".repeat(80_000));
    assertThat(new String(moths.getBytes(UTF_8), UTF_8)).as("no half characters").isEqualTo(moths);
  }

  @Test
  void deepAndBroadNestingIsBounded() {
    Object nested = List.of();
    for (var level = 0; level < 10_000; level++) {
      nested = new Object[] {nested, nested, nested};
    }
    assertThat(text(nested)).hasSizeLessThan(200_000);
    List<Object> chain = new ArrayList<>();
    for (var level = 0; level < 10_000; level++) {
      chain = new ArrayList<>(List.of(chain));
    }
    assertThat(text(chain)).isEqualTo("[[[[[[[...]]]]]]]");
  }

  @Test
  void usersCodeIsCalledNoMoreThanNeeded() {
    var calls = new AtomicInteger();
    var list =
        new AbstractList<Object>() {
          @Override
          public Object get(int index) {
            calls.incrementAndGet();
            return index;
          }

          @Override
          public int size() {
            return 1_000_000;
          }
        };
    assertThat(text(list)).contains("(1000000 values)");
    assertThat(calls.get()).isLessThan(120);
    calls.set(0);
    var counted =
        new Object() {
          @Override
          public String toString() {
            return "call " + calls.incrementAndGet();
          }
        };
    assertThat(text(counted)).isEqualTo("call 1");
    assertThat(text(List.of(counted))).isEqualTo("[call 2]");
  }

  @Test
  void renderersThatGiveNothingOrNoTextLeavePlainText() {
    var renderers =
        Renderers.of(
            List.of(
                renderer(String.class, null),
                renderer(
                    Integer.class, MimeBundle.of(MimeBundle.HTML, "<p>a &amp; <b>b</b></p>"))));
    assertThat(renderers.render("x").plainText()).isEqualTo("x");
    assertThat(renderers.render(3).plainText()).isEqualTo("a & b");
  }

  private static <T> RichRenderer<T> renderer(Class<T> type, MimeBundle bundle) {
    return new RichRenderer<>() {
      @Override
      public Class<T> type() {
        return type;
      }

      @Override
      public MimeBundle render(T value) {
        return bundle;
      }
    };
  }
}
