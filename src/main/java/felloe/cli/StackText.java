package felloe.cli;

import felloe.geometry.Numbers;
import felloe.kit.StackAnswer;
import felloe.kit.StackAnswer.Cooled;
import felloe.kit.StackAnswer.FaceState;
import felloe.kit.StackAnswer.Failure;
import felloe.kit.StackAnswer.Layer;
import felloe.kit.StackAnswer.Loaded;
import felloe.kit.StackAnswer.Moduli;
import felloe.kit.StackAnswer.PlyFaces;
import felloe.kit.StackAnswer.Three;
import java.util.List;

/** A stack on its own as text. */
final class StackText {

  private static final int DIGITS = 5;
  private static final int WIDTH = 100;

  /** Less than any figure that a workshop could feel: rounding. */
  private static final double NOTHING = 1e-9;

  private StackText() {}

  static void show(Screen screen, StackAnswer answer) {
    screen.line(
        answer.layers().size()
            + (answer.layers().size() == 1 ? " ply" : " plies")
            + ", "
            + Figures.of(answer.thickness(), "mm")
            + "; "
            + (answer.symmetric() ? "symmetric" : "not symmetric")
            + "; "
            + (answer.balanced() ? "balanced" : "not balanced")
            + "; "
            + isotropy(answer));
    for (String note : answer.notes()) {
      Table.wrapped(note, 0, WIDTH).forEach(screen::line);
    }
    screen.line("");
    layers(screen, answer.layers());
    screen.line("");
    matrices(screen, answer);
    screen.line("");
    moduli(screen, answer);
    answer.loaded().ifPresent(loaded -> loaded(screen, loaded));
    failures(screen, answer);
    answer.cooled().ifPresent(cooled -> cooled(screen, cooled));
    screen.line("");
    for (String caution : answer.cautions()) {
      Table.wrapped("! " + caution, 0, WIDTH).forEach(screen::line);
    }
  }

  private static String isotropy(StackAnswer answer) {
    if (!answer.isotropic().quasi()) {
      return "not the same in all directions";
    }
    return answer.isotropic().inBending()
        ? "the same in all directions, pulled and bent"
        : "quasi-isotropic (the same in all directions when pulled, not when bent)";
  }

  private static void layers(Screen screen, List<Layer> layers) {
    Table table = new Table("rrrr");
    table.row("ply", "angle", "thickness mm", "from z to z mm");
    for (Layer layer : layers) {
      table.row(
          "" + layer.ply(),
          Numbers.brief(layer.angle(), 3),
          Numbers.fixed(layer.thickness(), 3),
          Numbers.fixed(layer.bottom(), 3) + " to " + Numbers.fixed(layer.top(), 3));
    }
    table.lines().forEach(screen::line);
    screen.line("Ply 1 lies at the back face; z rises toward the driver.");
  }

  private static void matrices(Screen screen, StackAnswer answer) {
    Table table = new Table("lrrr");
    matrix(table, "A, N/mm", answer.a());
    matrix(table, "B, N", answer.b());
    matrix(table, "D, N mm", answer.d());
    table.lines().forEach(screen::line);
  }

  private static void matrix(Table table, String name, List<Three> rows) {
    for (int i = 0; i < rows.size(); i++) {
      Three row = rows.get(i);
      table.row(i == 0 ? name : "", of(row.first()), of(row.second()), of(row.third()));
    }
  }

  private static void moduli(Screen screen, StackAnswer answer) {
    Table table = new Table("lrrrrrrr");
    table.row("moduli, GPa", "Ex", "Ey", "Gxy", "nuxy", "nuyx", "highest", "lowest");
    row(table, "pulled", answer.moduli().inPlane());
    row(table, "bent", answer.moduli().bending());
    if (answer.coupled()) {
      row(table, "pulled, held flat", answer.moduli().heldInPlane());
      row(table, "bent, held from stretching", answer.moduli().heldBending());
    }
    table.lines().forEach(screen::line);
  }

