package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cutting.CutJob;
import felloe.cutting.CutProcess;
import felloe.cutting.CutWish;
import felloe.cutting.FeedTable;
import felloe.hub.HubCatalogue;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.report.CutMap;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is cut shallow stands in pictures, in thin lines, and hides nothing. */
class EngravedPicturesTest {

  private static final String ON_THE_BACK = "dashes: engraved on the back";

  private static Plate plate(String... sets) {
    return ShapeFile.read(Path.of("shapes", "heron.yaml"), Sets.of(sets), HubCatalogue.here());
  }

  private static Plate engraved() {
    return plate(
        "engravings=[{text: HERON 3, at: [0, 118], height: 5},"
            + " {mark: cross, at: [40, 118], height: 6, face: back}]");
  }

  private static List<Mark> lines(Plate plate, Face face, LineType type) {
    return plate.engravings().stream()
        .filter(engraving -> engraving.face() == face)
        .map(Engraving::strokes)
        .flatMap(List::stream)
        .<Mark>map(line -> new Mark.Stroke(line, false, type))
        .toList();
  }

  private static List<Mark> layer(Picture picture, String name) {
    return picture.drawing().layers().stream()
        .filter(layer -> layer.name().equals(name))
        .flatMap(layer -> layer.marks().stream())
        .toList();
  }

  private static String words(Picture picture) {
    return String.join(
        "\n",
        picture.drawing().marks().stream()
            .filter(Mark.Label.class::isInstance)
            .map(mark -> ((Mark.Label) mark).text())
            .toList());
  }

  @Test
  void aPictureShowsThoseOfTheFrontThinAndThoseOfTheBackDashed() {
    Plate plate = engraved();
    Picture picture = PictureDrawing.of(plate, List.of());
    List<Mark> shown = layer(picture, "engravings");
    List<Mark> front = lines(plate, Face.FRONT, LineType.THIN);
    assertFalse(front.isEmpty());
    assertEquals(front, shown.subList(0, front.size()));
    assertEquals(
        lines(plate, Face.BACK, LineType.DASHED), shown.subList(front.size(), shown.size()));
    assertTrue(words(picture).contains(ON_THE_BACK), words(picture));
    assertFalse(words(PictureDrawing.of(plate(), List.of())).contains(ON_THE_BACK));
  }

  @Test
  void noLetteringOfAPictureStandsOnThem() {
    Plate plate = engraved();
    Picture picture = PictureDrawing.of(plate, List.of());
    for (Mark mark : picture.drawing().marks()) {
      if (mark instanceof Mark.Label label) {
        plate
            .engravings()
            .forEach(e -> assertFalse(label.box().touches(e.box()), label + " on " + e.label()));
      }
    }
  }

  @Test
  void thePictureOfACutShowsThoseOfTheFaceThatIsUpAndAllElseAsBefore() {
    Plate plate = engraved();
    Picture with = cut(plate);
    assertEquals(lines(plate, Face.FRONT, LineType.THIN), layer(with, "engravings"));
    assertTrue(words(with).contains("Thin letters and marks on the part: cut shallow"));
    Picture bare = cut(plate());
    assertFalse(words(bare).contains("shallow"));
    for (Drawing.Layer layer : bare.drawing().layers()) {
      if (!layer.name().equals("legend")) {
        assertEquals(layer.marks(), layer(with, layer.name()), layer.name());
      }
    }
  }

  private static Picture cut(Plate plate) {
    CutWish wish = CutWish.usual(CutProcess.ROUTER);
    return CutPicture.of(
        CutMap.of(CutJob.plate(plate, wish, 4, FeedTable.standard())).orElseThrow());
  }
}
