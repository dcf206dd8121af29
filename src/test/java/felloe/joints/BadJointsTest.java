package felloe.joints;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import felloe.plate.BadInput;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What does not go together is told at its place, all of it in one run. */
class BadJointsTest {

  private static List<String> complaints(String joints, String... sets) {
    return assertThrows(BadInput.class, () -> Shapes.plan("joints:\n" + joints, sets)).lines();
  }

  private static void says(String expected, String joints, String... sets) {
    assertEquals(List.of(expected), complaints(joints, sets));
  }

  @Test
  void anUnknownThreadIsToldWithThoseThatAreKnown() {
    says(
        "redshank.yaml:13:34 joints[0].screw.thread: 'M7' is not a known thread; known:"
            + " M3, M4, M5, M6, M8, M10, M12, 8-32, 10-24, 10-32, 1/4-20, 1/4-28, 5/16-18,"
            + " 5/16-24, 3/8-16, 3/8-24",
        "  - {holes: hub, screw: {thread: M7}}\n");
  }

  @Test
  void aThreadThatDoesNotEnterItsHoleIsToldWithTheHole() {
    says(
        "redshank.yaml:13:34 joints[0].screw.thread: 'M6' must enter its holes: it is 6 mm, and H1"
            + " is 5.5 mm; drill larger holes, or write a smaller thread",
        "  - {holes: hub, screw: {thread: M6}}\n" + "  - {holes: grip}\n",
        "bolt-circles[0].count=1");
  }

  @Test
  void anUnknownClassAndOneOfAnotherKindAreToldWithThoseOfItsKind() {
    says(
        "redshank.yaml:13:33 joints[0].screw.class: '9.8' is not a known strength class; known for"
            + " metric screws: 8.8, 10.9, 12.9, A2-70",
        "  - {holes: hub, screw: {class: 9.8}}\n");
    says(
        "redshank.yaml:13:33 joints[0].screw.class: 'grade-8' is no class of M5; known for metric"
            + " screws: 8.8, 10.9, 12.9, A2-70",
        "  - {holes: hub, screw: {class: grade-8}}\n");
    says(
        "redshank.yaml:13:48 joints[0].screw.class: '8.8' is no class of 10-32; known for inch"
            + " screws: grade-5, grade-8",
        "  - {holes: hub, screw: {thread: 10-32, class: 8.8}}\n");
  }

  @Test
  void aPartThatIsNotKnownForAThreadIsTold() {
    says(
        "redshank.yaml:13:50 joints[0].washer: cannot be used: no large washer is known for 10-32;"
            + " write another one",
        "  - {holes: hub, screw: {thread: 10-32}, washer: large}\n");
    says(
        "redshank.yaml:13:54 joints[0].into.nut: cannot be used: no lock nut is known for 10-32;"
            + " write another one",
        "  - {holes: hub, screw: {thread: 10-32}, into: {nut: lock}}\n");
  }

  @Test
  void aHeadOrWasherThatFallsThroughItsHoleIsTold() {
    says(
        "redshank.yaml:13:47 joints[0].washer: has nothing to bear on: its washer of 10 mm lies on"
            + " a hole of 10 mm; write a larger washer",
        "  - {holes: hub, screw: {thread: M5}, washer: plain}\n",
        "bolt-circles[0].diameter=10");
  }

  @Test
  void headsAndNutsLetInDeeperThanTheirPartAreTold() {
    assertEquals(
        List.of(
            "redshank.yaml:13:33 joints[0].screw.sunk: '12 mm' must be less than 12 mm here (the"
                + " part it is let into); lower it",
            "redshank.yaml:13:63 joints[0].into.sunk: '13 mm' must be less than 12 mm here (the"
                + " part it is let into); lower it"),
        complaints("  - {holes: grip, screw: {sunk: 12}, into: {nut: plain, sunk: 13}}\n"));
  }

  @Test
  void aStackBeyondEveryStandardScrewIsTold() {
    says(
        "redshank.yaml:13:5 joints[0]: clamps 126 mm, and no standard screw is long enough; take"
            + " parts away, or write screw.length",
        "  - {holes: hub, back: [120]}\n");
  }

  @Test
  void aHoleThatNoMetricScrewSuitsAsksForItsThread() {
    says(
        "redshank.yaml:13:13 joints[0].holes: 'H1' needs a thread: no metric screw suits a hole of"
            + " 7.5 mm; write screw.thread",
        "  - {holes: hub}\n",
        "bolt-circles[0]={count: 1, pcd: 70, diameter: 7.5}");
  }

  @Test
  void allOfThemComeInOneRun() {
    assertEquals(
        3,
        complaints(
                "  - {holes: hub, screw: {class: 7, thread: M5}, washer: large}\n"
                    + "  - {holes: grip, screw: {thread: M99}}\n"
                    + "  - {holes: [Z], screw: {thread: M8}}\n")
            .size());
  }
}
