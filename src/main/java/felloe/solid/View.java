package felloe.solid;

import felloe.geometry.Point;

/** From where bodies are looked at; lines stay parallel, as from far away. */
public enum View {
  /** As the driver sees the wheel: x to the right, y up. */
  FRONT(new Vertex(0, 0, 1), new Vertex(0, 1, 0)),

  /** Lying on a table, from above and from the left. */
  SLANTED(new Vertex(-0.5, -1, 0.9), new Vertex(0, 0, 1));

  private final Vertex toEye;
  private final Vertex right;
  private final Vertex up;

  View(Vertex toEye, Vertex above) {
    this.toEye = unit(toEye);
    this.right = unit(above.cross(this.toEye));
    this.up = this.toEye.cross(right);
  }

  private static Vertex unit(Vertex v) {
    double norm = v.norm();
    return new Vertex(v.x() / norm, v.y() / norm, v.z() / norm);
  }

  /** A point as it is seen: x to the right, y up, z towards the eye. */
  Vertex seen(Vertex v) {
    return new Vertex(v.dot(right), v.dot(up), v.dot(toEye));
  }

  /** Where a point is seen, mm. */
  public Point at(Vertex v) {
    return seen(v).plan();
  }
}
