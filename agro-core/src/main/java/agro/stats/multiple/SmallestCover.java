package agro.stats.multiple;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Chooses the fewest sets that together hold everything that all of them hold: exactly, by branch
 * and bound, as long as that is quick, else by leaving out sets that the others make needless.
 */
final class SmallestCover {

  private static final int MOST_BRANCHES = 20_000;

  private final List<BitSet> sets;
  private List<Integer> best;
  private int branches;

  SmallestCover(List<BitSet> sets) {
    this.sets = sets;
  }

  /** Places of the chosen sets, rising. */
  List<Integer> chosen() {
    best = leaveOutNeedless();
    var open = new BitSet();
    sets.forEach(open::or);
    search(open, new ArrayList<>());
    best.sort(null);
    return best;
  }

  private List<Integer> leaveOutNeedless() {
    int[] times = new int[sets.stream().mapToInt(BitSet::length).max().orElse(0)];
    sets.forEach(set -> set.stream().forEach(item -> times[item]++));
    var kept = new ArrayList<Integer>();
    for (int each = sets.size() - 1; each >= 0; each--) {
      var set = sets.get(each);
      if (set.stream().allMatch(item -> times[item] > 1)) {
        set.stream().forEach(item -> times[item]--);
      } else {
        kept.add(each);
      }
    }
    return kept;
  }

  /** Tries each set that holds the open item which the fewest sets hold. */
  private void search(BitSet open, List<Integer> taken) {
    if (open.isEmpty()) {
      if (taken.size() < best.size()) {
        best = new ArrayList<>(taken);
      }
      return;
    }
    if (taken.size() + 1 >= best.size() || ++branches > MOST_BRANCHES) {
      return;
    }
    for (int choice : holders(open)) {
      var rest = (BitSet) open.clone();
      rest.andNot(sets.get(choice));
      taken.add(choice);
      search(rest, taken);
      taken.remove(taken.size() - 1);
    }
  }

  private List<Integer> holders(BitSet open) {
    List<Integer> fewest = null;
    for (int item = open.nextSetBit(0); item >= 0; item = open.nextSetBit(item + 1)) {
      var holders = new ArrayList<Integer>();
      for (int each = 0; each < sets.size(); each++) {
        if (sets.get(each).get(item)) {
          holders.add(each);
        }
      }
      if (fewest == null || holders.size() < fewest.size()) {
        fewest = holders;
      }
      if (fewest.size() == 1) {
        break;
      }
    }
    return fewest;
  }
}
