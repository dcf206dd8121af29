package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.EdgeFinish;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Making;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a V tool cuts into the face: the planner's passes pass, and spoilt ones are refused. */
class FaceCheckTest {

  private static final FeedTable FEEDS = FeedTable.standard();
  private static final EdgeFinish CHAMFER = new EdgeFinish(0, 1);
  private static final EdgeFinish BROKEN = new EdgeFinish(0.4, 0);

  /** A tick of two lines and a ring, at a place. */
  private static Engraving engraving(Face face, Point at, double depth) {
    List<Segment> tick =
        List.of(
            new Line(at, at.plus(new Point(2, -3))),
            new Line(at.plus(new Point(2, -3)), at.plus(new Point(7, 4))));
    List<Segment> ring = List.of(Arc.of(at.plus(new Point(12, 0)), 2, 0, 2 * Math.PI));
    return new Engraving(
        "E1", "tick", face, List.of(tick, ring), 0.5, depth, Place.of("ruff.yaml", 30, 3));
  }

  private static Plate plate(EdgeFinish edges, Engraving... engravings) {
    Plate bare =
        CutPlates.of(
            CutPlates.PLYWOOD,
            6,
            RandomShapes.roundedRectangle(220, 140, 25),
            List.of(new Hole("H1", HoleRole.OTHER, new Point(80, 0), 5, Place.BUILT_IN)),
            RandomShapes.roundedRectangle(90, 60, 12));
    return new Plate(
        bare.name(),
        bare.title(),
        bare.revision(),
        bare.outline(),
        bare.windows(),
        bare.holes(),
        bare.boltCircles(),
        bare.hub(),
        bare.stock(),
        new Making(6, 2, 0, Optional.empty(), edges, Optional.empty(), Optional.empty()),
        bare.limits(),
        bare.notes(),
        bare.joints(),
        bare.load(),
        List.of(engravings),
        List.of(),
        List.of(),
        java.util.Optional.empty());
  }

  private static Plate both(EdgeFinish edges) {
    return plate(edges, engraving(Face.FRONT, new Point(-80, 10), 0.3));
  }

  private static CutSetup setup(Plate plate, double degrees) {
    return CutSetup.router(plate, 4, 2, FEEDS)
        .with(VTool.of(degrees, 0.2, List.of(plate), FEEDS, 24000));
  }

  private static CutPlan plan(Plate plate, double degrees) {
    return CutPlan.of(plate, setup(plate, degrees));
  }

  private static String refusals(CutPlan plan) {
    return SweepCheck.of(plan, 4).failures().stream()
        .map(Finding::rule)
        .collect(Collectors.joining(" "));
  }

  private static CutPlan with(CutPlan plan, List<Operation> operations) {
    return new CutPlan(
        plan.plate(),
        plan.setup(),
        plan.surroundings(),
        plan.compensation(),
        plan.height(),
        operations,
        plan.tabs(),
        plan.figures(),
        plan.notes(),
        plan.cautions());
  }

  /** The plan with the moves of one operation changed. */
  private static CutPlan changed(CutPlan plan, String title, UnaryOperator<Move> change) {
    List<Operation> operations = new ArrayList<>();
    boolean found = false;
    for (Operation o : plan.operations()) {
      boolean here = o.title().startsWith(title);
      found |= here;
      operations.add(
          here
              ? new Operation(
                  o.title(), o.tool(), o.speed(), o.moves().stream().map(change).toList())
              : o);
    }
    assertTrue(found, title);
    return with(plan, operations);
  }

  private static UnaryOperator<Move> deeper(double by) {
    return move -> {
      if (move instanceof Move.Sink s) {
        return new Move.Sink(s.at(), s.toZ() - by, s.feed());
      }
      return move instanceof Move.Cut c
          ? new Move.Cut(c.along(), c.fromZ() - by, c.toZ() - by, c.feed())
          : move;
    };
  }

