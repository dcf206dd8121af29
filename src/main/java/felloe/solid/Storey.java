package felloe.solid;

import felloe.geometry.Point;

/** Heights of a relief over one piece of its plan, or over many, mm. */
public interface Storey {

  /** Height of the upper face, not below {@link #bottom}. */
  double top(Point p);

  /** Height of the lower face. */
  double bottom(Point p);

  /** A storey with level faces. */
  static Storey level(double bottom, double top) {
    return new Storey() {
      @Override
      public double top(Point p) {
        return top;
      }

      @Override
      public double bottom(Point p) {
        return bottom;
      }
    };
  }
}
