package felloe.out;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.DemoPlates;
import felloe.plate.Plate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cut drawings to try writers on. */
final class CutDrawings {

  static final About ABOUT =
      new About("Heron, cut lines", "1f4e90ab", "Clamp the stock. Wear a dust mask.");

  private CutDrawings() {}

  /** The demo plates, a sheet with all of them turned, and seeded random contours. */
  static Map<String, CutDrawing> all() {
    Map<String, CutDrawing> all = new LinkedHashMap<>();
    CutDrawing sheet = new CutDrawing(List.of());
    int count = 0;
    for (Plate plate : DemoPlates.all()) {
      CutDrawing finish = CutDrawing.finish(plate);
      all.put(plate.name(), finish.with(CutDrawing.centres(plate.holes(), 3)));
      RigidTransform place =
          RigidTransform.turn(Math.toRadians(37.3 * count))
              .then(RigidTransform.shift(400 * count, 123.4));
      sheet = sheet.with(finish.moved(place));
      count++;
    }
    all.put("sheet", sheet);
    for (long seed = 0; seed < 60; seed++) {
      double size = List.of(5.0, 80.0, 300.0, 2000.0).get((int) (seed % 4));
      all.put("seed " + seed, of(RandomShapes.contour(seed, size)));
    }
    all.put("marks", marks());
    return all;
  }

  static CutDrawing of(Contour contour) {
    return new CutDrawing(List.of(CutLayer.of(CutRole.OUTLINE, List.of(contour))));
  }

  private static CutDrawing marks() {
    Arc counterClockwise = Arc.of(new Point(3, 4), 5, Math.toRadians(200), Math.toRadians(300));
    Arc clockwise = Arc.of(new Point(-30, 4), 7, Math.toRadians(-10), Math.toRadians(-100));
    Line line = new Line(new Point(1.0 / 3, 0), new Point(0, 1e3 / 7));
    return new CutDrawing(
        List.of(
            new CutLayer(
                CutRole.CENTRES,
                List.of(),
                List.of(),
                List.of(counterClockwise, clockwise, line, Arc.circle(new Point(50, 50), 2)))));
  }
}
