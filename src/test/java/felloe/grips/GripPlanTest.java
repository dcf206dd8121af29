package felloe.grips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.hub.HubCatalogue;
import felloe.plate.BadInput;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.review.Review;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Grips on the rim: sections, girth and weight against closed forms, and what does not fit. */
class GripPlanTest {

  /** A ring 300 mm across whose rim is 30 mm wide, 6 mm thick, on two spokes. */
  static final String RING =
      """
      felloe: 1
      outline: {round: {diameter: 300}}
      windows:
        - derived:
            rim_width: 30
            hub_disc: 100
            spokes:
              - {clock: 3, hub_width: 40, rim_width: 40}
              - {clock: 9, hub_width: 40, rim_width: 40}
            radius: 10
      bore: 30
      holes:
        - {edge: {inset: 15, from: 1, to: 1:30, count: 2}, diameter: 4.3, role: grip, mirror: true}
      stock: {material: aluminium-6082-t6, thickness: 6}
      """;

  static Plate plate(String grips, String... sets) {
    return ShapeFile.parse("dabchick", RING + grips, Sets.of(sets), HubCatalogue.here());
  }

  static PlacedGrip grip(String grips) {
    return GripPlan.of(plate(grips)).grips().get(0);
  }

  private static String wrong(String grips, String... sets) {
    return assertThrows(BadInput.class, () -> GripPlan.of(plate(grips, sets))).getMessage();
  }

  /** Pappus: a section of area A whose middle stands R from the axis sweeps 2 pi R A. */
  @Test
  void aPlainRingWeighsWhatPappusSays() {
    PlacedGrip ring =
        grip(
            "grips: [{all_round: true, form: scale, over: 30, front: 8, back: 5, round: 0,"
                + " material: ash}]\nholes: []\n".replace("holes: []\n", ""));
    GripWeight weight = GripWeight.of(ring, List.of());
    double holes = 4 * Math.PI / 4 * 4.3 * 4.3 * 13;
    double volume = 2 * Math.PI * 135 * 30 * 13 - holes;
    assertEquals(volume, weight.volume(), 1e-6 * volume);
    assertEquals(volume * 0.68e-3, weight.mass(), 1e-6 * weight.mass());
    // A thick ring about its axis: m (R1^2 + R2^2) / 2, less four bars of the holes at R = 135.
    double inertia =
        0.68e-3 * (2 * Math.PI * 135 * 30 * 13 * (150 * 150 + 120 * 120) / 2 - holes * 135 * 135);
    assertEquals(inertia, weight.inertia(), 1e-6 * inertia);
    assertEquals(0, weight.centre().x(), 1e-6);
  }

  /** Two quarter rounds of radius r take (1 - pi/4) r^2 each, whose centre is 0.2234 r in. */
  @Test
  void aRoundedRingWeighsWhatPappusSays() {
    PlacedGrip ring =
        grip(
            "grips: [{all_round: true, form: scale, faces: front, over: 30, front: 8, round: 8,"
                + " inner_round: 6, material: ash}]\n");
    double away = (10 - 3 * Math.PI) / (3 * (4 - Math.PI));
    double outer = (1 - Math.PI / 4) * 64;
    double inner = (1 - Math.PI / 4) * 36;
    double swept =
        2 * Math.PI * (30 * 8 * 135 - outer * (150 - away * 8) - inner * (120 + away * 6));
    double holes = 4 * Math.PI / 4 * 4.3 * 4.3 * 8;
    assertEquals(swept - holes, GripWeight.of(ring, List.of()).volume(), 1e-6 * swept);
  }

  /** A lip 3 mm deep (half the plate), 0.2 mm clear of the edge: its own ring is added. */
  @Test
  void aShellThatCoversTheEdgeHasALip() {
    String shell =
        "grips: [{all_round: true, form: shell, over: 30, past_edge: 4, front: 8, back: 8,"
            + " round: 0, material: pla}]\n";
    PlacedGrip ring = grip(shell);
    assertEquals(3, ring.lip(), 1e-12);
    double swept = 2 * 2 * Math.PI * (34 * 8 * 137 + 3.8 * 3 * 152.1);
    double holes = 4 * Math.PI / 4 * 4.3 * 4.3 * 16;
    assertEquals(swept - holes, GripWeight.of(ring, List.of()).volume(), 1e-6 * swept);
    assertEquals(
        6,
        grip(shell.replace("form: shell", "form: shell, faces: front").replace("back: 8, ", ""))
            .lip(),
        1e-12);
  }

