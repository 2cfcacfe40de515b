package agro.programme.rotation;

import agro.dose.Severity;
import agro.programme.CropPlanting;
import agro.programme.Programme;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Holds the applications of a field against the rules of rotation. Uses are counted by active
 * ingredient and group over all products, those in the nursery included.
 *
 * @param programme fields, crops, label records and applications
 * @param field the field
 * @param windows windows of the pest in the district
 * @param rules how strictly
 */
public record RotationCheck(
    Programme programme, String field, RotationWindows windows, RotationRules rules) {

  /** Refuses nulls and a field that the programme does not know. */
  public RotationCheck {
    Objects.requireNonNull(windows, "windows");
    Objects.requireNonNull(rules, "rules");
    programme.field(field);
  }

  /**
   * A check by the standard rules.
   *
   * @param programme fields, crops, label records and applications
   * @param field the field
   * @param windows windows of the pest in the district
   * @return the check
   */
  public static RotationCheck of(Programme programme, String field, RotationWindows windows) {
    return new RotationCheck(programme, field, windows, RotationRules.standard());
  }

  /**
   * The same check by other rules.
   *
   * @param other the rules
   * @return a new check
   */
  public RotationCheck with(RotationRules other) {
    return new RotationCheck(programme, field, windows, other);
  }

  /**
   * Judges the applications.
   *
   * @return all findings, errors first
   */
  public RotationReport check() {
    var uses = uses();
    var findings = new ArrayList<RotationFinding>();
    unrecorded(uses, findings);
    successions(uses, findings);
    for (var planting : programme.plantings()) {
      if (planting.field().equals(field)) {
        share(planting, uses, findings);
        nursery(planting, uses, findings);
      }
    }
    findings.sort(Comparator.comparing(RotationFinding::severity).reversed());
    return new RotationReport(field, windows, uses, findings);
  }

  private List<GroupUse> uses() {
    var zone = programme.field(field).zone();
    return programme.sprayingsOf(field).stream()
        .flatMap(each -> GroupUse.of(each, zone, programme.labels(), rules.table()).stream())
        .toList();
  }

  private static void unrecorded(List<GroupUse> uses, List<RotationFinding> findings) {
    for (var use : uses) {
      if (use.mode().isEmpty()) {
        var what = use.active().isEmpty() ? "its active ingredients are" : "the group is";
        findings.add(
            new RotationFinding(
                Severity.WARNING,
                RotationRule.GROUP_RECORDED,
                use.words() + ": " + what + " not recorded, so that no rule can be held against it",
                List.of(use.spraying())));
      }
    }
  }

  private void successions(List<GroupUse> uses, List<RotationFinding> findings) {
    var inWindow = new TreeMap<Integer, List<GroupUse>>();
    for (var use : uses) {
      if (!use.beforeTheField()) {
        inWindow.computeIfAbsent(windows.indexAt(use.day()), i -> new ArrayList<>()).add(use);
      }
    }
    inWindow.forEach(
        (index, later) -> {
          for (var before : inWindow.getOrDefault(index - 1, List.of())) {
            for (var after : later) {
              pair(before, after).ifPresent(findings::add);
            }
          }
        });
  }

  private java.util.Optional<RotationFinding> pair(GroupUse before, GroupUse after) {
    if (before.mode().isEmpty() || after.mode().isEmpty()) {
      return java.util.Optional.empty();
    }
    var first = before.mode().get();
    var second = after.mode().get();
    return Succession.judge(first, second)
        .map(
            severity ->
                new RotationFinding(
                    severity,
                    Succession.rule(first, second),
                    after.words()
                        + " follows "
                        + before.words()
                        + " in the window before: "
                        + Succession.rule(first, second).words(),
                    names(Stream.of(before, after))));
  }

  private void share(CropPlanting planting, List<GroupUse> uses, List<RotationFinding> findings) {
    if (rules.largestShare() >= 1) {
      return;
    }
    var cycle = CropCycle.of(planting);
    if (cycle.isEmpty()) {
      findings.add(
          new RotationFinding(
              Severity.NOTE,
              RotationRule.SHARE_OF_SEASON,
              planting.name()
                  + ": neither clearing nor picking days are recorded, so that the share of the"
                  + " crop cycle is not known",
              List.of()));
      return;
    }
    var numbers = new LinkedHashSet<String>();
    uses.forEach(use -> use.mode().map(ModeOfAction::number).ifPresent(numbers::add));
    for (var number : numbers) {
      var own = inField(uses, cycle.get(), number);
      double share = coveredDays(own, cycle.get()) / (double) cycle.get().days();
      if (share > rules.largestShare()) {
        findings.add(
            new RotationFinding(
                Severity.ERROR,
                RotationRule.SHARE_OF_SEASON,
                String.format(
                    Locale.ROOT,
                    "windows with group %s cover %.1f %% of the %d days of %s; at most %.0f %%",
                    number,
                    100 * share,
                    cycle.get().days(),
                    planting.name(),
                    100 * rules.largestShare()),
                names(own.stream())));
      }
    }
  }

  private static List<GroupUse> inField(List<GroupUse> uses, CropCycle cycle, String number) {
    return uses.stream()
        .filter(use -> !use.beforeTheField())
        .filter(use -> !use.day().isBefore(cycle.first()) && !use.day().isAfter(cycle.last()))
        .filter(use -> use.mode().filter(mode -> mode.number().equals(number)).isPresent())
        .toList();
  }

  private long coveredDays(List<GroupUse> uses, CropCycle cycle) {
    return uses.stream()
        .map(use -> windows.indexAt(use.day()))
        .filter(index -> index >= 0)
        .distinct()
        .mapToLong(i -> windows.windows().get(i).daysWithin(cycle.first(), cycle.last()))
        .sum();
  }

  private void nursery(CropPlanting planting, List<GroupUse> uses, List<RotationFinding> findings) {
    if (!rules.nurseryBreak()) {
      return;
    }
    var end = planting.planted().plusDays(windows.firstLength() - 1);
    var own = uses.stream().filter(use -> belongs(use, planting)).toList();
    for (var before : own) {
      for (var after : own) {
        boolean soon =
            before.beforeTheField()
                && !after.beforeTheField()
                && !after.day().isBefore(planting.planted())
                && !after.day().isAfter(end);
        if (soon && before.mode().isPresent() && after.mode().isPresent()) {
          Succession.judge(before.mode().get(), after.mode().get())
              .ifPresent(
                  severity ->
                      findings.add(
                          new RotationFinding(
                              severity,
                              RotationRule.NURSERY_BREAK,
                              after.words()
                                  + " within one generation after planting on "
                                  + planting.planted()
                                  + ", and "
                                  + before.words()
                                  + " in the nursery",
                              names(Stream.of(before, after)))));
        }
      }
    }
  }

  private boolean belongs(GroupUse use, CropPlanting planting) {
    return programme
        .plantingFor(field, use.day())
        .filter(other -> other.name().equals(planting.name()))
        .isPresent();
  }

  private static List<String> names(Stream<GroupUse> uses) {
    return uses.map(GroupUse::spraying).distinct().toList();
  }
}
