package felloe.drawing;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Line;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The plot of thicknesses: the deflection and the margin of each, one above the other, with what is
 * wanted as a dashed line and the mass below. Full points do all that is wanted, open ones do not;
 * a square is the plate's own.
 */
public final class ThicknessPlot {

  private static final double WIDE = 150;
  private static final double HIGH = 58;
  private static final double GAP = 12;
  private static final double TEXT = 2.5;
  private static final double POINT = 1.3;
  private static final int TICKS = 7;

  /** Deflections stand on a scale of equal ratios, which has no 0, mm. */
  private static final double SMALLEST = 0.001;

  /** A margin beyond this is enough whatever it is; it would flatten the rest. */
  private static final double ENOUGH = 9;

  private final ThicknessView view;
  private final List<Mark> marks = new ArrayList<>();
  private final double least;
  private final double most;

  private ThicknessPlot(ThicknessView view) {
    this.view = view;
    double from = view.trials().stream().mapToDouble(t -> t.thickness()).min().orElse(0);
    double to = view.trials().stream().mapToDouble(t -> t.thickness()).max().orElse(1);
    double edge = Math.max(0.06 * (to - from), 0.02 * to);
    this.least = from - edge;
    this.most = to + edge;
  }

  /** Draws it, in millimetres of paper. */
  public static Picture of(ThicknessView view) {
    return new ThicknessPlot(view).draw();
  }

  private Picture draw() {
    Box upper = new Box(0, HIGH + GAP, WIDE, 2 * HIGH + GAP);
    Box lower = new Box(0, 0, WIDE, HIGH);
    double head = 1.3 * TEXT;
    List<String> heading = Paragraph.wrap(view.title(), head, WIDE + 18);
    double top = upper.maxY() + 11 + (heading.size() - 1) * 1.6 * head + head;
    marks.addAll(Paragraph.labels(heading, -14, top, head, 1.6 * head));
    panel(
        upper,
        "greatest deflection at the hands, mm (equal steps are equal ratios)",
        t -> Math.max(SMALLEST, t.deflection()),
        view.deflection(),
        "wanted: at most ",
        true);
    panel(
        lower,
        "least margin (0: fails at the load times its factor)",
        t -> Math.min(ENOUGH, t.margin()),
        OptionalDouble.of(view.margin()),
        "wanted: at least ",
        false);
    double bottom = thicknesses();
    double y = bottom - 5;
    for (String line :
        List.of(
            "Full: does all that is wanted. Open: does not. Square: the plate as the shape file has"
                + " it.",
            "Below each thickness its mass. An estimate: see the cautions.")) {
      label(line, -14, y, TEXT, Anchor.START);
      y -= 1.6 * TEXT;
    }
    Box page = new Box(-16, y, WIDE + 6, top + 5 - head);
    return new Picture(Drawing.of("plot", marks), page, 1);
  }

  private double x(double thickness) {
    return WIDE * (thickness - least) / (most - least);
  }

  private void panel(
      Box box,
      String title,
      ToDoubleFunction<ThicknessView.Trial> figure,
      OptionalDouble wanted,
      String words,
      boolean ratios) {
    double low = wanted.orElse(ratios ? Double.POSITIVE_INFINITY : 0);
    double high = wanted.orElse(ratios ? SMALLEST : 0);
    for (ThicknessView.Trial trial : view.trials()) {
      low = Math.min(low, figure.applyAsDouble(trial));
      high = Math.max(high, figure.applyAsDouble(trial));
    }
    Scale scale = Scale.round(box, low, high, ratios);
    for (double tick : scale.ticks()) {
      double y = scale.y(tick);
      Box hair = new Box(0, y - 0.05, WIDE, y + 0.05);
      marks.add(new Mark.Fill(List.of(Contour.rectangle(hair)), 0.4));
      label(Numbers.brief(tick, 3).replace('-', '\u2212'), -2, y - TEXT / 2, TEXT, Anchor.END);
    }
    marks.add(Mark.Stroke.of(Contour.rectangle(box), LineType.EDGE));
    label(title, 0, box.maxY() + 2, TEXT, Anchor.START);
    if (wanted.isPresent()) {
      double y = scale.y(wanted.getAsDouble());
      line(0, y, WIDE, y, LineType.DASHED);
      line(0, y + 0.25, WIDE, y + 0.25, LineType.DASHED);
      String text = words + Numbers.brief(wanted.getAsDouble(), 2);
      // At the end where the curve is farther from the line, so that the words cover no point.
      double first = scale.y(figure.applyAsDouble(view.trials().get(0)));
      double last = scale.y(figure.applyAsDouble(view.trials().get(view.trials().size() - 1)));
      boolean left = Math.abs(first - y) > Math.abs(last - y);
      boxed(text, left ? TextWidth.of(text, TEXT) + 1 : WIDE - 1, y + 1);
    }
    curve(scale, figure);
  }