  /** Over a plain section: 2 (b + h) less the roundings; the wrap is counted once. */
  @Test
  void theGirthIsThatOfTheRoundedSection() {
    String plain =
        "grips: [{along: {from: 12:30, to: 2}, form: scale, over: 30, front: 9, back: 9, round: 9,"
            + " material: ash}]\n";
    PlacedGrip grip = grip(plain);
    double bare = 2 * (30 + 24) - (8 - 2 * Math.PI) * 9;
    List<GripStation> stations = GripStations.of(plate(plain), grip);
    assertTrue(stations.stream().allMatch(GripStation::held));
    stations.forEach(station -> assertEquals(bare, station.girth().orElseThrow(), 1e-6));
    stations.forEach(station -> assertEquals(30, station.web(), 1e-6));
    // From 12:30 to 2 is an eighth of the way round.
    assertEquals(Math.PI * 300 / 8, grip.run().length(), 1e-9);
    assertEquals(150 * Math.sin(Math.toRadians(15)), stations.get(0).at().x(), 1e-6);
  }

  /** The figures are those over the wrap: taken off, and felt again once it is on. */
  @Test
  void aWrapIsTakenOffTheGripAndFeltInTheHand() {
    String wrapped =
        "grips: [{along: {from: 12:30, to: 2}, past_edge: 4, over: 30, front: 9, back: 9, round: 9,"
            + " wrap: 1.5, material: pla}]\n";
    PlacedGrip grip = grip(wrapped);
    GripSection section = grip.section(30);
    assertEquals(2.5, section.past(), 1e-12);
    assertEquals(28.5, section.over(), 1e-12);
    assertEquals(7.5, section.front(), 1e-12);
    assertEquals(7.5, section.round(Face.FRONT), 1e-12);
    // The taut tape lies on the plate's own inner edge, where the grip stays back.
    double least = 2 * (34 + 24) - (8 - 2 * Math.PI) * 9 - 0.5;
    double most = least + 4;
    double girth = GripStations.of(plate(wrapped), grip).get(3).girth().orElseThrow();
    assertTrue(girth > least && girth < most, girth + " in " + least + " to " + most);
  }

  @Test
  void swellThumbRestAndTaperChangeTheHeightWhereTheyAre() {
    PlacedGrip grip =
        grip(
            "grips: [{along: {from: 12, to: 6}, past_edge: 2, over: 29, front: 9, back: 10,"
                + " round: 5, swell: {at: 4, length: 60, back: 4, edge: 2},"
                + " thumb_rest: {at: 2, length: 40, depth: 3}, taper: {length: 20, to: 5},"
                + " material: pla}]\n");
    double length = grip.run().length();
    assertEquals(Math.PI * 150, length, 1e-9);
    // From 6 counter-clockwise: 4 o'clock is a third of the half turn on, 2 o'clock two thirds.
    assertEquals(length / 3, grip.swellAt().orElseThrow(), 1e-6);
    assertEquals(14, grip.height(Face.BACK, length / 3), 1e-9);
    assertEquals(12, grip.height(Face.BACK, length / 3 + 15), 1e-9);
    assertEquals(4, grip.section(length / 3).past(), 1e-9);
    assertEquals(6, grip.height(Face.FRONT, 2 * length / 3), 1e-9);
    assertEquals(7.5, grip.height(Face.FRONT, 2 * length / 3 + 15), 1e-9);
    assertEquals(5, grip.height(Face.FRONT, 0), 1e-9);
    assertEquals(7, grip.height(Face.FRONT, length - 10), 1e-9);
    assertEquals(9, grip.height(Face.FRONT, 20), 1e-9);
  }

  @Test
  void itsFootprintIsExactLinesAndArcs() {
    PlacedGrip grip =
        grip(
            "grips: [{along: {from: 12, to: 2}, past_edge: 2, over: 28, material: pla,"
                + " bonded: true}]\n");
    assertEquals(1, grip.footprint().size());
    double sixth = Math.PI / 3 / 2 * (152 * 152 - 122 * 122);
    assertEquals(sixth, grip.footprint().get(0).outer().area(), 1e-6);
    assertEquals(4, grip.footprint().get(0).outer().segments().size());
    assertEquals(List.of("G1", "G2"), grip.holes().stream().map(h -> h.label()).toList());
  }

