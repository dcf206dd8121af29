package felloe.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Offset;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.Segment;
import felloe.plate.DemoPlates;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every plan that is spoilt on purpose must be refused, for the right reason. */
class SweepCheckTest {

  private static final FeedTable FEEDS = FeedTable.standard();
  private static final Plate PLATE = plate();

  private static Plate plate() {
    return CutPlates.of(
        CutPlates.PLYWOOD,
        6,
        RandomShapes.roundedRectangle(220, 140, 25),
        List.of(
            new Hole("H1", HoleRole.OTHER, new Point(80, 0), 5, Place.BUILT_IN),
            new Hole("B1", HoleRole.BORE, new Point(-80, 0), 16, Place.BUILT_IN)),
        RandomShapes.roundedRectangle(90, 60, 12));
  }

  private static CutSetup setup() {
    return CutSetup.router(PLATE, 4, 2, FEEDS);
  }

  private static CutPlan good() {
    return CutPlan.of(PLATE, setup());
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

  /** The good plan with the moves of one operation changed. */
  private static CutPlan changed(String title, UnaryOperator<List<Move>> change) {
    List<Operation> operations = new ArrayList<>();
    for (Operation o : good().operations()) {
      boolean here = o.title().startsWith(title);
      operations.add(
          here ? new Operation(o.title(), o.tool(), o.speed(), change.apply(o.moves())) : o);
    }
    return with(good(), operations);
  }

  private static String refusals(CutPlan plan) {
    return SweepCheck.of(plan, 4).failures().stream()
        .map(Finding::rule)
        .collect(Collectors.joining(" "));
  }

  private static boolean through(Move move) {
    return move instanceof Move.Cut cut && Math.max(cut.fromZ(), cut.toZ()) < -6.2;
  }

  /** Where the longest cut at full depth stands in a list. */
  private static int longest(List<Move> moves) {
    int best = -1;
    double length = 0;
    for (int i = 0; i < moves.size(); i++) {
      if (through(moves.get(i)) && ((Move.Cut) moves.get(i)).along().length() > length) {
        best = i;
        length = ((Move.Cut) moves.get(i)).along().length();
      }
    }
    return best;
  }

  @Test
  void theGoodPlanPassesAndEveryFindingSaysWhatItHeld() {
    SweepResult result = SweepCheck.of(good(), 4);
    assertTrue(result.passed(), () -> result.failures().toString());
    assertEquals(11, result.findings().size());
    assertTrue(result.worstGouge() < 2e-4);
    assertTrue(result.worstRemaining() < 1e-3, "left " + result.worstRemaining());
  }

  @Test
  void theWrongSideOfTheLineIsRefused() {
    // The outline is cut as if it were the edge of a part two cutter radii smaller.
    Plate inner = CutPlates.of(Offset.of(PLATE.outline(), -4).get(0).outer());
    List<Operation> operations = new ArrayList<>(good().operations());
    List<Operation> wrong = CutPlan.of(inner, CutSetup.router(inner, 4, 2, FEEDS)).operations();
    operations.set(operations.size() - 1, wrong.get(0));
    String refused = refusals(with(good(), operations));
    assertTrue(refused.contains("sweep-gouge") && refused.contains("sweep-missed"), refused);
  }

  @Test
  void aMissingPassIsRefused() {
    for (String title : List.of("window", "outline", "bore")) {
      CutPlan plan =
          changed(
              title,
              moves -> {
                int first = 0;
                while (!through(moves.get(first))) {
                  first++;
                }
                return moves.subList(0, first);
              });
      assertTrue(refusals(plan).contains("sweep-missed"), title);
    }
  }

  @Test
  void aMissingWindowIsRefusedThoughALeftOverSaysSo() {
    CutPlan plan = changed("window", moves -> moves.subList(0, 1));
    Compensation told = plan.compensation();
    CutLine window = told.lines().get(1);
    LeftOver whole =
        new LeftOver(
            window.feature(), felloe.geometry.Region.of(window.finish()), Point.ORIGIN, 30);
    CutPlan claimed =
        new CutPlan(
            plan.plate(),
            plan.setup(),
            plan.surroundings(),
            new Compensation(told.lines(), List.of(whole), List.of()),
            plan.height(),
            plan.operations(),
            plan.tabs(),
            plan.figures(),
            plan.notes(),
            plan.cautions());
    assertTrue(refusals(claimed).contains("sweep-missed"));
  }

  @Test
  void aSkippedTabIsRefused() {
    CutPlan without = CutPlan.of(PLATE, setup().with(CutSetup.Tabs.NONE));
    CutPlan claimed = with(good(), without.operations());
    assertTrue(refusals(claimed).contains("sweep-tabs"));
    // A plan that does not even claim its tabs.
    CutPlan plan = good();
    CutPlan bare =
        new CutPlan(
            plan.plate(),
            plan.setup(),
            plan.surroundings(),
            plan.compensation(),
            plan.height(),
            without.operations(),
            List.of(),
            plan.figures(),
            plan.notes(),
            plan.cautions());
    assertEquals("sweep-tabs", refusals(bare));
  }

  @Test
  void oneTabCutThroughIsRefused() {
    CutPlan plan =
        changed(
            "outline",
            moves -> {
              List<Move> flat = new ArrayList<>();
              boolean cut = false;
              for (Move move : moves) {
                boolean over =
                    move instanceof Move.Cut c && c.fromZ() == c.toZ() && c.fromZ() == -5;
                if (over && !cut) {
                  Move.Cut c = (Move.Cut) move;
                  flat.add(new Move.Cut(c.along(), -6.3, -6.3, c.feed()));
                  cut = true;
                } else {
                  flat.add(move);
                }
              }
              return flat;
            });
    assertTrue(refusals(plan).contains("sweep-tabs"));
  }

  @Test
  void aSwappedArcIsRefused() {
    for (String title : List.of("outline", "window", "bore")) {
      CutPlan plan =
          changed(
              title,
              moves -> {
                List<Move> swapped = new ArrayList<>(moves);
                for (int i = 0; i < moves.size(); i++) {
                  if (through(moves.get(i))
                      && ((Move.Cut) moves.get(i)).along() instanceof Arc arc
                      && arc.length() > 3.5) {
                    Move.Cut c = (Move.Cut) moves.get(i);
                    swapped.set(i, new Move.Cut(other(arc), c.fromZ(), c.toZ(), c.feed()));
                    return swapped;
                  }
                }
                throw new AssertionError("no arc in " + title);
              });
      assertFalse(refusals(plan).isEmpty(), title);
    }
  }

  private static Arc other(Arc arc) {
    return arc.isCircle()
        ? arc.reversed()
        : Arc.about(arc.centre(), arc.from(), arc.to(), arc.sweep() < 0);
  }

  @Test
  void aRadiusOffByATwentiethIsRefused() {
    for (double off : new double[] {0.1, -0.1}) {
      CutSetup other = CutSetup.router(PLATE, 4 + off, 2, FEEDS);
      CutPlan plan = with(good(), CutPlan.of(PLATE, other).operations());
      String refused = refusals(plan);
      assertTrue(refused.contains(off > 0 ? "sweep-missed" : "sweep-gouge"), refused);
    }
    // One arc of the path alone.
    CutPlan plan =
        changed(
            "outline",
            moves -> {
              List<Move> bent = new ArrayList<>(moves);
              for (int i = 0; i < moves.size(); i++) {
                if (through(moves.get(i))
                    && ((Move.Cut) moves.get(i)).along() instanceof Arc arc
                    && arc.radius() > 20) {
                  Move.Cut c = (Move.Cut) moves.get(i);
                  double rise = arc.radius() * (1 - Math.cos(arc.sweep() / 2)) - 0.05;
                  Arc flat = Arc.withRise(arc.from(), arc.to(), Math.signum(arc.sweep()) * rise);
                  bent.set(i, new Move.Cut(flat, c.fromZ(), c.toZ(), c.feed()));
                  return bent;
                }
              }
              throw new AssertionError("no arc");
            });
    assertFalse(refusals(plan).isEmpty());
  }

  @Test
  void theOtherDirectionIsRefused() {
    CutPlan other = CutPlan.of(PLATE, setup().with(CutDirection.CONVENTIONAL));
    assertTrue(refusals(with(good(), other.operations())).contains("sweep-side"));
  }

  @Test
  void straightDownIntoTheStockIsRefused() {
    CutPlan sunk =
        changed(
            "window",
            moves -> {
              List<Move> straight = new ArrayList<>(moves);
              Move.Sink sink = (Move.Sink) moves.get(1);
              straight.set(1, new Move.Sink(sink.at(), -1, 100));
              return straight;
            });
    assertTrue(refusals(sunk).contains("sweep-plunge"));
    CutPlan steep =
        with(
            good(),
            CutPlan.of(PLATE, setup().with(new CutSetup.Entry(Math.toRadians(30), 2)))
                .operations());
    assertTrue(refusals(steep).contains("sweep-plunge"));
  }

  @Test
  void tooDeepIsRefused() {
    CutSetup.Depths d = setup().depths();
    CutSetup deep =
        setup().with(new CutSetup.Depths(6, 1, 3, d.stepDown(), d.clearance(), d.approach()));
    String refused = refusals(with(good(), CutPlan.of(PLATE, deep).operations()));
    assertTrue(refused.contains("sweep-depth"), refused);
  }

  @Test
  void aHoleDrilledWrongIsRefused() {
    List<UnaryOperator<Move.Drill>> slips =
        List.of(
            d -> new Move.Drill(d.at().plus(new Point(0.05, 0)), d.bottom(), 0, d.feed()),
            d -> new Move.Drill(new Point(0, 0), d.bottom(), 0, d.feed()),
            d -> new Move.Drill(d.at(), -6, 0, d.feed()),
            d -> new Move.Drill(d.at(), -12, 0, d.feed()));
    for (UnaryOperator<Move.Drill> slip : slips) {
      CutPlan plan =
          changed("drill", moves -> List.of(moves.get(0), slip.apply((Move.Drill) moves.get(1))));
      assertFalse(refusals(plan).isEmpty());
    }
    List<Operation> operations = new ArrayList<>(good().operations());
    Operation drill = operations.get(0);
    CutterTool thick = new CutterTool("6 mm drill", CutterTool.Kind.DRILL, 6, 2);
    operations.set(0, new Operation(drill.title(), thick, drill.speed(), drill.moves()));
    assertEquals("sweep-holes", refusals(with(good(), operations)));
    operations.remove(0);
    assertTrue(refusals(with(good(), operations)).contains("sweep-missed"));
  }

  @Test
  void aJumpInTheMovesIsRefused() {
    CutPlan plan =
        changed(
            "outline",
            moves -> {
              List<Move> gone = new ArrayList<>(moves);
              gone.remove(longest(moves));
              return gone;
            });
    assertTrue(refusals(plan).contains("sweep-way"));
    CutPlan bad = changed("outline", moves -> moves.subList(1, moves.size()));
    assertTrue(refusals(bad).contains("sweep-way"));
  }

  @Test
  void aCutAcrossThePlateIsRefused() {
    CutPlan plan =
        changed(
            "outline",
            moves -> {
              List<Move> more = new ArrayList<>(moves);
              Move.Cut last = (Move.Cut) moves.get(moves.size() - 1);
              Segment back = new Line(last.along().to(), new Point(80, 40));
              // The lead off ends above the stock, so the wrong cut goes down again on its way.
              more.add(new Move.Cut(back, last.toZ(), last.fromZ(), 500));
              return more;
            });
    assertTrue(refusals(plan).contains("sweep-gouge"));
    // A pocket in the middle of the material, far from every edge.
    CutPlan inside =
        changed(
            "bore",
            moves -> {
              List<Move> more = new ArrayList<>(moves);
              Point at = new Point(80, 40);
              more.add(new Move.Travel(at));
              more.add(new Move.Sink(at, 0.5, 100));
              more.add(new Move.Cut(new Line(at, new Point(90, 40)), 0.5, -0.5, 500));
              return more;
            });
    assertTrue(refusals(inside).contains("sweep-gouge"));
  }

  @Test
  void tooFewDecimalsAreRefused() {
    // With one decimal chained arcs break the 0.002 mm of NISTIR 6556, section 3.5.3.2.
    CutPlan plan = CutPlan.of(DemoPlates.heron(), CutSetup.router(DemoPlates.heron(), 4, 2, FEEDS));
    assertTrue(SweepCheck.of(plan, 4).passed());
    assertTrue(SweepCheck.of(plan, 6).passed());
    assertFalse(SweepCheck.of(plan, 1).passed());
  }

  @Test
  void aBeamOnTheLineItselfIsRefused() {
    CutSetup laser = CutSetup.beam(CutProcess.LASER, PLATE, 0.2, 900);
    CutPlan plan = CutPlan.of(PLATE, laser);
    assertTrue(SweepCheck.of(plan, 3).passed());
    CutSetup thin = CutSetup.beam(CutProcess.LASER, PLATE, 0.02, 900);
    CutPlan uncompensated = with(plan, CutPlan.of(PLATE, thin).operations());
    assertTrue(refusals(uncompensated).contains("sweep-gouge"));
  }
}
