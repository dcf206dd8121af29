package felloe.jig;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Requested;
import felloe.shape.ShapeFile;
import felloe.solid.SelfCrossing;
import felloe.yaml.Overrides;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JigMakerTest {

  private static final Place HERE = Place.ofOption("--here");

  private static Plate plate(String name, String... sets) {
    Path file = Path.of("shapes/" + name + ".yaml");
    return ShapeFile.read(
        file, new Overrides(HERE, List.of(sets)), new HubCatalogue(Path.of("shapes")));
  }

  private static final Plate HERON = plate("heron");

  private static JigWish wish(boolean bushes, boolean all, String... pins) {
    return new JigWish(
        Optional.empty(),
        Optional.empty(),
        bushes,
        all,
        pins.length == 0 ? Optional.empty() : Optional.of(new Requested<>(List.of(pins), HERE)),
        Optional.empty());
  }

  private static JigPlan plan(Plate plate, JigWish wish) {
    return JigMaker.of(plate, Optional.empty(), wish);
  }

  private static String refusal(Plate plate, JigWish wish) {
    return assertThrows(BadInput.class, () -> plan(plate, wish)).getMessage();
  }

  @Test
  void everyPieceLiesOnTheBedAndIsFreeOfCrossings() {
    for (String name : List.of("heron", "bittern", "dunlin")) {
      for (boolean all : new boolean[] {false, true}) {
        for (JigPiece piece : plan(plate(name), wish(all, all)).pieces()) {
          assertTrue(piece.size().x() <= 210 && piece.size().y() <= 210, name + piece.size());
          assertEquals(0, piece.body().extent().least().z(), 1e-9);
          assertEquals(Optional.empty(), SelfCrossing.of(piece.body()), name + piece.name());
        }
      }
    }
  }

  @Test
  void piecesTogetherAreTheTemplateLessTheGapsOfItsDovetailsAndItsLetters() {
    JigPlan plan = plan(HERON, JigWish.USUAL);
    double whole = HERON.region().properties().area() * JigWish.TEMPLATE;
    double sum = plan.template().stream().mapToDouble(p -> p.body().volume()).sum();
    int tails = plan.template().stream().mapToInt(JigPiece::joints).sum() / 2;
    assertTrue(tails >= 5, "dovetails: " + tails);
    assertTrue(sum < whole, sum + " of " + whole);
    // A gap of 0.2 mm along some 40 mm of each socket, 4 mm high; letters 0.6 mm deep.
    assertTrue(sum > whole - tails * 0.2 * 45 * 4 - 4 * 60, sum + " of " + whole);
  }

  /** What keeps the scale: the piece with the socket ends where the faces of the other end. */
  @Test
  void facesBesideADovetailTouch() {
    List<JigPiece> template = plan(HERON, JigWish.USUAL).template();
    double cut = template.get(1).body().extent().least().x();
    assertTrue(template.get(0).body().vertices().stream().filter(v -> v.x() == cut).count() >= 8);
    assertTrue(template.get(0).body().extent().most().x() > cut + 2);
  }

  /** The spigot is on one piece alone: neither a cut nor a tail runs into it. */
  @Test
  void theSpigotStaysWhole() {
    for (String name : List.of("heron", "bittern", "dunlin")) {
      List<JigPiece> drill = plan(plate(name), wish(true, true)).drill();
      assertTrue(drill.size() > 1, name);
      assertEquals(1, drill.stream().filter(piece -> piece.size().z() > 12.5).count(), name);
    }
  }

  @Test
  void errorsAddUpToTheWorstAndTheirSquaresToTheUsual() {
    JigPlan plan = plan(HERON, JigWish.USUAL);
    assertEquals(6, plan.guides().size());
    double lean = 0.1 * HERON.stock().thickness() / 12;
    Guide guide = plan.guides().get(0);
    assertEquals(0.1 + 0.005 * 35 + 0.2 + 0.05 + lean, guide.worst(), 1e-9);
    assertEquals(
        Math.sqrt(0.01 + 0.175 * 0.175 + 0.04 + 0.0025 + lean * lean), guide.likely(), 1e-9);
    Guide bushed = plan(HERON, wish(true, false)).guides().get(0);
    assertEquals(8.1, bushed.bore(), 1e-9);
    assertEquals(new DrillBush(5, 8, 12, 0.04), bushed.bush().orElseThrow());
  }

  @Test
  void theGaugeIsNeverCorrectedAndEverythingElseIs() {
    JigPlan drawn = plan(HERON, JigWish.USUAL);
    JigPlan read =
        plan(
            HERON,
            new JigWish(
                Optional.empty(),
                Optional.empty(),
                false,
                false,
                Optional.empty(),
                Optional.of(new Requested<>(new GaugeReading(99.5, 99.8), HERE))));
    assertEquals(100, drawn.gauge().size().x(), 1e-9);
    assertEquals(100, read.gauge().size().x(), 1e-9);
    assertEquals(
        drawn.drill().get(0).size().x() * 100 / 99.5, read.drill().get(0).size().x(), 1e-9);
    assertEquals(
        drawn.drill().get(0).size().y() * 100 / 99.8, read.drill().get(0).size().y(), 1e-9);
    assertTrue(read.worst().worst() < drawn.worst().worst());
  }

  @Test
  void pinsTakeTheirHolesAndLetTheJigTurnALittle() {
    JigPlan plan = plan(HERON, wish(false, false, "h1", "H4"));
    assertEquals(List.of("H2", "H3", "H5", "H6"), labels(plan));
    assertEquals(List.of("H1", "H4"), plan.unguided().stream().map(Hole::label).toList());
    // Both at 35 mm from the middle, the pins 70 mm apart: shift and as much again by the turn.
    double locating = plan.guides().get(0).of(Guide.Cause.LOCATING);
    assertEquals(0.1, locating, 1e-9);
    assertEquals(12, plan.drill().get(0).size().z(), 1e-9);
  }

  private static List<String> labels(JigPlan plan) {
    return plan.guides().stream().map(guide -> guide.hole().label()).toList();
  }

  @Test
  void jointsOnTheWayToAHoleCount() {
    JigPlan plan = plan(HERON, wish(false, true));
    assertTrue(plan.drill().size() >= 4);
    assertTrue(
        plan.guides().stream()
            .anyMatch(g -> g.shares().stream().anyMatch(s -> s.cause() == Guide.Cause.JOINTS)));
    assertTrue(
        plan.guides().stream()
            .anyMatch(g -> g.shares().stream().noneMatch(s -> s.cause() == Guide.Cause.JOINTS)));
  }

  @Test
  void whatCannotBePrintedIsToldAllAtOnce() {
    String told =
        refusal(plate("heron", "making.printer={bed: {width: 50, depth: 50}}"), JigWish.USUAL);
    assertTrue(told.contains("is too small for the drill jig"), told);
    assertTrue(told.contains("is too small for the template"), told);
    told = refusal(plate("heron", "making.printer.nozzle=2", "bore=58"), JigWish.USUAL);
    assertTrue(told.contains("guide H1: leaves a wall of 3.7 mm to the spigot"), told);
    told = refusal(HERON, wish(false, false, "H1", "X9"));
    assertTrue(told.contains("must be two different round holes of one size"), told);
    told = refusal(plate("heron", "making.printer={bed: {height: 10}}"), JigWish.USUAL);
    assertTrue(told.contains("must be at most 10 mm"), told);
    told = refusal(plate("heron", "bore=4"), JigWish.USUAL);
    assertTrue(told.contains("is too small for a printed spigot"), told);
  }

  @Test
  void bushesComeInTheSizesOfTheirTable() {
    JigPractice practice = JigPractice.standard();
    assertEquals(new DrillBush(3.3, 6, 12, 0.04), practice.bush(3.3, 12).orElseThrow());
    assertEquals(new DrillBush(3.4, 7, 16, 0.04), practice.bush(3.4, 20).orElseThrow());
    assertEquals(new DrillBush(6.4, 12, 10, 0.05), practice.bush(6.4, 12).orElseThrow());
    assertEquals(Optional.empty(), practice.bush(6.4, 9));
  }

  private static Plate bare(String outline) {
    return ShapeFile.parse(
        "plover.yaml",
        "felloe: 1\noutline: "
            + outline
            + "\nbolt_circles: [{count: 6, pcd: 70, diameter: 5.5}]\n"
            + "stock: {material: aluminium-6082-t6, thickness: 5}\n",
        new Overrides(HERE, List.of()),
        HubCatalogue.here());
  }

  /** Neither bore nor pins: a rim round the outline, which a round one turns in. */
  @Test
  void withoutBoreAndPinsARimRoundTheOutlineLocatesIt() {
    JigPlan plan = plan(bare("{four_sided: {width: 200, height: 150, radius: 10}}"), JigWish.USUAL);
    assertTrue(plan.locator().rim());
    // The printer's clearance and an edge that is off its line by 0.2 mm.
    assertEquals(0.4, plan.locator().size(), 1e-12);
    assertEquals(0.6, plan.locator().play(), 1e-12);
    double high = plan.drill().get(0).size().z();
    assertEquals(12 + 4.5, high, 1e-9);
    for (JigPiece piece : plan.pieces()) {
      assertEquals(Optional.empty(), SelfCrossing.of(piece.body()), piece.name());
    }
    String told = refusal(bare("{round: {diameter: 200}}"), JigWish.USUAL);
    assertTrue(
        told.contains(
            "needs a bore for its spigot, or two holes for pins: a rim round this outline would let"
                + " it turn"),
        told);
  }

  /**
   * A square of side a in a rim of play c: pushed into a corner it is off by c root 2. A place far
   * off is moved most by the turn, at the farthest (c root 2) / (a / root 2) = 2 c / a for small
   * motions, where no shift is left.
   */
  @Test
  void howFarAPlateMovesInItsRimFollowsFromItsForm() {
    Nest square = new Nest(Contour.rectangle(new Box(-50, -50, 50, 50)), 0.5);
    assertTrue(square.holds());
    assertEquals(0.5 * Math.sqrt(2), square.off(Point.ORIGIN), 1e-9);
    assertEquals(1000 * 0.5 / 50, square.off(new Point(1000, 0)), 1e-6);
    Nest disc = new Nest(Contour.circle(Point.ORIGIN, 50), 0.5);
    assertTrue(!disc.holds());
    Nest flat = new Nest(Contour.rectangle(new Box(-100, -5, 100, 5)), 0.5);
    // The long sides hold it: it turns by 0.5 / 100, and may then still go along by 0.475.
    assertEquals(Math.hypot(5, 0.475), flat.off(new Point(1000, 0)), 1e-6);
  }
}
