package felloe.geometry;

import java.util.Objects;
import java.util.Optional;

/**
 * A shape that cannot be: a chain that does not close, edges that cross, a radius with no room. The
 * message says what is wrong and by how much; {@link #where()} says where. Callers who know the
 * maker's words for the feature turn it into an input error.
 */
public final class GeometryException extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient Point where;

  /** A fault without a place. */
  public GeometryException(String message) {
    super(message);
    this.where = null;
  }

  /** A fault at a point. */
  public GeometryException(String message, Point where) {
    super(message);
    this.where = Objects.requireNonNull(where);
  }

  /** Where the fault lies, when it lies at a point. */
  public Optional<Point> where() {
    return Optional.ofNullable(where);
  }
}
