package felloe.load;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import felloe.joints.JointPlan;
import felloe.joints.PlannedJoint;
import felloe.joints.WasherSize;
import felloe.plate.BadInput;
import felloe.plate.Hole;
import felloe.plate.LoadWish;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the hub holds a plate, and why it is taken so.
 *
 * @param support the support
 * @param why in a sentence
 * @param assumptions what was taken for granted
 * @param holes the hub holes that have screws
 * @param other the other way that the hub may hold it, when nobody said which; of both the worse
 *     counts, figure by figure
 */
public record HubHold(
    Support support,
    String why,
    List<String> assumptions,
    List<Hole> holes,
    Optional<Support> other) {

  /**
   * Head over hole where no screw is planned: ISO 4762 and ISO 273, M5 in 5.5 and its neighbours.
   */
  private static final double HEAD = 1.55;

  /** Copies the lists. */
  public HubHold {
    assumptions = List.copyOf(assumptions);
    holes = List.copyOf(holes);
  }

  /**
   * The hold of a plate.
   *
   * @param asked what the call asks for, over what the shape file does
   * @param joints its screws
   * @param holes the hub holes that have screws
   * @throws BadInput when nothing holds it
   */
  public static HubHold of(
      Plate plate, Optional<Requested<LoadWish.Hold>> asked, JointPlan joints, List<Hole> holes) {
    LoadWish wish = plate.load();
    Optional<Requested<LoadWish.Hold>> wished = asked.or(wish::hold);
    LoadWish.Hold hold =
        wished
            .map(Requested::value)
            .orElse(wish.clampDiameter().isPresent() ? LoadWish.Hold.CLAMPED : LoadWish.Hold.BOLTS);
    Place place = wished.map(Requested::place).orElse(Place.ofFile(plate.stock().place().file()));
    return hold == LoadWish.Hold.CLAMPED
        ? clamped(wish, place, holes)
        : bolted(plate, wished.isPresent(), place, joints, holes);
  }

  private static HubHold clamped(LoadWish wish, Place place, List<Hole> holes) {
    if (wish.clampDiameter().isEmpty()) {
      throw new BadInput(
          new Problem(
              place,
              "load.clamp_diameter",
              "",
              "is missing: within which circle the hub holds the plate fast",
              "add 'load: {clamp_diameter: 70}' with the diameter of your hub's face"));
    }
    double diameter = wish.clampDiameter().get().value();
    return new HubHold(
        new Support.Clamped(diameter),
        "held fast within "
            + Numbers.brief(diameter, 2)
            + " mm of the hub axis, as asked for: the stiffest that a hub can be; one whose face"
            + " gives, or whose screws are few, lets the plate move more",
        List.of(),
        holes,
        Optional.empty());
  }

  private static HubHold bolted(
      Plate plate, boolean asked, Place place, JointPlan joints, List<Hole> holes) {
    if (holes.size() < 2) {
      throw new BadInput(
          new Problem(
              place,
              "load",
              "",
              (holes.isEmpty() ? "has no hub holes" : "has one hub hole")
                  + ", and nothing else says how the hub holds the plate",
              "add 'bolt-circles', or 'load: {clamp_diameter: 70}' with the diameter of your hub's"
                  + " face"));
    }
    List<String> assumptions = new ArrayList<>();
    List<Support.Bolt> bolts = new ArrayList<>();
    double reach = 0;
    double widest = 0;
    boolean guessed = false;
    for (Hole hole : holes) {
      Optional<Double> planned = head(joints, hole);
      guessed |= planned.isEmpty();
      double head = Math.max(planned.orElse(HEAD * hole.diameter()), 1.1 * hole.diameter());
      bolts.add(new Support.Bolt(hole.label(), hole.centre(), head));
      reach = Math.max(reach, hole.centre().distance(Point.ORIGIN));
      widest = Math.max(widest, hole.diameter());
    }
    if (guessed) {
      assumptions.add(
          "no screw is planned for some hub holes: its head is taken to be 1.55 times the hole");
    } else {
      assumptions.add(
          "each screw presses on a circle of "
              + Numbers.brief(bolts.get(0).head(), 2)
              + " mm, its head or washer, and holds the plate fast there");
    }
    if (plate.load().spacerDiameter().isPresent()) {
      return onSpacers(plate, asked, bolts, holes, assumptions);
    }
    double face = plate.load().faceDiameter().map(Requested::value).orElse(2 * reach + 2 * widest);
    assumptions.add(
        plate.load().faceDiameter().isPresent()
            ? "the hub's face is " + Numbers.brief(face, 2) + " mm across, as the shape file says"
            : "the hub's face is taken to be "
                + Numbers.brief(face, 1)
                + " mm across, one hole diameter beyond the holes' circle; measure yours and write"
                + " load.face_diameter");
    refuseImpossible(plate, bolts, holes, reach, face);
    String why =
        asked
            ? "held by its screws, with the hub's face behind, which pushes but does not pull, as"
                + " asked for"
            : "held by its screws, with the hub's face behind, which pushes but does not pull, and"
                + " once more clamped within that face: of both ways the worse is told, figure by"
                + " figure, since neither is always the safe one";
    Optional<Support> other = asked ? Optional.empty() : Optional.of(new Support.Clamped(face));
    return new HubHold(new Support.Bolted(bolts, face), why, assumptions, holes, other);
  }

  /** On a spacer at each screw: free to give between them, or held fast over the whole of each. */
  private static HubHold onSpacers(
      Plate plate,
      boolean asked,
      List<Support.Bolt> bolts,
      List<Hole> holes,
      List<String> assumptions) {
    Requested<Double> spacer = plate.load().spacerDiameter().orElseThrow();
    double across = spacer.value();
    Problems problems = new Problems();
    double widest = holes.stream().mapToDouble(Hole::diameter).max().orElse(0);
    if (across <= widest) {
      problems.add(
          new Problem(
              spacer.place(),
              "load.spacer_diameter",
              Numbers.brief(across, 2) + " mm",
              "is no larger than the hub's holes, " + Numbers.brief(widest, 2) + " mm",
              "write the outside diameter of the spacers"));
    }
    overlaps(bolts, holes, problems);
    for (int i = 0; i < bolts.size(); i++) {
      for (int j = i + 1; j < bolts.size(); j++) {
        if (bolts.get(i).at().distance(bolts.get(j).at()) < across - Tolerances.SAME_LENGTH) {
          problems.addOnce(
              new Problem(
                  spacer.place(),
                  "load.spacer_diameter",
                  Numbers.brief(across, 2) + " mm",
                  "makes spacers that overlap",
                  "write the outside diameter of one; for a single ring or disc under all screws"
                      + " leave it out, and write load.face_diameter"));
        }
      }
    }
    problems.throwIfAny();
    assumptions.add(
        "each screw stands on a spacer of "
            + Numbers.brief(across, 2)
            + " mm, as the shape file says, and nothing else bears behind the plate");
    String why = "held by its screws, each with a spacer behind, which pushes but does not pull";
    List<Support.Bolt> fast =
        bolts.stream()
            .map(b -> new Support.Bolt(b.label(), b.at(), Math.max(b.head(), across)))
            .toList();
    return new HubHold(
        Support.Bolted.onSpacers(bolts, across),
        asked
            ? why + ", as asked for"
            : why
                + ", and once more held fast over the whole of each spacer: of both ways the worse"
                + " is told, figure by figure, since neither is always the safe one",
        assumptions,
        holes,
        asked ? Optional.empty() : Optional.of(Support.Bolted.onSpacers(fast, across)));
  }

  /** Refuses a face that bears on nothing, and heads that overlap; all at once. */
  private static void refuseImpossible(
      Plate plate, List<Support.Bolt> bolts, List<Hole> holes, double reach, double face) {
    Problems problems = new Problems();
    plate
        .load()
        .faceDiameter()
        .filter(f -> f.value() < 2 * reach)
        .ifPresent(
            f ->
                problems.add(
                    new Problem(
                        f.place(),
                        "load.face_diameter",
                        Numbers.brief(face, 2) + " mm",
                        "is smaller than the circle of the hub's screws, so that nothing bears"
                            + " behind them",
                        "it must be at least "
                            + Numbers.brief(2 * reach, 2)
                            + " mm; measure the hub's face")));
    overlaps(bolts, holes, problems);
    problems.throwIfAny();
  }

  private static void overlaps(List<Support.Bolt> bolts, List<Hole> holes, Problems problems) {
    for (int i = 0; i < bolts.size(); i++) {
      for (int j = i + 1; j < bolts.size(); j++) {
        double apart = bolts.get(i).at().distance(bolts.get(j).at());
        double heads = (bolts.get(i).head() + bolts.get(j).head()) / 2;
        if (apart < heads - 1e-6) {
          problems.add(
              new Problem(
                  holes.get(j).place(),
                  holes.get(j).label(),
                  Numbers.brief(apart, 2) + " mm from " + holes.get(i).label(),
                  "is so near that their heads or washers, together "
                      + Numbers.brief(heads, 2)
                      + " mm from middle to middle, overlap",
                  "move the holes apart, or take smaller heads or washers"));
        }
      }
    }
  }

  private static Optional<Double> head(JointPlan joints, Hole hole) {
    for (PlannedJoint joint : joints.joints()) {
      if (joint.holes().contains(hole)) {
        double bearing = joint.headSize().bearing();
        return Optional.of(Math.max(bearing, joint.washer().map(WasherSize::diameter).orElse(0.0)));
      }
    }
    return Optional.empty();
  }

  /** Radius within which a hand has nothing to hold, mm. */
  double radius() {
    return support instanceof Support.Clamped clamped
        ? clamped.diameter() / 2
        : ((Support.Bolted) support).reach();
  }

  /** Whether a point cannot move, since the hub holds it. */
  boolean holds(Point p) {
    if (support instanceof Support.Clamped clamped) {
      return p.norm() <= clamped.diameter() / 2;
    }
    return ((Support.Bolted) support)
        .bolts().stream().anyMatch(b -> b.at().distance(p) <= b.head() / 2);
  }
}