  private static UnaryOperator<Move> moved(RigidTransform motion) {
    return move -> {
      if (move instanceof Move.Travel t) {
        return new Move.Travel(motion.of(t.to()));
      } else if (move instanceof Move.Sink s) {
        return new Move.Sink(motion.of(s.at()), s.toZ(), s.feed());
      }
      Move.Cut c = (Move.Cut) move;
      Segment along = c.along().moved(motion);
      return new Move.Cut(along, c.fromZ(), c.toZ(), c.feed());
    };
  }

  @ParameterizedTest
  @ValueSource(doubles = {30, 60, 90, 120})
  void linesAndBrokenEdgesAreCutByEveryTool(double degrees) {
    for (CutDirection direction : CutDirection.values()) {
      Plate plate = both(BROKEN);
      CutPlan plan = CutPlan.of(plate, setup(plate, degrees).with(direction));
      SweepResult proof = SweepCheck.of(plan, 4);
      assertEquals("", refusals(plan));
      assertTrue(proof.worstGouge() < 1e-3, "gouge " + proof.worstGouge());
      List<String> titles = plan.operations().stream().map(Operation::title).toList();
      assertEquals(
          List.of("engrave E1", "break edge of window W1", "break edge of outline"),
          titles.subList(0, 3));
      assertEquals(CutterTool.Kind.DRILL, plan.operations().get(3).tool().kind());
    }
  }

  @Test
  void neitherFaceNorWallLosesMoreThanIsWished() {
    // Of a cone with half angle h whose flat of width t stays e off the edge, tip at depth d: the
    // face loses d tan h - e, the wall d - e / tan h.
    for (double degrees : new double[] {30, 60, 90, 120}) {
      VTool tool = VTool.of(degrees, 0.2, List.of(plate(BROKEN)), FEEDS, 24000);
      double slope = Math.tan(Math.toRadians(degrees / 2));
      double d = tool.depth(0.4);
      double e = tool.offset() - 0.1;
      double face = d * slope - e;
      double wall = d - e / slope;
      assertEquals(0.4, Math.max(face, wall), 1e-12, "" + degrees);
      assertTrue(face > 0 && wall > 0);
    }
    VTool square = VTool.of(90, 0.2, List.of(plate(CHAMFER)), FEEDS, 24000);
    assertEquals(1.2, square.depth(1), 1e-12);
    assertEquals(0.3, square.offset(), 1e-12);
    assertEquals(2.6, square.width(), 1e-12);
  }

  @Test
  void aChamferIsCutByAToolOfNinetyDegreesAlone() {
    CutPlan plan = plan(both(CHAMFER), 90);
    assertEquals("", refusals(plan));
    assertTrue(plan.operations().stream().anyMatch(o -> o.title().equals("chamfer outline")));
    CutPlan sharp = plan(both(CHAMFER), 60);
    assertEquals("", refusals(sharp));
    assertTrue(sharp.operations().stream().noneMatch(o -> o.title().startsWith("chamfer")));
    assertTrue(
        sharp.notes().stream().anyMatch(n -> n.text().contains("a tool of 90 degrees would")));
  }

  @Test
  void anEngravingTooDeepIsRefused() {
    CutPlan plan = plan(both(EdgeFinish.NONE), 60);
    assertEquals("", refusals(plan));
    assertEquals("sweep-engraving", refusals(changed(plan, "engrave", deeper(0.02))));
    assertEquals("sweep-face-missed", refusals(changed(plan, "engrave", deeper(-0.02))));
  }

  @Test
  void anEngravingBesideItsPlaceIsRefused() {
    CutPlan plan = plan(both(EdgeFinish.NONE), 60);
    String beside = refusals(changed(plan, "engrave", moved(RigidTransform.shift(0.2, 0))));
    assertTrue(beside.contains("sweep-edge") && beside.contains("sweep-face-missed"), beside);
    // In the middle of the window it takes nothing from the plate, and the line is missed.
    String window = refusals(changed(plan, "engrave", moved(RigidTransform.shift(80, -10))));
    assertEquals("sweep-face-missed", window);
    // Across the outline.
    String edge = refusals(changed(plan, "engrave", moved(RigidTransform.shift(-30, 0))));
    assertTrue(edge.contains("sweep-edge"), edge);
  }

