package felloe.shape;

import felloe.geometry.ArcFit;
import felloe.geometry.ArcMerge;
import felloe.geometry.Contour;
import felloe.geometry.CubicCurve;
import felloe.geometry.EllipticalArc;
import felloe.geometry.FreeCurve;
import felloe.geometry.GeometryException;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.QuadraticCurve;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * Closed contours from W3C SVG 2 path data (section 9.3, all commands) in millimetres. The data is
 * in SVG's own frame, y down, so that what a drawing program wrote goes in unchanged; the contours
 * have y up: y changes sign, exactly. Free curves become tangent arcs within the tolerance; a
 * circular arc stays one arc.
 *
 * <p>Every subpath must close. One that ends within {@value #JOIN} mm of its start is joined there
 * by moving its last point, also where Z would draw a line that short. A moveto that draws nothing
 * is passed over, as SVG does.
 *
 * @param contours one a subpath, in order, counter-clockwise
 * @param distance the greatest distance of arcs from the free curves they stand for, mm
 */
public record PathData(List<Contour> contours, double distance) {

  /** Ends nearer than this are joined, mm. */
  public static final double JOIN = 0.01;

  /** More lines and arcs than this are refused. */
  public static final int MOST_SEGMENTS = 10_000;

  /** Fewer steps are drawn sooner than other processors are woken. */
  private static final int MANY = 200;

  /** Mirrored at the y axis and turned by half a turn: y changes sign. */
  private static final RigidTransform FLIP = new RigidTransform(true, Math.PI, Point.ORIGIN);

  /** A place this near to a segment lies on it, mm: ten times what its ends are read to. */
  private static final double NEAR = 1e-5;

  /** Keeps a copy. */
  public PathData {
    contours = List.copyOf(contours);
    Numbers.finite("distance", distance);
  }

  /**
   * Reads path data with the usual tolerance {@link Tolerances#FREE_CURVE}.
   *
   * @throws PathException with every fault found, up to 20
   */
  public static PathData read(String data) {
    return read(data, Tolerances.FREE_CURVE);
  }

  /**
   * Reads path data.
   *
   * @param tolerance greatest distance of arcs from free curves, mm
   * @throws PathException with every fault found, up to 20
   */
  public static PathData read(String data, double tolerance) {
    PathReader reader = new PathReader(data);
    List<PathReader.Subpath> subpaths = reader.read();
    List<PathFault> faults = new ArrayList<>(reader.faults());
    if (subpaths.isEmpty() && faults.isEmpty()) {
      faults.add(new PathFault(0, "", "draws nothing", "give at least one closed line"));
    }
    Maker maker = new Maker(tolerance, faults);
    if (faults.isEmpty()) {
      subpaths.forEach(maker::add);
    }
    if (!faults.isEmpty()) {
      faults.sort(Comparator.comparingInt(PathFault::offset));
      throw new PathException(faults.subList(0, Math.min(faults.size(), PathScanner.MOST_FAULTS)));
    }
    return new PathData(maker.contours, maker.distance);
  }

  /** Makes the contours, and notes the subpaths of which none can be made. */
  private static final class Maker {
    private final double tolerance;
    private final List<PathFault> faults;
    private final List<Contour> contours = new ArrayList<>();
    private double distance;
    private int total;

    Maker(double tolerance, List<PathFault> faults) {
      this.tolerance = tolerance;
      this.faults = faults;
    }

    void add(PathReader.Subpath subpath) {
      if (total > MOST_SEGMENTS) {
        return;
      }
      Optional<List<PathReader.Step>> closed = closed(subpath);
      if (closed.isEmpty()) {
        return;
      }
      List<Segment> segments = new ArrayList<>();
      List<Integer> offsets = new ArrayList<>();
      Point pen = subpath.start();
      Map<FreeCurve, ArcFit> fits = fits(subpath.start(), closed.get());
      for (PathReader.Step step : closed.get()) {
        List<Segment> drawn = drawn(step, pen, fits);
        total += drawn.size();
        if (total > MOST_SEGMENTS) {
          faults.add(
              new PathFault(
                  step.offset(),
                  "",
                  "takes the path beyond " + MOST_SEGMENTS + " lines and arcs",
                  "simplify the path"));
          return;
        }
        for (Segment segment : drawn) {
          segments.add(segment);
          offsets.add(step.offset());
          pen = segment.to();
        }
      }
      try {
        contours.add(new Contour(ArcMerge.closed(segments)).moved(FLIP));
      } catch (GeometryException e) {
        faults.add(fault(e, subpath, segments, offsets));
      }
    }

    /** Arcs for the curves of a path that has many, found on all processors. */
    private Map<FreeCurve, ArcFit> fits(Point start, List<PathReader.Step> steps) {
      Map<FreeCurve, ArcFit> fits = new ConcurrentHashMap<>();
      if (steps.size() < MANY) {
        return fits;
      }
      IntStream.range(0, Math.min(steps.size(), MOST_SEGMENTS))
          .parallel()
          .filter(i -> steps.get(i).curve().isPresent())
          .forEach(
              i -> {
                PathReader.Step step = steps.get(i);
                Point pen = i == 0 ? start : steps.get(i - 1).to();
                try {
                  FreeCurve curve = between(step.curve().get(), pen, step.to());
                  fits.put(curve, ArcFit.of(curve, tolerance));
                } catch (GeometryException e) {
                  // Told when its turn comes.
                }
              });
      return fits;
    }

    private List<Segment> drawn(PathReader.Step step, Point pen, Map<FreeCurve, ArcFit> fits) {
      if (step.curve().isEmpty()) {
        return pen.near(step.to(), Tolerances.SAME_POINT)
            ? List.of()
            : List.of(new Line(pen, step.to()));
      }
      try {
        FreeCurve curve = between(step.curve().get(), pen, step.to());
        ArcFit known = fits.get(curve);
        ArcFit fit = known != null ? known : ArcFit.of(curve, tolerance);
        distance = Math.max(distance, fit.distance());
        return fit.segments();
      } catch (GeometryException e) {
        faults.add(new PathFault(step.offset(), "", e.getMessage(), "simplify the curve here"));
        return List.of();
      }
    }

    /** The steps back to the start; none, with a fault, when there is a gap. */
    private Optional<List<PathReader.Step>> closed(PathReader.Subpath subpath) {
      List<PathReader.Step> steps = new ArrayList<>(subpath.steps());
      Point start = subpath.start();
      PathReader.Step last = steps.get(steps.size() - 1);
      double gap = last.to().distance(start);
      if (gap > JOIN && !subpath.closed()) {
        faults.add(
            new PathFault(
                last.offset(),
                "",
                "the line that starts at "
                    + start
                    + " ends at "
                    + last.to()
                    + ", "
                    + Numbers.brief(gap, 3)
                    + " mm away",
                "end it with Z or mend the gap"));
        return Optional.empty();
      }
      if (gap > JOIN) {
        steps.add(new PathReader.Step(last.offset(), Optional.empty(), start));
        return Optional.of(steps);
      }
      // A last line that vanishes with the gap leaves the join to the step before it.
      while (steps.size() > 1
          && last.curve().isEmpty()
          && steps.get(steps.size() - 2).to().near(start, Tolerances.SAME_POINT)) {
        steps.remove(steps.size() - 1);
        last = steps.get(steps.size() - 1);
      }
      steps.set(steps.size() - 1, new PathReader.Step(last.offset(), last.curve(), start));
      return Optional.of(steps);
    }

    private static PathFault fault(
        GeometryException e,
        PathReader.Subpath subpath,
        List<Segment> segments,
        List<Integer> offsets) {
      TreeSet<Integer> touched = new TreeSet<>();
      e.where()
          .ifPresent(
              p -> {
                for (int i = 0; i < segments.size(); i++) {
                  if (segments.get(i).distance(p) <= NEAR) {
                    touched.add(offsets.get(i));
                  }
                }
              });
      boolean crossing = e.getMessage().endsWith("cross or touch") && !touched.isEmpty();
      String wanted =
          crossing
              ? "crosses or touches the line at "
                  + e.where().orElseThrow()
                  + ", in the path's own coordinates"
              : e.getMessage();
      int offset = touched.isEmpty() ? subpath.offset() : touched.last();
      return new PathFault(offset, "", wanted, crossing ? "draw one line without crossings" : "");
    }
  }

  /** The same curve between ends that have moved by no more than a joint. */
  private static FreeCurve between(FreeCurve curve, Point from, Point to) {
    if (curve.from().equals(from) && curve.to().equals(to)) {
      return curve;
    }
    if (curve instanceof CubicCurve c) {
      return new CubicCurve(
          from, c.first().plus(from.minus(c.from())), c.second().plus(to.minus(c.to())), to);
    }
    if (curve instanceof QuadraticCurve q) {
      return new QuadraticCurve(from, q.control(), to);
    }
    EllipticalArc arc = (EllipticalArc) curve;
    boolean large = Math.abs(arc.sweep()) > Math.PI;
    return EllipticalArc.through(from, to, arc.rx(), arc.ry(), arc.turn(), large, arc.sweep() > 0);
  }
}
