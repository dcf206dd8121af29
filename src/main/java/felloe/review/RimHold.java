package felloe.review;

import felloe.geometry.Gap;
import felloe.geometry.LargestCircle;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import felloe.grips.GripPlan;
import felloe.grips.GripRun;
import felloe.grips.GripStations;
import felloe.grips.PlacedGrip;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A stretch of the rim, clockwise, along which a hand finds the same: by the review's own limits
 * for the bare hand, looked at every 2 mm along the edge. Where a hold ends it ends at the last
 * place that was found good.
 *
 * @param from direction of its start from the hub axis, radians counter-clockwise from +x
 * @param to direction of its end; the same as the start's all round
 * @param hold what a hand finds
 * @param length along what the fingers close about, mm; along the edge where there is no hold
 */
public record RimHold(double from, double to, Hold hold, double length) {

  /** Places are looked at so far apart, mm. */
  private static final double STEP = 2;

  /** Beyond every opening, mm. */
  private static final double FAR = 10_000;

  /** What a hand finds. */
  public enum Hold {
    /** It closes about the rim. */
    HELD("a hand closes about the rim"),
    /** Something else than a grip window lies behind the edge. */
    NO_WINDOW("no grip window behind it"),
    /** The window is less deep than fingers are thick. */
    SHALLOW("the window is not deep enough"),
    /** No finger fits in just there. */
    NO_FINGER("no finger fits in there"),
    /** The rim, or what lies behind the edge, is too thick. */
    THICK("too thick to close about"),
    /** It is the end of a grip that runs out. */
    TAPERED("the end of a grip"),
    /** It would do, but not for four fingers. */
    SHORT("shorter than a hand is broad");

    private final String words;

    Hold(String words) {
      this.words = words;
    }

    /** What that is, in words. */
    public String words() {
      return words;
    }
  }

  private record Place(Point edge, Point inner, Hold hold) {
    boolean held() {
      return hold == Hold.HELD;
    }
  }

  /**
   * Whether a hand there closes about the rim.
   *
   * @param direction from the hub axis, radians counter-clockwise from +x
   */
  public boolean holds(double direction) {
    return hold == Hold.HELD && (from == to || clockwise(direction) <= clockwise(to));
  }

  private double clockwise(double direction) {
    double turned = from - direction;
    return turned - 2 * Math.PI * Math.floor(turned / (2 * Math.PI));
  }

