package felloe.drafting;

import felloe.drawing.DimensionStyle;
import felloe.drawing.Picture;
import felloe.geometry.Numbers;
import felloe.plate.Hole;
import felloe.plate.Plate;
import java.util.List;
import java.util.Optional;

/**
 * The dimensioned workshop drawing of a plate: its front as the driver sees it and its edge, at the
 * largest scale of ISO 5455 that has room, with lines after ISO 128, letters after ISO 3098 and
 * dimensions after ISO 129-1. No figure on it meets a line, another figure or the edge of the
 * picture: what finds no such place stands in the tables instead.
 *
 * <p>Drawing and tables together tell the whole plate. The same plate gives the same drawing.
 *
 * @param picture what is drawn, mm on the sheet, at most as large as was asked for; it is to be
 *     shown at this size, else the scale is another
 * @param scale of the views
 * @param projection how the views lie to each other
 * @param holes holes and round windows whose size or place the drawing does not tell, in the
 *     plate's order
 * @param edges outline and windows that the drawing does not tell in full, in the plate's order
 */
public record PlateDrawing(
    Picture picture, Scale scale, Projection projection, List<Hole> holes, List<Edge> edges) {

  /** The smallest sheet, mm: half a sheet of A5. */
  public static final double LEAST = 60;

  public PlateDrawing {
    holes = List.copyOf(holes);
    edges = List.copyOf(edges);
  }

  /**
   * The drawing of a plate.
   *
   * @param width room for it, mm, at least {@link #LEAST}
   * @param height room for it, mm, at least {@link #LEAST}
   * @throws IllegalArgumentException when the room is smaller
   */
  public static PlateDrawing of(Plate plate, double width, double height) {
    if (!(Numbers.finite("width", width) >= LEAST)
        || !(Numbers.finite("height", height) >= LEAST)) {
      throw new IllegalArgumentException("a drawing needs " + Numbers.brief(LEAST, 0) + " mm");
    }
    return drawn(plate, width, height).drawing();
  }

  /** The drawing with what it is made of. */
  static Draughtsman.Result drawn(Plate plate, double width, double height) {
    for (Scale scale : Scale.SERIES) {
      for (boolean tight : new boolean[] {false, true}) {
        for (boolean below : new boolean[] {true, false}) {
          Optional<Draughtsman.Result> best =
              Views.fit(plate, width, height, scale, below, tight)
                  .flatMap(views -> best(views, width, height, scale));
          if (best.isPresent()) {
            return best.get();
          }
        }
      }
    }
    throw new IllegalArgumentException("no scale for so small a room");
  }

  /** The drawing on which most finds its place, larger figures where that is alike. */
  private static Optional<Draughtsman.Result> best(
      Views views, double width, double height, Scale scale) {
    Draughtsman.Result best = null;
    for (double text : new double[] {DimensionStyle.TEXT, DimensionStyle.SMALL}) {
      for (boolean hubFirst : new boolean[] {false, true}) {
        if (best == null || best.failed() > 0) {
          Draughtsman.Result next =
              new Draughtsman(views, width, height, text).draw(scale, hubFirst);
          if (next.whole() && (best == null || next.failed() < best.failed())) {
            best = next;
          }
        }
      }
    }
    return Optional.ofNullable(best);
  }
}
