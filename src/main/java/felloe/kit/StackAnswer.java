package felloe.kit;

import felloe.laminate.Deformation;
import felloe.laminate.FailureCriterion;
import felloe.laminate.FailureMode;
import felloe.laminate.FirstFailure;
import felloe.laminate.Laminate;
import felloe.laminate.LaminateLoad;
import felloe.laminate.LaminateResponse;
import felloe.laminate.PlaneStiffness;
import felloe.laminate.PlaneTriple;
import felloe.laminate.Ply;
import felloe.laminate.PlyPoint;
import felloe.laminate.PlyResponse;
import felloe.laminate.SheetModuli;
import felloe.laminate.Stack;
import felloe.laminate.StackFile;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a stack on its own, in N and mm; z from -h/2 at the back face, where ply 1 lies.
 *
 * @param symmetric whether it reads the same from both faces
 * @param balanced whether it does not shear when pulled along x or y
 * @param coupled whether stretch and bending are joined
 * @param isotropic how far it is from being the same in all directions, pulled and bent
 * @param layers the plies from the back
 * @param a rows of A, N/mm
 * @param b rows of B, N
 * @param d rows of D, N mm
 * @param moduli free to curve, and held flat
 * @param loaded under the load that the file gives
 * @param failures of a first ply under that load, by each criterion whose limits are known
 * @param cooled after cooling by what the file gives
 * @param notes what the maker should know of this stack
 * @param cautions sentences that go with the figures
 */