  /** The stretches all round, the first from where a hold starts if there is one. */
  public static List<RimHold> along(Plate plate, GripPlan grips) {
    Limits limits = Limits.with(plate.limits());
    double finger = limits.figure("finger");
    double four = good(limits, new FingerRoom(FingerRoom.Measure.LENGTH), "bare", Sense.AT_LEAST);
    List<Place> places = places(plate, grips, limits);
    List<Place> judged = new ArrayList<>(places.size());
    for (List<Place> run : runs(places)) {
      boolean all = run.size() == places.size();
      boolean tight = run.get(0).held() && !all && inner(run) + finger < four;
      run.forEach(p -> judged.add(tight ? new Place(p.edge(), p.inner(), Hold.SHORT) : p));
    }
    List<List<Place>> runs = runs(judged);
    List<RimHold> stretches = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      List<Place> run = new ArrayList<>(runs.get(i));
      Hold hold = chief(run);
      if (hold != Hold.HELD && runs.size() > 1) {
        // What cannot be held goes on to the places that can.
        List<Place> before = runs.get(Math.floorMod(i - 1, runs.size()));
        run.add(0, before.get(before.size() - 1));
        run.add(runs.get((i + 1) % runs.size()).get(0));
      }
      double from = run.get(0).edge().angle();
      double to = runs.size() == 1 ? from : run.get(run.size() - 1).edge().angle();
      stretches.add(new RimHold(from, to, hold, hold == Hold.HELD ? inner(run) : edge(run)));
    }
    return stretches;
  }

  /** What most of its places are. */
  private static Hold chief(List<Place> run) {
    Map<Hold, Integer> counts = new EnumMap<>(Hold.class);
    run.forEach(place -> counts.merge(place.hold(), 1, Integer::sum));
    return Collections.max(counts.entrySet(), Map.Entry.comparingByValue()).getKey();
  }

  private static double good(Limits limits, Rule rule, String row, Sense sense) {
    return limits.of(rule, row, sense, 1).good().map(Limit::value).orElseThrow();
  }

  /** Never more than along the edge, since a corner's inner places may lie apart. */
  private static double inner(List<Place> run) {
    double length = 0;
    for (int i = 1; i < run.size(); i++) {
      length +=
          Math.min(
              run.get(i).inner().distance(run.get(i - 1).inner()),
              run.get(i).edge().distance(run.get(i - 1).edge()));
    }
    return length;
  }

  private static double edge(List<Place> run) {
    double length = 0;
    for (int i = 1; i < run.size(); i++) {
      length += run.get(i).edge().distance(run.get(i - 1).edge());
    }
    return length;
  }

  /** Neighbours that are held, or are not, beginning where a hold starts. */
  private static List<List<Place>> runs(List<Place> places) {
    int n = places.size();
    int start = 0;
    while (start < n
        && !(places.get(start).held() && !places.get(Math.floorMod(start - 1, n)).held())) {
      start++;
    }
    List<List<Place>> runs = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Place place = places.get((start + i) % n);
      if (i == 0 || runs.get(runs.size() - 1).get(0).held() != place.held()) {
        runs.add(new ArrayList<>());
      }
      runs.get(runs.size() - 1).add(place);
    }
    return runs;
  }

  /** Places along the edge, clockwise. */
  private static List<Place> places(Plate plate, GripPlan grips, Limits limits) {
    Map<String, Boolean> deep = new HashMap<>();
    Map<String, List<Region>> fingers = new HashMap<>();
    double depth = good(limits, new FingerRoom(FingerRoom.Measure.DEPTH), "bare", Sense.AT_LEAST);
    double finger = limits.figure("finger");
    for (Window window : plate.windows()) {
      if (window.use() == WindowUse.GRIP) {
        double wrap = grips.wrapInto(window.label());
        double room = 2 * LargestCircle.inside(window.contour()).radius() - wrap;
        deep.put(window.label(), room >= depth);
        fingers.put(window.label(), FingerRoom.fingerPlaces(window.contour(), finger / 2));
      }
    }
    double most = good(limits, new GripGirth(false), "any", Sense.AT_MOST);
    GripRun run = GripRun.round(plate.outline());
    int steps = (int) Math.ceil(run.length() / STEP);
    List<Place> places = new ArrayList<>();
    for (int i = steps - 1; i >= 0; i--) {
      double s = run.length() * (i + 0.5) / steps;
      GripStations.Web web = GripStations.web(plate, run, s);
      Point edge = run.at(s, 0);
      Point inner = run.at(s, Math.min(web.width(), FAR));
      Hold hold = Hold.HELD;
      Optional<PlacedGrip> grip =
          grips.grips().stream()
              .filter(g -> Math.abs(g.run().foot(edge).d()) <= Tolerances.SAME_LENGTH)
              .findFirst();
      if (!web.held()) {
        hold = Hold.NO_WINDOW;
      } else if (girth(plate, grip, edge, web.width(), limits) > most) {
        hold = Hold.THICK;
      } else if (grip.filter(g -> tapered(g, edge)).isPresent()) {
        hold = Hold.TAPERED;
      } else if (web.window().isPresent()) {
        String label = web.window().get();
        Line ray = new Line(inner, run.at(s, web.width() + depth));
        if (!deep.get(label)) {
          hold = Hold.SHALLOW;
        } else if (fingers.get(label).stream().noneMatch(region -> meets(region, ray))) {
          hold = Hold.NO_FINGER;
        }
      }
      places.add(new Place(edge, inner, hold));
    }
    return places;
  }

  private static double girth(
      Plate plate, Optional<PlacedGrip> grip, Point edge, double web, Limits limits) {
    if (grip.isPresent()) {
      return grip.get()
          .section(grip.get().run().foot(edge).s())
          .girth(plate.stock().asMade(), web, plate.making().edges().edgeBreak());
    }
    double height = plate.stock().asMade() + 2 * plate.making().gripScale();
    return GripGirth.girth(web, height, limits.figure("grip-edge-radius"));
  }

  private static boolean tapered(PlacedGrip grip, Point edge) {
    double s = grip.run().foot(edge).s();
    double end = Math.min(s, grip.run().length() - s);
    return !grip.run().closed()
        && grip.grip().taper().filter(taper -> end < taper.length()).isPresent();
  }

  private static boolean meets(Region fingers, Line ray) {
    return fingers.contains(ray.to())
        || fingers.outer().segments().stream().anyMatch(s -> !Gap.meetings(ray, s).isEmpty());
  }
}
