package felloe.template;

import felloe.document.Block;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.Face;
import felloe.plate.Hole;
import java.util.List;

/**
 * The hole table as it is drawn: label, x, y, radius and angle from the hub axis, size, role.
 * Figures are those of the face that the page shows: on the back face x has the other sign.
 */
final class HoleTable {

  private static final List<Block.Column> COLUMNS =
      List.of(
          new Block.Column("hole", "", Block.Fill.WORDS),
          new Block.Column("x", "", Block.Fill.FIGURES),
          new Block.Column("y", "", Block.Fill.FIGURES),
          new Block.Column("radius", "", Block.Fill.FIGURES),
          new Block.Column("angle \u00b0", "", Block.Fill.FIGURES),
          new Block.Column("size", "", Block.Fill.WORDS),
          new Block.Column("for", "", Block.Fill.WORDS));

  private HoleTable() {}

  /** The table of some holes as they lie on a face, in order. */
  static Block.Table of(List<Hole> holes, Face face) {
    return Block.Table.ofWords(COLUMNS, holes.stream().map(hole -> row(hole, face)).toList())
        .under(
            "Holes, mm and degrees, from the hub axis, "
                + (face == Face.FRONT ? "front face" : "BACK FACE: MIRRORED"))
        .sideBySide();
  }

  private static List<String> row(Hole hole, Face face) {
    Point c = face == Face.FRONT ? hole.centre() : RigidTransform.MIRROR.of(hole.centre());
    double angle = c.norm() < Tolerances.SAME_POINT ? 0 : Math.toDegrees(c.angle());
    return List.of(
        hole.label(),
        Numbers.fixed(c.x(), 2),
        Numbers.fixed(c.y(), 2),
        Numbers.fixed(c.norm(), 2),
        Numbers.fixed(angle < -Tolerances.ROUNDING ? angle + 360 : Math.abs(angle), 2),
        hole.size(),
        hole.role().words());
  }
}
