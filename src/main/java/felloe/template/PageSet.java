package felloe.template;

import felloe.drawing.Drawing;
import felloe.drawing.Page;
import felloe.geometry.RigidTransform;
import java.util.List;

/**
 * The pages of a template, in printing order: the tiles row by row, then pages of notes.
 *
 * @param title what the set is called, for the file's own title
 * @param paper the paper's name, or {@link #FULL_SIZE}
 * @param pages all pages
 * @param grid the tiles; one for a single page
 * @param motion how plate coordinates became the drawing's: mirrored and turned
 * @param drawing the whole template at full size
 * @param marks the registration marks
 * @param bar true length of both check bars, mm
 * @param cutHoles number of holes that a seam runs through, or whose edge it grazes
 * @param seamDistance least distance of a seam from a hole's centre, mm; infinite without seams
 */
public record PageSet(
    String title,
    String paper,
    List<Page> pages,
    Grid grid,
    RigidTransform motion,
    Drawing drawing,
    List<Registration> marks,
    double bar,
    int cutHoles,
    double seamDistance) {

  /** Stands for the paper's name on the page that is as large as the part. */
  public static final String FULL_SIZE = "full size";

  public PageSet {
    pages = List.copyOf(pages);
    marks = List.copyOf(marks);
  }

  /** The pages that carry a part of the drawing, without pages of notes. */
  public List<Page> tiles() {
    return pages.subList(0, grid.count());
  }
}
