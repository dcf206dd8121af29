package felloe.grips;

import felloe.geometry.DiscHull;
import felloe.geometry.DiscHull.Disc;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.plate.Face;
import java.util.ArrayList;
import java.util.List;

/**
 * The section of a grip square to the rim, as it is made: the wrap is taken off. Lengths in mm,
 * {@code d} inward from the plate's edge.
 *
 * @param past how far it stands out past the edge; below zero where it stays back
 * @param over how far in over the plate it reaches
 * @param front its height above the front face; 0 where it does not lie on it
 * @param back its height above the back face
 * @param round radius of the outer rounding
 * @param innerRound radius of the inner rounding
 * @param lip how deep it also covers the edge, below the face that it lies on; 0 for none
 * @param wrap thickness of what is put round it
 */
public record GripSection(
    double past,
    double over,
    double front,
    double back,
    double round,
    double innerRound,
    double lip,
    double wrap) {

  /** Room between a shell's lip and the plate's edge, mm, so that it goes on: common practice. */
  static final double LIP_ROOM = 0.2;

  /**
   * Refuses what has no breadth.
   *
   * @throws IllegalArgumentException naming the field
   */
  public GripSection {
    Numbers.positive("breadth", past + over);
  }

  /** Its breadth, mm. */
  public double breadth() {
    return past + over;
  }

  /** Its height above a face at its highest, mm. */
  public double height(Face face) {
    return face == Face.FRONT ? front : back;
  }

  /** Radius of the outer rounding on a face: never more than the section has room for. */
  public double round(Face face) {
    return Math.min(Math.min(round, height(face) + lip), breadth() / 2);
  }

  /** Radius of the inner rounding on a face. */
  public double innerRound(Face face) {
    return Math.min(Math.min(innerRound, height(face)), breadth() / 2);
  }

  /** Height of its surface above a face, mm; 0 beside it. */
  public double top(Face face, double d) {
    double height = height(face);
    if (height <= 0 || d < -past || d > over) {
      return 0;
    }
    double outer = round(face);
    double inner = innerRound(face);
    double lost = 0;
    if (d < outer - past) {
      lost = fall(outer, outer - past - d);
    } else if (d > over - inner) {
      lost = fall(inner, d - over + inner);
    }
    return height - lost;
  }

  private static double fall(double radius, double away) {
    return radius - Math.sqrt(Math.max(0, radius * radius - away * away));
  }

  /** How thick it is on a face at a distance, mm: the lip counted in where it is. */
  public double thick(Face face, double d) {
    double top = top(face, d);
    return height(face) <= 0 || d < -past || d > over ? 0 : d < -LIP_ROOM ? top + lip : top;
  }

  /**
   * Once round grip, plate and wrap with a taut tape, mm, in closed form.
   *
   * @param thickness of the plate
   * @param web how far the plate goes on inward from its edge
   * @param broken radius that its edges are rounded with
   */
  public double girth(double thickness, double web, double broken) {
    List<Disc> discs = new ArrayList<>();
    double edge = Math.min(broken, Math.min(thickness, web) / 2);
    for (double d : new double[] {edge, web - edge}) {
      discs.add(new Disc(new Point(d, -edge), edge));
      discs.add(new Disc(new Point(d, edge - thickness), edge));
    }
    for (Face face : Face.values()) {
      if (height(face) > 0) {
        double outer = round(face);
        double inner = innerRound(face);
        add(discs, face, thickness, outer - past, height(face) - outer, outer);
        add(discs, face, thickness, over - inner, height(face) - inner, inner);
        add(discs, face, thickness, -past, -lip, 0);
        add(discs, face, thickness, over, 0, 0);
      }
    }
    // A taut band over a wrap of even thickness is longer by a whole circle of it.
    return DiscHull.girth(discs) + 2 * Math.PI * wrap;
  }

  private static void add(
      List<Disc> discs, Face face, double thickness, double d, double z, double radius) {
    discs.add(new Disc(new Point(d, face == Face.FRONT ? z : -thickness - z), radius));
  }
}
