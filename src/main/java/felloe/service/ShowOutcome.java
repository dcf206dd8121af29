package felloe.service;

import felloe.geometry.AreaProperties;
import felloe.geometry.Box;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Plate;
import java.util.List;

/**
 * A plate's key figures.
 *
 * @param plate the plate
 * @param figures its size, area, mass and moments, in the order in which they are told
 * @param findings of its review, for the picture; none where it was not reviewed
 */
public record ShowOutcome(Plate plate, List<Figure> figures, List<Finding> findings) {

  public ShowOutcome {
    figures = List.copyOf(figures);
    findings = List.copyOf(findings);
  }

  /** Of a plate with the findings of its review; none where it was not reviewed. */
  public static ShowOutcome of(Plate plate, List<Finding> findings) {
    Box box = plate.box();
    AreaProperties whole = plate.region().properties();
    AreaProperties central = whole.central();
    return new ShowOutcome(
        plate,
        List.of(
            new Figure("width over all", box.width(), "mm"),
            new Figure("height over all", box.height(), "mm"),
            new Figure("thickness", plate.stock().thickness(), "mm"),
            new Figure("outline length", plate.outline().length(), "mm"),
            new Figure("length of all edges", plate.region().length(), "mm"),
            new Figure("area", whole.area(), "mm2"),
            new Figure("mass", plate.mass(), "g"),
            new Figure("centroid x", whole.centroid().x(), "mm"),
            new Figure("centroid y", whole.centroid().y(), "mm"),
            new Figure("second moment Ixx", central.ixx(), "mm4"),
            new Figure("second moment Iyy", central.iyy(), "mm4"),
            new Figure("product moment Ixy", central.ixy(), "mm4"),
            new Figure("polar moment", central.polar(), "mm4")),
        findings);
  }
}
