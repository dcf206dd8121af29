package felloe.load;

/**
 * An isotropic plate that cracks when the largest pull at a face reaches a limit (maximum principal
 * stress, Rankine).
 *
 * @param e modulus of elasticity, MPa
 * @param nu Poisson's ratio
 * @param thickness mm
 * @param limit stress, MPa
 */
public record PullStrength(double e, double nu, double thickness, double limit)
    implements Strength {

  /** Refuses figures that are not above 0. */
  public PullStrength {
    PositiveFigure.zero("e", e);
    PositiveFigure.zero("thickness", thickness);
    PositiveFigure.zero("limit", limit);
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double z = thickness / 2;
    double back = pull(ex - z * kx, ey - z * ky, gxy - z * kxy);
    double face = pull(ex + z * kx, ey + z * ky, gxy + z * kxy);
    return Math.max(0, Math.max(back, face)) / limit;
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double z = thickness / 2;
    double back = pull(ex - z * kx, ey - z * ky, gxy - z * kxy);
    double face = pull(ex + z * kx, ey + z * ky, gxy + z * kxy);
    double at = face >= back ? z : -z;
    double stress = Math.max(0, Math.max(back, face));
    double strain = Strains.largest(ex + at * kx, ey + at * ky, gxy + at * kxy);
    return new Worst(stress / limit, at, 0, "largest pull", stress, strain);
  }

  private double pull(double x, double y, double shear) {
    double middle = e / (1 - nu) * (x + y) / 2;
    double radius = e / (1 + nu) * Math.hypot((x - y) / 2, shear / 2);
    return middle + radius;
  }
}
