package felloe.out;

import felloe.geometry.Arc;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Reads DXF files back from the published meaning of their groups, sharing nothing with the writer:
 * a bulge is turned into centre and radius by chord and sagitta (R = c (1 + b²) / 4 b), not by
 * angles.
 */
final class DxfReader {

  /** A group: its code and its value. */
  record Pair(int code, String value) {}

  /**
   * An entity as read.
   *
   * @param type such as {@code POLYLINE}
   * @param edges its lines and arcs in order
   * @param closed whether it says that it is closed, or is a circle
   */
  record Entity(String type, String layer, List<Segment> edges, boolean closed) {}

  final List<Pair> pairs = new ArrayList<>();
  final List<String> comments = new ArrayList<>();
  final List<String> layers = new ArrayList<>();
  final List<Entity> entities = new ArrayList<>();
  final Map<String, String> header = new TreeMap<>();

  DxfReader(byte[] bytes) {
    String[] lines = new String(bytes, StandardCharsets.US_ASCII).split("\r\n", -1);
    // The last line ends too, so there is an empty piece behind it.
    for (int i = 0; i + 1 < lines.length - 1; i += 2) {
      pairs.add(new Pair(Integer.parseInt(lines[i].strip()), lines[i + 1]));
    }
    if (lines.length % 2 == 0 || !lines[lines.length - 1].isEmpty()) {
      throw new AssertionError("half a group at the end");
    }
    Pair last = pairs.get(pairs.size() - 1);
    if (!last.equals(new Pair(0, "EOF"))) {
      throw new AssertionError("no EOF but " + last);
    }
    read();
  }

  private void read() {
    String section = "";
    String variable = "";
    int i = 0;
    while (i < pairs.size()) {
      Pair pair = pairs.get(i);
      if (pair.code == 999) {
        comments.add(pair.value);
      } else if (pair.code == 0 && pair.value.equals("SECTION")) {
        section = pairs.get(++i).value;
      } else if (pair.equals(new Pair(0, "ENDSEC"))) {
        section = "";
      } else if (section.equals("HEADER") && pair.code == 9) {
        variable = pair.value;
      } else if (section.equals("HEADER")) {
        header.put(variable + "/" + pair.code, pair.value);
      } else if (section.equals("TABLES") && pair.equals(new Pair(0, "LAYER"))) {
        layers.add(pairs.get(i + 1).value);
      } else if (section.equals("ENTITIES") && pair.code == 0) {
        i = entity(i);
        continue;
      }
      i++;
    }
  }

  private int end(int from) {
    int i = from + 1;
    while (pairs.get(i).code != 0) {
      i++;
    }
    return i;
  }

  private String text(int from, int code) {
    for (int i = from + 1; i < end(from); i++) {
      if (pairs.get(i).code == code) {
        return pairs.get(i).value;
      }
    }
    return "";
  }

  private double figure(int from, int code) {
    String text = text(from, code);
    if (!text.matches("-?\\d+\\.\\d+")) {
      throw new AssertionError("group " + code + ": " + text);
    }
    return Double.parseDouble(text);
  }

  private Point point(int from, int code) {
    return new Point(figure(from, code), figure(from, code + 10));
  }

  private int entity(int at) {
    String type = pairs.get(at).value;
    String layer = text(at, 8);
    switch (type) {
      case "LINE" -> add(type, layer, new Line(point(at, 10), point(at, 11)));
      case "CIRCLE" -> add(type, layer, Arc.circle(point(at, 10), figure(at, 40)));
      case "ARC" -> {
        double start = Math.toRadians(figure(at, 50));
        double sweep = Math.toRadians(figure(at, 51)) - start;
        double positive = sweep <= 0 ? sweep + 2 * Math.PI : sweep;
        add(type, layer, Arc.of(point(at, 10), figure(at, 40), start, positive));
      }
      case "POLYLINE" -> {
        return polyline(at, layer);
      }
      default -> throw new AssertionError("unexpected " + type);
    }
    return end(at);
  }

  private void add(String type, String layer, Segment edge) {
    entities.add(new Entity(type, layer, List.of(edge), type.equals("CIRCLE")));
  }

  private int polyline(int start, String layer) {
    if (!text(start, 66).equals("1")) {
      throw new AssertionError("no vertices follow");
    }
    List<Point> corners = new ArrayList<>();
    List<Double> bulges = new ArrayList<>();
    int at = end(start);
    while (pairs.get(at).value.equals("VERTEX")) {
      corners.add(point(at, 10));
      bulges.add(text(at, 42).isEmpty() ? 0.0 : figure(at, 42));
      at = end(at);
    }
    if (!pairs.get(at).value.equals("SEQEND")) {
      throw new AssertionError("no SEQEND");
    }
    List<Segment> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      edges.add(bulges.get(i) == 0 ? new Line(a, b) : bulged(a, b, bulges.get(i)));
    }
    entities.add(new Entity("POLYLINE", layer, edges, text(start, 70).equals("1")));
    return end(at);
  }

  /** An arc over a chord from its bulge. */
  static Arc bulged(Point a, Point b, double bulge) {
    double chord = a.distance(b);
    double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    double sagitta = Math.abs(bulge) * chord / 2;
    Point left = b.minus(a).unit().left();
    Point centre = a.middle(b).plus(left, Math.signum(bulge) * (radius - sagitta));
    return Arc.about(centre, a, b, bulge > 0);
  }
}
