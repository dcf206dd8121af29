package felloe.shape;

import felloe.geometry.Box;
import felloe.geometry.Contour;
import felloe.geometry.Gap;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.SegmentIndex;
import felloe.geometry.Tolerances;
import felloe.plate.Hole;
import felloe.plate.Place;
import felloe.plate.Problem;
import felloe.plate.Sketch;
import felloe.plate.Window;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Holds every window and hole against the outline and against each other, and says which reaches
 * into which, where and by how much. What the features of one entry do alike is said once.
 */
final class PlacementCheck {

  /** After so many clashes there is no use in looking for more. */
  private static final int MOST_CLASHES = 2_000;

  /** So many clashes of two entries are measured to find the deepest. */
  private static final int MOST_MEASURED = 12;

  /** So many distances are worked out to measure clashes; those beyond are told without figures. */
  private static final long MOST_WORK = 60_000_000;

  /** Lengths below this are written as nothing, mm. */
  private static final double UNSEEN = 0.005;

  private final GeometryProblems reports;
  private final Contour outline;
  private final List<Opening> openings = new ArrayList<>();
  private final Map<Pair, List<Clash>> clashes = new LinkedHashMap<>();
  private int found;
  private long work;

  PlacementCheck(GeometryProblems reports, Contour outline) {
    this.reports = reports;
    this.outline = outline;
  }

  private record Opening(String name, Contour contour, Box box, Place place) {

    Opening(String name, Contour contour, Place place) {
      this(name, contour, contour.box(), place);
    }

    Point start() {
      return contour.segments().get(0).from();
    }
  }

  private enum How {
    MEETS,
    LIES_IN,
    LIES_ROUND
  }

  /** Clashes of the same kind between the features of the same two entries. */
  private record Pair(Place later, Place earlier, How how) {}

  /** An opening that clashes with an earlier one, or with the outline when that is null. */
  private record Clash(Opening later, Opening earlier, How how) {}

  /** Checks all openings, reports what is wrong, and tells where. */
  List<Sketch.Clash> check(List<Window> windows, List<Hole> holes) {
    for (Window w : windows) {
      openings.add(new Opening(w.use().words() + " " + w.label(), w.contour(), w.place()));
    }
    for (Hole h : holes) {
      openings.add(new Opening(h.role().words() + " " + h.label(), h.contour(), h.place()));
    }
    if (!openings.isEmpty()) {
      find();
    }
    return clashes.values().stream().map(this::report).toList();
  }

  private void find() {
    List<Contour> contours = new ArrayList<>(openings.stream().map(Opening::contour).toList());
    contours.add(outline);
    SegmentIndex index = SegmentIndex.of(contours);
    int[] owners =
        IntStream.range(0, contours.size())
            .flatMap(c -> contours.get(c).segments().stream().mapToInt(s -> c))
            .toArray();
    Box edge = outline.box();
    for (int i = 0; i < openings.size() && found < MOST_CLASHES; i++) {
      BitSet met = met(i, index, owners);
      againstOutline(openings.get(i), met.get(openings.size()), edge);
      for (int j = 0; j < i && found < MOST_CLASHES; j++) {
        againstEachOther(openings.get(i), openings.get(j), met.get(j));
      }
    }
  }

  /** The numbers of the contours before an opening, and of the outline, whose lines it meets. */
  private BitSet met(int opening, SegmentIndex index, int[] owners) {
    BitSet met = new BitSet();
    openings
        .get(opening)
        .contour()
        .segments()
        .forEach(
            segment ->
                index.touching(
                    segment.box().grown(Tolerances.SAME_POINT),
                    k -> {
                      int other = owners[k];
                      boolean asked = other < opening || other == openings.size();
                      if (asked
                          && !met.get(other)
                          && Gap.between(segment, index.get(k)).distance()
                              <= Tolerances.SAME_POINT) {
                        met.set(other);
                      }
                    }));
    return met;
  }

  private void againstOutline(Opening opening, boolean meets, Box edge) {
    if (meets) {
      add(new Clash(opening, null, How.MEETS));
    } else if (opening.box.contains(edge.centre()) && opening.contour.contains(start(outline))) {
      add(new Clash(opening, null, How.LIES_ROUND));
    } else if (!edge.contains(opening.start()) || !outline.contains(opening.start())) {
      add(new Clash(opening, null, How.LIES_IN));
    }
  }

