package felloe.bringin;

import felloe.geometry.Point;
import felloe.measure.CircleFit;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;

/** Measures rendered scenes: what the reader says of each, held against the truth. */
final class PhotoScenes {

  /**
   * What one scene gave, mm.
   *
   * @param width error of the greatest width, and what was said of it
   */
  record Outcome(
      double worst, double mean, double centres, double diameters, double width, double bound) {}

  private PhotoScenes() {}

  static Light light(byte[] grey, int width, int height) {
    float[] table = new float[256];
    for (int i = 0; i < 256; i++) {
      table[i] = (float) Light.decoded(i / 255.0);
    }
    float[] values = new float[grey.length];
    for (int k = 0; k < values.length; k++) {
      values[k] = table[grey[k] & 0xff];
    }
    return new Light(width, height, values);
  }

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
    long t0 = System.nanoTime();
    byte[] jpeg = kept(scene);
    long t1 = System.nanoTime();
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(jpeg));
    byte[] grey = (byte[]) image.getRaster().getDataElements(0, 0, scene.width, scene.height, null);
    Light light = light(grey, scene.width, scene.height);
    List<MarksFound.Seen> seen = MarksFound.in(grey, scene.width, scene.height);
    long t2 = System.nanoTime();
    if (tell) {
      System.out.println("marks " + seen.size());
      for (MarksFound.Seen one : seen.subList(0, Math.min(2, seen.size()))) {
        System.out.println(one.corners() + "\n  true " + scene.trueCorners(one.mark()));
      }
    }
    FrameFit fit = FrameFit.of(light, seen, OptionalDouble.empty());
    long t3 = System.nanoTime();
    if (tell) {
      double[] n = fit.numbers();
      double[] m = scene.camera.numbers();
      for (int i = 0; i < 7; i++) {
        System.out.println(
            i + " " + n[i] + " true " + m[i] + " sd " + Math.sqrt(fit.covariance()[i][i]));
      }
      System.out.println(
          "height "
              + fit.camera().stands()[2]
              + " true "
              + scene.stands[2]
              + " noise "
              + fit.noise()
              + " blur "
              + fit.blur()
              + " sights "
              + fit.sights());
    }
    Camera camera = fit.camera();
    double thick = PhotoScene.THICKNESS;
    List<List<Point>> coarse = PartSeen.edges(light, camera, thick, fit.sheets());
    List<PartEdges.Edge> edges = PartEdges.of(light, camera, thick, fit.blur(), coarse);
    long t4 = System.nanoTime();
    if (tell) {
      for (PartEdges.Edge e : edges) {
        System.out.println(
            "edge "
                + e.points().size()
                + " area "
                + EdgeTrace.area(e.points())
                + " rough "
                + e.rough()
                + " found "
                + e.found());
      }
      System.out.printf(
          "render %.1f detect %.1f fit %.1f edges %.1f s%n",
          (t1 - t0) / 1e9, (t2 - t1) / 1e9, (t3 - t2) / 1e9, (t4 - t3) / 1e9);
    }
    return judge(scene, edges, new PhotoAccuracy(fit, thick), tell);
  }

  private static Outcome judge(
      PhotoScene scene, List<PartEdges.Edge> edges, PhotoAccuracy accuracy, boolean tell) {
    // Onto the truth: turn and shift that fit the edges best, by the holes' circles and the
    // outline.
    TruePart part = scene.part;
    double[] pose = Aligned.to(part, edges.stream().flatMap(e -> e.points().stream()).toList());
    double worst = 0;
    double sum = 0;
    int n = 0;
    double centres = 0;
    double diameters = 0;
    for (PartEdges.Edge edge : edges) {
      double own = 0;
      for (Point p : edge.points()) {
        Point q = Aligned.move(pose, p);
        double off = Math.abs(part.outside(q.x(), q.y()));
        own = Math.max(own, off);
        if (tell && off > 0.25) {
          System.out.printf("  %.2f at %.1f %.1f radius %.1f%n", off, q.x(), q.y(), q.norm());
        }
        sum += off;
        n++;
      }
      worst = Math.max(worst, own);
      double size = Math.sqrt(Math.abs(EdgeTrace.area(edge.points())) / Math.PI);
      if (size < 30) {
        Optional<CircleFit.Circle> fitted = CircleFit.GEOMETRIC.of(edge.points());
        CircleFit.Circle c = fitted.orElseThrow();
        Point q = Aligned.move(pose, c.centre());
        double off = q.norm();
        double right = part.bore;
        for (Point h : part.holes) {
          if (h.distance(q) < off) {
            off = h.distance(q);
            right = part.hole;
          }
        }
        centres = Math.max(centres, off);
        diameters = Math.max(diameters, 2 * Math.abs(c.radius() - right));
      }
      if (tell) {
        System.out.println("  off at most " + own);
      }
    }
    // The width, square to the flat's direction: the ends of the circle.
    double low = 0;
    double high = 0;
    Point left = null;
    Point right = null;
    for (Point p : edges.get(0).points()) {
      Point q = Aligned.move(pose, p);
      if (Math.abs(q.y()) < 12) {
        if (q.x() > 0) {
          high += q.norm();
          right = p;
        } else {
          low += q.norm();
          left = p;
        }
      }
    }
    int a = 0;
    int b = 0;
    for (Point p : edges.get(0).points()) {
      Point q = Aligned.move(pose, p);
      if (Math.abs(q.y()) < 12) {
        a += q.x() > 0 ? 1 : 0;
        b += q.x() > 0 ? 0 : 1;
      }
    }
    double width = high / a + low / b - 2 * part.radius;
    double bound = accuracy.bound(left, right, edges.get(0).rough());
    double missing = edges.size() == 10 ? 0 : 100;
    return new Outcome(worst + missing, sum / n, centres, diameters, width, bound);
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
            "%d worst %.3f mean %.3f centres %.3f diameters %.3f width %+.3f bound %.3f%n",
            seed, o.worst(), o.mean(), o.centres(), o.diameters(), o.width(), o.bound());
      } catch (RuntimeException e) {
        System.out.println(seed + " FAILED " + e);
        e.printStackTrace(System.out);
      }
    }
  }
}
