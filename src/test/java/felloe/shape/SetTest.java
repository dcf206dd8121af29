package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Point;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values from the command line in a whole shape file. */
class SetTest {

  private static final String FILE =
      """
      felloe: 1
      outline:
        round: {diameter: 280}
      windows:
        - {circle: {diameter: 20}, at: [0, 80], label: A}
      stock: {material: birch-plywood, thickness: 9}
      """;

  @ParameterizedTest
  @CsvSource({
    "chamfer, making.chamfer",
    "edge, making.edge_break",
    "edge_break, making.edge_break",
    "edge-break, making.edge_break",
    "text, engravings",
    "engrave, engravings",
    "thickness, stock.thickness"
  })
  void aKeyLookedForAtTheTopIsToldWhereItStands(String key, String way) {
    String told = assertThrows(BadInput.class, () -> Corpus.read(FILE, key + "=0.5")).getMessage();
    String wanted = key + ": is not a known key; did you mean '" + way + "'? allowed here: ";
    assertTrue(told.contains(wanted), told);
  }

  @Test
  void aValueIsReplacedWithItsUnit() {
    assertEquals(150, Corpus.read(FILE, "outline.round.diameter=300 mm").box().maxX(), 1e-9);
    assertEquals(127, Corpus.read(FILE, "outline.round.diameter=10 in").box().maxX(), 1e-9);
    assertEquals(6.35, Corpus.read(FILE, "stock.thickness=1/4 in").stock().thickness(), 1e-12);
  }

  @Test
  void keysGroupsAndItemsAreAdded() {
    Plate plate =
        Corpus.read(
            FILE,
            "windows[1]={circle: {diameter: 10}, at: [0, -80]}",
            "outline.round.bottom.distance=120",
            "bore=30",
            "holes[0]={at: [60, 0], diameter: 4}",
            "holes[0].mirror=true");
    assertEquals(2, plate.windows().size());
    assertEquals(-120, plate.box().minY(), 1e-9);
    assertEquals(new Point(-60, 0), plate.holes().get(2).centre());
  }

  @Test
  void problemsStandAtTheOption() {
    assertEquals(
        List.of(
            "--set outline.round.diameter: '280,5' must be a length such as 70, 70 mm, 7 cm or 2.75"
                + " in; write 280.5",
            "--set stock.tickness: is not a known key; did you mean 'thickness'? allowed here:"
                + " density, layup, material, sheet, template_face, thickness"),
        Corpus.complaints(FILE, "outline.round.diameter=280,5", "stock.tickness=3"));
  }

  @Test
  void geometryThatCannotBeNamesTheOptionOrTheFeature() {
    assertEquals(
        List.of(
            "--set outline.round.bottom.distance: '150 mm' must be above 0 and below 140 mm (half"
                + " the diameter); leave the flat out for a whole circle"),
        Corpus.complaints(FILE, "outline.round.bottom.distance=150"));
    assertEquals(
        List.of(
            "5:5 window A: lies outside the outline, near (0, 220) mm; move it inward or make it"
                + " smaller"),
        Corpus.complaints(FILE, "windows[0].at=[0, 210]"));
    assertEquals(
        List.of(
            "--set windows[1] window W1: reaches 5 mm into window A (shape.yaml:5:5), near (0, 75)"
                + " mm; move one of them or make it smaller"),
        Corpus.complaints(FILE, "windows[1]={circle: {diameter: 20}, at: [0, 65]}"));
  }

  @Test
  void aWrongFamilyBesideTheFilesIsTold() {
    assertEquals(
        List.of(
            "--set outline.four_sided.width outline.four_sided: cannot stand beside round; keep one"
                + " of round, four_sided"),
        Corpus.complaints(FILE, "outline.four_sided.width=300"));
  }

  @Test
  void theVersionCanBeWrongToo() {
    assertEquals(
        List.of(
            "--set felloe: '2' must be 1, the version of shape file that this program reads; use a"
                + " newer Felloe"),
        Corpus.complaints(FILE, "felloe=2"));
  }
}
