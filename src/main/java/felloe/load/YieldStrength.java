package felloe.load;

/**
 * An isotropic plate that fails when von Mises's stress at a face reaches a limit.
 *
 * <p>Source: von Mises's criterion in plane stress, {@code s1^2 - s1 s2 + s2^2 + 3 t^2}.
 *
 * @param e modulus of elasticity, MPa
 * @param nu Poisson's ratio
 * @param thickness mm
 * @param limit stress, MPa
 */
public record YieldStrength(double e, double nu, double thickness, double limit)
    implements Strength {

  /** Refuses figures that are not above 0. */
  public YieldStrength {
    PositiveFigure.zero("e", e);
    PositiveFigure.zero("thickness", thickness);
    PositiveFigure.zero("limit", limit);
  }

  @Override
  public double use(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double z = thickness / 2;
    double back = stress(ex - z * kx, ey - z * ky, gxy - z * kxy);
    double face = stress(ex + z * kx, ey + z * ky, gxy + z * kxy);
    return Math.max(back, face) / limit;
  }

  @Override
  public Worst worst(double ex, double ey, double gxy, double kx, double ky, double kxy) {
    double z = thickness / 2;
    double back = stress(ex - z * kx, ey - z * ky, gxy - z * kxy);
    double face = stress(ex + z * kx, ey + z * ky, gxy + z * kxy);
    double at = face >= back ? z : -z;
    double stress = Math.max(back, face);
    double strain = Strains.largest(ex + at * kx, ey + at * ky, gxy + at * kxy);
    return new Worst(stress / limit, at, 0, "von Mises", stress, strain);
  }

  private double stress(double x, double y, double shear) {
    double scale = e / (1 - nu * nu);
    double sx = scale * (x + nu * y);
    double sy = scale * (y + nu * x);
    double t = e / 2 / (1 + nu) * shear;
    return Math.sqrt(sx * sx - sx * sy + sy * sy + 3 * t * t);
  }
}
