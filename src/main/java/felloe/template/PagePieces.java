package felloe.template;

import felloe.geometry.Box;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the check bars, the title block and the running text stand on a page on which the drawing
 * may lie anywhere.
 *
 * @param across room of the horizontal check bar
 * @param up room of the vertical check bar
 * @param title room of the page's name and the title block
 * @param map room of the map
 * @param notes room of the running text
 * @param brief whether title block and running text say the least only
 */
record PagePieces(Box across, Box up, Box title, Box map, Box notes, boolean brief) {

  /** Width of the title block without the map, mm. */
  static final double TITLE = 82;

  /** Width of the cell with the page's name, mm. */
  static final double NAME = StripText.nameCell(0) + 1;

  private static final double MAP_WIDTH = 27;
  private static final double MAP_HEIGHT = 20;

  private static final double STEP = 1;
  private static final double CLEAR = 1.2;
  private static final double[] NOTES = {165, 120, 90, 70, 55, 42};

  private static final double BESIDE = PageFrame.COLUMN;

  /**
   * In which orders places are looked for, what is found first taking room from what follows: bar
   * up the page, bar across, title block, map, running text; then the bulky ones first.
   */
  private static final int[][] ORDERS = {{0, 1, 2, 3, 4}, {2, 0, 1, 3, 4}, {4, 2, 0, 1, 3}};

  List<Box> boxes() {
    return List.of(across, up, title, map, notes);
  }

  PagePieces moved(Point by) {
    return new PagePieces(
        moved(across, by),
        moved(up, by),
        moved(title, by),
        moved(map, by),
        moved(notes, by),
        brief);
  }

  private static Box moved(Box box, Point by) {
    return new Box(
        box.minX() + by.x(), box.minY() + by.y(), box.maxX() + by.x(), box.maxY() + by.y());
  }

  /**
   * Sizes of what holds words, the same on each page; of the running text those to choose from.
   *
   * @param title width and height of the title block, mm
   * @param notes widths and heights of the running text, mm
   * @param brief whether these are of the least that a page says
   */
  record Sizes(double[][] title, double[][] notes, boolean brief) {
    static Sizes of(StripText text, boolean brief) {
      double[][] notes = new double[NOTES.length][];
      for (int i = 0; i < NOTES.length; i++) {
        notes[i] = new double[] {NOTES[i], text.lines(NOTES[i]).size() * StripText.PITCH + 2};
      }
      double width = brief ? Math.min(TITLE, text.titleWidth()) : TITLE;
      double[][] title = {{width, text.factsHeight(width - NAME) + 1}};
      return new Sizes(title, notes, brief);
    }
  }

  /**
   * Places for all of them on a tile, if it has them.
   *
   * @param seen the part of the tile that no neighbour covers
   * @param grounds what is taken, the one to be kept to first
   */
  static Optional<PagePieces> on(Box seen, List<FreeSpace.Free> grounds, double bar, Sizes sizes) {
    double[][][] all = {
      {{BESIDE, bar + 2}},
      {{bar + 2, BESIDE - 1}},
      sizes.title(),
      {{MAP_WIDTH, MAP_HEIGHT}},
      sizes.notes()
    };
    for (int[] order : ORDERS) {
      Optional<Box[]> boxes = placed(seen.grown(-0.5), grounds, all, order);
      if (boxes.isPresent()) {
        Box[] at = boxes.get();
        return Optional.of(new PagePieces(at[1], at[0], at[2], at[3], at[4], sizes.brief()));
      }
    }
    return Optional.empty();
  }

  private static Optional<Box[]> placed(
      Box room, List<FreeSpace.Free> grounds, double[][][] sizes, int[] order) {
    Box[] boxes = new Box[sizes.length];
    List<Box> taken = new ArrayList<>();
    for (int piece : order) {
      Optional<Box> box = place(room, grounds, taken, sizes[piece]);
      if (box.isEmpty()) {
        return Optional.empty();
      }
      boxes[piece] = box.get();
    }
    return Optional.of(boxes);
  }

  private static Optional<Box> place(
      Box room, List<FreeSpace.Free> grounds, List<Box> taken, double[][] sizes) {
    for (FreeSpace.Free ground : grounds) {
      for (double[] size : sizes) {
        Optional<Box> box = place(room, ground, taken, size[0], size[1]);
        if (box.isPresent()) {
          taken.add(box.get());
          return box;
        }
      }
    }
    return Optional.empty();
  }

  /** The lowest place, and of those the one farthest left. */
  private static Optional<Box> place(
      Box room, FreeSpace.Free ground, List<Box> taken, double width, double height) {
    for (double y = room.minY(); y + height <= room.maxY(); y += STEP) {
      FreeSpace.Free.Strip strip = ground.strip(y - CLEAR, y + height + CLEAR);
      double low = y - 1;
      double high = y + height + 1;
      List<Box> beside = taken.stream().filter(t -> t.minY() <= high && low <= t.maxY()).toList();
      double x = room.minX();
      while (x + width <= room.maxX()) {
        double beyond = beyond(x - 1, x + width + 1, beside);
        if (Double.isNaN(beyond)) {
          if (strip.is(x - CLEAR, x + width + CLEAR)) {
            return Optional.of(new Box(x, y, x + width, y + height));
          }
          beyond = strip.end(x - CLEAR, x + width + CLEAR) + CLEAR;
        }
        // On in whole steps, over all places where the same is still in the way.
        x += STEP * Math.max(1, Math.floor((beyond - x) / STEP));
      }
    }
    return Optional.empty();
  }

  /** Where the one that a box comes too near to ends; not a number when it is clear of all. */
  private static double beyond(double minX, double maxX, List<Box> beside) {
    for (Box other : beside) {
      if (minX <= other.maxX() && other.minX() <= maxX) {
        return other.maxX() + 1;
      }
    }
    return Double.NaN;
  }
}