  private void againstEachOther(Opening later, Opening earlier, boolean meets) {
    if (meets) {
      add(new Clash(later, earlier, How.MEETS));
    } else if (earlier.box.contains(later.start()) && earlier.contour.contains(later.start())) {
      add(new Clash(later, earlier, How.LIES_IN));
    } else if (later.box.contains(earlier.start()) && later.contour.contains(earlier.start())) {
      add(new Clash(later, earlier, How.LIES_ROUND));
    }
  }

  private static Point start(Contour contour) {
    return contour.segments().get(0).from();
  }

  private void add(Clash clash) {
    found++;
    Place earlier = clash.earlier == null ? null : clash.earlier.place;
    clashes
        .computeIfAbsent(new Pair(clash.later.place, earlier, clash.how), k -> new ArrayList<>())
        .add(clash);
  }

  private Sketch.Clash report(List<Clash> alike) {
    Clash worst = alike.get(0);
    Penetration depth = depth(worst);
    for (Clash clash : alike.subList(1, Math.min(alike.size(), MOST_MEASURED))) {
      Penetration other = depth(clash);
      if (other.by() > depth.by() + Tolerances.SAME_POINT) {
        worst = clash;
        depth = other;
      }
    }
    String others = alike.size() == 1 ? "" : " (and " + (alike.size() - 1) + " more like it)";
    Problem problem =
        new Problem(
            worst.later.place,
            worst.later.name,
            "",
            (worst.earlier == null ? outside(worst, depth) : into(worst, depth)) + others,
            cure(worst));
    reports.add(problem);
    return new Sketch.Clash(problem, depth.at());
  }

  private Penetration depth(Clash clash) {
    Contour other = clash.earlier == null ? outline : clash.earlier.contour;
    return depth(clash.later.contour, other, clash.earlier != null);
  }

  private Penetration depth(Contour of, Contour in, boolean inside) {
    work += Penetration.work(of, in);
    return work > MOST_WORK
        ? new Penetration(start(of), Double.POSITIVE_INFINITY)
        : Penetration.deepest(of, in, inside);
  }

  private static String outside(Clash clash, Penetration depth) {
    return switch (clash.how) {
      case LIES_ROUND -> "lies round the whole outline";
      case LIES_IN -> "lies outside the outline, near " + depth.at() + " mm";
      case MEETS ->
          depth.by() < UNSEEN
              ? "touches the outline from inside, near " + depth.at() + " mm"
              : "reaches " + by(depth) + "outside the outline, near " + depth.at() + " mm";
    };
  }

  private String into(Clash clash, Penetration depth) {
    Opening earlier = clash.earlier;
    String which =
        earlier.name + " (" + GeometryProblems.where(earlier.place, clash.later.place) + ")";
    return switch (clash.how) {
      case LIES_IN -> "lies inside " + which + ", near " + depth.at() + " mm";
      case LIES_ROUND -> "lies round " + which + ", near " + earlier.start() + " mm";
      case MEETS -> {
        if (depth.by() >= UNSEEN) {
          yield "reaches " + by(depth) + "into " + which + ", near " + depth.at() + " mm";
        }
        boolean same = depth(earlier.contour, clash.later.contour, true).by() < UNSEEN;
        yield same && near(clash.later.box, earlier.box)
            ? "lies exactly on " + which
            : "touches "
                + which
                + ", near "
                + clash.later.contour.gap(earlier.contour).from()
                + " mm";
      }
    };
  }

  private static boolean near(Box a, Box b) {
    return a.grown(UNSEEN).contains(b.centre())
        && Math.abs(a.width() - b.width()) < UNSEEN
        && Math.abs(a.height() - b.height()) < UNSEEN
        && a.centre().distance(b.centre()) < UNSEEN;
  }

  private static String cure(Clash clash) {
    if (clash.earlier == null) {
      return "move it inward or make it smaller";
    }
    if (clash.earlier.place.equals(clash.later.place)) {
      return "both come from this entry: make them fewer, smaller or farther apart";
    }
    return clash.how == How.MEETS
        ? "move one of them or make it smaller"
        : "leave one of them out or move it";
  }

  private static String by(Penetration depth) {
    return Double.isInfinite(depth.by()) ? "" : Numbers.brief(depth.by(), 2) + " mm ";
  }
}
