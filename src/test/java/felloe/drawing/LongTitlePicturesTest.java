package felloe.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** A long title stands whole on the pictures of every act, and on their page. */
class LongTitlePicturesTest {

  private static final String TITLE =
      "Bittern, hill-climb cart of the upper village, second try, wide hands and gloves";

  private static final Contour PLATE = PaperPlates.rounded(0, 0, 60, 180, 20);

  private static void assertWhole(Picture picture) {
    StringBuilder words = new StringBuilder();
    for (Mark mark : picture.drawing().marks()) {
      if (mark instanceof Mark.Label label) {
        Box box = label.box();
        assertEquals(picture.page(), picture.page().union(box), label.text() + " leaves the page");
        words.append(label.text()).append(' ');
      }
    }
    assertTrue(words.toString().contains(TITLE), words.toString());
  }

  @Test
  void onThePlotOfThicknesses() {
    List<ThicknessView.Trial> trials =
        List.of(
            new ThicknessView.Trial(4, 5, -0.2, List.of("4 mm"), false, false),
            new ThicknessView.Trial(6, 2, 0.4, List.of("6 mm"), true, true));
    assertWhole(ThicknessPlot.of(new ThicknessView(TITLE, trials, OptionalDouble.of(3), 0)));
  }

  @Test
  void onTheStack() {
    List<StackView.Ply> plies =
        List.of(new StackView.Ply(1, 0, "0"), new StackView.Ply(2, 45, "45"));
    assertWhole(StackPicture.of(new StackView(TITLE, plies, true, "0.5 mm", "thin")));
  }

  @Test
  void onTheBlank() {
    Box mould = PLATE.box().grown(20);
    BlankView view =
        new BlankView(
            TITLE,
            new Region(PLATE, List.of()),
            Contour.rectangle(PLATE.box().grown(10)),
            List.of(),
            mould,
            50,
            List.of("One line."));
    assertWhole(BlankPicture.of(view));
  }

  @Test
  void onTheCutOfANarrowPart() {
    CutView view =
        new CutView(
            TITLE,
            "hub axis",
            Optional.empty(),
            List.of(),
            false,
            List.of(new CutView.Part("bittern", new Region(PLATE, List.of()))),
            List.of(),
            List.of(PLATE),
            List.of(),
            "path",
            List.of(),
            List.of(new Point(30, 0)),
            List.of());
    assertWhole(CutPicture.of(view));
  }
}
