package felloe.joints;

import felloe.geometry.Tolerances;
import felloe.hub.ScrewThread;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Joint;
import felloe.plate.Joint.Head;
import felloe.plate.Joint.InNut;
import felloe.plate.Joint.InTapped;
import felloe.plate.Joint.Into;
import felloe.plate.Joint.Surface;
import felloe.plate.Joint.Tapped;
import felloe.plate.Joint.Washer;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.yaml.Entry;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Settles everything of one joint: what is left out takes what is usual. */
final class JointMaker {

  /** Threads that a screw stands out of its nut: at least, at most (common practice). */
  static final double LEAST_BEYOND = 1;

  static final double MOST_BEYOND = 3;

  /** What heads and nuts that are let into the plate itself leave of it, mm: common practice. */
  private static final double LEAST_LEFT = 1;

  /** Most washers that are put under a nut to bring the screw's end right. */
  private static final int MOST_WASHERS = 2;

  private final Plate plate;
  private final Fasteners fasteners;
  private final Joint joint;
  private final String name;
  private final ScrewThread thread;
  private final List<Hole> holes;
  private final double hole;
  private final JointPlanner.Covering covering;
  private final List<Problem> wrong = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  /** What a screw holds: its length and how many washers lie under the nut. */
  private record Fit(double length, int washers) {}

  JointMaker(
      Plate plate,
      Fasteners fasteners,
      Joint joint,
      String name,
      ScrewThread thread,
      List<Hole> holes,
      JointPlanner.Covering covering) {
    this.plate = plate;
    this.fasteners = fasteners;
    this.joint = joint;
    this.name = name;
    this.thread = thread;
    this.holes = holes;
    this.hole = holes.get(0).diameter();
    this.covering = covering;
  }

  /**
   * The joint, settled.
   *
   * @param problems takes what is wrong with a joint of the shape file
   * @param unscrewed takes what is wrong with one that nobody wrote
   */
  Optional<PlannedJoint> make(Problems problems, List<Unscrewed> unscrewed) {
    Optional<PlannedJoint> made = make();
    if (joint.written()) {
      wrong.forEach(problems::addOnce);
    } else {
      wrong.forEach(p -> unscrewed.add(new Unscrewed(holes, name, p.wanted())));
    }
    return made.filter(m -> wrong.isEmpty());
  }

  private Optional<PlannedJoint> make() {
    boolean inch = StrengthClass.isInch(thread);
    StrengthClass strength = strength(inch);
    Head head = joint.screw().head().orElse(Head.SOCKET);
    Optional<HeadSize> headSize = fasteners.head(head, thread.name());
    if (headSize.isEmpty()) {
      unknown("screw.head", Entry.nameOf(head) + " head");
    }
    List<Double> front = parts("front", joint.front(), covering.front());
    List<Double> back = behind();
    Washer under = joint.washer().orElseGet(() -> usualWasher(head, front));
    Optional<WasherSize> washer = washer("washer", under);
    Into into = joint.into().orElseGet(this::usualInto);
    Optional<InNut> inNut = into instanceof InNut n ? Optional.of(n) : Optional.empty();
    Optional<InTapped> tapped = into instanceof InTapped t ? Optional.of(t) : Optional.empty();
    Optional<NutSize> nut = inNut.flatMap(n -> fasteners.nut(n.nut(), thread.name()));
    if (inNut.isPresent() && nut.isEmpty()) {
      unknown("into.nut", Entry.nameOf(inNut.get().nut()) + " nut");
    }
    Optional<WasherSize> nutWasher =
        inNut.flatMap(n -> washer("into.washer", n.washer().orElse(Washer.PLAIN)));
    if (headSize.isEmpty() || !wrong.isEmpty()) {
      return Optional.empty();
    }
    bears(washer.isPresent() ? "washer" : "screw.head", "head", washer, headSize.get().bearing());
    String nutFace = nutWasher.isPresent() ? "into.washer" : "into.nut";
    nut.ifPresent(n -> bears(nutFace, "nut", nutWasher, n.bearing()));
    double sunkHead = joint.screw().sunk();
    double sunkNut = inNut.map(InNut::sunk).orElse(0.0);
    double outermost = front.isEmpty() ? plate.stock().asMade() : front.get(0);
    double innermost = back.isEmpty() ? plate.stock().asMade() : back.get(back.size() - 1);
    sinks("screw.sunk", sunkHead, outermost);
    sinks("into.sunk", sunkNut, innermost);
    double left =
        plate.stock().asMade() - (front.isEmpty() ? sunkHead : 0) - (back.isEmpty() ? sunkNut : 0);
    if (left < LEAST_LEFT && wrong.isEmpty()) {
      wrong(
          sunkHead > 0 ? "screw.sunk" : "into.sunk",
          "leaves "
              + JointWords.mm(Math.max(0, left))
              + " of the bare plate at "
              + holes.get(0).label()
              + ", which nothing covers");
      return Optional.empty();
    }
    List<ClampedPart> parts = new ArrayList<>();
    washer.ifPresent(
        w -> parts.add(new ClampedPart(Entry.nameOf(under) + " washer", w.thickness())));
    front.forEach(t -> parts.add(new ClampedPart(partName(), t)));
    parts.add(new ClampedPart(ClampedPart.PLATE, plate.stock().asMade()));
    back.forEach(t -> parts.add(new ClampedPart(partName(), t)));
    double bare = parts.stream().mapToDouble(ClampedPart::thickness).sum() - sunkHead - sunkNut;
    if (bare <= 0) {
      wrong(
          "screw.sunk", "leaves nothing to clamp: heads and nuts are let in deeper than all parts");
      return Optional.empty();
    }
    Optional<Fit> fit = fit(inch, bare, tapped, nut, nutWasher, inNut);
    if (fit.isEmpty() || !wrong.isEmpty()) {
      return Optional.empty();
    }
    int washers = fit.get().washers();
    for (int i = 0; i < washers; i++) {
      parts.add(new ClampedPart("washer under the nut", nutWasher.orElseThrow().thickness()));
    }
    Optional<WasherSize> used = washers == 0 ? Optional.empty() : nutWasher;
    double clamped = bare + washers * used.map(WasherSize::thickness).orElse(0.0);
    boolean standard = new LengthChoice(fasteners.lengths(inch)).has(fit.get().length());
    if (!standard) {
      notes.add("a length of " + JointWords.mm(fit.get().length()) + " is not a standard one");
    }
    StartingTorque torque =
        new Clamp(plate, fasteners, thread, strength, hole)
            .torque(
                joint.screw().surface().orElse(Surface.DRY),
                headSize.get(),
                washer,
                partName(),
                !front.isEmpty(),
                nut,
                used,
                !back.isEmpty());
    return Optional.of(
        new PlannedJoint(
            name,
            joint,
            holes,
            thread,
            head,
            headSize.get(),
            strength,
            washer,
            parts,
            clamped,
            fit.get().length(),
            standard,
            tapped,
            inNut,
            nut,
            used,
            washers,
            torque,
            notes));
  }