public record StackAnswer(
    boolean symmetric,
    boolean balanced,
    boolean coupled,
    Isotropy isotropic,
    List<Layer> layers,
    List<Three> a,
    List<Three> b,
    List<Three> d,
    ModuliPair moduli,
    Optional<Loaded> loaded,
    List<Failure> failures,
    Optional<Cooled> cooled,
    List<String> notes,
    List<String> cautions) {

  /** Part that turns over part that stays, below which nobody could measure the difference. */
  private static final double SAME = 1e-6;

  /** A modulus below this is that of a foam, MPa. */
  private static final double SOFT = 500;

  /** Length over which a bow is told, mm: about a wheel's width. */
  static final double BOW_OVER = 300;

  private static final List<String> CAUTIONS =
      List.of(
          "For a thin flat plate of plies that are perfectly joined, up to the first ply that"
              + " fails. It knows nothing of holes, edges, voids, damage, fatigue or heat.",
          "An estimate to choose a stack by, not an approval. Break test strips of the same"
              + " lay-up before you trust it. For closed-course use at the builder's own judgement;"
              + " event rules, local codes and a qualified person have the last word.");

  /** Copies the lists. */
  public StackAnswer {
    layers = List.copyOf(layers);
    a = List.copyOf(a);
    b = List.copyOf(b);
    d = List.copyOf(d);
    failures = List.copyOf(failures);
    notes = List.copyOf(notes);
    cautions = List.copyOf(cautions);
  }

  /** Three figures: along x, along y, shear; or along a ply's axes 1 and 2, shear. */
  public record Three(double first, double second, double third) {
    static Three of(PlaneTriple t) {
      return new Three(t.first(), t.second(), t.shear());
    }
  }

  /**
   * How far from being the same in all directions: 0 is the same.
   *
   * @param inPlane when pulled
   * @param bending when bent
   */
  public record Isotropy(double inPlane, double bending) {
    /** Whether it is quasi-isotropic: the same when pulled in any direction. */
    public boolean quasi() {
      return inPlane < SAME;
    }

    /** Whether it is the same when bent in any direction as well. */
    public boolean inBending() {
      return bending < SAME;
    }
  }

  /**
   * A ply.
   *
   * @param ply from 1 at the back
   * @param angle degrees
   * @param thickness mm
   * @param bottom height of its face toward the back, mm
   * @param top height of its face toward the driver, mm
   */
  public record Layer(int ply, double angle, double thickness, double bottom, double top) {}

  /** Moduli of one kind, MPa and ratios; see {@link SheetModuli}. */
  public record Moduli(
      double ex,
      double ey,
      double gxy,
      double nuxy,
      double nuyx,
      double highest,
      int highestAt,
      double lowest,
      int lowestAt) {
    static Moduli of(SheetModuli m) {
      return new Moduli(
          m.ex(),
          m.ey(),
          m.gxy(),
          m.nuxy(),
          m.nuyx(),
          m.highest(),
          m.highestAt(),
          m.lowest(),
          m.lowestAt());
    }
  }

  /**
   * Moduli of the stack.
   *
   * @param inPlane free to curve when pulled
   * @param bending free to stretch when bent
   * @param heldInPlane held flat when pulled
   * @param heldBending held from stretching when bent
   */
  public record ModuliPair(
      Moduli inPlane, Moduli bending, Moduli heldInPlane, Moduli heldBending) {}

  /**
   * A ply's face.
   *
   * @param z height, mm
   * @param strain along the plate's axes
   * @param stress along the plate's axes, MPa
   * @param ownStrain along the ply's axes
   * @param ownStress along the ply's axes, MPa
   */
  public record FaceState(double z, Three strain, Three stress, Three ownStrain, Three ownStress) {
    static FaceState of(PlyPoint p) {
      return new FaceState(
          p.z(),
          Three.of(p.strain()),
          Three.of(p.stress()),
          Three.of(p.ownStrain()),
          Three.of(p.ownStress()));
    }
  }

  /**
   * A ply's two faces.
   *
   * @param ply from 1 at the back
   * @param angle degrees
   * @param bottom toward the back
   * @param top toward the driver
   */
  public record PlyFaces(int ply, double angle, FaceState bottom, FaceState top) {
    static List<PlyFaces> of(LaminateResponse response) {
      List<PlyFaces> faces = new ArrayList<>();
      for (PlyResponse p : response.plies()) {
        faces.add(
            new PlyFaces(
                p.number(), p.ply().angle(), FaceState.of(p.bottom()), FaceState.of(p.top())));
      }
      return List.copyOf(faces);
    }
  }

  /**
   * What a load does.
   *
   * @param n forces per width, N/mm
   * @param m moments per width, N mm/mm
   * @param strains of the middle plane
   * @param curvatures 1/mm
   * @param plies from the back
   */
  public record Loaded(Three n, Three m, Three strains, Three curvatures, List<PlyFaces> plies) {}

  /**
   * The first ply that a load breaks.
   *
   * @param criterion in words
   * @param ply from 1 at the back
   * @param top at its face toward the driver, not the back
   * @param index 1 is the edge of failure
   * @param reserve by how much the load may grow
   * @param mode which strain; empty for Tsai and Wu
   */
  public record Failure(
      String criterion, int ply, boolean top, double index, double reserve, Optional<String> mode) {
    static Failure of(FirstFailure f) {
      return new Failure(
          f.criterion().words(),
          f.ply(),
          f.top(),
          f.index(),
          f.reserve(),
          f.mode().map(FailureMode::words));
    }
  }

  /**
   * What cooling leaves behind.
   *
   * @param kelvin by how much it has cooled
   * @param strains of the middle plane
   * @param curvatures 1/mm
   * @param largest the largest curvature in any direction, 1/mm
   * @param bow by how much it bows out over {@code over}, mm
   * @param over a length, mm
   * @param plies from the back
   */
  public record Cooled(
      double kelvin,
      Three strains,
      Three curvatures,
      double largest,
      double bow,
      double over,
      List<PlyFaces> plies) {}

  /** Thickness of all plies, mm. */
  public double thickness() {
    return layers.get(layers.size() - 1).top() - layers.get(0).bottom();
  }

  /** The answer as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return felloe.out.JsonWriter.text(StackJson.of(this));
  }

  static StackAnswer of(StackFile file) {
    Laminate laminate = Laminate.of(file.stack());
    Optional<LaminateResponse> response = file.load().map(laminate::response);
    Optional<LaminateResponse> cooled =
        file.cooling().isPresent()
            ? Optional.of(laminate.warmed(-file.cooling().getAsDouble()))
            : Optional.empty();
    List<Failure> failures = new ArrayList<>();
    for (FailureCriterion criterion : FailureCriterion.values()) {
      response
          .flatMap(load -> FirstFailure.of(criterion, load, cooled))
          .map(Failure::of)
          .ifPresent(failures::add);
    }
    return new StackAnswer(
        file.stack().isSymmetric(),
        file.stack().isBalanced(),
        laminate.isCoupled(),
        new Isotropy(laminate.a().anisotropy(), laminate.d().anisotropy()),
        layers(file.stack()),
        rows(laminate.a()),
        rows(laminate.b()),
        rows(laminate.d()),
        new ModuliPair(
            Moduli.of(laminate.moduli().inPlane()),
            Moduli.of(laminate.moduli().bending()),
            Moduli.of(laminate.heldModuli().inPlane()),
            Moduli.of(laminate.heldModuli().bending())),
        response.map(r -> loaded(file.load().orElseThrow(), r)),
        failures,
        cooled.map(r -> cooled(file.cooling().getAsDouble(), r)),
        notes(file, laminate),
        CAUTIONS);
  }

  private static List<Layer> layers(Stack stack) {
    List<Layer> layers = new ArrayList<>();
    double[] z = stack.faces();
    for (int i = 0; i < stack.plies().size(); i++) {
      Ply ply = stack.plies().get(i);
      layers.add(new Layer(i + 1, ply.angle(), ply.thickness(), z[i], z[i + 1]));
    }
    return layers;
  }

  private static List<Three> rows(PlaneStiffness m) {
    List<Three> rows = new ArrayList<>();
    for (double[] row : m.rows()) {
      rows.add(new Three(row[0], row[1], row[2]));
    }
    return rows;
  }

  private static Loaded loaded(LaminateLoad load, LaminateResponse response) {
    return new Loaded(
        new Three(load.nx(), load.ny(), load.nxy()),
        new Three(load.mx(), load.my(), load.mxy()),
        strains(response.deformation()),
        curvatures(response.deformation()),
        PlyFaces.of(response));
  }

  private static Cooled cooled(double kelvin, LaminateResponse response) {
    double largest = response.deformation().largestCurvature();
    return new Cooled(
        kelvin,
        strains(response.deformation()),
        curvatures(response.deformation()),
        largest,
        largest * BOW_OVER * BOW_OVER / 8,
        BOW_OVER,
        PlyFaces.of(response));
  }

  private static Three strains(Deformation d) {
    return new Three(d.ex(), d.ey(), d.gxy());
  }

  private static Three curvatures(Deformation d) {
    return new Three(d.kx(), d.ky(), d.kxy());
  }

  private static List<String> notes(StackFile file, Laminate laminate) {
    List<String> notes = new ArrayList<>();
    if (laminate.isCoupled()) {
      notes.add(
          "The stack is not symmetric about its middle: it warps when it cools after the cure, and"
              + " bends when it is pulled.");
    }
    if (!file.stack().isBalanced()) {
      notes.add(
          "The stack is not balanced: it shears when it is pulled. Give each angled ply its twin at"
              + " the opposite angle.");
    }
    boolean soft =
        file.stack().plies().stream()
            .anyMatch(p -> Math.min(p.material().e1(), p.material().e2()) < SOFT);
    if (soft) {
      notes.add(
          "A ply is as soft as foam. A modulus without unit is read as MPa; write GPa where you"
              + " mean it.");
    }
    boolean known = file.stack().plies().stream().allMatch(p -> p.material().limits().isPresent());
    if (file.load().isPresent() && !known) {
      notes.add(
          "Failure is looked for only in plies with 'strength' or 'strain'; not all of these have"
              + " them.");
    }
    return notes;
  }
}
