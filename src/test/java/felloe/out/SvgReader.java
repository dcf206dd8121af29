package felloe.out;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Reads SVG files back with the parser of the JDK, sharing nothing with the writer. Arcs are turned
 * into centre form by the formulas of W3C SVG 1.1, appendix F.6.5 and F.6.6.
 */
final class SvgReader {

  private static final Pattern PIECE = Pattern.compile("([MLAZ])([^MLAZ]*)");

  private final Document document;
  private final boolean single;

  /**
   * Reads a file.
   *
   * @param single whether coordinates are kept in single precision, as many readers do
   */
  SvgReader(byte[] bytes, boolean single) throws Exception {
    this.single = single;
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }

  Element root() {
    return document.getDocumentElement();
  }

  Element group(String id) {
    for (Element group : elements(root(), "g")) {
      if (group.getAttribute("id").equals(id)) {
        return group;
      }
    }
    throw new AssertionError("no group " + id);
  }

  static List<Element> elements(Element parent, String name) {
    NodeList nodes = parent.getElementsByTagNameNS("http://www.w3.org/2000/svg", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** The shapes of a group in order, each as a dense run of points {x, y}, y up. */
  List<List<double[]>> shapes(String id) {
    List<List<double[]>> shapes = new ArrayList<>();
    NodeList nodes = group(id).getChildNodes();
    for (int i = 0; i < nodes.getLength(); i++) {
      if (nodes.item(i) instanceof Element e && e.getLocalName().equals("path")) {
        shapes.add(path(e.getAttribute("d")));
      } else if (nodes.item(i) instanceof Element e && e.getLocalName().equals("circle")) {
        shapes.add(circle(number(e, "cx"), number(e, "cy"), number(e, "r")));
      }
    }
    return shapes;
  }

  double number(Element element, String attribute) {
    return number(element.getAttribute(attribute));
  }

  private double number(String text) {
    double value = Double.parseDouble(text);
    return single ? (float) value : value;
  }

  private static List<double[]> circle(double cx, double cy, double r) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i < 720; i++) {
      double a = Math.PI * i / 360;
      points.add(new double[] {cx + r * Math.cos(a), -(cy + r * Math.sin(a))});
    }
    return points;
  }

  private List<double[]> path(String data) {
    List<double[]> points = new ArrayList<>();
    double[] start = null;
    double[] pen = null;
    Matcher pieces = PIECE.matcher(data);
    int end = 0;
    while (pieces.find()) {
      if (pieces.start() != end) {
        throw new AssertionError("cannot read " + data.substring(end));
      }
      end = pieces.end();
      double[] f =
          pieces.group(2).isBlank()
              ? new double[0]
              : Pattern.compile("[ ,]+")
                  .splitAsStream(pieces.group(2).strip())
                  .mapToDouble(this::number)
                  .toArray();
      switch (pieces.group(1)) {
        case "M" -> start = f;
        case "L" -> line(points, pen, f);
        case "A" -> arc(points, pen, f);
        default -> line(points, pen, start);
      }
      pen = f.length == 0 ? start : new double[] {f[f.length - 2], f[f.length - 1]};
    }
    if (end != data.length()) {
      throw new AssertionError("cannot read " + data.substring(end));
    }
    return points;
  }

  private static void line(List<double[]> points, double[] a, double[] b) {
    for (int i = 0; i <= 50; i++) {
      double t = i / 50.0;
      points.add(new double[] {a[0] + t * (b[0] - a[0]), -(a[1] + t * (b[1] - a[1]))});
    }
  }

  /** F.6.5 for circles: rx = ry = r and no rotation; F.6.6 step 3 grows a radius too small. */
  private static void arc(List<double[]> points, double[] a, double[] f) {
    double r = f[0];
    boolean large = f[3] != 0;
    boolean sweep = f[4] != 0;
    double x1 = (a[0] - f[5]) / 2;
    double y1 = (a[1] - f[6]) / 2;
    double half2 = x1 * x1 + y1 * y1;
    if (half2 == 0) {
      return;
    }
    double lambda = half2 / (r * r);
    if (lambda > 1) {
      r *= Math.sqrt(lambda);
    }
    double k = Math.sqrt(Math.max(0, (r * r - half2) / half2)) * (large == sweep ? -1 : 1);
    double cx = k * y1 + (a[0] + f[5]) / 2;
    double cy = -k * x1 + (a[1] + f[6]) / 2;
    double from = Math.atan2(a[1] - cy, a[0] - cx);
    double turn = Math.atan2(f[6] - cy, f[5] - cx) - from;
    if (sweep && turn < 0) {
      turn += 2 * Math.PI;
    } else if (!sweep && turn > 0) {
      turn -= 2 * Math.PI;
    }
    for (int i = 0; i <= 100; i++) {
      double angle = from + turn * i / 100;
      points.add(new double[] {cx + r * Math.cos(angle), -(cy + r * Math.sin(angle))});
    }
  }
}