  @Test
  void anEngravingThatLeavesThePlateByItsWidthIsRefused() {
    // The ring's edge comes within 1.5 mm of the window's; at 1.6 mm a cone of 90 degrees has 3.4.
    Plate plate = plate(EdgeFinish.NONE, engraving(Face.FRONT, new Point(-60.5, 0), 1.6));
    CutRefused refused = assertThrows(CutRefused.class, () -> plan(plate, 90));
    assertTrue(refused.getMessage().contains("is too deep here"), refused.getMessage());
    assertTrue(refused.getMessage().contains("3.4 mm wide"), refused.getMessage());
    assertEquals(30, refused.faults().get(0).place().line());
    CutPlan sharp = plan(plate, 60);
    assertEquals("", refusals(sharp));
    // The same moves with the blunter tool.
    CutterTool blunt = VTool.of(90, 0.2, List.of(plate), FEEDS, 24000).tool();
    assertEquals("sweep-engraving", refusals(withTool(sharp, blunt)));
  }

  private static CutPlan withTool(CutPlan plan, CutterTool tool) {
    return with(
        plan,
        plan.operations().stream()
            .map(
                o ->
                    o.tool().kind() == CutterTool.Kind.V_TOOL
                        ? new Operation(o.title(), tool, o.speed(), o.moves())
                        : o)
            .toList());
  }

  @Test
  void aLineThatIsLeftOutIsRefused() {
    CutPlan plan = plan(both(EdgeFinish.NONE), 60);
    List<Operation> operations = new ArrayList<>(plan.operations());
    Operation engraved = operations.get(0);
    List<Move> moves = new ArrayList<>(engraved.moves());
    moves.remove(3);
    operations.set(0, new Operation(engraved.title(), engraved.tool(), engraved.speed(), moves));
    assertTrue(refusals(with(plan, operations)).contains("sweep-face-missed"));
    operations.remove(0);
    assertEquals("sweep-face-missed", refusals(with(plan, operations)));
  }

  @Test
  void whatIsOnTheBackIsNotCutFromTheFront() {
    Plate back = plate(BROKEN, engraving(Face.BACK, new Point(-80, 10), 0.3));
    CutPlan plan = plan(back, 60);
    assertEquals("", refusals(plan));
    assertTrue(plan.operations().stream().noneMatch(o -> o.title().startsWith("engrave")));
    List<Operation> operations = new ArrayList<>(plan.operations());
    operations.add(0, plan(both(BROKEN), 60).operations().get(0));
    assertTrue(refusals(with(plan, operations)).contains("sweep-edge"));
  }

  @ParameterizedTest
  @CsvSource({"0.03, sweep-edge", "-0.03, sweep-face-missed", "1, sweep-edge"})
  void aChamferTooDeepOrNotDeepEnoughIsRefused(double by, String rule) {
    CutPlan plan = plan(both(CHAMFER), 90);
    for (String what : List.of("chamfer window", "chamfer outline")) {
      String refused = refusals(changed(plan, what, deeper(by)));
      assertTrue(refused.contains(rule), what + " " + refused);
    }
  }

  @Test
  void aChamferOnTheWrongSideOrBesideItsEdgeIsRefused() {
    Plate plate = both(CHAMFER);
    CutPlan plan = plan(plate, 90);
    // The path that a window of the outline's form would have: in the plate.
    CutPlan wrong = plan(plate(CHAMFER, engraving(Face.FRONT, new Point(-80, 10), 0.3)), 90);
    Contour inward = RandomShapes.roundedRectangle(219.4, 139.4, 24.7);
    List<Move> moves = new ArrayList<>();
    Point start = inward.segments().get(0).from();
    moves.add(new Move.Travel(start));
    moves.add(new Move.Sink(start, -1.2, 100));
    inward.segments().forEach(s -> moves.add(new Move.Cut(s, -1.2, -1.2, 200)));
    List<Operation> operations = new ArrayList<>();
    for (Operation o : wrong.operations()) {
      boolean outline = o.title().equals("chamfer outline");
      operations.add(outline ? new Operation(o.title(), o.tool(), o.speed(), moves) : o);
    }
    assertTrue(refusals(with(plan, operations)).contains("sweep-edge"));
    String beside =
        refusals(changed(plan, "chamfer outline", moved(RigidTransform.shift(0.05, 0))));
    assertTrue(beside.contains("sweep-edge") && beside.contains("sweep-face-missed"), beside);
    CutterTool blunt = VTool.of(100, 0.2, List.of(plate), FEEDS, 24000).tool();
    assertTrue(refusals(withTool(plan, blunt)).contains("sweep-edge"));
    CutterTool sharp = VTool.of(80, 0.2, List.of(plate), FEEDS, 24000).tool();
    assertTrue(refusals(withTool(plan, sharp)).contains("sweep-face-missed"));
  }

