package felloe.grips;

import felloe.geometry.Point;
import felloe.plate.Face;
import felloe.plate.Hole;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What a grip weighs and where its weight lies, its screw holes and pockets taken off. The wrap is
 * not counted.
 *
 * <p>Integrated over way and distance by Gauss's rule of eight points between all places where the
 * form changes its law; an element of a bent rim is {@code (1 - curvature * d) ds dd}, which is
 * Pappus's rule in small. Exact to about 1e-8.
 *
 * @param volume mm³
 * @param mass g
 * @param centre centre of mass as the driver sees it, mm
 * @param depth height of the centre of mass above the front face, mm
 * @param inertia about the hub axis, g mm²
 */
public record GripWeight(double volume, double mass, Point centre, double depth, double inertia) {

  /** Points and weights of Gauss and Legendre on -1 to 1 (Abramowitz and Stegun, table 25.4). */
  private static final double[] GAUSS_AT = {
    0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
  };

  private static final double[] GAUSS_WEIGHT = {
    0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
  };

  /** Sums over volume of 1, x, y, z and the square of the distance from the hub axis. */
  private static final class Sums {
    private double volume;
    private double x;
    private double y;
    private double z;
    private double square;

    void add(Point at, double height, double part) {
      volume += part;
      x += at.x() * part;
      y += at.y() * part;
      z += height * part;
      square += at.dot(at) * part;
    }
  }

  /**
   * Weighs one grip, on all its faces.
   *
   * @param pockets those let into it
   */
  public static GripWeight of(PlacedGrip grip, List<Pocket> pockets) {
    Sums sums = new Sums();
    double t = grip.thickness();
    List<Double> breaks = grip.breaks();
    for (int i = 0; i + 1 < breaks.size(); i++) {
      double from = breaks.get(i);
      double to = breaks.get(i + 1);
      double bend = grip.run().curvature((from + to) / 2);
      each(
          from,
          to,
          (s, ds) -> {
            GripSection section = grip.section(s);
            for (Face face : grip.grip().on()) {
              across(
                  section,
                  face,
                  (d, dd) -> {
                    double thick = section.thick(face, d);
                    double low = d < -GripSection.LIP_ROOM ? -section.lip() : 0;
                    double middle = low + thick / 2;
                    sums.add(
                        grip.run().at(s, d),
                        face == Face.FRONT ? middle : -t - middle,
                        (1 - bend * d) * thick * dd * ds);
                  });
            }
          });
    }
    for (Hole hole : grip.holes()) {
      for (Face face : grip.grip().on()) {
        if (!Pocket.closes(pockets, hole, face)) {
          double depth = grip.surface(face, hole.centre());
          double area = hole.contour().area();
          sums.add(hole.centre(), side(face, depth / 2, t), -area * depth);
        }
      }
    }
    for (Pocket pocket : pockets) {
      double top = grip.surface(pocket.face(), pocket.centre());
      double middle = pocket.fromPlate() ? pocket.depth() / 2 : top - pocket.depth() / 2;
      double hole =
          grip.holes().stream()
              .filter(h -> h.label().equals(pocket.hole()) && !pocket.fromPlate())
              .mapToDouble(h -> h.contour().area())
              .sum();
      double cone = pocket.cone().map(Pocket.Cone::depth).orElse(0.0);
      double gone = (pocket.area() - hole) * (pocket.depth() - cone);
      sums.add(pocket.centre(), side(pocket.face(), middle + cone / 2, t), -gone);
      pocket
          .cone()
          .ifPresent(
              c -> {
                // Of a ring that widens upward in a straight line, about the hole.
                double over = (pocket.size() - c.to()) / 2;
                double ring = Math.PI * over * c.depth() * (c.to() / 2 + over / 3);
                double up = c.depth() * (c.to() / 3 + over / 4) / (c.to() / 2 + over / 3);
                double at = top - pocket.depth() + up;
                sums.add(pocket.centre(), side(pocket.face(), at, t), -ring);
              });
    }
    double density = grip.grip().material().density() / 1000;
    return new GripWeight(
        sums.volume,
        sums.volume * density,
        new Point(sums.x / sums.volume, sums.y / sums.volume),
        sums.z / sums.volume,
        sums.square * density);
  }

  private static double side(Face face, double above, double thickness) {
    return face == Face.FRONT ? above : -thickness - above;
  }

  private interface Part {
    void at(double x, double dx);
  }

  private static void each(double from, double to, Part part) {
    double half = (to - from) / 2;
    double middle = (from + to) / 2;
    for (int k = 0; k < GAUSS_AT.length; k++) {
      part.at(middle + half * GAUSS_AT[k], half * GAUSS_WEIGHT[k]);
      part.at(middle - half * GAUSS_AT[k], half * GAUSS_WEIGHT[k]);
    }
  }

  /** Across a section; on its roundings by their angle, where the height has no steep end. */
  private static void across(GripSection section, Face face, Part part) {
    double outer = section.round(face);
    double inner = section.innerRound(face);
    double past = section.past();
    double over = section.over();
    List<Double> cuts = new ArrayList<>(new TreeSet<>(List.of(outer - past, over - inner)));
    if (outer > 0) {
      double edge = Math.min(1, Math.max(0, (past - GripSection.LIP_ROOM) / outer));
      // The lip ends beside the plate's edge, which may lie below the rounding.
      for (double[] angles :
          new double[][] {{0, Math.acos(1 - edge)}, {Math.acos(1 - edge), Math.PI / 2}}) {
        each(
            angles[0],
            angles[1],
            (a, da) -> part.at(-past + outer * (1 - Math.cos(a)), outer * Math.sin(a) * da));
      }
    }
    double flat = cuts.get(0);
    double end = cuts.get(cuts.size() - 1);
    double lip = -GripSection.LIP_ROOM;
    if (flat < lip && end > lip) {
      each(flat, lip, part);
      each(lip, end, part);
    } else if (end > flat) {
      each(flat, end, part);
    }
    if (inner > 0) {
      each(
          0,
          Math.PI / 2,
          (a, da) -> part.at(over - inner * (1 - Math.cos(a)), inner * Math.sin(a) * da));
    }
  }
}
