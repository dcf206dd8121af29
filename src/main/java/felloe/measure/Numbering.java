package felloe.measure;

import felloe.geometry.Point;
import felloe.hub.RigidFit;
import felloe.hub.RigidFit.Round;
import felloe.plate.BadInput;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * Sees whether holes were numbered another way than on the plate: their own numbers fit badly and
 * others well.
 */
final class Numbering {

  /** As far off by their own numbers as no drilling is, mm. */
  static final double FAR = 2;

  private static final double BETTER = 0.25;

  private Numbering() {}

  static void check(
      Measured measured,
      List<String> labels,
      List<Point> found,
      List<Point> meant,
      Alignment aligned) {
    if (aligned.worst() < FAR) {
      return;
    }
    for (boolean mirror : new boolean[] {false, true}) {
      List<Round> from = new ArrayList<>();
      List<Round> to = new ArrayList<>();
      for (int i = 0; i < found.size(); i++) {
        Point p = found.get(i);
        from.add(new Round(mirror ? new Point(-p.x(), p.y()) : p, 0));
        to.add(new Round(meant.get(i), 0));
      }
      RigidFit fit = RigidFit.of(from, to);
      if (-fit.clearance() < BETTER * aligned.worst()) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
          words.add(labels.get(i) + " is " + labels.get(fit.holes().get(i)));
        }
        throw new BadInput(
            new Problem(
                measured.place(),
                "holes",
                "",
                "do not lie where their numbers have them on the plate",
                "they do if "
                    + String.join(", ", words)
                    + "; number them as the hole schedule does"));
      }
    }
  }
}
