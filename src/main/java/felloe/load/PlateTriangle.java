package felloe.load;

import felloe.mesh.PlateMesh;

/**
 * A triangle of a plate with three unknowns at each corner, which tells its stiffness and what is
 * strained in it. One instance serves many triangles in turn. Not shared between threads.
 */
interface PlateTriangle {

  /** Unknowns: three of the first corner, of the second, of the third. */
  int UNKNOWNS = 9;

  /** Takes a triangle of a mesh. */
  void on(PlateMesh mesh, int triangle);

  /** Its area, mm2. */
  double area();

  /** Puts the stiffness into an array, row by row, from a place on. */
  void stiffness(double[] k, int from);

  /** Goes to area coordinates (p, q, r). */
  void at(double p, double q, double r);

  /** Puts what is strained where it has gone to, three figures, into an array from a place on. */
  void strains(double[] unknowns, double[] into, int from);
}