  /** An upright scale; of ratios its low end is above 0. */
  private record Scale(Box box, double low, double high, boolean ratios, List<Double> ticks) {

    static Scale round(Box box, double least, double most, boolean ratios) {
      if (ratios) {
        double low = Math.min(least, most) / 1.3;
        double high = most * 1.3;
        return new Scale(box, low, high, true, ofRatios(low, high));
      }
      double room = most > least ? 0.08 * (most - least) : 1;
      double low = least - room;
      double high = most + room;
      return new Scale(box, low, high, false, RoundLimits.of(low, high, TICKS).limits());
    }

    private static List<Double> ofRatios(double low, double high) {
      List<Double> ticks = new ArrayList<>();
      for (int power = -4; power < 9; power++) {
        for (int digit : new int[] {1, 2, 5}) {
          double tick = digit * Math.pow(10, power);
          if (tick > low && tick < high) {
            ticks.add(tick);
          }
        }
      }
      return ticks;
    }

    double y(double value) {
      double share =
          ratios ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
      return box.minY() + box.height() * share;
    }
  }

  private void curve(Scale scale, ToDoubleFunction<ThicknessView.Trial> figure) {
    List<Point> points =
        view.trials().stream()
            .map(t -> new Point(x(t.thickness()), scale.y(figure.applyAsDouble(t))))
            .toList();
    for (int i = 1; i < points.size(); i++) {
      Point from = points.get(i - 1);
      if (!from.near(points.get(i), Tolerances.SAME_POINT)) {
        marks.add(Mark.Stroke.of(new Line(from, points.get(i)), LineType.EDGE));
      }
    }
    for (int i = 0; i < points.size(); i++) {
      ThicknessView.Trial trial = view.trials().get(i);
      Contour sign =
          trial.own()
              ? Contour.rectangle(Box.of(points.get(i), points.get(i)).grown(1.3 * POINT))
              : Contour.circle(points.get(i), POINT);
      marks.add(new Mark.Fill(List.of(sign), trial.met() ? 1 : 0));
      marks.add(Mark.Stroke.of(sign, LineType.EDGE));
    }
  }

  /** Thickness and mass below the axis where there is room; returns the lower end. */
  private double thicknesses() {
    double lowest = -4;
    double free = Double.NEGATIVE_INFINITY;
    // The plate's own stands before those that happen to be beside it.
    double own =
        view.trials().stream()
            .filter(t -> t.own())
            .mapToDouble(t -> x(t.thickness()))
            .findFirst()
            .orElse(Double.NaN);
    double ownWide =
        view.trials().stream()
            .filter(t -> t.own())
            .mapToDouble(ThicknessPlot::wide)
            .findFirst()
            .orElse(0);
    for (ThicknessView.Trial trial : view.trials()) {
      double x = x(trial.thickness());
      line(x, 0, x, -1.5, LineType.THIN);
      double half = wide(trial) / 2;
      boolean crowded = !trial.own() && Math.abs(x - own) < half + ownWide / 2 + 1;
      if (x - half < free || crowded) {
        continue;
      }
      for (int i = 0; i < trial.words().size(); i++) {
        double y = -2.5 - TEXT - i * 1.6 * TEXT;
        label(trial.words().get(i), x, y, TEXT, Anchor.MIDDLE);
        lowest = Math.min(lowest, y);
      }
      free = x + half + 1;
    }
    return lowest;
  }

  private static double wide(ThicknessView.Trial trial) {
    return TextWidth.widest(trial.words(), TEXT);
  }

  private void line(double x1, double y1, double x2, double y2, LineType type) {
    marks.add(Mark.Stroke.of(new Line(new Point(x1, y1), new Point(x2, y2)), type));
  }

  private void label(String text, double x, double y, double height, Anchor anchor) {
    marks.add(Mark.Label.of(text, new Point(x, y), height, anchor));
  }

  private void boxed(String text, double right, double base) {
    double wide = TextWidth.of(text, TEXT);
    Box box = new Box(right - wide - 0.6, base - 0.4, right + 0.6, base + TEXT + 0.6);
    marks.add(new Mark.Fill(List.of(Contour.rectangle(box)), 0));
    label(text, right, base, TEXT, Anchor.END);
  }
}
