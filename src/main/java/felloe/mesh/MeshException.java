package felloe.mesh;

import felloe.geometry.Point;

/** A region that cannot be meshed within the bounds that were set. */
public final class MeshException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Point where;

  MeshException(String message, Point where) {
    super(message);
    this.where = where;
  }

  /** Near which point it failed, mm. */
  public Point where() {
    return where;
  }
}
