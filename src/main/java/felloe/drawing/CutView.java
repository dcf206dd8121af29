package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Segment;
import java.util.List;
import java.util.Optional;

/**
 * What the picture of a cut shows. Lengths in mm, in the frame of the machine.
 *
 * @param title its heading
 * @param zero what stands at the origin, in words
 * @param sheet the sheet, when parts lie on one
 * @param keepOut where clamps sit
 * @param grain whether the grain or the 0 degree fibres must run along x
 * @param parts what is cut out
 * @param engravings lines cut shallow into the face that is up, each a chain
 * @param paths where the middle of the cutter, beam or blade goes
 * @param leads ways onto the paths and off them; each begins or ends in the waste
 * @param pathWords what the paths are, in words
 * @param wasteHoles holes to drill in the waste
 * @param tabs where bridges are left
 * @param leftOvers what a file must take off by hand
 */
public record CutView(
    String title,
    String zero,
    Optional<Box> sheet,
    List<Box> keepOut,
    boolean grain,
    List<Part> parts,
    List<List<Segment>> engravings,
    List<Contour> paths,
    List<Segment> leads,
    String pathWords,
    List<Contour> wasteHoles,
    List<Point> tabs,
    List<LeftOver> leftOvers) {

  public CutView {
    keepOut = List.copyOf(keepOut);
    parts = List.copyOf(parts);
    engravings = engravings.stream().map(List::copyOf).toList();
    paths = List.copyOf(paths);
    leads = List.copyOf(leads);
    wasteHoles = List.copyOf(wasteHoles);
    tabs = List.copyOf(tabs);
    leftOvers = List.copyOf(leftOvers);
  }

  /**
   * Something that is cut out.
   *
   * @param name as printed on it
   * @param region its finish lines
   */
  public record Part(String name, Region region) {}

  /**
   * Material that stays.
   *
   * @param number by which lists name it
   * @param label the edge it is left at
   * @param region what stays
   * @param at a point in it
   * @param reach how far it stands out at most, mm
   */
  public record LeftOver(int number, String label, Region region, Point at, double reach) {}
}
