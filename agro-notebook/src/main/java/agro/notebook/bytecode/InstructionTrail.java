package agro.notebook.bytecode;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.objectweb.asm.Label;

/**
 * What a method has done so far, as much of it as tells whether a loop can do without a check. That
 * is a loop without calls and branches that counts one variable up or down and uses it as an index
 * on every round: it ends with its array at the latest, and without a check it runs several times
 * as fast.
 */
final class InstructionTrail {

  /** What matters about an instruction. */
  private enum Kind {
    LOAD,
    STORE,
    COUNT,
    ARRAY,
    ORDER,
    BRANCH_OR_CALL,
    OTHER
  }

  private record Step(Kind kind, int variable) {}

  private static final Step ARRAY = new Step(Kind.ARRAY, -1);
  private static final Step ORDER = new Step(Kind.ORDER, -1);
  private static final Step BRANCH_OR_CALL = new Step(Kind.BRANCH_OR_CALL, -1);
  private static final Step OTHER = new Step(Kind.OTHER, -1);

  private final List<Step> steps = new ArrayList<>();
  private final Map<Label, Integer> labels = new HashMap<>();

  void label(Label label) {
    labels.put(label, steps.size());
  }

  boolean hasPassed(Label label) {
    return labels.containsKey(label);
  }

  void load(int variable) {
    steps.add(new Step(Kind.LOAD, variable));
  }

  void store(int variable) {
    steps.add(new Step(Kind.STORE, variable));
  }

  void count(int variable, int by) {
    steps.add(new Step(by == 0 ? Kind.STORE : Kind.COUNT, variable));
  }

  void array() {
    steps.add(ARRAY);
  }

  /** A jump that depends on which of two numbers is larger. */
  void order() {
    steps.add(ORDER);
  }

  void branchOrCall() {
    steps.add(BRANCH_OR_CALL);
  }

  void other() {
    steps.add(OTHER);
  }

  /**
   * Whether a loop ends with an array at the latest.
   *
   * @param head where the loop begins; its last instruction so far is the one before the jump back
   * @return true when it needs no check
   */
  boolean endsWithItsArray(Label head) {
    var loop = steps.subList(labels.get(head), steps.size());
    if (loop.size() < 2 || loop.get(0).kind() != Kind.LOAD) {
      return false;
    }
    var counter = loop.get(0).variable();
    var last = loop.get(loop.size() - 1);
    return last.kind() == Kind.COUNT
        && last.variable() == counter
        && loop.stream().filter(step -> changes(step, counter)).count() == 1
        && loop.stream().noneMatch(step -> step.kind() == Kind.BRANCH_OR_CALL)
        && loop.stream().filter(step -> step.kind() == Kind.ORDER).count() == 1
        && isIndex(counter, loop);
  }

  private static boolean changes(Step step, int counter) {
    return step.variable() == counter && (step.kind() == Kind.COUNT || step.kind() == Kind.STORE);
  }

  private static boolean isIndex(int counter, List<Step> loop) {
    for (var at = 1; at < loop.size(); at++) {
      var before = loop.get(at - 1);
      if (loop.get(at).kind() == Kind.ARRAY
          && before.kind() == Kind.LOAD
          && before.variable() == counter) {
        return true;
      }
    }
    return false;
  }
}
