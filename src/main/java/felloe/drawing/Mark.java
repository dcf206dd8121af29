package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Segment;
import felloe.plate.FeatureTag;
import felloe.solid.Shaded;
import java.util.List;
import java.util.Optional;

/** One thing drawn. Coordinates are millimetres, x to the right, y up. */
public sealed interface Mark permits Mark.Stroke, Mark.Fill, Mark.Tone, Mark.Shade, Mark.Label {

  /** An upright box that holds all of its ink. */
  Box box();

  /**
   * A line along a chain of segments, each starting where the one before ends.
   *
   * @param segments at least one
   * @param closed whether the last ends where the first starts
   * @param type how it is drawn
   * @param tag the feature of the plate that it is the edge of, if it is one
   */
  record Stroke(List<Segment> segments, boolean closed, LineType type, Optional<FeatureTag> tag)
      implements Mark {
    public Stroke {
      segments = List.copyOf(segments);
    }

    /** A line that is the edge of no feature. */
    public Stroke(List<Segment> segments, boolean closed, LineType type) {
      this(segments, closed, type, Optional.empty());
    }

    /** The edge of a feature. */
    public static Stroke of(Contour contour, LineType type, FeatureTag tag) {
      return new Stroke(contour.segments(), true, type, Optional.of(tag));
    }

    /** A contour's line. */
    public static Stroke of(Contour contour, LineType type) {
      return new Stroke(contour.segments(), true, type);
    }

    public static Stroke of(Segment segment, LineType type) {
      return new Stroke(List.of(segment), false, type);
    }

    @Override
    public Box box() {
      return segments.stream()
          .map(Segment::box)
          .reduce(Box::union)
          .orElseThrow()
          .grown(type.width());
    }
  }

  /**
   * An area filled with ink; contours inside others are left open (even-odd).
   *
   * @param contours its edges
   * @param ink share of black, 0 for white to 1 for black
   */
  record Fill(List<Contour> contours, double ink) implements Mark {
    public Fill {
      contours = List.copyOf(contours);
      Numbers.finite("ink", ink);
    }

    @Override
    public Box box() {
      return contours.stream().map(Contour::box).reduce(Box::union).orElseThrow();
    }
  }

  /**
   * An area in a tone of a scale, such as a band of a map; rings inside others are left open
   * (even-odd). Which colour a tone has is for the writer to say; a higher one is darker.
   *
   * @param rings its edges, each a closed chain, which may touch itself and others
   * @param tone 0 for the lightest to 1 for the darkest
   */
  record Tone(List<List<Segment>> rings, double tone) implements Mark {
    /** Refuses none, and a tone beyond 0 to 1. */
    public Tone {
      rings = rings.stream().map(List::copyOf).toList();
      if (rings.isEmpty() || rings.stream().anyMatch(List::isEmpty)) {
        throw new IllegalArgumentException("rings must not be empty");
      }
      if (!(tone >= 0 && tone <= 1)) {
        throw new IllegalArgumentException("tone must be from 0 to 1");
      }
    }

    /** Contours as an area in a tone. */
    public static Tone of(List<Contour> contours, double tone) {
      return new Tone(contours.stream().map(Contour::segments).toList(), tone);
    }

    @Override
    public Box box() {
      return rings.stream()
          .flatMap(List::stream)
          .map(Segment::box)
          .reduce(Box::union)
          .orElseThrow();
    }
  }

  /**
   * Bodies as they look, in dots.
   *
   * @param shaded the dots
   * @param box where they lie in the drawing
   */
  record Shade(Shaded shaded, Box box) implements Mark {}

  /**
   * A line of text.
   *
   * @param text what it says
   * @param at where its anchor stands, on the base line
   * @param height height of the capital letters, mm
   * @param turn angle of the base line, radians counter-clockwise
   * @param anchor which end stands at the point
   * @param hollow whether only the edges of the letters are drawn, so that lines below stay seen
   */
  record Label(String text, Point at, double height, double turn, Anchor anchor, boolean hollow)
      implements Mark {
    /** Width of the line round hollow letters, mm: the narrow line of {@link LineType}. */
    public static final double HOLLOW_LINE = 0.18;

    /** Refuses figures that are not finite. */
    public Label {
      Numbers.finite("height", height);
      Numbers.finite("turn", turn);
    }

    /** Full letters. */
    public Label(String text, Point at, double height, double turn, Anchor anchor) {
      this(text, at, height, turn, anchor, false);
    }

    /** Upright text. */
    public static Label of(String text, Point at, double height, Anchor anchor) {
      return new Label(text, at, height, 0, anchor);
    }

    /** Where its base line starts. */
    public Point start() {
      double width = TextWidth.of(text, height);
      double back =
          switch (anchor) {
            case START -> 0;
            case MIDDLE -> width / 2;
            case END -> width;
          };
      return at.plus(Point.polar(1, turn), -back);
    }

    @Override
    public Box box() {
      Point along = Point.polar(1, turn);
      Point up = along.left();
      Point start = start();
      Point end = start.plus(along, TextWidth.of(text, height));
      double tails = TextWidth.TAILS * TextWidth.fontSize(height);
      return Box.of(start.plus(up, -tails), end.plus(up, 1.1 * height))
          .union(Box.of(end.plus(up, -tails), start.plus(up, 1.1 * height)));
    }
  }
}
