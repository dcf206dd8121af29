package felloe.kit;

import felloe.cutting.JigsawPlan;
import felloe.geometry.Box;
import felloe.geometry.Point;
import felloe.plate.Note;
import felloe.plate.Place;
import felloe.plate.SourcedFigure;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What is cut in one go: a plate alone, or a sheet. Lengths in mm.
 *
 * @param name of the plate, or {@code sheet}
 * @param title in words
 * @param zero where x, y and z are 0
 * @param files what was written
 * @param steps what is done, in order; none for a jigsaw or without compensation
 * @param total of all steps
 * @param leftOvers what the cutter cannot reach
 * @param wasteHoles holes that a jigsaw needs in the waste
 * @param notes what the maker should know
 * @param proof what the check of the paths measured; none without paths of a machine
 * @param figures what the paths were made with, each with where it comes from
 * @param cautions how not to get hurt
 * @param layout how parts lie on the sheet
 */
public record CutJob(
    String name,
    String title,
    String zero,
    List<Path> files,
    List<Step> steps,
    Optional<Step> total,
    List<Left> leftOvers,
    List<WasteHole> wasteHoles,
    List<Note> notes,
    Optional<Proof> proof,
    List<SourcedFigure> figures,
    List<String> cautions,
    Optional<Layout> layout) {

  /** Copies the lists. */
  public CutJob {
    files = List.copyOf(files);
    steps = List.copyOf(steps);
    leftOvers = List.copyOf(leftOvers);
    wasteHoles = List.copyOf(wasteHoles);
    notes = List.copyOf(notes);
    figures = List.copyOf(figures);
    cautions = List.copyOf(cautions);
  }

  /**
   * Something done with one tool.
   *
   * @param title in words
   * @param tool the tool; empty for a total
   * @param speed spindle speed, 1/min; 0 for a beam
   * @param cut length of cut
   * @param minutes time, an estimate; none where the feed is not known
   */
  public record Step(
      String title, String tool, double speed, double cut, Optional<Double> minutes) {}

  /**
   * Material that a file must take off by hand.
   *
   * @param number by which the picture shows it
   * @param label the edge it is left at
   * @param at a point in it
   * @param reach how far it stands out from the finish line at most
   * @param place where the maker wrote the edge
   */
  public record Left(int number, String label, Point at, double reach, Place place) {}

  /**
   * A hole that a jigsaw needs in the waste.
   *
   * @param label the edge
   * @param why what for
   * @param at its centre
   * @param diameter mm
   */
  public record WasteHole(String label, JigsawPlan.Why why, Point at, double diameter) {}

  /**
   * What the check measured on what is written.
   *
   * @param gouge how far the cutter comes into the plate at most
   * @param remaining how far it stays off the finish line at most, left-overs and tabs apart
   * @param arcs greatest difference of an arc's two radii
   * @param deepest lowest height; 0 for a beam
   * @param decimals places of the coordinates as checked
   */
  public record Proof(double gouge, double remaining, double arcs, double deepest, int decimals) {}

  /**
   * How parts lie on a sheet, from its lower left corner.
   *
   * @param width of the sheet
   * @param height of the sheet
   * @param parts each with its place
   * @param keepOut where clamps sit
   * @param used height of the strip that the parts take
   * @param yield share of that strip that becomes parts
   * @param boxesUsed the same height if each part took its bounding box; none when they have no
   *     room on the sheet
   * @param boxesYield the yield of that
   */
  public record Layout(
      double width,
      double height,
      List<Lying> parts,
      List<Box> keepOut,
      double used,
      double yield,
      Optional<Double> boxesUsed,
      Optional<Double> boxesYield) {
    /** Copies the lists. */
    public Layout {
      parts = List.copyOf(parts);
      keepOut = List.copyOf(keepOut);
    }
  }

  /**
   * A part on the sheet.
   *
   * @param name its name
   * @param at where its own origin lies
   * @param turn degrees counter-clockwise
   */
  public record Lying(String name, Point at, double turn) {}

  CutJob with(List<Path> written) {
    return new CutJob(
        name,
        title,
        zero,
        written,
        steps,
        total,
        leftOvers,
        wasteHoles,
        notes,
        proof,
        figures,
        cautions,
        layout);
  }
}
