package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.AreaProperties;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.hub.HubCatalogue;
import felloe.hub.HubFit;
import felloe.plate.BadInput;
import felloe.plate.EdgeFinish;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HolePosition;
import felloe.plate.HoleRole;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.yaml.Sets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class SlotsAndEngravingsTest {

  private static final String WHEEL =
      """
      felloe: 1
      outline: {round: {diameter: 280}}
      stock: {material: birch-plywood, thickness: 9}
      """;

  private static Plate read(String more) {
    return ShapeFile.parse("pipit.yaml", WHEEL + more, Sets.of(), HubCatalogue.here());
  }

  private static String refusal(String more) {
    return Assertions.assertThrows(BadInput.class, () -> read(more)).getMessage();
  }

  private static void assertAt(double x, double y, Point p) {
    assertTrue(p.near(new Point(x, y), 1e-9), "at " + p);
  }

  @Test
  void aSlottedHoleHasTheAreaOfItsRectangleAndTwoHalfCircles() {
    Plate plate = read("holes: [{at: [60, 20], diameter: 6, slot: {length: 14, turn: 30}}]\n");
    Hole hole = plate.holes().get(0);
    assertEquals(8 * 6 + 9 * Math.PI, hole.contour().area(), 1e-9);
    AreaProperties figures = hole.contour().properties();
    assertAt(60, 20, figures.centroid());
    assertEquals(14, hole.length(), 1e-12);
  }

  @Test
  void slotsRunAlongTheRadiusTheCircleATurnOrTowardADirection() {
    Plate plate =
        read(
            """
            bolt_circles:
              - count: 4
                pcd: 80
                diameter: 6
                first: 0
                slots:
                  - {length: 10, along: radius, holes: [1]}
                  - {length: 10, along: circle, holes: [2]}
                  - {length: 10, toward: 0, holes: [3]}
            """);
    List<Hole> holes = plate.holes(HoleRole.BOLT);
    assertAt(38, 0, holes.get(0).ends().get(0));
    assertAt(42, 0, holes.get(0).ends().get(1));
    assertAt(2, 40, holes.get(1).ends().get(0));
    assertAt(-40, 0, holes.get(2).ends().get(0));
    assertAt(-36, 0, holes.get(2).ends().get(1));
    assertEquals(1, holes.get(3).ends().size());
  }

  @Test
  void theMirrorImageOfASlotIsSlottedTheOtherWayRound() {
    Plate plate =
        read("holes: [{at: [60, 20], diameter: 6, mirror: true, slot: {length: 9, toward: 45}}]\n");
    Point tip = plate.holes().get(0).ends().get(1);
    Point image = plate.holes().get(1).ends().get(1);
    assertAt(-tip.x(), tip.y(), image);
    assertAt(-60, 20, plate.holes().get(1).ends().get(0));
  }

  @Test
  void wrongSlotsAreRefusedWithWhatIsAllowed() {
    assertTrue(
        refusal("holes: [{at: [60, 0], diameter: 6, slot: {length: 6, turn: 0}}]\n")
            .contains("slot.length: '6' must be above 6 mm and at most 18 mm here"));
    assertTrue(
        refusal("holes: [{at: [60, 0], diameter: 6, slot: {length: 8}}]\n")
            .contains("must have one of along, turn, toward"));
    assertTrue(
        refusal(
                "bolt_circles: [{count: 3, pcd: 70, diameter: 6, slots: [{length: 8, along: radius,"
                    + " holes: [4]}]}]\n")
            .contains("slots[0].holes[0]"));
  }

  @Test
  void roundWindowsUpToASawAreHolesForTheBench() {
    Plate plate =
        read(
            """
            bore: 30
            windows:
              - {circle: {diameter: 16}, use: switch, at: [60, 60]}
              - {circle: {diameter: 80}, at: [0, -80]}
              - {rectangle: {width: 20, height: 10}, at: [0, 80]}
            """);
    List<Hole> bench = plate.benchHoles(76);
    assertEquals(List.of("B", "W1"), bench.stream().map(Hole::label).toList());
    assertEquals(HoleRole.WINDOW, bench.get(1).role());
    assertEquals(16, bench.get(1).diameter(), 1e-12);
    assertAt(60, 60, bench.get(1).centre());
    assertEquals(3, plate.benchHoles(80).size());
  }

  @Test
  void theWayOfDrillingOfTheFileIsThatOfTheHubFit() {
    String ring = "bolt_circles: [{hub: 6x70-m5}]\n";
    Plate usual = read(ring);
    Plate through = read(ring + "making: {position: through-hub, edge_break: 0.3}\n");
    assertEquals(Optional.of(HolePosition.THROUGH_HUB), through.making().position());
    assertEquals(new EdgeFinish(0.3, 0), through.making().edges());
    var hub = HubCatalogue.here().spec("6x70-m5", Place.BUILT_IN);
    assertEquals("template", HubFit.of(usual, hub).drilling().name());
    assertEquals("through-hub", HubFit.of(through, hub).drilling().name());
    assertTrue(
        HubFit.of(through, hub).worst().orElseThrow()
            > HubFit.of(usual, hub).worst().orElseThrow());
  }

  @Test
  void everyWayOfDrillingHasItsRowInTheHubPractice() {
    for (HolePosition position : HolePosition.values()) {
      assertTrue(
          HubFit.standard().practice().drilling(position.word()).isPresent(), position.word());
    }
  }

  @Test
  void anEdgeIsBrokenOrChamferedAndLessThanHalfTheThickness() {
    assertEquals(1, read("making: {chamfer: 1}\n").making().edges().chamfer());
    assertTrue(refusal("making: {chamfer: 1, edge_break: 0.3}\n").contains("cannot stand beside"));
    assertTrue(refusal("making: {chamfer: 4.5}\n").contains("must be less than 4.5 mm here"));
  }

  @Test
  void aPlateThatIsSawnNamesItsBlade() {
    assertTrue(read("").making().blade().isEmpty());
    assertEquals(6, read("making: {blade: 6}\n").making().blade().orElseThrow().width());
    String both = "making: {blade: 1/4 in, blade_turn: 20}\n";
    assertEquals(6.35, read(both).making().blade().orElseThrow().width(), 1e-12);
    assertEquals(20, read(both).making().blade().orElseThrow().turn().orElseThrow());
    assertTrue(refusal("making: {blade_turn: 20}\n").contains("needs blade beside it"));
    assertTrue(refusal("making: {blade: 0}\n").contains("must be at least 0.5 mm"));
  }

  @Test
  void anEngravedTextStandsAboutItsPlaceAsHighAsSaid() {
    // H and N are 6 wide, E is 5, a dash 4, letters 2 apart, in tenths of the height.
    Plate plate = read("engravings: [{text: hen-h, at: [10, 90], height: 10}]\n");
    Engraving engraving = plate.engravings().get(0);
    Box box = engraving.box();
    double width = 6 + 2 + 5 + 2 + 6 + 2 + 4 + 2 + 6;
    assertEquals(width, box.width(), 1e-9);
    assertEquals(10, box.height(), 1e-9);
    assertAt(10, 90, box.centre());
    assertEquals(1, engraving.lineWidth(), 1e-12);
    assertEquals("E1", engraving.label());
  }

  @Test
  void aTextOnTheBackIsTheMirrorImageOfOneOnTheFront() {
    List<List<Segment>> front =
        read("engravings: [{text: L7, at: [0, 90]}]\n").engravings().get(0).strokes();
    Engraving back =
        read("engravings: [{text: L7, at: [0, 90], face: back}]\n").engravings().get(0);
    assertEquals(Face.BACK, back.face());
    for (int i = 0; i < front.size(); i++) {
      Point p = front.get(i).get(0).from();
      assertAt(-p.x(), p.y(), back.strokes().get(i).get(0).from());
    }
  }

  @Test
  void everyLetterStaysInItsBoxAndItsLinesJoin() {
    Letters letters = Letters.standard();
    letters
        .letters()
        .forEach(
            (of, form) -> {
              for (List<Segment> stroke : form.strokes()) {
                for (int i = 0; i < stroke.size(); i++) {
                  Box box = stroke.get(i).box();
                  assertTrue(box.minX() > -0.01 && box.maxX() < form.width() + 0.01, of);
                  assertTrue(box.minY() > -0.2 && box.maxY() < 1.2, of);
                  assertTrue(i == 0 || stroke.get(i).from().equals(stroke.get(i - 1).to()), of);
                }
              }
            });
    assertTrue(letters.letters().keySet().containsAll(List.of("A", "Z", "0", "9", "Y", "N")));
  }

  @Test
  void anEngravingKeepsOffHolesAndEdges() {
    assertTrue(
        refusal("bore: 30\nengravings: [{text: A, at: [0, 0], height: 5}]\n")
            .contains("lies off the plate, in or beyond bore B"));
    assertTrue(
        refusal("engravings: [{text: A, at: [0, 136.8], height: 5}]\n")
            .contains("comes within 0."));
    assertTrue(
        refusal("engravings: [{text: LONG, at: [0, 139], height: 8}]\n").contains("the outline"));
    assertTrue(refusal("engravings: [{text: 'a@b', at: [0, 90]}]\n").contains("without @"));
    assertTrue(
        refusal("engravings: [{text: A, at: [0, 90], depth: 5}]\n").contains("at most 4.5 mm"));
    assertEquals(1, read("engravings: [{text: A, at: [0, 135], height: 5}]\n").engravings().size());
  }
}
