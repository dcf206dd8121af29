package felloe.cockpit;

import felloe.geometry.ArcLengthIndex;
import felloe.geometry.Contour;
import felloe.geometry.Point;
import felloe.plate.Body;
import felloe.plate.BodyMeasure;
import felloe.plate.Driver.People;
import felloe.plate.Face;
import felloe.plate.Plate;
import felloe.plate.SourcedFigure;
import felloe.plate.Window;
import felloe.plate.WindowUse;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Whether what is switched on the wheel is reached by the thumb in front, or by the index finger
 * from behind, of the nearer hand, which goes on holding. What sits in an opening is reached on the
 * face that it lies on; of a bare opening for a switch both are told.
 *
 * <p>A plain model: the thumb starts in the middle of what the hand closes about, on the front of
 * the thickest grip; the finger at the outer edge, on the back of the thickest grip; both from a
 * quarter to half of the hand's breadth up along the rim, whichever is the farther. From there to
 * the switch's middle on the face goes a straight line. A glove takes its share off thumb and
 * finger.
 *
 * @param thing label of the opening
 * @param with what it is reached with
 * @param left whether by the left hand
 * @param away how far that is, for the hand of the middle percentile, mm
 * @param told who reaches it
 */
public record Reach(String thing, With with, boolean left, double away, List<Told> told) {

  /** So far within its edge a paddle is pulled, mm: half a finger, common practice. */
  private static final double INSIDE = 12;

  public Reach {
    told = List.copyOf(told);
  }

  /** What it is reached with. */
  public enum With {
    /** In front. */
    THUMB,
    /** From behind. */
    FINGER
  }

  /** How it is reached. */
  public enum Grade {
    /** With a bent joint. */
    REACHED,
    /** With a straight one. */
    STRETCH,
    /** Not without letting go. */
    NO
  }

  /**
   * Who reaches it.
   *
   * @param percentile of whom; empty for the driver with measures of his own
   * @param gloved whether in gloves
   * @param grade how it is reached
   */
  public record Told(Optional<Integer> percentile, boolean gloved, Grade grade) {}

  /**
   * All switches, with thumb and finger.
   *
   * @param seated the driver; where nobody sits there women are told of, whose hands are smaller
   * @param behind how far the thickest grip stands out behind the back face, mm
   * @param before how far before the front face, mm
   */
  public static List<Reach> of(
      Plate plate, Optional<Seated> seated, Hands hands, double behind, double before) {
    List<Target> targets = targets(plate);
    if (targets.isEmpty()) {
      return List.of();
    }
    DriverTable table = seated.map(Seated::table).orElseGet(DriverTable::standard);
    Rooted rooted = new Rooted(plate, hands, behind, before);
    return targets.stream().map(target -> of(target, rooted, table, seated)).toList();
  }

  /**
   * What is to be reached.
   *
   * @param at its middle
   * @param edge of a paddle
   * @param high how far it stands off its face, mm
   */
  private record Target(String label, With with, Point at, Optional<Contour> edge, double high) {}

  private static List<Target> targets(Plate plate) {
    List<Target> targets = new ArrayList<>();
    List<String> taken = new ArrayList<>();
    List<String> displays = new ArrayList<>();
    for (Window window : plate.windows()) {
      if (window.use() == WindowUse.DISPLAY) {
        displays.add(window.label());
      }
    }
    for (Body body : plate.bodies()) {
      taken.add(body.opening());
      if (!displays.contains(body.opening())) {
        With with = body.face() == Face.FRONT ? With.THUMB : With.FINGER;
        Optional<Contour> paddle = body.arm().map(Body.Arm::edge);
        double high = body.arm().map(Body.Arm::off).orElse(body.height());
        targets.add(new Target(body.opening(), with, body.centre(), paddle, high));
      }
    }
    for (Window window : plate.windows()) {
      if (window.use() == WindowUse.SWITCH && !taken.contains(window.label())) {
        Point at = window.contour().properties().centroid();
        for (With with : With.values()) {
          targets.add(new Target(window.label(), with, at, Optional.empty(), 0));
        }
      }
    }
    return targets;
  }

  private static Reach of(
      Target target, Rooted rooted, DriverTable table, Optional<Seated> seated) {
    People people = seated.map(driver -> driver.driver().people()).orElse(People.WOMEN);
    List<Told> told = new ArrayList<>();
    for (int percentile : table.percentiles()) {
      Function<BodyMeasure, SourcedFigure> figure = m -> table.figure(people, percentile, m);
      told.addAll(told(Optional.of(percentile), target, rooted, table, figure));
    }
    seated
        .map(Seated::driver)
        .filter(driver -> !driver.own().isEmpty())
        .ifPresent(
            driver ->
                told.addAll(
                    told(Optional.empty(), target, rooted, table, m -> table.of(driver, m))));
    int middle = table.percentiles().get(table.percentiles().size() / 2);
    double hand = table.figure(people, middle, BodyMeasure.HAND).value();
    double left = rooted.away(-1, target, hand);
    double right = rooted.away(1, target, hand);
    return new Reach(target.label(), target.with(), left < right, Math.min(left, right), told);
  }

  private static List<Told> told(
      Optional<Integer> who,
      Target target,
      Rooted rooted,
      DriverTable table,
      Function<BodyMeasure, SourcedFigure> figure) {
    double hand = figure.apply(BodyMeasure.HAND).value();
    double away = Math.min(rooted.away(-1, target, hand), rooted.away(1, target, hand));
    double bare =
        figure.apply(target.with() == With.THUMB ? BodyMeasure.THUMB : BodyMeasure.FINGER).value();
    double gloved = bare - figure.apply(BodyMeasure.GLOVE).value();
    double ease = table.ease().value();
    return List.of(
        new Told(who, false, grade(away, bare, ease)),
        new Told(who, true, grade(away, gloved, ease)));
  }

  private static Grade grade(double away, double reach, double ease) {
    if (away > reach) {
      return Grade.NO;
    }
    return away <= ease * reach ? Grade.REACHED : Grade.STRETCH;
  }

  /** Where thumbs and fingers start. */
  private record Rooted(Plate plate, Hands hands, double behind, double before) {

    double away(int side, Target target, double hand) {
      ArcLengthIndex outline = new ArcLengthIndex(plate.outline());
      Point middle = hands.of(side);
      ArcLengthIndex.Spot edge = outline.nearest(middle);
      // The outline runs counter-clockwise: up on the right, down on the left.
      Point up = outline.tangent(edge.position()).times(side);
      boolean thumb = target.with() == With.THUMB;
      Point start = thumb ? middle : edge.point();
      double high = (thumb ? before : behind) - target.high();
      double away = 0;
      for (double share : new double[] {0.25, 0.5}) {
        Point from = start.plus(up, share * hand);
        double flat =
            target
                .edge()
                .map(paddle -> paddle.contains(from) ? INSIDE : paddle.distance(from) + INSIDE)
                .orElse(from.distance(target.at()));
        away = Math.max(away, Math.hypot(flat, high));
      }
      return away;
    }
  }
}
