package felloe.load;

import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a ply is used most in a load case.
 *
 * @param ply number from 1 at the back
 * @param use its failure index there, 1 at failure, in step with the load
 * @param at where
 */
public record PlyPeak(int ply, double use, Point at) {

  /** The peaks of all plies; none for a plate without plies. */
  public static List<PlyPeak> of(LoadResult result, CaseField field) {
    Strength strength = result.section().strength();
    List<PlyPeak> peaks = new ArrayList<>();
    for (int ply = 1; ply <= strength.plies(); ply++) {
      peaks.add(of(ply, strength, result, field));
    }
    return peaks;
  }

  private static PlyPeak of(int ply, Strength strength, LoadResult result, CaseField field) {
    double[] e = field.strains();
    double[] k = field.curvatures();
    int worst = 0;
    double most = 0;
    for (int i = 0; i < field.uses().length; i++) {
      int n = 3 * i;
      // Beside a point force nothing is told.
      if (field.uses()[i] > 0 && field.judged().get(i)) {
        double use = strength.plyUse(ply, e[n], e[n + 1], e[n + 2], k[n], k[n + 1], k[n + 2]);
        if (use > most) {
          most = use;
          worst = i;
        }
      }
    }
    return new PlyPeak(ply, most, field.place(result.mesh(), worst));
  }
}
