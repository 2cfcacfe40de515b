package agro.programme.rotation;

import java.util.List;
import java.util.Set;

/**
 * Everything that the search needs to know: windows, candidates, and the rules as numbers.
 *
 * @param windows the windows in order
 * @param candidates the candidates
 * @param refusals why candidates are out of the question in single windows
 * @param allowed for each window, the indices of the candidates that are left
 * @param modes modes of action that occur, in a fixed order
 * @param fixedModes for each window, the modes that are used in it already
 * @param follows for each window, whether the one before it in the list is the one before it in the
 *     season
 * @param modesBefore for each window, the modes that are used already in the one before it in the
 *     season
 * @param tallies limits on sums
 * @param spacings days between applications
 * @param rules rules that are held
 */
record PlanSpace(
    List<PlanWindow> windows,
    List<PlanCandidate> candidates,
    List<PlanRefusal> refusals,
    List<List<Integer>> allowed,
    List<ModeOfAction> modes,
    List<Set<Integer>> fixedModes,
    List<Boolean> follows,
    List<Set<Integer>> modesBefore,
    List<PlanTally> tallies,
    List<PlanSpacing> spacings,
    Set<PlanRule> rules) {}
