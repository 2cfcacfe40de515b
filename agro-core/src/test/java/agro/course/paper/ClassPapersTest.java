package agro.course.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import agro.course.CourseTopic;
import agro.course.Difficulty;
import agro.course.Exercise;
import agro.report.InputProblem;
import agro.report.Progress;
import agro.working.TextLanguage;
import java.util.HashSet;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class ClassPapersTest {

  private static final PaperPlan PLAN =
      PaperPlan.of(PaperSamples.blueprint(), PaperSamples.students(20), 8);

  private static String print(Exercise exercise) {
    return exercise.key().type() + " " + exercise.givens().fingerprint();
  }

  private static List<String> prints(ClassPapers papers) {
    return papers.papers().stream()
        .flatMap(paper -> paper.questions().stream())
        .map(question -> print(question.exercise()))
        .toList();
  }

  private static List<String> types(StudentPaper paper) {
    return paper.questions().stream().map(each -> each.exercise().key().type()).toList();
  }

  @Test
  void nobodyGetsTheNumbersOfAnother() {
    var papers = ClassPapers.of(PLAN);
    assertThat(papers.papers()).hasSize(20);
    assertThat(prints(papers)).hasSize(80).doesNotHaveDuplicates();
    // So few different numbers that clashes come up for certain.
    var crowded = PaperPlan.of(PaperSamples.onlyDose(40), PaperSamples.students(40), 8);
    assertThat(prints(ClassPapers.of(crowded))).hasSize(1600).doesNotHaveDuplicates();
  }

  @Test
  void aResitIsClearOfAllSittingsBefore() {
    var first = ClassPapers.of(PLAN);
    var second = ClassPapers.of(PLAN.forSitting(2));
    var third = ClassPapers.of(PLAN.forSitting(3));
    var all = new HashSet<>(prints(first));
    all.addAll(prints(second));
    all.addAll(prints(third));
    assertThat(all).hasSize(3 * 80);
    assertThat(second.plan().origin()).contains("sitting 2").contains("Seed 8, generator 1");
  }

  @Test
  void whoeverComesLastChangesNobody() {
    var papers = ClassPapers.of(PLAN);
    var more = ClassPapers.of(PaperPlan.of(PaperSamples.blueprint(), PaperSamples.students(23), 8));
    assertThat(prints(more).subList(0, 80)).isEqualTo(prints(papers));
    // Numbers go with the student and not with the place in the list.
    var other = ClassPapers.of(PaperPlan.of(PaperSamples.blueprint(), ClassList.of("S7"), 8));
    assertThat(prints(other))
        .isEqualTo(
            papers.paper("s7").orElseThrow().questions().stream()
                .map(each -> print(each.exercise()))
                .toList());
  }

  @Test
  void aSeedGivesTheSameAgainAndAnotherSeedAnother() {
    assertThat(prints(ClassPapers.of(PLAN))).isEqualTo(prints(ClassPapers.of(PLAN)));
    var other = PaperPlan.of(PaperSamples.blueprint(), PaperSamples.students(20), 9);
    assertThat(prints(ClassPapers.of(other)))
        .doesNotContainAnyElementsOf(prints(ClassPapers.of(PLAN)));
  }

  @Test
  void theLanguageChangesNoNumbers() {
    var german = ClassPapers.of(PLAN.in(TextLanguage.GERMAN));
    assertThat(prints(german)).isEqualTo(prints(ClassPapers.of(PLAN)));
    assertThat(german.presentation().toText()).contains("Übungsaufgaben").contains("Startzahl 8");
  }

  @Test
  void everybodyHasTheSameTypesAndEachTypeItsTurn() {
    var plan = PaperPlan.of(PaperSamples.efficacy(3), PaperSamples.students(6), 3);
    var papers = ClassPapers.of(plan).papers();
    assertThat(papers)
        .allSatisfy(paper -> assertThat(types(paper)).isEqualTo(types(papers.get(0))));
    int kinds = plan.blueprint().lines().get(0).types(plan.catalogue()).size();
    assertThat(new HashSet<>(types(papers.get(0)))).hasSize(Math.min(3, kinds));
    var own = ClassPapers.of(plan.withTypesOfTheirOwn()).papers();
    assertThat(own.stream().map(ClassPapersTest::types).distinct().count()).isGreaterThan(1);
  }

  @Test
  void aResitAsksForTypesThatHaveNotBeenAsked() {
    var plan = PaperPlan.of(PaperSamples.efficacy(1), PaperSamples.students(1), 3);
    var first = types(ClassPapers.of(plan).papers().get(0));
    var second = types(ClassPapers.of(plan.forSitting(2)).papers().get(0));
    assertThat(second).doesNotContainAnyElementsOf(first);
  }

  @Test
  void anExamNamesWhatLiesOnTheTable() {
    var plan =
        PaperPlan.of(
            Blueprint.empty().with(CourseTopic.PROBIT, Difficulty.BASIC, 2, 1),
            PaperSamples.students(1),
            5);
    var exam = ClassPapers.of(plan.as(PaperKind.EXAM)).papers().get(0);
    assertThat(exam.questions()).allMatch(each -> each.exercise().context().exam());
    assertThat(exam.aids()).isNotEmpty();
    for (var aid : exam.aids()) {
      assertThat(PaperAids.sheet(aid).sheet(TextLanguage.GERMAN).toSvg()).contains("<svg");
    }
    assertThat(ClassPapers.of(plan).papers().get(0).aids()).isEmpty();
  }

  @Test
  void marksOfPartsAddUp() {
    for (var question : ClassPapers.of(PLAN).papers().get(0).questions()) {
      double sum = 0;
      for (int part = 0; part < question.solution().size(); part++) {
        assertThat(question.marks(part) * 2).isEqualTo(Math.rint(question.marks(part) * 2));
        sum += question.marks(part);
      }
      assertThat(sum).isEqualTo(question.marks());
    }
  }

  @Test
  void someOfTheClassKeepTheirPapers() {
    var papers = ClassPapers.of(PLAN);
    var some = papers.only(List.of("S9", "s2"));
    assertThat(some.papers()).extracting(each -> each.student().id()).containsExactly("S2", "S9");
    assertThat(some.paper("S9")).isEqualTo(papers.paper("S9"));
    assertThat(some.paper("S3")).isEmpty();
    assertThatThrownBy(() -> papers.only(List.of("S99"))).isInstanceOf(InputProblem.class);
  }

  @Test
  void sittingsAreCountedFromOne() {
    assertThatThrownBy(() -> PLAN.forSitting(0)).isInstanceOf(InputProblem.class);
    assertThatThrownBy(() -> PLAN.forSitting(21)).isInstanceOf(InputProblem.class);
  }

  @Test
  void itCanBeCancelled() {
    Progress never = (what, done, total) -> false;
    assertThatThrownBy(() -> ClassPapers.of(PLAN, never)).isInstanceOf(CancellationException.class);
  }
}