  private StrengthClass strength(boolean inch) {
    StrengthClass usual = fasteners.usualStrength(inch);
    Optional<String> named = joint.screw().strength();
    if (named.isEmpty()) {
      return usual;
    }
    Optional<StrengthClass> found = fasteners.strength(named.get());
    if (found.filter(c -> c.inch() == inch).isEmpty()) {
      String known =
          fasteners.classes().stream()
              .filter(c -> c.inch() == inch)
              .map(StrengthClass::name)
              .collect(Collectors.joining(", "));
      wrong(
          "screw.class",
          named.get(),
          found.isEmpty() ? "is not a known strength class" : "is no class of " + thread.name(),
          "known for " + (inch ? "inch" : "metric") + " screws: " + known);
    }
    return found.orElse(usual);
  }

  /** What is clamped on a face: a grip that lies there, what the maker wrote, or a flat scale. */
  private List<Double> parts(String key, Optional<List<Double>> written, Optional<Double> grip) {
    if (written.isPresent() && !covering.none()) {
      wrong(
          key,
          "",
          "cannot stand beside the grip that lies over "
              + holes.get(0).label()
              + ": the screw is as long as that is thick there",
          "leave it out");
    }
    if (!covering.none()) {
      return grip.map(List::of).orElse(List.of());
    }
    return written.orElseGet(this::usualScale);
  }

  /** A grip that the screw is tapped into holds it and is not clamped. */
  private List<Double> behind() {
    boolean tapped = joint.into().filter(into -> into instanceof InTapped).isPresent();
    if (!tapped || covering.back().isEmpty()) {
      return parts("back", joint.back(), covering.back());
    }
    double thick = covering.back().get();
    InTapped into = (InTapped) joint.into().orElseThrow();
    if (into.material() == Tapped.INSERT && into.hole().isEmpty() && !into.through()) {
      wrong(
          "into.hole",
          "",
          "must be given where an insert goes into the grip behind "
              + holes.get(0).label()
              + ": the diameter of its hole",
          "write what the insert's maker says, such as hole: 5.6");
    }
    into.depth()
        .filter(depth -> depth >= thick)
        .ifPresent(
            depth ->
                wrong(
                    "into.depth",
                    JointWords.mm(depth),
                    "must be less than "
                        + JointWords.mm(thick)
                        + " here (the grip behind "
                        + holes.get(0).label()
                        + ")",
                    "lower it, or make the grip thicker"));
    return parts("back", joint.back(), Optional.empty());
  }

  private List<Double> usualScale() {
    double scale = plate.making().gripScale();
    return grip() && scale > 0 ? List.of(scale) : List.of();
  }

