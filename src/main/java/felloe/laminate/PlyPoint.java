package felloe.laminate;

/**
 * A ply at one of its faces. Strains have engineering shear; stresses are MPa.
 *
 * @param z height above the middle plane, mm; toward the driver is positive
 * @param strain along the plate's axes, as a gauge would read it
 * @param stress along the plate's axes
 * @param ownStrain along the ply's axes, less what the ply by itself would do at its temperature:
 *     what stresses it, and what its strain limits are compared with
 * @param ownStress along the ply's axes
 */
public record PlyPoint(
    double z,
    PlaneTriple strain,
    PlaneTriple stress,
    PlaneTriple ownStrain,
    PlaneTriple ownStress) {

  static PlyPoint of(Ply ply, double z, Deformation deformation, double kelvin) {
    PlaneTriple strain = deformation.at(z);
    PlaneTriple free = Thermal.free(ply, kelvin);
    PlaneTriple held = strain.minus(free);
    PlaneStiffness q = ply.stiffness();
    PlaneTriple stress =
        new PlaneTriple(
            q.x(held.first(), held.second(), held.shear()),
            q.y(held.first(), held.second(), held.shear()),
            q.shear(held.first(), held.second(), held.shear()));
    return new PlyPoint(
        z, strain, stress, held.strainTurned(ply.angle()), stress.stressTurned(ply.angle()));
  }
}
