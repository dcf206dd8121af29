package felloe.out;

import felloe.geometry.Arc;
import felloe.geometry.AreaProperties;
import felloe.geometry.Contour;
import felloe.geometry.Segment;
import felloe.plate.BoltCircle;
import felloe.plate.Hole;
import felloe.plate.Note;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Sheet;
import felloe.plate.Stock;
import felloe.plate.Window;
import java.util.List;
import java.util.Locale;

/**
 * The exact geometry of a plate as JSON. Millimetres and degrees, x to the driver's right, y up,
 * origin on the hub axis, angles positive counter-clockwise.
 *
 * <p>{@code outline} and each of {@code windows} has {@code segments}: a closed chain,
 * counter-clockwise, of {@code {"line": [[x, y], [x, y]]}} and {@code {"arc": {"from": [x, y],
 * "to": [x, y], "centre": [x, y], "radius": r, "sweep": degrees}}}; a whole circle is one arc that
 * ends where it starts. {@code figures} are those of the finished plate, windows and holes taken
 * out, second moments about axes through its centroid.
 *
 * <p>Accuracy: nine decimals, so that a reader gets every figure to 1e-9.
 */
public final class ShapeJson {

  private static final int DECIMALS = 9;

  private ShapeJson() {}

  /** The plate as a JSON value, to write or to put into a larger answer. */
  public static Json.Members of(Plate plate) {
    return Json.object()
        .with("name", plate.name())
        .with("title", plate.title())
        .with("revision", plate.revision())
        .with("units", Json.object().with("length", "mm").with("angle", "degree"))
        .with("stock", stock(plate.stock()))
        .with("hub", Json.maybe(plate.hub(), Json::text))
        .with("outline", contour(Json.object(), plate.outline()))
        .with("windows", Json.array(plate.windows(), ShapeJson::window))
        .with("holes", Json.array(plate.holes(), ShapeJson::hole))
        .with("bolt_circles", Json.array(plate.boltCircles(), ShapeJson::boltCircle))
        .with("figures", figures(plate))
        .with("notes", Json.array(plate.notes(), ShapeJson::note));
  }

  /** A place as file, line and column; line and column are 0 where a whole file is meant. */
  static Json place(Place place) {
    return Json.object()
        .with("file", place.file())
        .with("line", place.line())
        .with("column", place.column());
  }

  /** An enumeration's constant as a word for programs: lower case, hyphens. */
  static Json word(Enum<?> constant) {
    return Json.text(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  private static Json stock(Stock stock) {
    return Json.object()
        .with("material", stock.material().name())
        .with("title", stock.material().title())
        .with("density", stock.material().density(), DECIMALS)
        .with("thickness", stock.thickness(), DECIMALS)
        .with("sheet", Json.maybe(stock.sheet(), ShapeJson::sheet))
        .with("template_face", word(stock.templateFace()));
  }

  private static Json sheet(Sheet sheet) {
    return Json.object()
        .with("width", sheet.width(), DECIMALS)
        .with("height", sheet.height(), DECIMALS);
  }

  private static Json window(Window window) {
    return contour(
        Json.object().with("label", window.label()).with("use", word(window.use())),
        window.contour());
  }

  private static Json.Members contour(Json.Members start, Contour contour) {
    return start.with("segments", segments(contour));
  }

  /** A contour as a closed chain of segments. */
  public static Json segments(Contour contour) {
    return Json.array(contour.segments(), ShapeJson::segment);
  }

  private static Json segment(Segment segment) {
    Json from = Json.point(segment.from(), DECIMALS);
    Json to = Json.point(segment.to(), DECIMALS);
    if (segment instanceof Arc arc) {
      return Json.object()
          .with(
              "arc",
              Json.object()
                  .with("from", from)
                  .with("to", to)
                  .with("centre", Json.point(arc.centre(), DECIMALS))
                  .with("radius", arc.radius(), DECIMALS)
                  .with("sweep", Math.toDegrees(arc.sweep()), DECIMALS));
    }
    return Json.object().with("line", new Json.Array(List.of(from, to)));
  }

  private static Json hole(Hole hole) {
    return Json.object()
        .with("label", hole.label())
        .with("role", word(hole.role()))
        .with("x", hole.centre().x(), DECIMALS)
        .with("y", hole.centre().y(), DECIMALS)
        .with("diameter", hole.diameter(), DECIMALS)
        .with("length", hole.length(), DECIMALS)
        .with(
            "direction",
            hole.slot().map(slot -> Math.toDegrees(slot.direction())).orElse(0.0),
            DECIMALS);
  }

  private static Json boltCircle(BoltCircle circle) {
    return Json.object()
        .with("label", circle.label())
        .with("count", circle.count())
        .with("pitch_diameter", circle.pitchDiameter(), DECIMALS)
        .with("hole_diameter", circle.holeDiameter(), DECIMALS)
        .with("first_angle", Math.toDegrees(circle.firstAngle()), DECIMALS)
        .with("hub", Json.maybe(circle.hub(), Json::text));
  }

  private static Json figures(Plate plate) {
    AreaProperties whole = plate.region().properties();
    AreaProperties central = whole.central();
    return Json.object()
        .with("area", whole.area(), DECIMALS)
        .with("perimeter", plate.outline().length(), DECIMALS)
        .with("edges", plate.region().length(), DECIMALS)
        .with("centroid", Json.point(whole.centroid(), DECIMALS))
        .with("ixx", central.ixx(), DECIMALS)
        .with("iyy", central.iyy(), DECIMALS)
        .with("ixy", central.ixy(), DECIMALS)
        .with("polar", central.polar(), DECIMALS)
        .with("mass", plate.mass(), DECIMALS);
  }

  private static Json note(Note note) {
    return Json.object().with("place", place(note.place())).with("text", note.text());
  }
}
