package felloe.bringin;

import felloe.geometry.ArcFit;
import felloe.geometry.Box;
import felloe.geometry.Segment;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** Reads an outline that exists: a drawing (SVG, DXF) or a table of points. The front door. */
public final class BringIn {

  /** Ends nearer than this are one, mm, when nothing else is said. */
  public static final double GAP = 0.05;

  /** How far arcs may lie from chords and curves, mm, when nothing else is said. */
  public static final double WITHIN = 0.05;

  /** How finely curves are followed to measure a width: in the drawing's unit, and of its size. */
  private static final double FINE = 1e-4;

  private static final double SHARE = 1e-6;

  /** How a cut file begins: its title names the plate and the way of cutting. */
  private static final Pattern CUT =
      Pattern.compile(
          "(?:<title>|999\\r"
              + "?\\n"
              + ")[^<\\n"
              + "]{1,80}, (?:laser|waterjet|router|jigsaw)(?:</title>|\\r"
              + "?\\n"
              + ")");

  private BringIn() {}

  /** What kinds of file there are. */
  private enum Kind {
    SVG,
    DXF,
    POINTS;

    private Drawn read(byte[] bytes, Reading reading, Sizing sizing) {
      return switch (this) {
        case SVG -> SvgDrawing.read(bytes, reading, sizing);
        case DXF -> DxfDrawing.read(bytes, reading, sizing);
        case POINTS -> PointTable.read(bytes, reading, sizing);
      };
    }
  }

  /**
   * How it is read.
   *
   * @param sizing what the maker says of the drawing's size
   * @param gap ends nearer than this are one, mm
   * @param within how far arcs may lie from chords and curves, mm
   * @param asked what all that is called, for cures
   */
  public record Wish(Sizing sizing, double gap, double within, Asked asked) {}

  /**
   * Reads.
   *
   * @param bytes the file
   * @param file its name, which tells its kind, and for messages
   * @throws BadInput with everything that is wrong
   */
  public static PlateOutline of(byte[] bytes, String file, Wish wish) {
    if (bytes.length > Limits.BYTES) {
      throw bad(
          file,
          bytes.length / (1 << 20) + " MB",
          "is too large: at most " + Limits.BYTES / (1 << 20) + " MB are read",
          "save the outline alone");
    }
    Kind kind = kind(bytes, file);
    String begin = new String(bytes, 0, Math.min(2_000, bytes.length), StandardCharsets.UTF_8);
    if (CUT.matcher(begin).find()) {
      throw bad(
          file,
          "",
          "is a cut file of this program, whose lines are moved by half the cut",
          "bring in the kit's drawing");
    }
    Drawn drawn;
    if (wish.sizing().width().isPresent()) {
      double now = width(kind.read(bytes, new Reading(file, wish.asked()), Sizing.scaled(1)), file);
      double scale = wish.sizing().width().getAsDouble() / now;
      drawn = kind.read(bytes, new Reading(file, wish.asked()), Sizing.scaled(scale));
    } else {
      drawn = kind.read(bytes, new Reading(file, wish.asked()), wish.sizing());
    }
    return PlateOutline.of(
        Joining.of(drawn, wish.gap(), file, wish.asked()), drawn, wish.within(), file);
  }

  private static Kind kind(byte[] bytes, String file) {
    String name = file.toLowerCase(Locale.ROOT);
    if (name.endsWith(".svg")) {
      return Kind.SVG;
    } else if (name.endsWith(".dxf")) {
      return Kind.DXF;
    } else if (name.endsWith(".csv") || name.endsWith(".txt")) {
      return Kind.POINTS;
    }
    String begin = new String(bytes, 0, Math.min(200, bytes.length), StandardCharsets.UTF_8);
    if (begin.contains("<svg") || begin.startsWith("<?xml")) {
      return Kind.SVG;
    }
    throw bad(
        file,
        "",
        "is no file that an outline is read from",
        "give an .svg or .dxf drawing, or a .csv table of points");
  }

  private static BadInput bad(String file, String value, String wanted, String cure) {
    return new BadInput(new Problem(Place.ofFile(file), "", value, wanted, cure));
  }

  /** Width of all that is drawn. */
  private static double width(Drawn drawn, String file) {
    OptionalDouble size =
        drawn.chains().stream()
            .flatMap(chain -> chain.strokes().stream())
            .mapToDouble(s -> s.from().distance(s.middle()))
            .max();
    if (size.isEmpty()) {
      throw bad(file, "", "draws nothing", "draw the edge of the part as one closed line");
    }
    // Coarse for what is large in the drawing's own unit: it only measures.
    double tolerance = Math.max(FINE, size.getAsDouble() * SHARE);
    Box box = null;
    for (Chain chain : drawn.chains()) {
      for (Stroke stroke : chain.strokes()) {
        ArcFit fit = stroke.fit(tolerance);
        for (Segment segment : fit.segments()) {
          box = box == null ? segment.box() : box.union(segment.box());
        }
      }
    }
    if (box == null || box.width() <= 0) {
      throw bad(file, "", "draws nothing that has a width", "");
    }
    return box.width();
  }
}
