package felloe.load;

import felloe.laminate.PlaneStiffness;

/**
 * Plywood taken as one orthotropic sheet whose grain lies along x. It fails by Norris's criterion:
 * {@code (s1/f1)^2 - s1 s2/(f1 f2) + (s2/f2)^2 + (t/fv)^2 = 1}; the use is the root of the left
 * side, so that it grows in step with the load.
 *
 * <p>Source: Norris, Strength of orthotropic materials subjected to combined stresses, US Forest
 * Products Laboratory, 1962, from memory.
 *
 * @param q reduced stiffness, MPa
 * @param thickness mm
 * @param along strength along the grain, MPa
 * @param across strength across it, MPa
 * @param shear shear strength, MPa
 */
record GrainStrength(PlaneStiffness q, double thickness, double along, double across, double shear)
    implements Strength {

  GrainStrength {
    PositiveFigure.zero("thickness", thickness);
    PositiveFigure.zero("along", along);
    PositiveFigure.zero("across", across);
    PositiveFigure.zero("shear", shear);
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double z = thickness / 2;
    return Math.max(
        at(ex - z * kx, ey - z * ky, gxy - z * kxy), at(ex + z * kx, ey + z * ky, gxy + z * kxy));
  }

  private double at(double x, double y, double g) {
    double one = q.x(x, y, g) / along;
    double two = q.y(x, y, g) / across;
    double three = q.shear(x, y, g) / shear;
    return Math.sqrt(one * one - one * two + two * two + three * three);
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double h = thickness / 2;
    double back = at(ex - h * kx, ey - h * ky, gxy - h * kxy);
    double face = at(ex + h * kx, ey + h * ky, gxy + h * kxy);
    double z = face >= back ? h : -h;
    double x = ex + z * kx;
    double y = ey + z * ky;
    double g = gxy + z * kxy;
    double one = Math.abs(q.x(x, y, g));
    double two = Math.abs(q.y(x, y, g));
    double three = Math.abs(q.shear(x, y, g));
    boolean first = one / along >= two / across && one / along >= three / shear;
    boolean second = !first && two / across >= three / shear;
    String measure = first ? "along the grain" : second ? "across the grain" : "shear";
    double stress = first ? one : second ? two : three;
    return new Worst(Math.max(back, face), z, 0, measure, stress, Strains.largest(x, y, g));
  }
}
