package felloe.hub;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** A way to make plate and hub go together, or the word that there is none. */
public sealed interface Cure {

  /** What to do, in one or two sentences. */
  String words();

  /** Whether it can be done. */
  default boolean works() {
    return true;
  }

  /**
   * One hole made larger.
   *
   * @param hole its label
   * @param from diameter now, mm
   * @param to diameter then, mm
   */
  record Opening(String hole, double from, double to) {}

  /**
   * Open holes to a clearance series.
   *
   * @param openings the holes that grow
   * @param series the series they reach
   * @param clearance room of the tightest screw then, as drawn, mm
   * @param worst the same at the worst of the tolerances, mm
   */
  record OpenHoles(List<Opening> openings, ClearanceSeries series, double clearance, double worst)
      implements Cure {

    public OpenHoles {
      openings = List.copyOf(openings);
    }

    @Override
    public String words() {
      SortedMap<Double, List<String>> bySize = new TreeMap<>();
      for (Opening opening : openings) {
        List<String> holes = bySize.getOrDefault(opening.to(), new ArrayList<>());
        holes.add(opening.hole());
        bySize.put(opening.to(), holes);
      }
      StringBuilder sizes = new StringBuilder();
      for (Map.Entry<Double, List<String>> size : bySize.entrySet()) {
        sizes
            .append(sizes.isEmpty() ? "" : "; ")
            .append(String.join(", ", size.getValue()))
            .append(" to ")
            .append(Numbers.brief(size.getKey(), 2))
            .append(" mm");
      }
      return "Open "
          + sizes
          + " ("
          + series.words()
          + "): the tightest screw then has "
          + Numbers.fixed(clearance, 2)
          + " mm all round as drawn, "
          + Numbers.fixed(worst, 2)
          + " mm at the worst of the tolerances.";
    }
  }

  /**
   * Make slots of holes.
   *
   * @param slots which ones, and how
   * @param clearance room of the tightest screw then, mm
   * @param worst the same at the worst of the tolerances, mm
   */
  record Slots(List<SlottedHole> slots, double clearance, double worst) implements Cure {

    public Slots {
      slots = List.copyOf(slots);
    }

    @Override
    public String words() {
      String each =
          slots.stream()
              .map(
                  s ->
                      s.hole()
                          + " to "
                          + Numbers.fixed(s.length(), 2)
                          + " mm over all, "
                          + Numbers.brief(s.width(), 2)
                          + " mm wide, longer toward "
                          + Numbers.brief((Math.toDegrees(s.direction()) + 360) % 360, 1)
                          + " degrees")
              .collect(Collectors.joining("; "));
      String makes = slots.size() == 1 ? "Make a slot of " : "Make slots: ";
      return makes
          + each
          + ": the tightest screw then has "
          + Numbers.fixed(clearance, 2)
          + " mm all round, "
          + Numbers.fixed(worst, 2)
          + " mm at the worst. In the shape file: slots of bolt_circles[] (of single holes: slot of"
          + " holes[]), with length and toward. A slot holds by friction alone: use washers that"
          + " cover it, and think of a new plate where the wheel must take a shock.";
    }
  }

  /**
   * Drill new holes.
   *
   * @param centres where, mm
   * @param diameter mm
   * @param turn how far the new pattern is turned from the hub's own first angle, radians
   * @param web least material left beside a new hole, mm; below zero when it cuts into something;
   *     empty when nothing lies beside it
   * @param webTo what lies on the other side of it, such as {@code H3} or {@code the outline}
   * @param least the web that is wanted, mm
   * @param clearance room of the tightest screw then, as drawn, mm
   */
  record DrillHoles(
      List<Point> centres,
      double diameter,
      double turn,
      Optional<Double> web,
      String webTo,
      double least,
      double clearance)
      implements Cure {

    public DrillHoles {
      centres = List.copyOf(centres);
    }

    @Override
    public boolean works() {
      return hasRoom() && clearance >= -HubFit.ROUNDING;
    }

    /** Whether enough material is left. */
    boolean hasRoom() {
      return web.isEmpty() || web.get() >= least;
    }

    @Override
    public String words() {
      String holes = centres.size() == 1 ? "a new hole" : centres.size() + " new holes";
      String left =
          web.filter(w -> w > 0).map(w -> Numbers.fixed(w, 1) + " mm of material").orElse("none")
              + " to "
              + webTo;
      if (!hasRoom()) {
        return "No room to drill "
            + holes
            + ": "
            + Numbers.fixed(least, 1)
            + " mm of material are wanted beside each, and that leaves "
            + left
            + ".";
      }
      if (!works()) {
        return "Drilling "
            + holes
            + " of "
            + Numbers.brief(diameter, 2)
            + " mm does not let all screws enter: the tightest lacks "
            + Numbers.fixed(-clearance, 2)
            + " mm all round.";
      }
      String how =
          Math.abs(turn) < Tolerances.SAME_DIRECTION
              ? ""
              : ", turned by " + Numbers.fixed(Math.toDegrees(turn), 1) + " degrees,";
      String at =
          centres.stream()
              .map(p -> "(" + Numbers.fixed(p.x(), 2) + ", " + Numbers.fixed(p.y(), 2) + ")")
              .collect(Collectors.joining(" "));
      return "Drill "
          + holes
          + " of "
          + Numbers.brief(diameter, 2)
          + " mm"
          + how
          + " at "
          + at
          + (web.isEmpty() ? "" : "; that leaves " + left)
          + ": the tightest screw then has "
          + Numbers.fixed(clearance, 2)
          + " mm all round as drawn.";
    }
  }

  /**
   * Open the bore for the spigot.
   *
   * @param bore its label
   * @param diameter at least, mm
   * @param web least material left beside it, mm; empty when nothing lies beside it
   * @param webTo what lies on the other side of it
   * @param least the web that is wanted, mm
   * @param enters whether the spigot then does
   */
  record OpenBore(
      String bore,
      double diameter,
      Optional<Double> web,
      String webTo,
      double least,
      boolean enters)
      implements Cure {

    @Override
    public boolean works() {
      return enters && (web.isEmpty() || web.get() >= least);
    }

    @Override
    public String words() {
      if (!enters) {
        return "No bore where the hub axis comes to lie lets the spigot in: choose another hub, or"
            + " draw the bore about its axis.";
      }
      if (!works()) {
        return "No room to open "
            + bore
            + " to "
            + Numbers.fixed(diameter, 2)
            + " mm: "
            + Numbers.fixed(least, 1)
            + " mm of material are wanted beside it, and that leaves "
            + web.filter(w -> w > 0).map(w -> Numbers.fixed(w, 1) + " mm").orElse("none")
            + " to "
            + webTo
            + "; choose another hub, or draw the plate anew.";
      }
      return "Open " + bore + " to at least " + Numbers.fixed(diameter, 2) + " mm.";
    }
  }

  /**
   * Nothing will.
   *
   * @param reason why, in one sentence
   */
  record Nothing(String reason) implements Cure {
    @Override
    public boolean works() {
      return false;
    }

    @Override
    public String words() {
      return "Nothing will mend it: " + reason;
    }
  }
}
