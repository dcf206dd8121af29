package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.EllipticalArc;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Reads the lines of an ASCII DXF drawing, of R12 and newer: LINE, ARC, CIRCLE, LWPOLYLINE and
 * POLYLINE with bulges, ELLIPSE, SPLINE, and INSERT of blocks. Other entities are passed over and
 * named. The format is the published DXF reference's.
 */
final class DxfDrawing {

  /** Millimetres for the header's $INSUNITS: inches, feet, mm, cm, m, micrometres, decimetres. */
  private static final Map<Integer, Double> UNITS =
      Map.of(1, 25.4, 2, 304.8, 4, 1.0, 5, 10.0, 6, 1000.0, 13, 0.001, 14, 100.0);

  /** What is never a line, and needs no word. */
  private static final Set<String> SILENT = Set.of("VIEWPORT", "ATTRIB", "ATTDEF", "SEQEND");

  private final Reading reading;
  private final DxfFile dxf;
  private String layer = "";
  private int steps;

  private DxfDrawing(Reading reading, DxfFile dxf) {
    this.reading = reading;
    this.dxf = dxf;
  }

  /**
   * Reads.
   *
   * @param reading what gathers the lines, and what is wrong
   * @throws felloe.plate.BadInput with everything that is wrong
   */
  static Drawn read(byte[] bytes, Reading reading, Sizing sizing) {
    DxfFile dxf = DxfFile.of(DxfPairs.read(bytes, reading));
    double unit;
    if (sizing.scale().isPresent()) {
      unit = sizing.scale().getAsDouble();
    } else if (UNITS.containsKey(dxf.insUnits())) {
      unit = UNITS.get(dxf.insUnits());
    } else {
      throw reading.refused(
          0,
          "$INSUNITS",
          dxf.insUnits() == 0 ? "" : Integer.toString(dxf.insUnits()),
          dxf.insUnits() == 0
              ? "is not in its header, so the drawing has no unit"
              : "is no unit that is known here",
          reading.asked().size());
    }
    DxfDrawing drawing = new DxfDrawing(reading, dxf);
    drawing.all(dxf.entities(), Affine.scale(unit, unit), 0, "");
    return reading.drawn();
  }

  /** What stands on layer 0 of a block is on the layer that the block is put on. */
  private void all(List<DxfEntity> entities, Affine frame, int depth, String put) {
    String outer = layer;
    layer = put;
    for (DxfEntity entity : entities) {
      if (++steps > Limits.STEPS) {
        throw reading.refused(
            entity.line(), "", "", "asks for too many copies of blocks", "explode the blocks");
      }
      boolean paper = entity.whole(67, 0) == 1;
      boolean off = entity.whole(60, 0) == 1 || dxf.off().contains(DxfFile.key(entity.text(8)));
      if (off) {
        reading.passOver("hidden");
      } else if (!paper) {
        try {
          one(entity, frame, depth);
        } catch (GeometryException | IllegalArgumentException wrong) {
          reading.wrong(
              entity.line(),
              entity.kind(),
              "",
              "cannot be drawn: " + wrong.getMessage(),
              "mend it in the drawing");
        }
      }
    }
    layer = outer;
  }

  private void one(DxfEntity e, Affine frame, int depth) {
    switch (e.kind()) {
      case "LINE" -> chain(e, Stroke.line(frame.of(point(e, 10, 20)), frame.of(point(e, 11, 21))));
      case "CIRCLE" -> {
        Affine own = own(e, frame);
        circle(e, own, 0, 2 * Math.PI);
      }
      case "ARC" -> {
        double start = Math.toRadians(e.number(50, 0));
        double sweep = Math.toRadians(e.number(51, 360)) - start;
        double turn = 2 * Math.PI;
        sweep -= turn * Math.floor(sweep / turn);
        circle(e, own(e, frame), start, sweep == 0 ? turn : sweep);
      }
      case "LWPOLYLINE" -> lightPolyline(e, own(e, frame));
      case "POLYLINE" -> polyline(e, frame);
      case "ELLIPSE" -> ellipse(e, frame);
      case "SPLINE" -> spline(e, frame);
      case "INSERT" -> insert(e, own(e, frame), depth);
      default -> {
        if (!SILENT.contains(e.kind())) {
          reading.passOver("of kind " + e.kind().toLowerCase(Locale.ROOT));
        }
      }
    }
  }

  private void chain(DxfEntity e, List<Stroke> strokes) {
    refuseSteep(e);
    String own = DxfFile.key(e.text(8));
    String on = own.equals("0") && !layer.isEmpty() ? layer : own;
    reading.chain(e.line(), strokes, new DrawnAs(on, e.tag()));
  }

