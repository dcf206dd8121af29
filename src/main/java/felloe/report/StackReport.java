package felloe.report;

import static felloe.document.Quantity.brief;
import static felloe.document.Quantity.fixed;

import felloe.document.Block.Depth;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.laminate.Deformation;
import felloe.laminate.FailureMode;
import felloe.laminate.FirstFailure;
import felloe.laminate.Laminate;
import felloe.laminate.LaminateLoad;
import felloe.laminate.LaminateResponse;
import felloe.laminate.PlaneStiffness;
import felloe.laminate.PlyPoint;
import felloe.laminate.PlyResponse;
import felloe.laminate.SheetModuli;
import felloe.laminate.Stack;
import felloe.laminate.StackResult;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A stack on its own, told. */
public final class StackReport {

  /** Sentences that go with the figures. */
  public static final List<String> CAUTIONS =
      List.of(
          "For a thin flat plate of plies that are perfectly joined, up to the first ply that"
              + " fails. It knows nothing of holes, edges, voids, damage, fatigue or heat.",
          "An estimate to choose a stack by, not an approval. Break test strips of the same"
              + " lay-up before you trust it. For closed-course use at the builder's own judgement;"
              + " event rules, local codes and a qualified person have the last word.");

  /** Digits that count. */
  private static final int DIGITS = 4;

  /** Less than anything that a workshop could feel: rounding. */
  private static final double NOTHING = 1e-9;

  private final StackResult result;
  private final Laminate laminate;
  private final Telling told = new Telling();

  private StackReport(StackResult result) {
    this.result = result;
    this.laminate = result.laminate();
  }

  /** A line of a table that is made of several things. */
  private record Line<T>(String name, T of) {}

  private record Face(PlyResponse ply, String side, PlyPoint at) {}

  /** The answer, told. */
  public static Report of(StackResult result) {
    StackReport report = new StackReport(result);
    report.verdict();
    report.stiffness();
    report.loaded();
    result.cooled().ifPresent(report::cooled);
    report.told.cautions(CAUTIONS);
    return report.told.under("A stack of plies on its own");
  }

  private void verdict() {
    Stack stack = laminate.stack();
    List<String> first = new ArrayList<>();
    first.add(
        Phrase.of(
            "{}, {}; {}symmetric; {}balanced; {}.",
            Words.plies(stack.plies().size()),
            Quantity.mm(stack.thickness()),
            stack.isSymmetric() ? "" : "not ",
            stack.isBalanced() ? "" : "not ",
            isotropy()));
    first.add(
        Phrase.of(
            "As stiff along x as {} GPa when pulled, {} GPa when bent.",
            gigapascals(laminate.moduli().inPlane().ex()),
            gigapascals(laminate.moduli().bending().ex())));
    result.failures().forEach(failure -> first.add(failure(failure)));
    told.callout(Tone.NOTE, first);
    told.cautions(notes(result));
  }

  private String isotropy() {
    if (!result.quasiIsotropic()) {
      return "not the same in all directions";
    }
    return result.isotropicInBending()
        ? "the same in all directions, pulled and bent"
        : "quasi-isotropic (the same in all directions when pulled, not when bent)";
  }

  private static String failure(FirstFailure failure) {
    return Phrase.of(
        "First ply to fail by {}: ply {}, {} face{}; index {}; {}.",
        failure.criterion().words(),
        failure.ply(),
        failure.top() ? "front" : "back",
        failure.mode().map(FailureMode::words).map(mode -> ", " + mode),
        figure(failure.index()),
        failure.reserve() == 0
            ? "cooling alone breaks it"
            : Phrase.of("the load may grow {} times", figure(failure.reserve())));
  }

  /** What the maker should know of a stack. */
  public static List<String> notes(StackResult result) {
    List<String> notes = new ArrayList<>();
    if (result.laminate().isCoupled()) {
      notes.add(
          "The stack is not symmetric about its middle: it warps when it cools after the cure, and"
              + " bends when it is pulled.");
    }
    if (!result.file().stack().isBalanced()) {
      notes.add(
          "The stack is not balanced: it shears when it is pulled. Give each angled ply its twin at"
              + " the opposite angle.");
    }
    if (result.soft()) {
      notes.add(
          "A ply is as soft as foam. A modulus without unit is read as MPa; write GPa where you"
              + " mean it.");
    }
    if (!result.limitsKnown()) {
      notes.add(
          "Failure is looked for only in plies with 'strength' or 'strain'; not all of these have"
              + " them.");
    }
    return notes;
  }

