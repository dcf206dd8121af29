package felloe.layup;

import felloe.cutting.NestedPart;
import felloe.cutting.Nesting;
import felloe.cutting.SheetRoom;
import felloe.geometry.Box;
import felloe.geometry.Combine;
import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Region;
import felloe.geometry.RigidTransform;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Requested;
import felloe.plate.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where each ply is cut from the roll. The warp runs along the roll.
 *
 * @param rollWidth mm
 * @param pieces in the order of plies
 * @param used length of roll that the pieces take, mm
 * @param toBuy length to ask for, mm
 * @param area of all pieces, mm²
 * @param bought area of the length to ask for, mm²
 * @param waste share of what is bought that is no piece
 * @param jointedPlies number of plies that are in several pieces
 * @param notes what the maker should know about it
 */
public record ClothPlan(
    double rollWidth,
    List<ClothPiece> pieces,
    double used,
    double toBuy,
    double area,
    double bought,
    double waste,
    int jointedPlies,
    List<String> notes) {

  /** Edge of the roll that is not used, mm: common practice. */
  static final double SELVEDGE = 10;

  /** Room between pieces for shears, mm: common practice. */
  static final double SPACING = 5;

  /** Least distance between joints of one ply and the next that lies alike, mm: common practice. */
  static final double STAGGER = 25;

  /** Cloth is sold by this length, mm: common practice. */
  static final double SOLD_BY = 100;

  /** Orders of the pieces that are tried. */
  private static final int TRIES = 3;

  /** With more pieces than these, only those of one direction are laid side by side: for speed. */
  private static final int MANY = 60;

  public ClothPlan {
    pieces = List.copyOf(pieces);
    notes = List.copyOf(notes);
  }

  /** A piece not yet laid: its region turned so that its warp runs along y. */
  private record Loose(String label, StackPlan.Ply ply, double turned, Region region) {}

  /**
   * Lays out the plies of a stack.
   *
   * @param blank outline of each ply, in the plate's frame
   * @throws BadInput when the roll is too narrow for anything
   */
  static ClothPlan of(StackPlan stack, Contour blank, LayupChoice choice) {
    double width = choice.rollWidth();
    double usable = width - 2 * SELVEDGE;
    if (usable < 2 * STAGGER) {
      throw new BadInput(
          new Problem(
              choice.wish().rollWidth().map(Requested::place).orElse(Place.BUILT_IN),
              "roll-width",
              Numbers.brief(width, 1) + " mm",
              "must be at least " + Numbers.brief(2 * SELVEDGE + 2 * STAGGER, 0) + " mm here",
              "take a wider roll"));
    }
    boolean woven = choice.cloth().weave().woven();
    List<Loose> loose = new ArrayList<>();
    int jointed = 0;
    Map<String, Integer> alike = new LinkedHashMap<>();
    for (StackPlan.Ply ply : stack.plies()) {
      int before = alike.getOrDefault(ply.direction(), 0);
      List<Loose> pieces = pieces(ply, blank, usable, woven, before);
      if (pieces.size() > 1) {
        jointed++;
        alike.put(ply.direction(), before + 1);
      }
      loose.addAll(pieces);
    }
    return laid(loose, choice, usable, jointed);
  }

  /** The pieces of one ply: one if it fits at any turn, else strips side by side. */
  private static List<Loose> pieces(
      StackPlan.Ply ply, Contour blank, double usable, boolean woven, int jointedBefore) {
    double turn = Math.toRadians(90 - ply.angle());
    double best = turn;
    double narrowest = Double.POSITIVE_INFINITY;
    for (int quarter = 0; quarter < (woven ? 2 : 1); quarter++) {
      double t = turn + quarter * Math.PI / 2;
      double wide = blank.moved(RigidTransform.turn(t)).box().width();
      if (wide < narrowest - Tolerances.ROUNDING) {
        narrowest = wide;
        best = t;
      }
    }
    Region turned = Region.of(blank.moved(RigidTransform.turn(best)));
    String label = Integer.toString(ply.number());
    if (narrowest < usable - Tolerances.SAME_LENGTH) {
      return List.of(new Loose(label, ply, best, turned));
    }
    return bands(ply, turned, best, usable, jointedBefore);
  }

  /**
   * Strips along the warp, their joints staggered against those of the last ply that lies alike.
   */
  private static List<Loose> bands(
      StackPlan.Ply ply, Region turned, double turn, double usable, int jointedBefore) {
    Box box = turned.outer().box();
    // Room for the joints to move by a stagger either way.
    double widest = usable - STAGGER - 1;
    int count = (int) Math.ceil(box.width() / widest);
    double each = box.width() / count;
    double shift = new double[] {0, STAGGER, -STAGGER}[jointedBefore % 3];
    List<Loose> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double left = i == 0 ? box.minX() - 1 : box.minX() + i * each + shift;
      double right = i == count - 1 ? box.maxX() + 1 : box.minX() + (i + 1) * each + shift;
      Region band =
          Region.of(Contour.rectangle(new Box(left, box.minY() - 1, right, box.maxY() + 1)));
      for (Region piece : Combine.intersection(List.of(turned), List.of(band))) {
        pieces.add(new Loose(ply.number() + letters(pieces.size()), ply, turn, piece));
      }
    }
    return pieces;
  }

  /** A to Z, then AA, AB and so on. */
  static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letters(index / 26 - 1) + last;
  }

  private static ClothPlan laid(List<Loose> loose, LayupChoice choice, double usable, int jointed) {
    boolean woven = choice.cloth().weave().woven();
    List<NestedPart> parts = new ArrayList<>();
    double length = 2 * SELVEDGE;
    for (Loose piece : loose) {
      List<Double> turns = new ArrayList<>();
      for (int quarter = 0; quarter < 4; quarter += woven ? 1 : 2) {
        double turn = quarter * Math.PI / 2;
        if (piece.region().outer().moved(RigidTransform.turn(turn)).box().width()
            < usable - Tolerances.SAME_LENGTH) {
          turns.add(turn);
        }
      }
      parts.add(new NestedPart(piece.label(), Tangents.of(piece.region()), turns));
      Box box = piece.region().outer().box();
      length += Math.max(box.width(), box.height()) + SPACING + 1;
    }
    double width = choice.rollWidth();
    SheetRoom room = new SheetRoom(new Sheet(width, length), SELVEDGE, List.of());
    List<RigidTransform> motions = sorted(loose, parts, room);
    if (parts.size() <= MANY) {
      List<RigidTransform> mixed = motions(parts, room, TRIES);
      boolean better = used(parts, mixed) < used(parts, motions) - Tolerances.SAME_LENGTH;
      motions = better ? mixed : motions;
    }
    List<ClothPiece> pieces = new ArrayList<>();
    double area = 0;
    for (int i = 0; i < loose.size(); i++) {
      Loose piece = loose.get(i);
      RigidTransform motion = motions.get(i);
      Region region = piece.region().moved(motion);
      area += region.properties().area();
      pieces.add(
          new ClothPiece(
              piece.label(),
              piece.ply().number(),
              piece.ply().direction(),
              region,
              RigidTransform.turn(piece.turned()).then(motion)));
    }
    double used = used(parts, motions);
    double buy = SOLD_BY * Tolerances.up((used + SELVEDGE) / SOLD_BY);
    double bought = buy * width;
    return new ClothPlan(
        width, pieces, used, buy, area, bought, 1 - area / bought, jointed, notes(jointed, choice));
  }

  private static List<RigidTransform> motions(List<NestedPart> parts, SheetRoom room, int tries) {
    Nesting.Layout layout = Nesting.place(parts, room, SPACING, tries);
    if (!layout.left().isEmpty()) {
      throw new IllegalStateException("no room on the roll for " + layout.left().get(0).name());
    }
    return layout.placed().stream().map(Nesting.Placed::motion).toList();
  }

  /**
   * Pieces of one direction after those of the other, which often takes less and is easier to cut.
   */
  private static List<RigidTransform> sorted(
      List<Loose> loose, List<NestedPart> parts, SheetRoom room) {
    Map<String, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < loose.size(); i++) {
      groups.computeIfAbsent(loose.get(i).ply().direction(), key -> new ArrayList<>()).add(i);
    }
    RigidTransform[] motions = new RigidTransform[parts.size()];
    double from = 0;
    for (List<Integer> group : groups.values()) {
      List<NestedPart> own = group.stream().map(parts::get).toList();
      // Pieces that are all alike gain nothing from another order.
      List<RigidTransform> laid = motions(own, room, 1);
      for (int i = 0; i < group.size(); i++) {
        motions[group.get(i)] = laid.get(i).then(RigidTransform.shift(0, from));
      }
      from += used(own, laid) - SELVEDGE + SPACING;
    }
    return List.of(motions);
  }

  private static double used(List<NestedPart> parts, List<RigidTransform> motions) {
    double used = 0;
    for (int i = 0; i < parts.size(); i++) {
      used = Math.max(used, parts.get(i).region().outer().moved(motions.get(i)).box().maxY());
    }
    return used;
  }

  private static List<String> notes(int jointed, LayupChoice choice) {
    List<String> notes = new ArrayList<>();
    if (jointed > 0) {
      notes.add(
          "the roll is too narrow for "
              + jointed
              + (jointed == 1 ? " ply" : " plies")
              + ": these are laid in pieces, edge to edge, their joints "
              + Numbers.brief(STAGGER, 0)
              + " mm apart from those of the next ply that lies alike; keep joints away from bolts"
              + " and from the narrowest webs");
    }
    if (!choice.cloth().weave().woven()) {
      notes.add("all pieces lie with their fibres along the roll; do not turn them a quarter");
    }
    return notes;
  }
}
