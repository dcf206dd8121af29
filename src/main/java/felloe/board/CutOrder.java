package felloe.board;

import static felloe.render.HtmlRenderer.escaped;

import felloe.cutting.CutJob;
import felloe.cutting.MachineJob;
import felloe.cutting.Move;
import felloe.cutting.Operation;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.out.SvgPath;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The cutter's paths in the order in which they are cut, to be played back on the page. */
final class CutOrder {

  private static final double MARGIN = 14;
  private static final int PLACES = 3;

  private final StringBuilder svg = new StringBuilder(1 << 15);
  private int pass;

  private CutOrder() {}

  /** The drawing with its steps; empty where no machine cuts. */
  static String of(CutJob job) {
    Optional<MachineJob> machine = job.machine();
    return machine.map(m -> new CutOrder().drawn(job.shapes(), m)).orElse("");
  }

  private String drawn(List<Plate> plates, MachineJob machine) {
    Box box = plates.get(0).box();
    for (Plate one : plates) {
      box = box.union(one.box());
    }
    Box page = box.grown(MARGIN);
    svg.append("<figure class=\"order\"><svg class=\"plate\" role=\"img\" aria-label=\"");
    svg.append("the cutter's paths in their order\" viewBox=\"").append(n(page.minX()));
    svg.append(' ').append(n(-page.maxY())).append(' ').append(n(page.width())).append(' ');
    svg.append(n(page.height())).append("\">\n");
    for (Plate one : plates) {
      List<Contour> edges = one.region().contours();
      svg.append("<path class=\"material\" d=\"").append(SvgPath.of(edges)).append("\"/>\n");
    }
    List<String> steps = new ArrayList<>();
    for (int i = 0; i < machine.steps().size(); i++) {
      Operation operation = machine.steps().get(i).operation();
      int first = pass;
      operation(operation, i);
      steps.add(step(operation, i, first));
    }
    svg.append(
        "</svg>\n<p class=\"play\"><button type=\"button\" data-play=\"play\">Play the order");
    svg.append("</button> <button type=\"button\" data-play=\"back\">One back</button> ");
    svg.append("<button type=\"button\" data-play=\"on\">One on</button> ");
    svg.append("<output data-play=\"where\"></output></p>\n<ol class=\"steps\">\n");
    steps.forEach(svg::append);
    return svg.append("</ol></figure>\n").toString();
  }

  private String step(Operation operation, int index, int first) {
    return "<li data-step=\""
        + Integer.toString(index)
        + "\" data-first=\""
        + Integer.toString(first)
        + "\">"
        + escaped(operation.title() + ", " + operation.tool().name())
        + "</li>\n";
  }

  /** What is cut without a break is one pass. */
  private void operation(Operation operation, int step) {
    List<Segment> chain = new ArrayList<>();
    for (Move move : operation.moves()) {
      if (move instanceof Move.Cut cut) {
        if (!chain.isEmpty() && !chain.get(chain.size() - 1).to().equals(cut.along().from())) {
          flush(chain, step);
        }
        chain.add(cut.along());
      } else {
        flush(chain, step);
        if (move instanceof Move.Drill drill) {
          dot(drill.at(), operation.tool().diameter() / 2, step);
        }
      }
    }
    flush(chain, step);
  }

  private void flush(List<Segment> chain, int step) {
    if (!chain.isEmpty()) {
      svg.append("<path class=\"pass\" pathLength=\"100\" data-pass=\"");
      svg.append(Integer.toString(pass++)).append("\" data-step=\"").append(Integer.toString(step));
      svg.append("\" d=\"").append(SvgPath.of(chain, false)).append("\"/>\n");
      chain.clear();
    }
  }

  private void dot(Point at, double radius, int step) {
    svg.append("<circle class=\"pass\" data-pass=\"").append(Integer.toString(pass++));
    svg.append("\" data-step=\"").append(Integer.toString(step)).append("\" cx=\"");
    svg.append(n(at.x())).append("\" cy=\"").append(n(-at.y())).append("\" r=\"");
    svg.append(n(radius)).append("\"/>\n");
  }

  private static String n(double value) {
    return Numbers.brief(value, PLACES);
  }
}