  private boolean grip() {
    return holes.get(0).role() == HoleRole.GRIP;
  }

  private String partName() {
    return !covering.none() && !covering.scale()
        ? ClampedPart.GRIP
        : grip() ? ClampedPart.SCALE : "part";
  }

  /**
   * A plain one, aluminium too, whose face a bare head would mark; wood a large one where there is
   * one; what lies on top a plain one.
   */
  private Washer usualWasher(Head head, List<Double> front) {
    if (head == Head.COUNTERSUNK) {
      return Washer.NONE;
    }
    Washer usual =
        !front.isEmpty()
            ? Washer.PLAIN
            : switch (plate.stock().material().kind()) {
              case METAL, LAMINATE, PLASTIC -> Washer.PLAIN;
              case WOOD -> Washer.LARGE;
            };
    return usual == Washer.NONE || fasteners.washer(usual, thread.name()).isPresent()
        ? usual
        : Washer.PLAIN;
  }

  private Into usualInto() {
    return holes.get(0).role() == HoleRole.BOLT
        ? new InTapped(Tapped.ALUMINIUM, Optional.empty(), false, Optional.empty())
        : new InNut(Joint.Nut.PLAIN, Optional.empty(), 0);
  }

  private Optional<WasherSize> washer(String key, Washer washer) {
    Optional<WasherSize> size = fasteners.washer(washer, thread.name());
    if (washer != Washer.NONE && size.isEmpty()) {
      unknown(key, Entry.nameOf(washer) + " washer");
    }
    return size;
  }

  private void bears(String key, String what, Optional<WasherSize> washer, double bearing) {
    double outer = washer.map(WasherSize::diameter).orElse(bearing);
    if (outer <= hole) {
      wrong(
          key,
          "",
          "has nothing to bear on: "
              + (washer.isPresent() ? "its washer" : "the " + what)
              + " of "
              + JointWords.mm(outer)
              + " lies on a hole of "
              + JointWords.mm(hole),
          "write a larger washer");
    }
  }

  private void sinks(String key, double sunk, double part) {
    if (sunk >= part) {
      wrong(
          key,
          JointWords.mm(sunk),
          "must be less than " + JointWords.mm(part) + " here (the part it is let into)",
          "lower it");
    }
  }

  private Optional<Fit> fit(
      boolean inch,
      double bare,
      Optional<InTapped> tapped,
      Optional<NutSize> nut,
      Optional<WasherSize> nutWasher,
      Optional<InNut> inNut) {
    LengthChoice lengths = new LengthChoice(fasteners.lengths(inch));
    Optional<Double> given = joint.screw().length();
    Optional<Fit> fit;
    if (tapped.isPresent()) {
      double engagement = fasteners.engagement(tapped.get().material()).value() * thread.diameter();
      Optional<Double> room =
          tapped.get().through()
              ? Optional.empty()
              : tapped.get().depth().map(d -> d - thread.pitch());
      fit = given.or(() -> lengths.tapped(bare, engagement, room)).map(l -> new Fit(l, 0));
    } else {
      boolean free = inNut.orElseThrow().washer().isEmpty();
      int usual = nutWasher.isPresent() ? 1 : 0;
      double thick = nutWasher.map(WasherSize::thickness).orElse(0.0);
      double height = nut.orElseThrow().height();
      fit = Optional.empty();
      for (int n = usual; n <= (free ? MOST_WASHERS : usual); n++) {
        double needed = bare + n * thick + height;
        int washers = n;
        Optional<Fit> next =
            given
                .or(() -> lengths.atLeast(needed + LEAST_BEYOND * thread.pitch()))
                .map(l -> new Fit(l, washers));
        boolean right =
            next.isPresent()
                && next.get().length() - needed
                    <= MOST_BEYOND * thread.pitch() + Tolerances.ROUNDING
                && next.get().length() - needed
                    >= LEAST_BEYOND * thread.pitch() - Tolerances.ROUNDING;
        if (right) {
          return next;
        }
        fit = fit.or(() -> next);
      }
    }
    if (fit.isEmpty()) {
      wrong(
          "",
          "",
          "clamps " + JointWords.mm(bare) + ", and no standard screw is long enough",
          "take parts away, or write screw.length");
    }
    return fit;
  }

  private void unknown(String key, String what) {
    wrong(
        key,
        "",
        "cannot be used: no " + what + " is known for " + thread.name(),
        "write another one");
  }

  private void wrong(String key, String wanted) {
    wrong(key, "", wanted, "lower it");
  }

  private void wrong(String key, String value, String wanted, String cure) {
    Place place = joint.place(key).orElse(holes.get(0).place());
    String who = joint.path() + (key.isEmpty() ? "" : "." + key);
    wrong.add(new Problem(place, who, value, wanted, cure));
  }
}
