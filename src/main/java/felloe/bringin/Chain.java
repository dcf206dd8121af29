package felloe.bringin;

import felloe.geometry.Point;
import java.util.List;

/**
 * Strokes that follow each other, as they were drawn together.
 *
 * @param strokes at least one, each starting where the one before ends
 * @param as what the file says that it is
 */
record Chain(List<Stroke> strokes, DrawnAs as) {
  Chain {
    strokes = List.copyOf(strokes);
    if (strokes.isEmpty()) {
      throw new IllegalArgumentException("a chain has strokes");
    }
  }

  String layer() {
    return as.layer();
  }

  Point from() {
    return strokes.get(0).from();
  }

  Point to() {
    return strokes.get(strokes.size() - 1).to();
  }
}
