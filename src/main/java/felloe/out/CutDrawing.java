package felloe.out;

import felloe.cutting.CutFeature;
import felloe.cutting.CutLine;
import felloe.cutting.CutPlan;
import felloe.geometry.Arc;
import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.Face;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What a DXF or SVG cut file holds: closed lines by role, for one plate or for a sheet of several.
 * Millimetres.
 *
 * @param layers at most one a role, in the order of the roles, none empty
 */
public record CutDrawing(List<CutLayer> layers) {

  /**
   * Puts the layers in order and joins those of one role; empty ones are dropped.
   *
   * @throws IllegalArgumentException when the same line is there twice: a machine would cut it
   *     twice
   */
  public CutDrawing {
    Map<CutRole, CutLayer> byRole = new EnumMap<>(CutRole.class);
    for (CutLayer layer : layers) {
      byRole.merge(layer.role(), layer, CutDrawing::joined);
    }
    layers = byRole.values().stream().filter(layer -> !layer.isEmpty()).toList();
    Set<Object> seen = new HashSet<>();
    for (CutLayer layer : layers) {
      Stream.of(layer.contours(), layer.chains(), layer.marks())
          .flatMap(List::stream)
          .filter(line -> !seen.add(line))
          .findFirst()
          .ifPresent(
              line -> {
                throw new IllegalArgumentException("a line twice in " + layer.role());
              });
    }
  }

  private static CutLayer joined(CutLayer a, CutLayer b) {
    List<CutEdge> edges = new ArrayList<>(a.edges());
    edges.addAll(b.edges());
    List<Segment> marks = new ArrayList<>(a.marks());
    marks.addAll(b.marks());
    List<List<Segment>> chains = new ArrayList<>(a.chains());
    chains.addAll(b.chains());
    return new CutLayer(a.role(), edges, chains, marks);
  }

  /** The finish lines of a plate: where every edge ends up, without compensation. */
  public static CutDrawing finish(Plate plate) {
    List<CutLayer> layers = new ArrayList<>();
    layers.add(CutLayer.of(CutRole.OUTLINE, List.of(plate.outline())));
    layers.add(
        CutLayer.ofEdges(CutRole.WINDOWS, plate.windows().stream().map(CutEdge::of).toList()));
    for (Hole hole : plate.holes()) {
      layers.add(CutLayer.ofEdges(role(hole.role()), List.of(CutEdge.of(hole))));
    }
    return new CutDrawing(layers).with(engraving(plate));
  }

  /** The texts and marks of a plate's front face: the face that lies up on a machine. */
  public static CutDrawing engraving(Plate plate) {
    List<List<Segment>> strokes =
        plate.engravings(Face.FRONT).stream()
            .flatMap(engraving -> engraving.strokes().stream())
            .map(stroke -> stroke.stream().flatMap(s -> unclosed(s).stream()).toList())
            .toList();
    return new CutDrawing(List.of(CutLayer.ofChains(CutRole.ENGRAVING, strokes)));
  }

  /**
   * The paths of a cutter or beam.
   *
   * @param plate tells what each hole is for
   * @param lines the paths
   */
  public static CutDrawing paths(Plate plate, List<CutLine> lines) {
    List<CutLayer> layers = new ArrayList<>();
    for (CutLine line : lines) {
      layers.add(CutLayer.of(role(plate, line.feature()), List.of(line.path())));
    }
    return new CutDrawing(layers);
  }

  /** The paths of a plan as closed lines, for a machine that leads in by itself. */
  public static CutDrawing paths(CutPlan plan) {
    return paths(plan.plate(), plan.compensation().lines()).with(engraving(plan.plate()));
  }

  /**
   * What a beam follows: for each edge one open line that begins where the beam pierces, leads onto
   * the path, goes once round and leads off. Where nothing leads on, the closed path.
   */
  public static CutDrawing beam(CutPlan plan) {
    List<CutLayer> layers = new ArrayList<>();
    for (CutLine line : plan.compensation().lines()) {
      List<Segment> chain = new ArrayList<>();
      for (Segment segment : plan.way(line)) {
        chain.addAll(unclosed(segment));
      }
      CutRole role = role(plan.plate(), line.feature());
      boolean closed = chain.get(0).from().equals(chain.get(chain.size() - 1).to());
      layers.add(
          closed
              ? CutLayer.of(role, List.of(line.path()))
              : CutLayer.ofChains(role, List.of(chain)));
    }
    return new CutDrawing(layers).with(engraving(plan.plate()));
  }

  /** A whole circle as two arcs: an open line cannot bulge all the way round. */
  private static List<Segment> unclosed(Segment segment) {
    if (segment instanceof Arc arc && arc.isCircle()) {
      Point far = arc.at(0.5);
      double half = arc.sweep() / 2;
      return List.of(
          new Arc(arc.from(), far, arc.centre(), arc.radius(), half),
          new Arc(far, arc.to(), arc.centre(), arc.radius(), half));
    }
    return List.of(segment);
  }

  /**
   * Crosses at the centres of holes.
   *
   * @param size length of each stroke, mm
   */
  public static CutDrawing centres(List<Hole> holes, double size) {
    List<Segment> strokes = new ArrayList<>();
    for (Hole hole : holes) {
      Point c = hole.centre();
      Point right = new Point(size / 2, 0);
      Point up = new Point(0, size / 2);
      strokes.add(new Line(c.minus(right), c.plus(right)));
      strokes.add(new Line(c.minus(up), c.plus(up)));
    }
    return new CutDrawing(List.of(new CutLayer(CutRole.CENTRES, List.of(), List.of(), strokes)));
  }

  private static CutRole role(Plate plate, CutFeature feature) {
    return switch (feature.kind()) {
      case OUTLINE -> CutRole.OUTLINE;
      case WINDOW -> CutRole.WINDOWS;
      case HOLE ->
          plate.holes().stream()
              .filter(hole -> hole.label().equals(feature.label()))
              .findFirst()
              .map(hole -> role(hole.role()))
              .orElse(CutRole.HOLES);
    };
  }

  private static CutRole role(HoleRole role) {
    return switch (role) {
      case BOLT -> CutRole.BOLT_HOLES;
      case BORE -> CutRole.BORE;
      case GRIP -> CutRole.GRIP_HOLES;
      case OTHER, WINDOW -> CutRole.HOLES;
    };
  }

  /** The drawing after a rigid motion, such as a plate's place on its sheet. */
  public CutDrawing moved(RigidTransform motion) {
    return new CutDrawing(layers.stream().map(layer -> layer.moved(motion)).toList());
  }

  /** Both drawings in one. */
  public CutDrawing with(CutDrawing other) {
    return new CutDrawing(Stream.concat(layers.stream(), other.layers.stream()).toList());
  }

  /** The smallest upright box round everything. */
  public Box box() {
    return layers.stream()
        .flatMap(
            layer ->
                Stream.of(
                        layer.contours().stream().map(Contour::box),
                        layer.chains().stream().flatMap(List::stream).map(Segment::box),
                        layer.marks().stream().map(Segment::box))
                    .flatMap(boxes -> boxes))
        .reduce(Box::union)
        .orElseThrow(() -> new IllegalStateException("nothing to cut"));
  }
}
