package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** The bar beside a map: its bands one on the other, with their limits as figures. */
final class MapLegend {

  private static final double WIDE = 9;
  private static final double LEAST_HIGH = 5.5;
  private static final double MOST_HIGH = 11;

  private final LoadView.Map map;
  private final RoundLimits limits;
  private final double unit;
  private final boolean falling;
  private final int bands;
  private final double left;
  private final double bottom;
  private final double high;

  /**
   * @param plate what the bar stands beside
   * @param unit of lettering, mm
   */
  MapLegend(LoadView.Map map, RoundLimits limits, Box plate, double unit) {
    this.map = map;
    this.limits = limits;
    this.unit = unit;
    // Dark is much, whichever way the plate is moved.
    this.falling = -map.field().least() > 1.05 * map.field().most();
    this.bands = limits.limits().size() + 1;
    this.left = plate.maxX() + 22 * unit;
    this.high = Math.max(LEAST_HIGH * unit, Math.min(MOST_HIGH * unit, plate.height() / bands));
    this.bottom = plate.centre().y() - high * bands / 2;
  }

  /** Tone of a band, from 0 at the bottom. */
  double tone(int band) {
    double tone = bands == 1 ? 0 : (double) band / (bands - 1);
    return falling ? 1 - tone : tone;
  }

  /** The room that it takes. */
  Box box() {
    List<String> texts = new ArrayList<>();
    limits.limits().forEach(limit -> texts.add(limits.text(limit)));
    texts.add(end(map.field().least()));
    texts.add(end(map.field().most()));
    double right = text() + TextWidth.widest(texts, LoadMap.SMALL * unit);
    double name = left + TextWidth.of(map.unit(), LoadMap.TEXT * unit);
    return new Box(
        left,
        bottom - LoadMap.SMALL * unit,
        Math.max(right, name) + unit,
        bottom + bands * high + (4 + LoadMap.TEXT) * unit);
  }

  private double text() {
    return left + (WIDE + 2) * unit;
  }

  /** What is drawn. */
  List<Mark> marks() {
    List<Mark> marks = new ArrayList<>();
    for (int i = 0; i < bands; i++) {
      double low = bottom + i * high;
      Box box = new Box(left, low, left + WIDE * unit, low + high);
      marks.add(Mark.Tone.of(List.of(Contour.rectangle(box)), tone(i)));
      marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.THIN));
      if (i > 0) {
        marks.add(figure(limits.text(limits.limits().get(i - 1)), low));
      }
    }
    double top = bottom + bands * high;
    marks.add(
        Mark.Label.of(
            map.unit(), new Point(left, top + 3 * unit), LoadMap.TEXT * unit, Anchor.START));
    marks.add(figure(end(map.field().most()), top));
    marks.add(figure(end(map.field().least()), bottom));
    return marks;
  }

  private Mark figure(String words, double y) {
    double height = LoadMap.SMALL * unit;
    return Mark.Label.of(words, new Point(text(), y - height / 2), height, Anchor.START);
  }

  /** An end of the range, with a place more than the limits have. */
  private String end(double value) {
    int decimals = limits.limits().isEmpty() ? 3 : Math.min(9, limits.decimals() + 1);
    return Numbers.brief(value, decimals).replace('-', '\u2212');
  }
}