  private static void row(Table table, String name, Moduli m) {
    table.row(
        name,
        Numbers.fixed(m.ex() / 1000, 2),
        Numbers.fixed(m.ey() / 1000, 2),
        Numbers.fixed(m.gxy() / 1000, 2),
        Numbers.fixed(m.nuxy(), 3),
        Numbers.fixed(m.nuyx(), 3),
        Numbers.fixed(m.highest() / 1000, 2) + " at " + m.highestAt(),
        Numbers.fixed(m.lowest() / 1000, 2) + " at " + m.lowestAt());
  }

  private static void loaded(Screen screen, Loaded loaded) {
    screen.line("");
    screen.line("Under N " + list(loaded.n()) + " N/mm and M " + list(loaded.m()) + " N mm/mm");
    shape(screen, loaded.strains(), loaded.curvatures());
    plies(screen, loaded.plies());
  }

  private static void shape(Screen screen, Three strains, Three curvatures) {
    screen.line("  strains of the middle plane, 1e-6: " + list(times(strains, 1e6)));
    screen.line("  curvatures, 1/m: " + list(times(curvatures, 1000)));
  }

  private static void plies(Screen screen, List<PlyFaces> plies) {
    boolean none = plies.stream().allMatch(p -> idle(p.bottom()) && idle(p.top()));
    if (none) {
      screen.line("  no ply is stressed");
      return;
    }
    Table table = new Table("rrlrrrrrrr");
    table.row("ply", "angle", "face", "z mm", "x", "y", "shear", "along 1", "along 2", "shear 12");
    for (PlyFaces ply : plies) {
      face(table, ply, "back", ply.bottom());
      face(table, ply, "front", ply.top());
    }
    screen.line("  stresses, MPa:");
    table.lines().forEach(line -> screen.line("  " + line));
  }

  private static boolean idle(FaceState face) {
    Three s = face.stress();
    return Math.max(Math.abs(s.first()), Math.max(Math.abs(s.second()), Math.abs(s.third())))
        < NOTHING;
  }

  private static void face(Table table, PlyFaces ply, String name, FaceState face) {
    table.row(
        "" + ply.ply(),
        Numbers.brief(ply.angle(), 3),
        name,
        Numbers.fixed(face.z(), 3),
        of(face.stress().first()),
        of(face.stress().second()),
        of(face.stress().third()),
        of(face.ownStress().first()),
        of(face.ownStress().second()),
        of(face.ownStress().third()));
  }

  private static void failures(Screen screen, StackAnswer answer) {
    for (Failure failure : answer.failures()) {
      screen.line(
          "First ply to fail by "
              + failure.criterion()
              + ": ply "
              + failure.ply()
              + ", "
              + (failure.top() ? "front" : "back")
              + " face"
              + failure.mode().map(mode -> ", " + mode).orElse("")
              + "; index "
              + of(failure.index())
              + (failure.reserve() == 0
                  ? "; cooling alone breaks it"
                  : "; the load may grow " + of(failure.reserve()) + " times"));
    }
  }

  private static void cooled(Screen screen, Cooled cooled) {
    screen.line("");
    screen.line("Cooled by " + Numbers.brief(cooled.kelvin(), 1) + " K, free to warp");
    shape(screen, cooled.strains(), cooled.curvatures());
    screen.line(
        "  bows out by "
            + Figures.of(cooled.bow(), "mm")
            + " over "
            + Figures.of(cooled.over(), "mm")
            + " (small bows; a large thin plate snaps into one direction)");
    plies(screen, cooled.plies());
  }

  private static Three times(Three t, double factor) {
    return new Three(t.first() * factor, t.second() * factor, t.third() * factor);
  }

  private static String list(Three t) {
    return "[" + of(t.first()) + ", " + of(t.second()) + ", " + of(t.third()) + "]";
  }

  /** A figure with five significant digits at least, without an exponent. */
  private static String of(double value) {
    double size = Math.abs(value);
    if (size < NOTHING) {
      return "0";
    }
    int before = (int) Math.floor(Math.log10(size)) + 1;
    return Numbers.brief(value, Math.max(0, DIGITS - before));
  }
}
