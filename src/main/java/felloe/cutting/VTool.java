package felloe.cutting;

import felloe.geometry.Numbers;
import felloe.plate.EdgeFinish;
import felloe.plate.Engraving;
import felloe.plate.Face;
import felloe.plate.Plate;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A V tool: a cone with a small flat at its tip, for lines in the upper face and for its edges.
 *
 * @param angle included angle, radians
 * @param tip width of the flat, mm
 * @param aside how far the flat stays off an edge, so that the flank cuts and not the tip, mm
 * @param width what it must cut at its widest, mm
 * @param speed spindle speed, 1/min
 * @param feed along a line, mm/min
 * @param stepDown depth of a pass, mm
 * @param basis where speed, feed and pass come from
 */
public record VTool(
    double angle,
    double tip,
    double aside,
    double width,
    double speed,
    double feed,
    double stepDown,
    String basis) {

  /** A chamfer of 45 degrees wants this tool, within a little, degrees. */
  private static final double SQUARE = 90;

  private static final double ABOUT = 0.5;

  /** A cut narrower than this is fed as if it had this width, mm. */
  private static final double NARROWEST = 0.5;

  /**
   * The tool with figures to start from, one for all plates.
   *
   * @param degrees included angle
   * @param tip width of the flat, mm
   * @param highest the spindle's highest speed, 1/min
   */
  static VTool of(double degrees, double tip, List<Plate> plates, FeedTable feeds, double highest) {
    VTool bare = new VTool(Math.toRadians(degrees), tip, feeds.vTool().aside(), 0, 0, 0, 0, "");
    double width = plates.stream().mapToDouble(bare::widest).max().orElse(0);
    StartingFeed start =
        feeds.routing(
            plates.get(0).stock().material(),
            Math.max(width, NARROWEST),
            1,
            highest,
            OptionalDouble.empty());
    return new VTool(
        bare.angle,
        tip,
        bare.aside,
        width,
        start.speed(),
        start.feed(),
        start.stepDown(),
        start.basis());
  }

  private double widest(Plate plate) {
    double lines =
        plate.engravings(Face.FRONT).stream().mapToDouble(Engraving::depth).max().orElse(0);
    double size = edge(plate.making().edges());
    double edges = size > 0 ? width(depth(size)) : 0;
    return Math.max(lines > 0 ? width(lines) : 0, edges);
  }

  private double slope() {
    return Math.tan(angle / 2);
  }

  /** The width that it cuts in the face when its tip is so deep, mm. */
  double width(double depth) {
    return tip + 2 * depth * slope();
  }

  /**
   * What it takes off the edges of a plate, mm: nothing where nothing is wished, or where a chamfer
   * of 45 degrees is and the tool has another angle.
   */
  double edge(EdgeFinish edges) {
    boolean square = Math.abs(Math.toDegrees(angle) - SQUARE) <= ABOUT;
    return square || edges.chamfer() == 0 ? edges.edgeBreak() + edges.chamfer() : 0;
  }

  /** How far off an edge its middle goes, mm. */
  double offset() {
    return tip / 2 + aside;
  }

  /** How far it reaches over an edge, so that neither face nor wall loses more than a size, mm. */
  double reach(double size) {
    return size * Math.min(1, slope());
  }

  /** How deep its tip goes to take a size off an edge, mm. */
  double depth(double size) {
    return (aside + reach(size)) / slope();
  }

  /** The tool itself. */
  CutterTool tool() {
    String name = Numbers.brief(Math.toDegrees(angle), 2) + " deg V tool";
    return new CutterTool(name, CutterTool.Kind.V_TOOL, Math.max(width, NARROWEST), 1, angle, tip);
  }
}
