package felloe.render;

import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.geometry.Box;
import felloe.hub.HubCatalogue;
import felloe.layup.LayupPlan;
import felloe.layup.MaterialBook;
import felloe.plate.LayupWish;
import felloe.plate.Plate;
import felloe.report.LayupReport;
import felloe.shape.Materials;
import felloe.shape.ShapeFile;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pages of a lay-up: nothing leaves the paper, no two lines of words lie on each other. */
class LayupPagesTest {

  private static LayupPlan plan(String shape, String... sets) {
    Plate plate = ShapeFile.read(Path.of("shapes", shape), Sets.of(sets), HubCatalogue.here());
    return LayupPlan.of(plate, LayupWish.NONE, MaterialBook.builtIn(), Materials.builtIn()::find);
  }

  private static void holds(LayupPlan plan, Paper paper) {
    for (Page page : PageRenderer.pages(LayupReport.of(plan), paper)) {
      Box inside = new Box(8, 8, paper.width() - 8, paper.height() - 8);
      List<Mark.Label> words = new ArrayList<>();
      for (Page.Placed part : page.parts()) {
        for (Mark mark : part.drawing().marks()) {
          Box box = mark.box();
          String about = page.name() + " on " + paper.title() + ": " + mark;
          assertTrue(
              box.minX() > inside.minX()
                  && box.minY() > inside.minY()
                  && box.maxX() < inside.maxX()
                  && box.maxY() < inside.maxY(),
              about);
          if (mark instanceof Mark.Label label) {
            for (Mark.Label other : words) {
              assertTrue(!meet(label, other), about + " lies on " + other);
            }
            words.add(label);
          }
        }
      }
    }
  }

  /** Whether the capitals of two labels meet. */
  private static boolean meet(Mark.Label a, Mark.Label b) {
    return a.turn() == 0 && b.turn() == 0 && a.box().grown(-0.45).touches(b.box().grown(-0.45));
  }

  @Test
  void aUsualPlanKeepsToItsPages() {
    holds(plan("heron.yaml"), Paper.A4);
  }

  @Test
  void aPlanOnSmallPaperKeepsToItsPages() {
    holds(plan("bittern.yaml", "stock.layup={plies: 5}"), Paper.A5);
  }

  @Test
  void aNarrowRollAndManyPliesKeepToTheirPages() {
    holds(
        plan(
            "avocet.yaml",
            "stock.layup={cloth: carbon-unidirectional-300, roll-width: 300, pieces: outline}"),
        Paper.LETTER);
  }
}
