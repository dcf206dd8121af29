package felloe.jig;

import felloe.plate.Hole;
import felloe.plate.Printer;
import felloe.plate.SourcedFigure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is printed to make a plate by.
 *
 * @param printer that it is printed on
 * @param template pieces of the flat template
 * @param drill pieces of the drill jig
 * @param gauge the piece that the printer's scale is measured on, never corrected
 * @param locator what locates the drill jig on the plate
 * @param guides its guided holes
 * @param unguided holes that it does not guide: slotted, too large for a drill, or taken by a pin
 * @param across factor that everything but the gauge is printed larger by, in x
 * @param along the same in y
 * @param measured whether these were measured on the gauge
 * @param allowed how far the hub's screws let a hole lie off its place, mm; empty where no hub is
 *     known, or not all screws enter as drawn
 * @param figures what it rests on
 */
public record JigPlan(
    Printer printer,
    List<JigPiece> template,
    List<JigPiece> drill,
    JigPiece gauge,
    Locator locator,
    List<Guide> guides,
    List<Hole> unguided,
    double across,
    double along,
    boolean measured,
    Optional<Double> allowed,
    List<SourcedFigure> figures) {

  public JigPlan {
    template = List.copyOf(template);
    drill = List.copyOf(drill);
    guides = List.copyOf(guides);
    unguided = List.copyOf(unguided);
    figures = List.copyOf(figures);
  }

  /** The guide that may be off the most. */
  public Guide worst() {
    return guides.stream().reduce((a, b) -> b.worst() > a.worst() ? b : a).orElseThrow();
  }

  /** What no jig betters, printed by the same printer: how true its places are, mm. */
  public double truest() {
    return worst().of(Guide.Cause.PLACE);
  }

  /** All pieces, the gauge first: it is printed first. */
  public List<JigPiece> pieces() {
    List<JigPiece> all = new ArrayList<>(List.of(gauge));
    all.addAll(template);
    all.addAll(drill);
    return List.copyOf(all);
  }
}
