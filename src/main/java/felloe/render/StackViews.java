package felloe.render;

import felloe.laminate.Deformation;
import felloe.laminate.Laminate;
import felloe.laminate.PlaneStiffness;
import felloe.laminate.PlaneTriple;
import felloe.laminate.PlyResponse;
import felloe.laminate.StackResult;
import felloe.report.StackReport;
import java.util.Arrays;
import java.util.List;

/** A stack on its own as JSON. N, mm and MPa. */
final class StackViews {

  private StackViews() {}

  private record Anisotropy(double inPlane, double bending) {
    static Anisotropy of(Laminate laminate) {
      return new Anisotropy(laminate.a().anisotropy(), laminate.d().anisotropy());
    }
  }

  static List<View<?>> all() {
    return List.of(
        View.of(StackResult.class)
            .with("thickness", one -> one.laminate().thickness())
            .with("symmetric", one -> one.file().stack().isSymmetric())
            .with("balanced", one -> one.file().stack().isBalanced())
            .with("coupled", one -> one.laminate().isCoupled())
            .with("quasi_isotropic", StackResult::quasiIsotropic)
            .with("isotropic_in_bending", StackResult::isotropicInBending)
            .with("anisotropy", one -> Anisotropy.of(one.laminate()))
            .with("a", one -> one.laminate().a())
            .with("b", one -> one.laminate().b())
            .with("d", one -> one.laminate().d())
            .with("moduli", one -> one.laminate().moduli())
            .with("held_moduli", one -> one.laminate().heldModuli())
            .with("load", one -> one.file().load())
            .with("loaded", StackResult::loaded)
            .with("first_failure", StackResult::failures)
            .with("cooling", one -> one.file().cooling())
            .with("cooled", StackResult::cooled)
            .with("bow", StackResult::bow)
            .with("bow_over", one -> StackResult.BOW_OVER)
            .with("notes", StackReport::notes)
            .with("cautions", one -> StackReport.CAUTIONS),
        View.record(Deformation.class).with("largest_curvature", Deformation::largestCurvature),
        View.record(PlyResponse.class, "number")
            .with("ply", PlyResponse::number)
            .with("angle", ply -> ply.ply().angle())
            .with("thickness", ply -> ply.ply().thickness()),
        View.as(PlaneStiffness.class, matrix -> Arrays.asList(matrix.rows())),
        View.as(PlaneTriple.class, PlaneTriple::figures));
  }
}
