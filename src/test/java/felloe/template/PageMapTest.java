package felloe.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.drawing.PaperPlates;
import felloe.drawing.Stamp;
import felloe.geometry.Box;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The map of pages at the foot of each. */
class PageMapTest {

  private static boolean holds(Box outer, Box inner) {
    return outer.grown(1e-9).union(inner).equals(outer.grown(1e-9));
  }

  @Test
  void noLineOfThePlateRunsThroughThePagesNames() {
    TemplateOptions options = UsualPrint.on(Paper.A4);
    PageSet set = Template.of(PaperPlates.bittern(), List.of(), options, Stamp.NONE).pages();
    assertTrue(set.grid().count() > 1, set.grid().toString());
    for (Page page : set.tiles()) {
      List<Mark> map = SeamTest.layer(page.parts().get(1).drawing(), "map");
      List<String> names = new ArrayList<>();
      for (int i = 0; i < map.size(); i++) {
        if (map.get(i) instanceof Mark.Label name) {
          names.add(name.text());
          // Ground is laid under it, and no line comes later.
          assertTrue(holds(map.get(i - 1).box(), name.box()), name.text());
          assertTrue(
              map.subList(i, map.size()).stream().noneMatch(Mark.Stroke.class::isInstance),
              name.text());
          Mark.Fill ground = (Mark.Fill) map.get(i - 1);
          assertEquals(name.text().equals(page.name()), ground.ink() > 0, name.text());
        }
      }
      assertEquals(set.grid().count(), names.size());
    }
  }
}
