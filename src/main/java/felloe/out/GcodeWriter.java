package felloe.out;

import felloe.cutting.CutterTool;
import felloe.cutting.Dialect;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import felloe.geometry.Numbers;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A router job as a G-code program: words of ISO 6983 as in NISTIR 6556 (Kramer, Proctor, Messina:
 * The NIST RS274/NGC Interpreter, version 3). Millimetres, absolute; arc centres I and J from the
 * start of the arc. The program begins with the safe start of its dialect, lifts the tool before
 * anything else, starts the spindle before any cut, stops it before each tool change, and ends
 * lifted and stopped.
 *
 * <p>Accuracy: each coordinate is the exact one rounded to the dialect's decimals, 0.00005 mm for
 * four, and no error adds up along the path. An arc is written from its rounded start to its
 * rounded end about its rounded centre, so its two radii agree within 0.0003 mm where the report
 * asks for 0.002 mm. An arc that rises less than half of the last decimal over its chord is written
 * as a line.
 *
 * <p>Refuses what is no program: a cut that does not start where the one before ended, an operation
 * that does not begin with a travel, a beam.
 */
public final class GcodeWriter {

  private final GcodeJob job;
  private final Dialect dialect;
  private final GcodeText text;
  private final GcodePen pen;

  private GcodeWriter(GcodeJob job, Dialect dialect) {
    this.job = job;
    this.dialect = dialect;
    this.text = new GcodeText(dialect.lines());
    this.pen = new GcodePen(text, dialect, job.height());
  }

  /**
   * The program's bytes, ASCII.
   *
   * @throws IllegalArgumentException when the job is no program: see above
   */
  public static byte[] write(GcodeJob job, Dialect dialect) {
    if (job.operations().isEmpty()) {
      throw new IllegalArgumentException("nothing to cut");
    }
    GcodeWriter writer = new GcodeWriter(job, dialect);
    writer.text.percent();
    writer.head();
    writer.operations();
    writer.end();
    writer.text.percent();
    return writer.text.bytes();
  }

  private void head() {
    text.comment("Title: " + job.about().title());
    text.comment("Revision: " + job.about().revision());
    text.comment("Unit: mm. Work zero: " + job.workZero());
    job.notes().forEach(note -> text.comment("Note: " + note));
    Set<CutterTool> tools = new LinkedHashSet<>();
    job.operations().forEach(operation -> tools.add(operation.tool()));
    tools.forEach(tool -> text.comment("Tool: " + words(tool)));
    text.comment(
        "Clearance height "
            + Numbers.brief(job.height().clearance(), 3)
            + ", deepest "
            + Numbers.brief(job.deepest(), 3));
    for (String caution : job.about().caution().split("(?<=[.!]) +")) {
      if (!caution.isBlank()) {
        text.comment("Caution: " + caution);
      }
    }
  }

  private static String words(CutterTool tool) {
    String wide = Numbers.brief(tool.diameter(), 3);
    return tool.kind() == CutterTool.Kind.V_TOOL
        ? tool.name() + ", tip " + Numbers.brief(tool.tip(), 3) + ", at least " + wide + " wide"
        : tool.name() + ", diameter " + wide;
  }

  private void operations() {
    CutterTool tool = null;
    double speed = 0;
    for (int i = 0; i < job.operations().size(); i++) {
      Operation operation = job.operations().get(i);
      if (operation.tool().kind() == CutterTool.Kind.BEAM) {
        throw new IllegalArgumentException("a beam is not cut from G-code: " + operation.title());
      }
      text.comment("Operation " + (i + 1) + ": " + operation.title());
      if (!operation.tool().equals(tool)) {
        if (tool != null) {
          pause(operation.tool());
        }
        text.line(String.join(" ", dialect.start()));
        pen.lift();
        start(operation.speed());
        coolant();
      } else if (operation.speed() != speed) {
        pen.lift();
        start(operation.speed());
      }
      tool = operation.tool();
      speed = operation.speed();
      pen.forgetFeed();
      moves(operation);
    }
  }

  private void pause(CutterTool next) {
    stop();
    text.comment(
        "Pause for a tool change: "
            + words(next)
            + ". Set the tip of the new tool to the same z 0");
    text.line(dialect.words().pause());
    pen.forgetPlace();
  }

  private void stop() {
    pen.lift();
    if (job.coolant()) {
      dialect.words().coolantOff().ifPresent(text::line);
    }
    text.line(dialect.words().spindleOff());
  }

  private void start(double speed) {
    if (!(speed > 0)) {
      throw new IllegalArgumentException("a spindle speed must be above zero");
    }
    text.line(dialect.words().spindleOn() + " S" + Numbers.brief(speed, 0));
    if (dialect.spindleSeconds() > 0) {
      double wait = dialect.spindleSeconds() * (dialect.dwellMilliseconds() ? 1000 : 1);
      text.line("G4 P" + Numbers.brief(wait, 3));
    }
  }

  private void coolant() {
    if (job.coolant()) {
      dialect.words().coolantOn().ifPresent(text::line);
    }
  }

  private void moves(Operation operation) {
    List<Move> moves = operation.moves();
    if (moves.isEmpty() || !(moves.get(0) instanceof Move.Travel)) {
      throw new IllegalArgumentException("must begin with a travel: " + operation.title());
    }
    for (int i = 0; i < moves.size(); i++) {
      Move move = moves.get(i);
      boolean drillNext = i + 1 < moves.size() && moves.get(i + 1) instanceof Move.Drill;
      if (move instanceof Move.Travel travel) {
        // A drilling cycle travels by itself.
        if (!(drillNext && dialect.drillCycles())) {
          pen.travel(travel.to());
        }
      } else if (move instanceof Move.Cut cut) {
        pen.cut(cut);
      } else if (move instanceof Move.Sink sink) {
        pen.sink(sink);
      } else if (dialect.drillCycles()) {
        pen.drillCycle((Move.Drill) move);
      } else {
        pen.drillMoves((Move.Drill) move);
      }
    }
    pen.endCycle();
  }

  private void end() {
    stop();
    text.line(dialect.words().end());
  }
}