  @Test
  void onlyTheEdgesOfOutlineAndWindowsAreBroken() {
    CutPlan plan = plan(both(CHAMFER), 90);
    Arc round = Arc.of(new Point(80, 0), 2.2, 0, 2 * Math.PI);
    List<Operation> operations = new ArrayList<>(plan.operations());
    Operation first = operations.get(0);
    operations.add(
        0,
        new Operation(
            "chamfer H1",
            first.tool(),
            first.speed(),
            List.of(
                new Move.Travel(round.from()),
                new Move.Sink(round.from(), -1.2, 100),
                new Move.Cut(round, -1.2, -1.2, 200))));
    assertTrue(refusals(with(plan, operations)).contains("sweep-edge"));
  }

  @Test
  void aStabWithoutACutIsRefused() {
    CutPlan plan = plan(both(CHAMFER), 90);
    List<Operation> operations = new ArrayList<>(plan.operations());
    Operation first = operations.get(0);
    List<Move> moves = new ArrayList<>(first.moves());
    moves.add(new Move.Travel(new Point(80, 40)));
    moves.add(new Move.Sink(new Point(80, 40), -1, 100));
    operations.set(0, new Operation(first.title(), first.tool(), first.speed(), moves));
    assertEquals("sweep-way", refusals(with(plan, operations)));
    moves.add(new Move.Travel(new Point(90, 40)));
    operations.set(0, new Operation(first.title(), first.tool(), first.speed(), moves));
    assertEquals("sweep-way", refusals(with(plan, operations)));
  }

  @Test
  void aSharpCornerIsLeftToHandsAndSaid() {
    Plate bare = both(BROKEN);
    Contour outline =
        Contour.polygon(
            List.of(
                new Point(0, 0),
                new Point(200, 0),
                new Point(200, 80),
                new Point(80, 80),
                new Point(80, 200),
                new Point(0, 200)));
    Plate ell =
        new Plate(
            bare.name(),
            bare.title(),
            bare.revision(),
            outline,
            List.of(),
            List.of(),
            List.of(),
            bare.hub(),
            bare.stock(),
            bare.making(),
            List.of(),
            List.of());
    CutPlan plan = plan(ell, 90);
    assertEquals("", refusals(plan));
    assertTrue(
        plan.notes().stream().anyMatch(n -> n.text().startsWith("in 1 corner or narrow place")));
  }

  @Test
  void aChamferWiderThanTheSlotIsRefused() {
    Plate plate = both(new EdgeFinish(0, 2.9));
    CutSetup thin =
        CutSetup.router(plate, 3, 2, FEEDS).with(VTool.of(90, 0.2, List.of(plate), FEEDS, 24000));
    CutRefused refused = assertThrows(CutRefused.class, () -> CutPlan.of(plate, thin));
    assertEquals(CutFigure.CUTTER, refused.faults().get(0).figure().orElseThrow());
  }

  @Test
  void aDeepLineTakesSeveralPasses() {
    Plate plate = plate(EdgeFinish.NONE, engraving(Face.FRONT, new Point(-80, 10), 2));
    CutPlan plan = plan(plate, 20);
    assertEquals("", refusals(plan));
    long downs =
        plan.operations().get(0).moves().stream().filter(m -> m instanceof Move.Sink).count();
    assertTrue(downs > 2, "passes " + downs);
  }
}
