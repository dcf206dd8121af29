package felloe.board;

import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Region;
import felloe.out.SvgPath;
import felloe.plate.BadInput;
import felloe.plate.Plate;
import felloe.service.Study;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An earlier state, or another shape of the folder, that is laid over the drawing. */
final class Against {

  private final Bench bench;

  /** The last that was asked for, since a plate is looked at many times while one is dragged. */
  private Optional<Asked> last = Optional.empty();

  private record Asked(String text, Optional<Plate> plate) {}

  Against(Bench bench) {
    this.bench = bench;
  }

  /**
   * The plate that is meant.
   *
   * @param asked a state's number, the name of a shape file, or a value to try as {@code
   *     path=value}; empty for none
   */
  synchronized Optional<Plate> plate(String asked, Desk.State state, Desk desk) {
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    String text;
    try {
      int equals = asked.indexOf('=');
      if (equals > 0) {
        Editing editing = new Editing(bench.schema(), desk.name(), state.seen().text());
        text = editing.written(asked.substring(0, equals), asked.substring(equals + 1));
      } else if (asked.matches("\\d{1,6}")) {
        text = earlier(state, Integer.parseInt(asked));
      } else {
        text = bench.work(asked).desk().state().seen().text();
      }
    } catch (BadInput none) {
      return Optional.empty();
    }
    if (last.isEmpty() || !last.get().text().equals(text)) {
      Seen seen = Seen.of(desk.name(), text, desk.folder());
      last = Optional.of(new Asked(text, seen.study().map(Study::plate)));
    }
    return last.get().plate();
  }

  private static String earlier(Desk.State state, int step) {
    return state.steps().get(Math.min(step, state.steps().size() - 1)).text();
  }

  /**
   * The other's edges, what it has and the plate has not, and what the plate has and it has not.
   */
  static String drawn(Plate now, Plate other) {
    StringBuilder svg = new StringBuilder();
    try {
      List<Region> a = List.of(now.region());
      List<Region> b = List.of(other.region());
      path(svg, "gone", Combine.difference(b, a));
      path(svg, "new", Combine.difference(a, b));
    } catch (GeometryException unclear) {
      // Edges that all but fall together have no clear difference; the lines still tell it.
      svg.setLength(0);
    }
    svg.append("<path class=\"over\" d=\"").append(SvgPath.of(other.region().contours()));
    return svg.append("\"/>\n").toString();
  }

  private static void path(StringBuilder svg, String kind, List<Region> regions) {
    List<Contour> all = new ArrayList<>();
    regions.forEach(region -> all.addAll(region.contours()));
    if (!all.isEmpty()) {
      svg.append("<path class=\"").append(kind).append("\" fill-rule=\"evenodd\" d=\"");
      svg.append(SvgPath.of(all)).append("\"/>\n");
    }
  }
}