  /** Heights over the drawing's plane must be alike all along. */
  private void refuseSteep(DxfEntity e) {
    boolean old = e.kind().equals("POLYLINE");
    List<Double> heights = new ArrayList<>(old ? List.of() : e.numbers(30));
    if (e.kind().equals("LINE")) {
      heights.add(e.number(31, e.number(30, 0)));
    } else if (e.kind().equals("ELLIPSE") && e.number(31, 0) != 0) {
      heights.addAll(List.of(0.0, 1.0));
    }
    e.vertices().forEach(vertex -> heights.addAll(vertex.numbers(30)));
    boolean level =
        heights.stream().allMatch(z -> Math.abs(z - heights.get(0)) <= Tolerances.SAME_POINT);
    if (!level) {
      steep(e);
    }
  }

  private void steep(DxfEntity e) {
    reading.wrong(
        e.line(), e.kind(), "", "does not lie in the plane of the drawing", "turn it flat");
  }

  private static Point point(DxfEntity e, int x, int y) {
    return new Point(e.number(x, 0), e.number(y, 0));
  }

  /** The frame of an entity that is drawn on a plane of its own: seen from below it is mirrored. */
  private Affine own(DxfEntity e, Affine frame) {
    boolean tilted = Math.hypot(e.number(210, 0), e.number(220, 0)) > Tolerances.ROUNDING;
    if (tilted) {
      steep(e);
    }
    return e.number(230, 1) < 0 ? frame.of(Affine.scale(-1, 1)) : frame;
  }

  private void circle(DxfEntity e, Affine frame, double start, double sweep) {
    Point centre = point(e, 10, 20);
    double r = e.number(40, 0);
    chain(e, List.of(Stroke.of(frame.of(EllipticalArc.about(centre, r, r, 0, start, sweep)))));
  }

  /** A corner of a polyline, with the bulge of the stretch that begins there. */
  private record Corner(Point at, double bulge) {}

  private void lightPolyline(DxfEntity e, Affine frame) {
    List<Corner> corners = new ArrayList<>();
    double x = 0;
    for (DxfPairs.Pair pair : e.pairs()) {
      double value = DxfEntity.value(pair, 0);
      if (pair.code() == 10) {
        x = value;
      } else if (pair.code() == 20) {
        corners.add(new Corner(new Point(x, value), 0));
      } else if (pair.code() == 42 && !corners.isEmpty()) {
        Corner last = corners.remove(corners.size() - 1);
        corners.add(new Corner(last.at(), value));
      }
    }
    corners(e, corners, (e.whole(70, 0) & 1) != 0, frame);
  }

  private void polyline(DxfEntity e, Affine frame) {
    int flags = e.whole(70, 0);
    if ((flags & (16 | 64)) != 0) {
      reading.passOver("meshes");
      return;
    }
    List<Corner> corners = new ArrayList<>();
    for (DxfEntity vertex : e.vertices()) {
      // Points of a spline's frame are no corners.
      if ((vertex.whole(70, 0) & 16) == 0) {
        corners.add(new Corner(point(vertex, 10, 20), vertex.number(42, 0)));
      }
    }
    corners(e, corners, (flags & 1) != 0, (flags & 8) != 0 ? frame : own(e, frame));
  }

  private void corners(DxfEntity e, List<Corner> corners, boolean closed, Affine frame) {
    List<Stroke> strokes = new ArrayList<>();
    int last = closed ? corners.size() : corners.size() - 1;
    for (int i = 0; i < last; i++) {
      Point from = corners.get(i).at();
      Point to = corners.get((i + 1) % corners.size()).at();
      if (!from.near(to, Tolerances.SAME_POINT)) {
        // A bulge is the tangent of a quarter of the angle travelled.
        double rise = corners.get(i).bulge() * from.distance(to) / 2;
        Segment drawn =
            Arc.isStraight(from, to, rise) ? new Line(from, to) : Arc.withRise(from, to, rise);
        strokes.addAll(
            drawn instanceof Arc arc
                ? List.of(Stroke.of(frame.of(arc)))
                : Stroke.line(frame.of(from), frame.of(to)));
      }
    }
    chain(e, strokes);
  }

