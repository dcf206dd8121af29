package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures rendered scenes: what the reader says of each, held against the truth. */
final class PhotoScenes {

  /**
   * What one scene gave, mm.
   *
   * @param worst the greatest distance of any edge from the truth, either way
   * @param missing edges that were not found, or found and not there
   * @param untold of these, those that the answer does not name as doubtful
   * @param refused why the photo was refused, in one line; empty where it was measured
   */
  record Outcome(
      double worst,
      double mean,
      double centres,
      double diameters,
      int missing,
      int untold,
      String refused,
      List<Dimension> dimensions) {

    long within() {
      return dimensions.stream().filter(d -> Math.abs(d.error()) <= d.bound()).count();
    }

    boolean good() {
      return refused.isEmpty()
          && missing == 0
          && worst <= 0.5
          && mean <= 0.2
          && centres <= 0.2
          && diameters <= 0.2;
    }
  }

  /** How far a dimension is off, mm, and within how much it was said to be. */
  record Dimension(String what, double error, double bound) {}

  /** How a scene is made, so that it need not be where its outcome is known. */
  record Making(PhotoScene.Laid laid, long seed, double bar) {
    private static final int WIDTH = 4000;
    private static final int HEIGHT = 3000;
    private static final double FOCAL = 0.78;

    String name() {
      return laid.name().toLowerCase(Locale.ROOT) + "-" + seed + (bar > 0 ? "-bar" : "");
    }

    PhotoScene scene() {
      return new PhotoScene(seed, WIDTH, HEIGHT, FOCAL, bar, laid);
    }
  }

  /** The outcome of a scene that may be refused. */
  static Outcome tried(PhotoScene scene) throws IOException {
    try {
      return measure(scene, false);
    } catch (BadInput told) {
      return new Outcome(0, 0, 0, 0, 0, 0, told.getMessage(), List.of());
    }
  }

  /** What is told of a hole is told within this of its middle, mm. */
  private static final double NEAR_IT = 3;

  private PhotoScenes() {}

  /** Rendered once, when a folder to keep photos in is named by a system property. */
  private static byte[] kept(PhotoScene scene) throws IOException {
    String folder = System.getProperty("felloe.photos");
    if (folder == null) {
      return scene.jpeg();
    }
    Path file = Path.of(folder, scene.name + ".jpg");
    if (!Files.exists(file)) {
      Files.createDirectories(file.getParent());
      Files.write(file, scene.jpeg());
    }
    return Files.readAllBytes(file);
  }

  static Outcome measure(PhotoScene scene, boolean tell) throws IOException {
    PhotoFile photo = PhotoFile.of(kept(scene), scene.name);
    PhotoPart part =
        PhotoPart.of(photo, scene.name, scene.thickness, OptionalDouble.empty(), Brought.ASKED);
    if (tell) {
      System.out.println(part.told());
    }
    double[] sheet = scene.sheets[part.fit().first()];
    double[] nearly = {sheet[2], sheet[0], sheet[1]};
    if (tell) {
      part.drawn(0).notes().forEach(System.out::println);
    }
    return judge(scene, part, nearly, tell);
  }

  private static Outcome judge(
      PhotoScene scene, PhotoPart measured, double[] nearly, boolean tell) {
    TruePart part = scene.part;
    List<EdgeChain> chains = measured.edges();
    List<Point> places =
        chains.stream().flatMap(c -> c.sites().stream()).map(EdgeChain.Site::at).toList();
    double[] pose = Aligned.to(part, places, nearly);
    RigidTransform move = RigidTransform.turn(pose[0]).then(RigidTransform.shift(pose[1], pose[2]));
    double worst = 0;
    double sum = 0;
    int n = 0;
    double centres = 0;
    double diameters = 0;
    List<Contour> found = new ArrayList<>();
    for (EdgeChain chain : chains) {
      double own = 0;
      for (EdgeChain.Site site : chain.sites()) {
        Point q = move.of(site.at());
        double off = Math.abs(part.outside(q.x(), q.y()));
        if (tell && off > 0.2) {
          System.out.printf("  %.2f at %.1f %.1f%n", off, q.x(), q.y());
        }
        own = Math.max(own, off);
        sum += off;
        n++;
      }
      worst = Math.max(worst, own);
      if (tell) {
        System.out.println(chain.segments());
      }
      found.add(new Contour(chain.segments()).moved(move));
      if (tell) {
        System.out.printf(
            "%d segments off at most %.3f spread %.3f found %.2f%n",
            chain.segments().size(), own, chain.spread(), chain.found());
      }
    }
    List<Point> doubtful = measured.doubtful().stream().map(d -> move.of(d.middle())).toList();
    int missing = 0;
    int untold = 0;
    for (Contour truth : part.contours) {
      Contour like = null;
      for (Contour c : found) {
        if (c.box().centre().distance(truth.box().centre()) < 2
            && Math.abs(c.box().width() - truth.box().width()) < 3) {
          like = c;
        }
      }
      if (like == null) {
        missing++;
        Point middle = truth.box().centre();
        untold += doubtful.stream().anyMatch(d -> d.distance(middle) < NEAR_IT) ? 0 : 1;
        if (tell) {
          System.out.println("missing " + truth.box());
        }
        continue;
      }
      // The other way round: a corner that was cut off is told by the truth alone.
      double far = truth.apart(like);
      worst = Math.max(worst, far);
      if (tell && far > 0.2) {
        System.out.println("apart " + far);
      }
      if (truth.asCircle().isPresent() && like.asCircle().isPresent()) {
        Arc a = truth.asCircle().get();
        Arc b = like.asCircle().get();
        centres = Math.max(centres, a.centre().distance(b.centre()));
        diameters = Math.max(diameters, 2 * Math.abs(a.radius() - b.radius()));
        if (tell) {
          System.out.printf(
              "hole %.2f off %.3f %.3f diameter %+.3f%n",
              2 * a.radius(),
              b.centre().x() - a.centre().x(),
              b.centre().y() - a.centre().y(),
              2 * (b.radius() - a.radius()));
        }
      } else if (truth.asCircle().isPresent()) {
        missing++;
        untold++;
      }
    }
    int more = Math.max(0, found.size() - part.contours.size());
    missing += more;
    untold += more;
    Dimensions dimensions = new Dimensions(part, chains, found, measured.accuracy(), pose);
    dimensions.all();
    if (tell) {
      dimensions.found.forEach(System.out::println);
    }
    return new Outcome(worst, sum / n, centres, diameters, missing, untold, "", dimensions.found);
  }