  private void stiffness() {
    List<Line<SheetModuli>> moduli = new ArrayList<>();
    moduli.add(new Line<>("pulled", laminate.moduli().inPlane()));
    moduli.add(new Line<>("bent", laminate.moduli().bending()));
    if (laminate.isCoupled()) {
      moduli.add(new Line<>("pulled, held flat", laminate.heldModuli().inPlane()));
      moduli.add(new Line<>("bent, held from stretching", laminate.heldModuli().bending()));
    }
    told.head("Moduli, GPa");
    told.add(
        Rows.of(moduli)
            .wrapped("of the stack", Line::name)
            .figures("Ex", m -> gigapascals(m.of().ex()))
            .figures("Ey", m -> gigapascals(m.of().ey()))
            .figures("Gxy", m -> gigapascals(m.of().gxy()))
            .fixed("nuxy", "", 3, m -> m.of().nuxy())
            .fixed("nuyx", "", 3, m -> m.of().nuyx())
            .figures("highest", m -> at(m.of().highest(), m.of().highestAt()))
            .figures("lowest", m -> at(m.of().lowest(), m.of().lowestAt())));
    List<Line<double[]>> matrices = new ArrayList<>();
    matrix(matrices, "A, N/mm", laminate.a());
    matrix(matrices, "B, N", laminate.b());
    matrix(matrices, "D, N mm", laminate.d());
    told.head("Stiffness");
    told.add(
        Rows.of(matrices)
            .words("", Line::name)
            .figures("along x", m -> figure(m.of()[0]))
            .figures("along y", m -> figure(m.of()[1]))
            .figures("shear", m -> figure(m.of()[2])));
  }

  private static void matrix(List<Line<double[]>> lines, String name, PlaneStiffness matrix) {
    for (double[] row : matrix.rows()) {
      lines.add(new Line<>(lines.size() % 3 == 0 ? name : "", row));
    }
  }

  private static String at(double megapascals, int degrees) {
    return Phrase.of("{} at {}", gigapascals(megapascals), degrees);
  }

  private static Quantity gigapascals(double megapascals) {
    return fixed(megapascals / 1000, 2, "");
  }

  private void loaded() {
    LaminateLoad load = result.file().load();
    String n = list(1, load.nx(), load.ny(), load.nxy());
    String m = list(1, load.mx(), load.my(), load.mxy());
    told.head("Under N {} N/mm and M {} N mm/mm", n, m);
    response(result.loaded());
  }

  private void cooled(LaminateResponse response) {
    Quantity kelvin = brief(result.file().cooling().orElseThrow(), 1, "K");
    told.head("Cooled by {}, free to warp", kelvin);
    response(response);
    told.say(
        "It bows out by {} over {} (small bows; a large thin plate snaps into one" + " direction).",
        Quantity.mm(result.bow().orElseThrow()),
        Quantity.mm(StackResult.BOW_OVER));
  }

  private void response(LaminateResponse response) {
    Deformation d = response.deformation();
    told.say(
        "Strains of the middle plane, 1e-6: {}; curvatures, 1/m: {}.",
        list(1e6, d.ex(), d.ey(), d.gxy()),
        list(1000, d.kx(), d.ky(), d.kxy()));
    List<Face> faces = new ArrayList<>();
    for (PlyResponse ply : response.plies()) {
      faces.add(new Face(ply, "back", ply.bottom()));
      faces.add(new Face(ply, "front", ply.top()));
    }
    if (faces.stream().allMatch(face -> idle(face.at()))) {
      told.say("No ply is stressed.");
    }
    told.fold(
        Depth.ALL,
        Rows.of(faces)
            .figures("ply", face -> face.ply().number())
            .figures("angle", face -> brief(face.ply().ply().angle(), 3, ""))
            .words("face", Face::side)
            .fixed("z", "mm", 3, face -> face.at().z())
            .figures("x", face -> figure(face.at().stress().first()))
            .figures("y", face -> figure(face.at().stress().second()))
            .figures("shear", face -> figure(face.at().stress().shear()))
            .figures("along 1", face -> figure(face.at().ownStress().first()))
            .figures("along 2", face -> figure(face.at().ownStress().second()))
            .figures("shear 12", face -> figure(face.at().ownStress().shear()))
            .table()
            .under("Stresses, MPa; ply 1 lies at the back face, z rises toward the driver"));
  }

  private static boolean idle(PlyPoint face) {
    return Arrays.stream(face.stress().figures()).allMatch(s -> Math.abs(s) < NOTHING);
  }

  private static String list(double factor, double x, double y, double shear) {
    return Phrase.of(
        "[{}, {}, {}]", figure(factor * x), figure(factor * y), figure(factor * shear));
  }

  private static Quantity figure(double value) {
    double size = Math.abs(value) < NOTHING ? 0 : Math.abs(value);
    int before = size == 0 ? DIGITS : (int) Math.floor(Math.log10(size)) + 1;
    return brief(size == 0 ? 0 : value, Math.max(0, DIGITS - before), "");
  }
}