  private void ellipse(DxfEntity e, Affine frame) {
    own(e, frame);
    Point major = point(e, 11, 21);
    double ratio = e.number(40, 1);
    double start = e.number(41, 0);
    double sweep = e.number(42, 2 * Math.PI) - start;
    double turn = 2 * Math.PI;
    sweep = Math.abs(sweep - turn) < Tolerances.SAME_DIRECTION ? turn : sweep;
    sweep -= sweep > turn || sweep <= 0 ? turn * Math.floor(sweep / turn) : 0;
    // Seen from below it runs clockwise.
    double sense = e.number(230, 1) < 0 ? -1 : 1;
    EllipticalArc arc =
        EllipticalArc.about(
            point(e, 10, 20),
            major.norm(),
            Math.abs(ratio) * major.norm(),
            major.angle(),
            sense * start,
            sense * (sweep == 0 ? turn : sweep));
    chain(e, List.of(Stroke.of(frame.of(arc))));
  }

  private void spline(DxfEntity e, Affine frame) {
    own(e, frame);
    int degree = e.whole(71, 3);
    List<Double> x = e.numbers(10);
    List<Double> y = e.numbers(20);
    double[] knots = e.numbers(40).stream().mapToDouble(Double::doubleValue).toArray();
    double[] weights = e.numbers(41).stream().mapToDouble(Double::doubleValue).toArray();
    if (x.isEmpty()) {
      throughPoints(e, frame);
      return;
    }
    boolean sound =
        degree >= 1
            && degree <= 10
            && y.size() == x.size()
            && x.size() > degree
            && knots.length == x.size() + degree + 1
            && (weights.length == 0 || weights.length == x.size())
            && Arrays.stream(weights).allMatch(w -> w > 0);
    for (int i = 1; sound && i < knots.length; i++) {
      sound = knots[i] >= knots[i - 1];
    }
    if (!sound) {
      reading.wrong(
          e.line(),
          "SPLINE",
          "",
          "has knots, weights or control points that do not belong together",
          "save the drawing again");
      return;
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < x.size(); i++) {
      points.add(frame.of(new Point(x.get(i), y.get(i))));
    }
    double[] even = new double[x.size()];
    Arrays.fill(even, 1);
    BSpline spline = new BSpline(degree, knots, points, weights.length == 0 ? even : weights);
    chain(e, spline.strokes());
  }

  /** A spline that is told by the points that it goes through. */
  private void throughPoints(DxfEntity e, Affine frame) {
    List<Double> x = e.numbers(11);
    List<Double> y = e.numbers(21);
    if (x.size() < 2 || y.size() != x.size()) {
      reading.wrong(
          e.line(),
          "SPLINE",
          "",
          "has no control points, and no points that it goes through",
          "save it with control points, or turn it into a polyline");
      return;
    }
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < x.size(); i++) {
      points.add(frame.of(new Point(x.get(i), y.get(i))));
    }
    reading.note(
        "Splines that are told by the points that they go through were read as the fair curve"
            + " through them: other programs may draw them otherwise near their ends, by a"
            + " millimetre where points are far apart.");
    FitSpline spline =
        new FitSpline(points, direction(e, 12, 22, frame), direction(e, 13, 23, frame));
    chain(e, (e.whole(70, 0) & 1) != 0 ? spline.closed() : spline.open());
  }

  private static Optional<Point> direction(DxfEntity e, int x, int y, Affine frame) {
    Point told = frame.of(point(e, x, y)).minus(frame.of(Point.ORIGIN));
    return told.norm() > Tolerances.ROUNDING ? Optional.of(told) : Optional.empty();
  }

  private void insert(DxfEntity e, Affine frame, int depth) {
    String name = e.text(2);
    DxfFile.Block block = dxf.blocks().get(DxfFile.key(name));
    if (block == null) {
      reading.wrong(e.line(), "INSERT", name, "is no block of the file", "save the drawing again");
      return;
    }
    if (depth >= Limits.DEPTH) {
      throw reading.refused(
          e.line(),
          "INSERT",
          name,
          "lies deeper than " + Limits.DEPTH + " blocks within each other",
          "explode the blocks");
    }
    int columns = Math.max(1, Math.min(1_000, e.whole(70, 1)));
    int rows = Math.max(1, Math.min(1_000, e.whole(71, 1)));
    Affine place =
        frame
            .of(Affine.shift(e.number(10, 0), e.number(20, 0)))
            .of(Affine.turn(Math.toRadians(e.number(50, 0))));
    Affine shape =
        Affine.scale(e.number(41, 1), e.number(42, 1)).of(Affine.shift(-block.x(), -block.y()));
    steps += rows * columns;
    String own = DxfFile.key(e.text(8));
    String on = own.equals("0") && !layer.isEmpty() ? layer : own;
    for (int row = 0; row < rows && !block.entities().isEmpty(); row++) {
      for (int column = 0; column < columns; column++) {
        Affine shift = Affine.shift(column * e.number(44, 0), row * e.number(45, 0));
        all(block.entities(), place.of(shift).of(shape), depth + 1, on);
      }
    }
  }
}
