package felloe.laminate;

/** What a ply by itself does when it gets warmer. */
final class Thermal {

  private Thermal() {}

  /** Strain of a ply that nothing holds, along the plate's axes. */
  static PlaneTriple free(Ply ply, double kelvin) {
    if (kelvin == 0 || ply.material().expansion().isEmpty()) {
      return PlaneTriple.ZERO;
    }
    PlyExpansion expansion = ply.material().expansion().get();
    PlaneTriple own = new PlaneTriple(expansion.along1() * kelvin, expansion.along2() * kelvin, 0);
    return own.strainTurned(-ply.angle());
  }
}
