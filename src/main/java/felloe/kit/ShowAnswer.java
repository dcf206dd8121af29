package felloe.kit;

import felloe.geometry.AreaProperties;
import felloe.geometry.Box;
import felloe.out.JsonWriter;
import felloe.out.ShapeJson;
import felloe.plate.Figure;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/**
 * A plate's key figures.
 *
 * @param plate the plate
 * @param figures its size, area, mass and moments, in the order in which they are told
 */
public record ShowAnswer(Plate plate, List<Figure> figures) {

  public ShowAnswer {
    figures = List.copyOf(figures);
  }

  static ShowAnswer of(Plate plate) {
    Box box = plate.box();
    AreaProperties whole = plate.region().properties();
    AreaProperties central = whole.central();
    List<Figure> figures = new ArrayList<>();
    figures.add(new Figure("width over all", box.width(), "mm"));
    figures.add(new Figure("height over all", box.height(), "mm"));
    figures.add(new Figure("thickness", plate.stock().thickness(), "mm"));
    figures.add(new Figure("outline length", plate.outline().length(), "mm"));
    figures.add(new Figure("length of all edges", plate.region().length(), "mm"));
    figures.add(new Figure("area", whole.area(), "mm2"));
    figures.add(new Figure("mass", plate.mass(), "g"));
    figures.add(new Figure("centroid x", whole.centroid().x(), "mm"));
    figures.add(new Figure("centroid y", whole.centroid().y(), "mm"));
    figures.add(new Figure("second moment Ixx", central.ixx(), "mm4"));
    figures.add(new Figure("second moment Iyy", central.iyy(), "mm4"));
    figures.add(new Figure("product moment Ixy", central.ixy(), "mm4"));
    figures.add(new Figure("polar moment", central.polar(), "mm4"));
    return new ShowAnswer(plate, figures);
  }

  /** The exact geometry as JSON text; its shape is told in {@code docs/}. */
  public String json() {
    return JsonWriter.text(ShapeJson.of(plate));
  }
}