  /** Errors of dimensions and what was said of them. */
  private static final class Dimensions {
    private final TruePart part;
    private final List<EdgeChain> chains;
    private final List<Contour> contours;
    private final PhotoAccuracy accuracy;
    private final RigidTransform back;
    private final List<Dimension> found = new ArrayList<>();

    Dimensions(
        TruePart part,
        List<EdgeChain> chains,
        List<Contour> contours,
        PhotoAccuracy accuracy,
        double[] pose) {
      this.part = part;
      this.chains = chains;
      this.contours = contours;
      this.accuracy = accuracy;
      this.back = RigidTransform.shift(-pose[1], -pose[2]).then(RigidTransform.turn(-pose[0]));
    }

    void all() {
      Contour outline = part.contours.get(0);
      int own = 0;
      for (int i = 1; i < contours.size(); i++) {
        own = contours.get(i).area() > contours.get(own).area() ? i : own;
      }
      EdgeChain edge = chains.get(own);
      for (Point way : List.of(new Point(1, 0), new Point(0, 1))) {
        Point a = contours.get(own).extreme(way, way.left());
        Point b = contours.get(own).extreme(way.times(-1), way.left());
        double truth =
            outline.extreme(way, way.left()).minus(outline.extreme(way.times(-1), way)).dot(way);
        double bound = accuracy.width(back.of(a), back.of(b), edge, edge);
        add("width", a.minus(b).dot(way) - truth, bound);
      }
      List<Arc> truths = new ArrayList<>();
      List<EdgeChain> holes = new ArrayList<>();
      for (int i = 0; i < contours.size(); i++) {
        Optional<Arc> circle = contours.get(i).asCircle();
        for (Contour c : part.contours) {
          Optional<Arc> truth = c.asCircle();
          if (circle.isPresent()
              && truth.isPresent()
              && truth.get().centre().distance(circle.get().centre()) < 1) {
            truths.add(truth.get());
            holes.add(chains.get(i));
            double error = 2 * (circle.get().radius() - truth.get().radius());
            add("diameter", error, accuracy.diameter(chains.get(i)));
          }
        }
      }
      for (int i = 0; i + 1 < holes.size(); i++) {
        EdgeChain a = holes.get(i);
        EdgeChain b = holes.get(i + 1);
        double truth = truths.get(i).centre().distance(truths.get(i + 1).centre());
        add("middles", a.centre().distance(b.centre()) - truth, accuracy.middles(a, b));
      }
    }

    private void add(String what, double error, double bound) {
      found.add(new Dimension(what, error, bound));
    }
  }

  /** Measures one scene and tells all of it; or many, told one a line and kept in a file. */
  public static void main(String[] args) throws IOException {
    PhotoScene.Laid laid = PhotoScene.Laid.valueOf(args[0]);
    long from = Long.parseLong(args[1]);
    long to = Long.parseLong(args[2]);
    int every = Integer.parseInt(args[3]);
    double bar = Double.parseDouble(args[4]);
    if (from + every >= to) {
      System.out.println(measure(new Making(laid, from, bar).scene(), true));
      return;
    }
    SceneLog log = SceneLog.ofProperty();
    for (long seed = from; seed < to; seed += every) {
      Making making = new Making(laid, seed, bar);
      System.out.println(making.name() + " " + SceneLog.written(log.outcome(making)));
    }
  }
}
