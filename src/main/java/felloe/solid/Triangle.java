package felloe.solid;

/** A flat piece of a body's skin, its corners counter-clockwise as seen from outside. */
public record Triangle(Vertex a, Vertex b, Vertex c) {

  /** The vector that points outward; its length is twice the area. */
  public Vertex outward() {
    return b.minus(a).cross(c.minus(a));
  }

  /** Area, mm². */
  public double area() {
    return outward().norm() / 2;
  }

  /** The same piece seen from the other side. */
  public Triangle reversed() {
    return new Triangle(a, c, b);
  }
}
