package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;

import felloe.plate.Hole;
import felloe.plate.Plate;
import felloe.plate.Window;
import java.util.List;
import org.junit.jupiter.api.Test;

class LabelsTest {

  private static final String PLATE =
      """
      felloe: 1
      outline:
        four_sided: {width: 300, height: 200, radius: 40}
      stock: {material: birch-plywood, thickness: 9}
      """;

  private static List<String> windows(String text) {
    Plate plate = Corpus.read(PLATE + text);
    return plate.windows().stream().map(Window::label).toList();
  }

  private static List<String> holes(String text) {
    return Corpus.read(PLATE + text).holes().stream().map(Hole::label).toList();
  }

  @Test
  void featuresWithoutALabelAreNumberedByTheirKind() {
    assertEquals(
        List.of("H1", "H2", "H3", "B", "G1", "D1", "D2", "H4"),
        holes(
            """
            bolt_circles: [{count: 3, pcd: 60, diameter: 5}]
            bore: 20
            holes:
              - {diameter: 4, at: [80, 0], role: grip}
              - {diameter: 4, at: [0, 70], role: other}
              - {diameter: 4, at: [0, -70]}
              - {diameter: 4, at: [-80, 0], role: bolt}
            """));
  }

  @Test
  void aLabelStandsAsItIsAndARowIsNumberedAfterIt() {
    assertEquals(
        List.of("A", "S1", "S2", "S3", "S4"),
        windows(
            """
            windows:
              - {circle: {diameter: 9}, at: [0, 60], label: A}
              - {circle: {diameter: 9}, at: [40, 60], label: S, mirror: true}
              - {circle: {diameter: 9}, places: [[40, -60], [60, -60]], label: S}
            """));
  }

  @Test
  void numbersSkipWhatTheMakerGaveAwayAboveOrBelow() {
    assertEquals(
        List.of("W2", "S3", "S1", "S2", "W1"),
        windows(
            """
            windows:
              - {circle: {diameter: 9}, at: [0, 60]}
              - {circle: {diameter: 9}, at: [20, 60], label: S3}
              - {circle: {diameter: 9}, places: [[40, -60], [60, -60]], label: S}
              - {circle: {diameter: 9}, at: [60, 60], label: W1}
            """));
    assertEquals(
        List.of("B1", "B"), holes("bore: 20\nholes: [{diameter: 4, at: [0, 70], label: B}]\n"));
  }

  @Test
  void aRingOfOneHoleKeepsItsLabel() {
    assertEquals(
        List.of("K"), holes("bolt_circles: [{count: 1, pcd: 60, diameter: 5, label: K}]\n"));
  }

  @Test
  void windowsAndHolesShareTheLabels() {
    assertEquals(
        List.of(
            "6:45 holes[0].label: 'A' is the label of another feature already (line 5); give each"
                + " feature a label of its own"),
        Corpus.complaints(
            PLATE
                + "windows: [{circle: {diameter: 9}, at: [0, 60], label: A}]\n"
                + "holes: [{diameter: 4, at: [0, -70], label:  A}]\n"));
  }

  @Test
  void aLabelMayBeANumberOrHaveAnyLetters() {
    assertEquals(
        List.of("7", "µ-Ω 𝄞"),
        holes(
            "holes: [{diameter: 4, at: [0, -70], label: 7}, {diameter: 4, at: [0, 70], label:"
                + " \"µ-Ω 𝄞\"}]\n"));
  }

  @Test
  void twelveCharactersAreCountedAsSeen() {
    String twelve = "𝄞".repeat(12);
    assertEquals(
        List.of(twelve), holes("holes: [{diameter: 4, at: [0, -70], label: " + twelve + "}]\n"));
  }
}
