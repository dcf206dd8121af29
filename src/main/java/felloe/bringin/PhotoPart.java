package felloe.bringin;

import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.geometry.Segment;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part on a photo among the marks of the frame, measured: its edges on the plane of the paper,
 * and how well. What cannot be measured is refused with what to do about it; a wrong outline is
 * worse than none.
 */
final class PhotoPart {

  /** What is smaller and no round hole is a spot, mm². */
  private static final double SPOT = 25;

  /** An edge of which less was found is refused, and one of which less was found is told. */
  private static final double LOST = 0.6;

  private static final double UNSURE = 0.85;

  /** Diameters are written to a tenth of a millimetre, which moves them by half of that, mm. */
  private static final double WRITTEN = 0.05;

  /** Of a hole and the next edge so much of the face lies between, mm. */
  private static final double RIM = 0.5;

  /** Where the scale is told worse than this, the camera's height is the cause; share. */
  private static final double ROUGH = 0.0015;

  /** Spots nearer than this are one, mm. */
  private static final double BESIDE = 2;

  /** So many places are told one by one; the overlay shows all. */
  private static final int MOST_TOLD = 8;

  private final String file;
  private final double thickness;
  private final Asked asked;
  private final Light light;
  private final Point photoUp;
  private final FrameFit fit;
  private final List<EdgeChain> chains = new ArrayList<>();
  private final List<FaceSpots.Spot> doubtful = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  private PhotoPart(
      PhotoFile photo, String file, double thickness, OptionalDouble cameraHeight, Asked asked) {
    this.file = file;
    this.thickness = thickness;
    this.asked = asked;
    this.light = photo.light();
    this.photoUp = photo.up();
    List<MarksFound.Seen> seen = MarksFound.in(photo.grey(), light.width(), light.height());
    PhotoChecks checks = new PhotoChecks(file, asked);
    checks.marks(light, seen);
    checks.light(light, seen);
    fit = FrameFit.of(light, photo.focal(), seen, cameraHeight);
    checks.fit(fit, seen);
    cameraHeight.ifPresent(tape -> checks.height(fit, tape));
    PartSeen.Found found = PartSeen.edges(light, fit.camera(), thickness, fit.blocks());
    checks.part(found);
    checks.scale(perMm(found.lines().get(0)));
    List<List<Point>> lines = found.lines();
    List<Optional<EdgeChain>> edges =
        PartEdges.of(light, fit.camera(), thickness, fit.blur(), lines);
    List<TracedEdge> traced = new ArrayList<>();
    List<List<Point>> spots = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      List<Point> line = lines.get(i);
      Optional<EdgeChain> edge = edges.get(i).filter(e -> e.found() >= LOST).filter(this::closes);
      if (edge.isPresent()) {
        traced.add(new TracedEdge(line, edge.get()));
      } else {
        refuseLost(line, i == 0);
        spots.add(line);
      }
    }
    List<TracedEdge> kept = TracedEdge.together(traced);
    for (TracedEdge one : traced) {
      if (kept.contains(one)) {
        take(one.edge());
      } else {
        refuseLost(one.line(), false);
        spots.add(one.line());
      }
    }
    for (List<Point> line : spots) {
      Point middle = middle(line);
      // What lies in an opening, as on its wall, is no hole of the part.
      if (kept.stream().skip(1).noneMatch(opening -> opening.contour().contains(middle))) {
        double radius = Math.sqrt(Math.abs(EdgeTrace.area(line)) / Math.PI);
        doubtful.add(new FaceSpots.Spot(middle, radius));
      }
    }
    lookAgain();
    if (!doubtful.isEmpty()) {
      notes.add(
          (doubtful.size() == 1
                  ? "A spot on the part may be a hole"
                  : doubtful.size() + " spots on the part may be holes")
              + " and could not be measured: "
              + places(doubtful)
              + ". What lies there is not in the file, and ringed in blue on the overlay: look, and"
              + " add what is a hole.");
    }
    tellCamera();
  }

  /** What the marks tell too little of, or otherwise than the camera. */
  private void tellCamera() {
    if (fit.contradicted()) {
      notes.add(
          "The file tells of another lens than the marks do, as of a photo that was cut or"
              + " enlarged: what the marks tell counts. Bring in the photo as the camera saved"
              + " it.");
    }
    if (fit.reliedOnLens()) {
      notes.add(
          "How high the camera stood is taken from the lens that the photo's file names. That is"
              + " right for a photo as the camera saved it, and wrong for one that was cut.");
    }
    PhotoTold told = told();
    if (told.scale() > ROUGH) {
      notes.add(
          "From so nearly above, the marks hardly tell how high the camera stood, and so how much"
              + " larger the part's upper face looks. Measure from the paper to the lens and say it"
              + " with "
              + asked.cameraHeight()
              + " 1000, or take it anew some 15 degrees aside.");
    }
  }

  /** Looks over the face for what the first look missed. */
  private void lookAgain() {
    FaceSpots.Seen seen = FaceSpots.in(light, fit.camera(), thickness, chains);
    HoleFit holes = new HoleFit(light, fit.camera(), thickness, fit.blur());
    List<FaceSpots.Spot> dark = new ArrayList<>();
    for (FaceSpots.Spot spot : seen.spots()) {
      boolean known =
          doubtful.stream().anyMatch(d -> d.middle().distance(spot.middle()) < BESIDE)
              || dark.stream()
                  .anyMatch(d -> d.middle().distance(spot.middle()) < d.radius() + BESIDE);
      if (known) {
        // Wall and ground of one hole may be two spots.
        continue;
      }
      Optional<EdgeChain> hole =
          spot.radius() > PartEdges.SMALL
              ? Optional.empty()
              : Optional.of(holes.near(spot.middle(), spot.radius()))
                  .filter(HoleFit.Hole::faint)
                  .map(EdgeChain::hole)
                  .filter(h -> lies(h, chains));
      if (hole.isPresent()) {
        EdgeChain round = hole.get();
        doubtful.removeIf(d -> d.middle().distance(round.centre()) < round.radius());
        chains.add(round);
        dark.add(new FaceSpots.Spot(hole.get().centre(), hole.get().radius()));
      } else {
        doubtful.add(spot);
      }
    }
    if (!dark.isEmpty()) {
      notes.add(
          (dark.size() == 1 ? "A hole was" : dark.size() + " holes were")
              + " told by the wall alone, no ground being seen through: "
              + places(dark)
              + ". A round dark mark would look alike: look whether they are holes.");
    }
    if (seen.uneven()) {
      notes.add(
          "The part's face is so uneven in shade that small deep holes may be missed on it: count"
              + " the holes.");
    }
  }

  /** Whether a hole lies in the face, clear of all edges. */
  private static boolean lies(EdgeChain hole, List<EdgeChain> edges) {
    return edges.stream()
        .flatMap(edge -> edge.places().stream())
        .noneMatch(p -> p.distance(hole.centre()) < hole.radius() + RIM);
  }

  private static Point middle(List<Point> line) {
    Point middle = Point.ORIGIN;
    for (Point p : line) {
      middle = middle.plus(p, 1.0 / line.size());
    }
    return middle;
  }

  /** An edge that was not found is refused, but for one of a spot. */
  private void refuseLost(List<Point> line, boolean outer) {
    if (outer || Math.abs(EdgeTrace.area(line)) >= SPOT) {
      throw lost(line);
    }
  }

  /** Where spots lie, the first few. */
  private String places(List<FaceSpots.Spot> spots) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < Math.min(MOST_TOLD, spots.size()); i++) {
      FaceSpots.Spot spot = spots.get(i);
      text.append(i > 0 ? "; " : "")
          .append(named(spot.middle()))
          .append(" (")
          .append(Numbers.brief(2 * spot.radius(), 1))
          .append(" mm)");
    }
    if (spots.size() > MOST_TOLD) {
      text.append("; and ").append(spots.size() - MOST_TOLD).append(" more");
    }
    return text + " of the photo";
  }

  static PhotoPart of(
      PhotoFile photo, String file, double thickness, OptionalDouble cameraHeight, Asked asked) {
    return new PhotoPart(photo, file, thickness, cameraHeight, asked);
  }

  private void take(EdgeChain edge) {
    chains.add(edge);
    edge.astray().ifPresent(this::tellAstray);
    if (edge.found() < UNSURE) {
      notes.add(
          "The edge round "
              + named(edge.places().get(0))
              + " of the photo could be followed along "
              + Numbers.brief(100 * edge.found(), 0)
              + " % alone: measure there.");
    }
  }

  private void tellAstray(EdgeChain.Astray astray) {
    notes.add(
        "The edge at "
            + named(astray.at())
            + " of the photo may be off by "
            + Numbers.brief(astray.off(), 1)
            + " mm: look there on the overlay, and measure.");
  }

  private boolean closes(EdgeChain edge) {
    try {
      return new Contour(edge.segments()).area() > 0;
    } catch (GeometryException crosses) {
      return false;
    }
  }

  private BadInput lost(List<Point> line) {
    return new BadInput(
        new Problem(
            Place.ofFile(file),
            "",
            "",
            "shows an edge that cannot be followed, round " + named(line.get(0)) + " of the photo",
            "light it evenly, without hard shadows or shine, on a ground that is plainly lighter"
                + " or darker than the part and its wall; or take the camera straight above"));
  }

  /** A place as pixels of the photo. */
  private String named(Point p) {
    double[] pixel = new double[2];
    fit.camera().project(p.x(), p.y(), thickness, pixel);
    return "pixel " + Numbers.brief(pixel[0], 0) + ", " + Numbers.brief(pixel[1], 0);
  }

  private double perMm(List<Point> line) {
    double least = Double.POSITIVE_INFINITY;
    for (Point p : line) {
      double[] g = fit.camera().growth(p, thickness);
      least = Math.min(least, Math.sqrt(Math.abs(g[0] * g[3] - g[1] * g[2])));
    }
    return least;
  }

  Light light() {
    return light;
  }

  FrameFit fit() {
    return fit;
  }

  /** Edges on the plane of the paper, the outer one first. */
  List<EdgeChain> edges() {
    return List.copyOf(chains);
  }

  /** What may be a hole and is none of the edges, on the plane of the paper. */
  List<FaceSpots.Spot> doubtful() {
    return List.copyOf(doubtful);
  }

  PhotoAccuracy accuracy() {
    return new PhotoAccuracy(fit, thickness);
  }

  /** How the paper is turned for the part to stand upright. */
  RigidTransform upright() {
    return RigidTransform.turn(Upright.turn(chains, up()));
  }

  /** The photo's own up on the paper, radians. */
  private double up() {
    Point middle = chains.get(0).places().get(0);
    double[] g = fit.camera().growth(middle, thickness);
    // The direction that moves up the photo.
    double det = g[0] * g[3] - g[1] * g[2];
    double x = (g[3] * photoUp.x() - g[1] * photoUp.y()) / det;
    double y = (g[0] * photoUp.y() - g[2] * photoUp.x()) / det;
    return Math.atan2(y, x);
  }

  /**
   * The photo laid flat.
   *
   * @param moved where the origin of the upright drawing lies on the plate
   */
  PhotoPicture picture(Point moved) {
    double turn = Upright.turn(chains, up());
    RigidTransform toPaper =
        RigidTransform.shift(-moved.x(), -moved.y()).then(RigidTransform.turn(-turn));
    RigidTransform toPlate =
        RigidTransform.turn(turn).then(RigidTransform.shift(moved.x(), moved.y()));
    List<PhotoPicture.Doubt> doubts =
        doubtful.stream()
            .map(d -> new PhotoPicture.Doubt(toPlate.of(d.middle()), d.radius()))
            .toList();
    return new PhotoPicture(light, fit.camera(), thickness, toPaper, doubts);
  }

  /** Its edges as a drawing that stands upright. */
  Drawn drawn(double unsure) {
    RigidTransform turn = upright();
    List<Chain> all = new ArrayList<>();
    for (EdgeChain edge : chains) {
      List<Stroke> strokes = new ArrayList<>();
      // Moved as one contour, joints stay shared.
      for (Segment segment : new Contour(edge.segments()).moved(turn).segments()) {
        strokes.add(new Stroke.Exact(segment));
      }
      all.add(new Chain(strokes, DrawnAs.NOTHING));
    }
    return new Drawn(all, List.of(), notes, new Unsure(unsure, alike()));
  }

  /** By how much two holes of one size may differ, as they were measured. */
  private double alike() {
    PhotoAccuracy accuracy = accuracy();
    double worst =
        chains.stream().filter(EdgeChain::round).mapToDouble(accuracy::diameter).max().orElse(0);
    return 2 * worst;
  }

  /** How well it was measured. */
  PhotoTold told() {
    EdgeChain outer = chains.get(0);
    Contour outline = new Contour(outer.segments());
    // Across the wheel as it stands.
    Point way = Point.polar(1, -Upright.turn(chains, up()));
    Point a = outline.extreme(way, way.left());
    Point b = outline.extreme(way.times(-1), way.left());
    PhotoAccuracy accuracy = accuracy();
    OptionalDouble hole =
        chains.stream()
            .filter(EdgeChain::round)
            .mapToDouble(c -> accuracy.diameter(c) + WRITTEN)
            .max();
    return new PhotoTold(
        fit.marks(),
        fit.sheets(),
        perMm(outer.places()),
        fit.leftOver(),
        Math.toDegrees(fit.camera().oblique()),
        fit.camera().stands()[2],
        accuracy.height(),
        thickness,
        a.minus(b).dot(way),
        accuracy.width(a, b, outer, outer),
        accuracy.scale(a, b),
        hole);
  }
}
