package felloe.bringin;

import felloe.geometry.ArcFit;
import felloe.geometry.Box;
import felloe.geometry.Segment;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.yaml.Problems;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/**
 * Reads an outline that exists: a drawing (SVG, DXF), a table of points, or a photo among printed
 * marks. The front door.
 */
public final class BringIn {

  /** Ends nearer than this are one, mm, when nothing else is said. */
  public static final double GAP = 0.05;

  /** How far arcs may lie from chords and curves, mm, when nothing else is said. */
  public static final double WITHIN = 0.05;

  /** No file of any kind may be larger, bytes. */
  public static final int MOST_BYTES = PhotoFile.BYTES;

  /** The same for what a photo shows, mm: about its own accuracy. */
  public static final double PHOTO = 0.15;

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
   * @param gap ends nearer than this are one, mm; usually {@link #GAP}
   * @param within how far arcs may lie from chords and curves, and from what a photo shows, mm;
   *     usually {@link #WITHIN}, and {@link #PHOTO} for a photo
   * @param thickness of the part on a photo, mm
   * @param cameraHeight from the paper to the lens when the photo was taken, mm, if it was measured
   * @param asked what all that is called, for cures
   */
  public record Wish(
      Sizing sizing,
      OptionalDouble gap,
      OptionalDouble within,
      OptionalDouble thickness,
      OptionalDouble cameraHeight,
      Asked asked) {}

  /**
   * Whether a file is a photo, by its name or by how it begins.
   *
   * @param file its name
   */
  public static boolean isPhoto(byte[] bytes, String file) {
    String name = file.toLowerCase(Locale.ROOT);
    boolean jpeg = bytes.length > 2 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xd8;
    boolean png = bytes.length > 2 && (bytes[0] & 0xff) == 0x89 && bytes[1] == 'P';
    return jpeg || png || name.matches(".*\\.(jpe?g|png)");
  }

  /**
   * Measures a part on a photo among the marks of the frame.
   *
   * @throws BadInput when it cannot be measured, saying what to do about it
   */
  public static PhotoMeasured photo(byte[] bytes, String file, Wish wish) {
    Asked asked = wish.asked();
    Problems problems = new Problems();
    if (wish.sizing().width().isPresent() || wish.sizing().scale().isPresent()) {
      problems.add(
          problem(
              file,
              "is a photo, whose size its marks tell",
              "leave out " + asked.width() + " and " + asked.scale()));
    }
    if (wish.gap().isPresent()) {
      problems.add(
          problem(file, "is a photo, whose lines have no ends", "leave out " + asked.gap()));
    }
    if (wish.thickness().isEmpty()) {
      problems.add(
          problem(
              file,
              "is a photo: how thick the part is must be known, since its upper face stands nearer"
                  + " to the camera than the marks",
              "measure it and give it, such as " + asked.thickness() + " 9"));
    }
    problems.throwIfAny();
    double within = wish.within().orElse(PHOTO);
    PhotoPart part =
        PhotoPart.of(
            PhotoFile.of(bytes, file),
            file,
            wish.thickness().getAsDouble(),
            wish.cameraHeight(),
            asked);
    Drawn drawn = part.drawn(within);
    PlateOutline plate = PlateOutline.of(Joining.of(drawn, GAP, file, asked), drawn, within, file);
    return new PhotoMeasured(plate, part.told(), part.picture(plate.moved()));
  }

  private static Problem problem(String file, String wanted, String cure) {
    return new Problem(Place.ofFile(file), "", "", wanted, cure);
  }

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
    Problems problems = new Problems();
    if (wish.thickness().isPresent()) {
      problems.add(
          problem(
              file,
              "is no photo, for which alone a thickness counts",
              "leave out " + wish.asked().thickness()));
    }
    if (wish.cameraHeight().isPresent()) {
      problems.add(
          problem(
              file,
              "is no photo, for which alone a camera's height counts",
              "leave out " + wish.asked().cameraHeight()));
    }
    problems.throwIfAny();
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
        Joining.of(drawn, wish.gap().orElse(GAP), file, wish.asked()),
        drawn,
        wish.within().orElse(WITHIN),
        file);
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
        "give an .svg or .dxf drawing, a .csv table of points, or a .jpg or .png photo");
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
