package felloe.mesh;

/**
 * How well triangles are shaped.
 *
 * @param leastAngle the smallest angle of all, degrees; 60 is best
 * @param meanLeastAngle the mean of the triangles' smallest angles, degrees
 * @param leastShape the smallest of 4 sqrt(3) area / (sum of squared sides): 1 for an equilateral
 *     triangle, 0 for a flat one
 * @param shortest the shortest side, mm
 * @param longest the longest side, mm
 */
public record MeshQuality(
    double leastAngle, double meanLeastAngle, double leastShape, double shortest, double longest) {

  static MeshQuality of(PlateMesh mesh) {
    double least = 180;
    double sum = 0;
    double shape = 1;
    double shortest = Double.POSITIVE_INFINITY;
    double longest = 0;
    for (int t = 0; t < mesh.triangles(); t++) {
      double angle = 180;
      double squares = 0;
      for (int c = 0; c < 3; c++) {
        int a = mesh.corner(t, c);
        int b = mesh.corner(t, (c + 1) % 3);
        int d = mesh.corner(t, (c + 2) % 3);
        double side = Math.hypot(mesh.x(b) - mesh.x(a), mesh.y(b) - mesh.y(a));
        squares += side * side;
        shortest = Math.min(shortest, side);
        longest = Math.max(longest, side);
        double towards = Math.atan2(mesh.y(b) - mesh.y(a), mesh.x(b) - mesh.x(a));
        double other = Math.atan2(mesh.y(d) - mesh.y(a), mesh.x(d) - mesh.x(a));
        double turn = Math.abs(Math.IEEEremainder(other - towards, 2 * Math.PI));
        angle = Math.min(angle, Math.toDegrees(turn));
      }
      least = Math.min(least, angle);
      sum += angle;
      shape = Math.min(shape, 4 * Math.sqrt(3) * mesh.area(t) / squares);
    }
    return new MeshQuality(least, sum / mesh.triangles(), shape, shortest, longest);
  }
}
