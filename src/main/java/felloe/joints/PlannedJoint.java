package felloe.joints;

import felloe.geometry.Numbers;
import felloe.hub.ScrewThread;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Joint.Head;
import felloe.plate.Joint.InNut;
import felloe.plate.Joint.InTapped;
import felloe.plate.Place;
import felloe.yaml.Entry;
import java.util.List;
import java.util.Optional;

/**
 * A joint with everything settled: alike screws in alike holes.
 *
 * @param name such as {@code hub} or {@code grip}
 * @param joint what the maker said of it
 * @param holes in the plate's order, all of one diameter
 * @param thread of the screws
 * @param head form of their heads
 * @param headSize their heads
 * @param strength their class
 * @param washer under the head
 * @param parts all that is clamped from the head on, washers too
 * @param clamped thickness of all that is clamped (grip length), less what is let in, mm
 * @param length of the screw, mm
 * @param standardLength whether that is a standard length
 * @param tapped the tapped hole; empty where a nut holds it
 * @param inNut the nut; empty where a tapped hole holds it
 * @param nut size of the nut
 * @param nutWasher under the nut
 * @param nutWashers how many of them
 * @param torque to start from
 * @param notes what the maker should know besides
 */
public record PlannedJoint(
    String name,
    Joint joint,
    List<Hole> holes,
    ScrewThread thread,
    Head head,
    HeadSize headSize,
    StrengthClass strength,
    Optional<WasherSize> washer,
    List<ClampedPart> parts,
    double clamped,
    double length,
    boolean standardLength,
    Optional<InTapped> tapped,
    Optional<InNut> inNut,
    Optional<NutSize> nut,
    Optional<WasherSize> nutWasher,
    int nutWashers,
    StartingTorque torque,
    List<String> notes) {

  public PlannedJoint {
    holes = List.copyOf(holes);
    parts = List.copyOf(parts);
    notes = List.copyOf(notes);
  }

  /** What the holes are for. */
  public HoleRole role() {
    return holes.get(0).role();
  }

  /** Diameter of each hole, mm. */
  public double hole() {
    return holes.get(0).diameter();
  }

  /** How far the screw reaches beyond what it clamps, mm; below zero when it does not reach. */
  public double reach() {
    return length - clamped;
  }

  /** Length of thread that holds, mm; 0 when the screw does not reach. */
  public double engagement() {
    double reach = Math.max(0, reach());
    if (nut.isPresent()) {
      return Math.min(reach, nut.get().height());
    }
    return Math.min(reach, tapped.flatMap(InTapped::depth).orElse(reach));
  }

  /**
   * Room between the screw's end and the end of the full thread, mm; below zero when the screw
   * bottoms. Empty when the depth is not known, the hole goes through, or a nut holds the screw.
   */
  public Optional<Double> bottomRoom() {
    return tapped.filter(t -> !t.through()).flatMap(InTapped::depth).map(d -> d - reach());
  }

  /** Depth of full thread that the tapped hole must have, mm; empty when it was measured. */
  public Optional<Double> depthWanted() {
    return tapped
        .filter(t -> t.depth().isEmpty() && !t.through())
        .map(t -> reach() + thread.pitch());
  }

  /** How far the screw stands out of its nut, mm; empty in a tapped hole. */
  public Optional<Double> beyondNut() {
    return nut.map(n -> reach() - n.height());
  }

  /** Diameter of what lies on the driver's face, head or washer, mm. */
  public double frontDiameter() {
    return Math.max(headSize.diameter(), washer.map(WasherSize::diameter).orElse(0.0));
  }

  /** Diameter of what lies on the back, nut or washer, mm; 0 in a tapped hole. */
  public double backDiameter() {
    double corners = nut.map(NutSize::corners).orElse(0.0);
    return Math.max(corners, nutWasher.map(WasherSize::diameter).orElse(0.0));
  }

  /** The larger of the two, mm. */
  public double widest() {
    return Math.max(frontDiameter(), backDiameter());
  }

  /** What is widest, in words. */
  public String widestWords() {
    if (backDiameter() > frontDiameter()) {
      return nutWasher.isPresent() && nutWasher.get().diameter() >= backDiameter()
          ? "washer under the nut"
          : "nut";
    }
    return washer.isPresent() && washer.get().diameter() >= frontDiameter() ? "washer" : "head";
  }

  /** The part that a countersunk head is let into; empty for other heads. */
  public Optional<ClampedPart> coned() {
    return head == Head.COUNTERSUNK ? Optional.of(parts.get(0)) : Optional.empty();
  }

  /** What is left of that part below the cone, mm. */
  public Optional<Double> land() {
    return coned()
        .map(part -> part.thickness() - joint.screw().sunk() - headSize.coneDepth(hole()));
  }

  /** Thread, length, head and its standard, such as {@code M5 x 20 socket, ISO 4762}. */
  public String screwName() {
    return thread.name()
        + " x "
        + Numbers.brief(length, 2)
        + " "
        + Entry.nameOf(head)
        + ", "
        + headSize.standard();
  }

  /** Whether the maker wrote a key of the screw, such as {@code length}. */
  public boolean screw(String key) {
    return joint.places().containsKey("screw." + key);
  }

  /** Where a key of the joint was written, or else where the first hole was. */
  public Place place(String key) {
    return joint.place(key).orElse(holes.get(0).place());
  }

  /** The labels of the holes, in short. */
  public String labels() {
    return inShort(holes.stream().map(Hole::label).toList());
  }

  /** Labels in words; those that count on without a gap as {@code H1 to H6}. */
  public static String inShort(List<String> labels) {
    String first = labels.get(0);
    String stem = first.replaceAll("[0-9]{1,6}$", "");
    boolean run = labels.size() > 2 && stem.length() < first.length();
    for (int i = 0; run && i < labels.size(); i++) {
      run = labels.get(i).equals(stem + (Integer.parseInt(first.substring(stem.length())) + i));
    }
    return run ? first + " to " + labels.get(labels.size() - 1) : String.join(", ", labels);
  }
}
