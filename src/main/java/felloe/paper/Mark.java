package felloe.paper;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import java.util.List;

/** One thing drawn. Coordinates are millimetres, x to the right, y up. */
public sealed interface Mark permits Mark.Stroke, Mark.Fill, Mark.Label {

  /**
   * A line along a chain of segments, each starting where the one before ends.
   *
   * @param segments at least one
   * @param closed whether the last ends where the first starts
   * @param type how it is drawn
   */
  record Stroke(List<Segment> segments, boolean closed, LineType type) implements Mark {
    /** Copies the chain. */
    public Stroke {
      segments = List.copyOf(segments);
    }

    /** A contour's line. */
    public static Stroke of(Contour contour, LineType type) {
      return new Stroke(contour.segments(), true, type);
    }

    /** One segment. */
    public static Stroke of(Segment segment, LineType type) {
      return new Stroke(List.of(segment), false, type);
    }
  }

  /**
   * An area filled with ink; contours inside others are left open (even-odd).
   *
   * @param contours its edges
   * @param ink share of black, 0 for white to 1 for black
   */
  record Fill(List<Contour> contours, double ink) implements Mark {
    /** Copies the contours. */
    public Fill {
      contours = List.copyOf(contours);
      Numbers.finite("ink", ink);
    }
  }

  /**
   * A line of text.
   *
   * @param text what it says
   * @param at where its anchor stands, on the base line
   * @param height height of the capital letters, mm
   * @param turn angle of the base line, radians counter-clockwise
   * @param anchor which end stands at the point
   */
  record Label(String text, Point at, double height, double turn, Anchor anchor) implements Mark {
    /** Refuses figures that are not finite. */
    public Label {
      Numbers.finite("height", height);
      Numbers.finite("turn", turn);
    }
  }
}
