package felloe.load;

import felloe.laminate.Laminate;
import felloe.laminate.PlaneStiffness;
import felloe.laminate.PlyMaterial;
import felloe.laminate.PlyStrength;
import felloe.laminate.Stack;
import java.util.List;

/** How a sheet bears load. */
public sealed interface StockStrength {

  /**
   * The same in all directions, until it bends for good.
   *
   * @param nu Poisson's ratio
   * @param yield stress, MPa
   */
  record Yields(double nu, double yield) implements StockStrength {
    PlateSection section(double e, double t) {
      return PlateSection.isotropic(e, nu, t, yield);
    }
  }

  /**
   * The same in all directions, until the largest pull cracks it.
   *
   * @param e modulus, MPa
   * @param nu Poisson's ratio
   * @param strength pulled, MPa
   */
  record Cracks(double e, double nu, double strength) implements StockStrength {
    PlateSection section(double t) {
      return new PlateSection(
          t,
          Isotropic.membrane(e, nu, t),
          Isotropic.bending(e, nu, t),
          5.0 / 6 * e / 2 / (1 + nu) * t,
          new PullStrength(e, nu, t, strength),
          List.of());
    }
  }

  /**
   * Crossed fibres along x and y.
   *
   * @param nu12 Poisson's ratio
   * @param g12 shear modulus, MPa
   * @param between shear modulus between plies, MPa
   * @param xt strength along the fibres when pulled, MPa
   * @param xc the same when pressed, MPa
   * @param s shear strength, MPa
   */
  record Cloth(double nu12, double g12, double between, double xt, double xc, double s)
      implements StockStrength {

    /** The sheet as a single ply. */
    Stack stack(double e, double t) {
      PlyMaterial elastic = new PlyMaterial(e, e, nu12, g12);
      return Stack.of(elastic.with(new PlyStrength(xt, xc, xt, xc, s)), t, 0);
    }
  }

  /**
   * Stiff along the grain, which lies along x, and softer across. Figures are lists, one for each
   * thickness.
   *
   * @param thicknesses mm, thinnest first
   * @param across modulus across the grain, MPa
   * @param nu12 Poisson's ratio
   * @param g12 shear modulus, MPa
   * @param between shear modulus across the thickness, MPa
   * @param alongStrength strength in bending along the grain, MPa
   * @param acrossStrength strength in bending across it, MPa
   * @param shear strength, MPa
   */
  record Grain(
      List<Double> thicknesses,
      List<Double> across,
      double nu12,
      double g12,
      double between,
      List<Double> alongStrength,
      List<Double> acrossStrength,
      double shear)
      implements StockStrength {

    /** Copies the lists. */
    public Grain {
      thicknesses = List.copyOf(thicknesses);
      across = List.copyOf(across);
      alongStrength = List.copyOf(alongStrength);
      acrossStrength = List.copyOf(acrossStrength);
    }

    PlateSection section(double along, double t) {
      PlyMaterial wood =
          new PlyMaterial(along, TableInterpolation.at(thicknesses, across, t), nu12, g12);
      PlaneStiffness q = wood.reduced();
      return new PlateSection(
          t,
          Laminate.of(Stack.of(wood, t, 0)).a(),
          Laminate.of(Stack.of(wood, t, 0)).d(),
          5.0 / 6 * between * t,
          new GrainStrength(
              q,
              t,
              TableInterpolation.at(thicknesses, alongStrength, t),
              TableInterpolation.at(thicknesses, acrossStrength, t),
              shear),
          List.of());
    }
  }
}
