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
        View.of(
            StackResult.class,
            (one, to) ->
                to.add("thickness", one.laminate().thickness())
                    .add("symmetric", one.file().stack().isSymmetric())
                    .add("balanced", one.file().stack().isBalanced())
                    .add("coupled", one.laminate().isCoupled())
                    .add("quasi_isotropic", one.quasiIsotropic())
                    .add("isotropic_in_bending", one.isotropicInBending())
                    .add("anisotropy", Anisotropy.of(one.laminate()))
                    .add("a", one.laminate().a())
                    .add("b", one.laminate().b())
                    .add("d", one.laminate().d())
                    .add("moduli", one.laminate().moduli())
                    .add("held_moduli", one.laminate().heldModuli())
                    .add("load", one.file().load())
                    .add("loaded", one.loaded())
                    .add("first_failure", one.failures())
                    .add("cooling", one.file().cooling())
                    .add("cooled", one.cooled())
                    .add("bow", one.bow())
                    .add("bow_over", StackResult.BOW_OVER)
                    .add("notes", StackReport.notes(one))
                    .add("cautions", StackReport.CAUTIONS)),
        View.record(
            Deformation.class,
            (deformation, to) -> to.add("largest_curvature", deformation.largestCurvature())),
        View.record(
            PlyResponse.class,
            (ply, to) ->
                to.add("ply", ply.number())
                    .add("angle", ply.ply().angle())
                    .add("thickness", ply.ply().thickness()),
            "number"),
        View.as(PlaneStiffness.class, matrix -> Arrays.asList(matrix.rows())),
        View.as(PlaneTriple.class, PlaneTriple::figures));
  }
}
