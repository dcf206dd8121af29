package felloe.grips;

import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.plate.Face;
import felloe.plate.Grip;
import felloe.plate.Grip.Faces;
import felloe.plate.Grip.Form;
import felloe.plate.Hole;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * A grip on its stretch of the rim: its section at every place.
 *
 * @param grip what the maker wrote
 * @param run the stretch
 * @param thickness of the plate, mm
 * @param swellAt middle of the swell, mm along the stretch
 * @param thumbAt middle of the thumb rest, mm along the stretch
 * @param footprint what it covers as seen by the driver, exact in lines and arcs, where no swell
 *     moves its edge
 * @param holes the plate's holes that it covers
 */
public record PlacedGrip(
    Grip grip,
    GripRun run,
    double thickness,
    OptionalDouble swellAt,
    OptionalDouble thumbAt,
    List<Region> footprint,
    List<Hole> holes) {

  public PlacedGrip {
    footprint = List.copyOf(footprint);
    holes = List.copyOf(holes);
  }

  /** How far past the edge it stands where nothing changes it, without its wrap, mm. */
  public double past() {
    return grip.profile().pastEdge() - grip.wrap();
  }

  /** How far over the plate it reaches, without its wrap, mm. */
  public double over() {
    return grip.profile().over() - grip.wrap();
  }

  /**
   * How deep it covers the plate's edge below a face it lies on, mm: two shells meet in the middle
   * of the thickness, one alone covers it all. A scale lies on its face only.
   */
  public double lip() {
    if (grip.form() == Form.SCALE || past() <= GripSection.LIP_ROOM) {
      return 0;
    }
    return grip.faces() == Faces.BOTH ? thickness / 2 : thickness;
  }

  /** The section at a place. */
  public GripSection section(double s) {
    double hump = hump(s);
    double swellEdge = grip.swell().map(w -> w.edge() * hump).orElse(0.0);
    double off = grip.wrap();
    return new GripSection(
        past() + swellEdge,
        over(),
        height(Face.FRONT, s, hump),
        height(Face.BACK, s, hump),
        Math.max(0, grip.profile().round() - off),
        Math.max(0, grip.profile().innerRound() - off),
        lip(),
        off);
  }

  /** Its height above a face at a place, without its wrap, mm; 0 where it does not lie on it. */
  public double height(Face face, double s) {
    return height(face, s, hump(s));
  }

  private double height(Face face, double s, double hump) {
    if (!grip.faces().has(face)) {
      return 0;
    }
    double height = grip.profile().height(face);
    if (grip.swell().isPresent()) {
      Grip.Swell swell = grip.swell().get();
      height += hump * (face == Face.FRONT ? swell.front() : swell.back());
    }
    if (face == Face.FRONT && grip.thumbRest().isPresent()) {
      height -= grip.thumbRest().get().depth() * sunk(s);
    }
    if (grip.taper().isPresent() && !run.closed()) {
      Grip.Taper taper = grip.taper().get();
      double end = Math.min(s, run.length() - s);
      if (end < taper.length()) {
        double out = Math.max(0, end) / taper.length();
        height = Math.min(height, taper.to() + (height - taper.to()) * out);
      }
    }
    return height - grip.wrap();
  }

  /** Share of the swell at a place: a wave of the cosine from foot to foot. */
  private double hump(double s) {
    if (grip.swell().isEmpty()) {
      return 0;
    }
    double away = away(s, swellAt.orElseThrow());
    double half = grip.swell().get().length() / 2;
    return away >= half ? 0 : (1 + Math.cos(Math.PI * away / half)) / 2;
  }

  /** Share of the thumb rest's depth: its slopes take a quarter of its length at each end. */
  private double sunk(double s) {
    double away = away(s, thumbAt.orElseThrow());
    double half = grip.thumbRest().orElseThrow().length() / 2;
    return away >= half ? 0 : Math.min(1, (half - away) / (half / 2));
  }

  private double away(double s, double middle) {
    double away = Math.abs(s - middle);
    return run.closed() ? Math.min(away, run.length() - away) : away;
  }

  /** Places at which the form changes its law, in order, with both ends. */
  public List<Double> breaks() {
    TreeSet<Double> all = new TreeSet<>(run.joints());
    grip.swell()
        .ifPresent(
            w -> {
              double half = w.length() / 2;
              for (double at : new double[] {-half, 0, half}) {
                add(all, swellAt.orElseThrow() + at);
              }
            });
    grip.thumbRest()
        .ifPresent(
            t -> {
              double half = t.length() / 2;
              for (double at : new double[] {-half, -half / 2, 0, half / 2, half}) {
                add(all, thumbAt.orElseThrow() + at);
              }
            });
    if (grip.taper().isPresent() && !run.closed()) {
      double length = grip.taper().get().length();
      add(all, length);
      add(all, run.length() - length);
    }
    return List.copyOf(all);
  }

  private void add(TreeSet<Double> all, double s) {
    double at = run.closed() ? s - run.length() * Math.floor(s / run.length()) : s;
    if (at > 0 && at < run.length()) {
      all.add(at);
    }
  }

  /** Whether a place lies on a tapered end, where no hand closes. */
  public boolean tapered(GripStation station) {
    double end = Math.min(station.s(), run.length() - station.s());
    return !run.closed() && grip.taper().filter(taper -> end < taper.length()).isPresent();
  }

  /** Its height above a face where a hole stands, without wrap, mm; empty where it does not lie. */
  public Optional<Double> thickAt(Hole hole, Face face) {
    return grip.faces().has(face) && holes.contains(hole)
        ? Optional.of(surface(face, hole.centre()))
        : Optional.empty();
  }

  /** Height of its surface above a face at a point, mm; beside it that of its edge there. */
  public double surface(Face face, Point p) {
    GripRun.Foot foot = run.foot(p);
    GripSection section = section(foot.s());
    return section.top(face, Math.max(-section.past(), Math.min(section.over(), foot.d())));
  }
}
