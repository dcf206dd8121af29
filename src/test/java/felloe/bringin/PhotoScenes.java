package felloe.bringin;

import felloe.geometry.Arc;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Measures rendered scenes: what the reader says of each, held against the truth. */
final class PhotoScenes {

  /**
   * What one scene gave, mm.
   *
   * @param worst the greatest distance of any edge from the truth, either way
   * @param missing edges that were not found, or found and not there
   * @param within of the dimensions, those whose error is within what was said of them
   */
  record Outcome(
      double worst,
      double mean,
      double centres,
      double diameters,
      int missing,
      int within,
      int dimensions) {}

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
    PhotoPart part = PhotoPart.of(photo, scene.name, scene.thickness, Brought.ASKED);
    if (tell) {
      System.out.println(part.told());
    }
    double[] sheet = scene.sheets[part.fit().first()];
    double[] nearly = {sheet[2], sheet[0], sheet[1]};
    return judge(scene, part.edges(), part.accuracy(), nearly, tell);
  }

  private static Outcome judge(
      PhotoScene scene,
      List<EdgeChain> chains,
      PhotoAccuracy accuracy,
      double[] nearly,
      boolean tell) {
    TruePart part = scene.part;
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
    int missing = 0;
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
      }
    }
    missing += Math.max(0, found.size() - part.contours.size());
    Dimensions dimensions = new Dimensions(part, chains, found, accuracy, pose);
    dimensions.all();
    if (tell || System.getProperty("felloe.dims") != null) {
      dimensions.lines.forEach(System.out::println);
    }
    return new Outcome(
        worst, sum / n, centres, diameters, missing, dimensions.within, dimensions.lines.size());
  }

  /** Errors of dimensions and what was said of them. */
  private static final class Dimensions {
    private final TruePart part;
    private final List<EdgeChain> chains;
    private final List<Contour> found;
    private final PhotoAccuracy accuracy;
    private final RigidTransform back;
    private final List<String> lines = new ArrayList<>();
    private int within;

    Dimensions(
        TruePart part,
        List<EdgeChain> chains,
        List<Contour> found,
        PhotoAccuracy accuracy,
        double[] pose) {
      this.part = part;
      this.chains = chains;
      this.found = found;
      this.accuracy = accuracy;
      this.back = RigidTransform.shift(-pose[1], -pose[2]).then(RigidTransform.turn(-pose[0]));
    }

    void all() {
      Contour outline = part.contours.get(0);
      int own = 0;
      for (int i = 1; i < found.size(); i++) {
        own = found.get(i).area() > found.get(own).area() ? i : own;
      }
      EdgeChain edge = chains.get(own);
      for (Point way : List.of(new Point(1, 0), new Point(0, 1))) {
        Point a = found.get(own).extreme(way, way.left());
        Point b = found.get(own).extreme(way.times(-1), way.left());
        double truth =
            outline.extreme(way, way.left()).minus(outline.extreme(way.times(-1), way)).dot(way);
        double bound = accuracy.width(back.of(a), back.of(b), edge, edge);
        add("width", a.minus(b).dot(way) - truth, bound);
      }
      List<Arc> truths = new ArrayList<>();
      List<EdgeChain> holes = new ArrayList<>();
      for (int i = 0; i < found.size(); i++) {
        Optional<Arc> circle = found.get(i).asCircle();
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
      within += Math.abs(error) <= bound ? 1 : 0;
      lines.add(String.format(java.util.Locale.ROOT, "DIM %s %+.3f of %.3f", what, error, bound));
    }
  }

  /** Renders and measures scenes, told one a line. */
  public static void main(String[] args) throws IOException {
    int from = Integer.parseInt(args[0]);
    int to = Integer.parseInt(args[1]);
    double bar = args.length > 2 ? Double.parseDouble(args[2]) : 0;
    for (int seed = from; seed < to; seed++) {
      try {
        Outcome o = measure(new PhotoScene(seed, 4000, 3000, 0.78, bar), to - from < 3);
        System.out.printf(
            "%d worst %.3f mean %.3f centres %.3f diameters %.3f missing %d within %d of %d%n",
            seed,
            o.worst(),
            o.mean(),
            o.centres(),
            o.diameters(),
            o.missing(),
            o.within(),
            o.dimensions());
      } catch (RuntimeException e) {
        System.out.println(seed + " FAILED " + e);
        e.printStackTrace(System.out);
      }
    }
  }
}
