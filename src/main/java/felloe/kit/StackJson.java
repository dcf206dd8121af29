package felloe.kit;

import felloe.kit.StackAnswer.Cooled;
import felloe.kit.StackAnswer.FaceState;
import felloe.kit.StackAnswer.Failure;
import felloe.kit.StackAnswer.Layer;
import felloe.kit.StackAnswer.Loaded;
import felloe.kit.StackAnswer.Moduli;
import felloe.kit.StackAnswer.PlyFaces;
import felloe.kit.StackAnswer.Three;
import felloe.out.Json;
import java.util.List;

/** A stack as JSON. N, mm and MPa; figures have about ten significant digits. */
final class StackJson {

  private StackJson() {}

  static Json of(StackAnswer answer) {
    return Json.object()
        .with("thickness", Significant.number(answer.thickness()))
        .with("symmetric", answer.symmetric())
        .with("balanced", answer.balanced())
        .with("coupled", answer.coupled())
        .with("quasiIsotropic", answer.isotropic().quasi())
        .with("isotropicInBending", answer.isotropic().inBending())
        .with(
            "anisotropy",
            Json.object()
                .with("inPlane", Json.number(answer.isotropic().inPlane(), 9))
                .with("bending", Json.number(answer.isotropic().bending(), 9)))
        .with("stack", Json.array(answer.layers(), StackJson::layer))
        .with("A", matrix(answer.a()))
        .with("B", matrix(answer.b()))
        .with("D", matrix(answer.d()))
        .with(
            "moduli",
            Json.object()
                .with("inPlane", moduli(answer.moduli().inPlane()))
                .with("bending", moduli(answer.moduli().bending()))
                .with(
                    "held",
                    Json.object()
                        .with("inPlane", moduli(answer.moduli().heldInPlane()))
                        .with("bending", moduli(answer.moduli().heldBending()))))
        .with("load", Json.maybe(answer.loaded(), StackJson::load))
        .with("midPlaneStrains", Json.maybe(answer.loaded(), l -> three(l.strains())))
        .with("curvatures", Json.maybe(answer.loaded(), l -> three(l.curvatures())))
        .with("plies", Json.maybe(answer.loaded(), l -> Json.array(l.plies(), StackJson::ply)))
        .with("firstFailure", Json.array(answer.failures(), StackJson::failure))
        .with("cooling", Json.maybe(answer.cooled(), StackJson::cooled))
        .with("notes", Json.array(answer.notes(), Json::text))
        .with("cautions", Json.array(answer.cautions(), Json::text));
  }

  private static Json layer(Layer layer) {
    return Json.object()
        .with("ply", layer.ply())
        .with("angle", layer.angle(), 6)
        .with("thickness", Significant.number(layer.thickness()))
        .with("z", Significant.array(layer.bottom(), layer.top()));
  }

  private static Json moduli(Moduli m) {
    return Json.object()
        .with("Ex", Significant.number(m.ex()))
        .with("Ey", Significant.number(m.ey()))
        .with("Gxy", Significant.number(m.gxy()))
        .with("nuxy", m.nuxy(), 9)
        .with("nuyx", m.nuyx(), 9)
        .with("highest", Significant.number(m.highest()))
        .with("highestAt", m.highestAt())
        .with("lowest", Significant.number(m.lowest()))
        .with("lowestAt", m.lowestAt());
  }

  private static Json load(Loaded loaded) {
    return Json.object().with("N", three(loaded.n())).with("M", three(loaded.m()));
  }

  private static Json ply(PlyFaces ply) {
    return Json.object()
        .with("ply", ply.ply())
        .with("angle", ply.angle(), 6)
        .with("bottom", face(ply.bottom()))
        .with("top", face(ply.top()));
  }

  private static Json face(FaceState face) {
    return Json.object()
        .with("z", Significant.number(face.z()))
        .with("strain", three(face.strain()))
        .with("stress", three(face.stress()))
        .with("ownStrain", three(face.ownStrain()))
        .with("ownStress", three(face.ownStress()));
  }

  private static Json failure(Failure failure) {
    return Json.object()
        .with("criterion", failure.criterion())
        .with("ply", failure.ply())
        .with("face", failure.top() ? "top" : "bottom")
        .with("mode", Json.maybe(failure.mode(), Json::text))
        .with("index", Significant.number(failure.index()))
        .with("reserve", Significant.number(failure.reserve()));
  }

  private static Json cooled(Cooled cooled) {
    return Json.object()
        .with("kelvin", cooled.kelvin(), 6)
        .with("midPlaneStrains", three(cooled.strains()))
        .with("curvatures", three(cooled.curvatures()))
        .with("largestCurvature", Significant.number(cooled.largest()))
        .with("bow", cooled.bow(), 6)
        .with("bowOver", cooled.over(), 6)
        .with("plies", Json.array(cooled.plies(), StackJson::ply));
  }

  private static Json matrix(List<Three> rows) {
    double scale = 0;
    for (Three row : rows) {
      scale =
          Math.max(
              scale,
              Math.max(
                  Math.abs(row.first()), Math.max(Math.abs(row.second()), Math.abs(row.third()))));
    }
    double largest = scale;
    return Json.array(
        rows, row -> Significant.scaled(largest, row.first(), row.second(), row.third()));
  }

  private static Json three(Three t) {
    return Significant.array(t.first(), t.second(), t.third());
  }
}