  @Test
  void mirroredGripsAreImages() {
    Plate plate =
        plate(
            "grips: [{between: {from: G1, to: G2, beyond: 20}, over: 29, mirror: true,"
                + " material: ash}]\n");
    List<PlacedGrip> both = GripPlan.of(plate).grips();
    assertEquals(List.of("GR1", "GR2"), both.stream().map(g -> g.grip().label()).toList());
    assertEquals(both.get(0).run().length(), both.get(1).run().length(), 1e-9);
    Point first = GripWeight.of(both.get(0), List.of()).centre();
    Point second = GripWeight.of(both.get(1), List.of()).centre();
    assertEquals(first.x(), -second.x(), 1e-6);
    assertEquals(first.y(), second.y(), 1e-6);
    // 40 mm past both holes, which stand 15 degrees apart.
    assertEquals(Math.PI * 300 / 24 + 40, both.get(0).run().length(), 1e-6);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "along: {from: 12, to: 2}, over: 31 | closes part of grip window",
        "along: {from: 12, to: 2}, over: 17 | cuts grip hole G1",
        "along: {from: 12, to: 12:05}, over: 29 | must be at least 20 mm",
        "along: {from: 2, to: 4}, over: 29, swell: {at: 9, length: 40, back: 2} | beside the grip",
        "along: {from: 2, to: 4}, over: 29, taper: {length: 90, to: 4} | its two tapered ends",
        "along: {from: 2, to: 4}, over: 29, round: 14 | must be at most 13 mm here",
        "along: {from: 2, to: 4}, over: 29, inner_round: 11 | must be at most 10 mm here",
        "between: {from: G2, to: G1, beyond: 60}, over: 29 | more than once round",
        "all_round: true, over: 160 | too much for a corner of radius 150 mm",
      })
  void whatDoesNotFitIsToldWithItsPlace(String grip, String told) {
    String text = wrong("grips: [{" + grip + ", past_edge: 2, material: ash}]\n");
    assertTrue(text.contains(told), text);
    assertTrue(text.contains("dabchick:15:"), text);
  }

  @Test
  void aGripMustNotLieOnAnother() {
    String text =
        wrong(
            "grips:\n  - {along: {from: 12, to: 2}, over: 29, material: ash}\n"
                + "  - {along: {from: 1:45, to: 3}, over: 29, material: ash}\n");
    assertTrue(text.contains("lies on grip GR1"), text);
  }

  @Test
  void aGripMustNotBuryAHubHole() {
    String text =
        wrong(
            "grips: [{along: {from: 2:30, to: 3:30}, over: 120, material: ash}]\n",
            "bore=10",
            "windows=[]",
            "holes=[{at: [60, 0], diameter: 5, role: bolt}]");
    assertTrue(text.contains("covers hub bolt H1"), text);
  }

  @Test
  void aGripCannotGoRoundASharpCornerOrIntoAGap() {
    String sharp =
        wrong(
            "grips: [{along: {from: 1, to: 2}, over: 20, round: 5, material: ash}]\n",
            "outline={four_sided: {width: 260, height: 240, radius: 0}}",
            "windows=[]",
            "holes=[]");
    assertTrue(sharp.contains("sharp corner"), sharp);
    String gap =
        wrong(
            "grips: [{along: {from: 11, to: 1}, over: 8, round: 2, material: ash}]\n",
            "outline={points: {half: true, corners: [[0, 60], {at: [18, 60], radius: 12},"
                + " {at: [18, 100], radius: 12}, {at: [90, 100], radius: 30},"
                + " {at: [90, -90], radius: 30}, [0, -90]]}}",
            "windows=[]",
            "holes=[]");
    assertTrue(gap.contains("lies in a gap"), gap);
  }

  /** The review's finger depth is less by the wrap that goes round the rim's inner edge. */
  @Test
  void aWrapTakesItsThicknessOffTheFingersRoom() {
    String grips =
        "grips: [{along: {from: 12:30, to: 2}, over: 30, form: scale, wrap: 1.5, material: ash}]\n";
    double with = depth(plate(grips));
    assertEquals(depth(plate("")) - 1.5, with, 1e-9);
  }

  private static double depth(Plate plate) {
    return Review.of(plate).findings().stream()
        .filter(f -> f.rule().equals("finger-depth"))
        .mapToDouble(f -> f.figure().value())
        .min()
        .orElseThrow();
  }
}
