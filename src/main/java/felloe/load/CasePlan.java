package felloe.load;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.Region;
import felloe.geometry.Tolerances;
import felloe.plate.BadInput;
import felloe.plate.LoadWish;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Problem;
import felloe.yaml.Nearest;
import felloe.yaml.Problems;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The load cases of a plate.
 *
 * @param cases those that are reckoned
 * @param leftOut usual cases that the plate has no place for, in sentences
 */
public record CasePlan(List<Planned> cases, List<String> leftOut) {

  /** A fall is reckoned with this force first, N, since the plate's springing tells its own. */
  static final double TRIAL = 100;

  /** Copies the lists. */
  public CasePlan {
    cases = List.copyOf(cases);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * A load case with what its margin is told by.
   *
   * @param load the case
   * @param factor by which the load is multiplied for its margin
   * @param fall the fall that the force is to follow from, if it is one
   * @param own whether the shape file gives it
   */
  public record Planned(LoadCase load, double factor, Optional<Fall> fall, boolean own) {}

  /**
   * The cases of a plate: the usual ones, of which the shape file's stand in for those of the same
   * name, and then its others.
   *
   * @param only names of the cases that are asked for; empty for all
   * @param asked where they were asked for
   * @param factor on the loads
   * @throws BadInput with every force that is not on the plate, and names that are not known
   */
  public static CasePlan of(
      Plate plate, CaseBook book, HubHold hold, double factor, List<String> only, Place asked) {
    return new Maker(plate, book, hold, factor, new HashSet<>(only)).make(only, asked);
  }

  private static final class Maker {
    private final Plate plate;
    private final Region region;
    private final CaseBook book;
    private final HubHold hold;
    private final double factor;
    private final Set<String> only;
    private final Problems problems = new Problems();
    private final List<Planned> cases = new ArrayList<>();
    private final List<String> leftOut = new ArrayList<>();

    Maker(Plate plate, CaseBook book, HubHold hold, double factor, Set<String> only) {
      this.plate = plate;
      this.region = plate.region();
      this.book = book;
      this.hold = hold;
      this.factor = factor;
      this.only = only;
    }

    CasePlan make(List<String> asked, Place place) {
      List<LoadWish.Case> own = new ArrayList<>(plate.load().cases());
      Set<String> known = new HashSet<>(book.names());
      known.addAll(book.sets());
      own.forEach(c -> known.add(c.name()));
      refuseUnknown(asked, known, place);
      for (CaseBook.Usual usual : book.cases()) {
        Optional<LoadWish.Case> instead =
            own.stream().filter(c -> c.name().equals(usual.name())).findFirst();
        if (instead.isPresent()) {
          own.remove(instead.get());
          add(instead.get());
        } else if (asked(usual)) {
          add(usual);
        }
      }
      own.forEach(this::add);
      if (cases.isEmpty() && problems.none()) {
        problems.add(
            new Problem(
                place.equals(Place.BUILT_IN) ? Place.ofFile(plate.stock().place().file()) : place,
                "load.cases",
                "",
                "has no case that the plate can be loaded with",
                "give one of your own, such as {name: pull, at: [140, 0], force: [0, 0, 400]}"));
      }
      problems.throwIfAny();
      return new CasePlan(cases, leftOut);
    }

    /** By its name, by its set's, or because it is judged where nobody asks. */
    private boolean asked(CaseBook.Usual usual) {
      return only.isEmpty()
          ? book.judged(usual)
          : only.contains(usual.name()) || only.contains(usual.set());
    }

    private void refuseUnknown(List<String> asked, Set<String> known, Place place) {
      List<String> names = known.stream().sorted().toList();
      for (String name : asked) {
        if (!known.contains(name)) {
          String near = Nearest.to(name, names).map(n -> "did you mean '" + n + "'? ").orElse("");
          problems.add(
              new Problem(
                  place, "", name, "is no load case", near + "known: " + String.join(", ", names)));
        }
      }
    }

    private void add(CaseBook.Usual usual) {
      List<HandForce> forces = new ArrayList<>();
      // Nearer, a hand would lie on the hub.
      double nearest = hold.radius() + book.breadth().value() / 2;
      for (CaseBook.Hand hand : usual.hands()) {
        Optional<Point> at = HandPlace.on(region, Math.toRadians(hand.clock()), book.rim().value());
        if (at.filter(p -> p.norm() > nearest).isEmpty()) {
          leftOut.add(
              usual.name()
                  + " ("
                  + usual.title()
                  + "): no rim to hold at "
                  + clock(hand.clock())
                  + " o'clock");
          return;
        }
        double times =
            usual.fall().isPresent() ? TRIAL : usual.strong() ? book.strong().value() : 1;
        forces.add(
            new HandForce(rounded(at.get()), times * hand.x(), times * hand.y(), times * hand.z()));
      }
      if (usual.turn().isPresent()) {
        turn(usual.turn().get(), forces);
      }
      String basis =
          usual.strong()
              ? usual.basis()
                  + "; times "
                  + Numbers.brief(book.strong().value(), 2)
                  + " for a strong driver"
              : usual.basis();
      LoadCase load =
          new LoadCase(usual.name(), usual.title(), forces, book.breadth().value(), basis);
      cases.add(new Planned(load, usual.fall().isPresent() ? 1 : factor, usual.fall(), false));
    }

    /** Brings forces to a moment about the hub axis, told over the wheel's diameter. */
    private void turn(double perDiameter, List<HandForce> forces) {
      double moment = 0;
      for (HandForce f : forces) {
        moment += f.at().x() * f.y() - f.at().y() * f.x();
      }
      double times = perDiameter * 2 * region.outer().farthest(Point.ORIGIN) / moment;
      forces.replaceAll(
          f ->
              new HandForce(
                  f.at(), rounded(times * f.x()), rounded(times * f.y()), rounded(times * f.z())));
    }

    /** To a thousandth, as a place is. */
    private static double rounded(double force) {
      return Math.rint(force * 1e3) / 1e3 + 0.0;
    }

    /** To a thousandth of a millimetre: a sine of half a turn must not show. */
    private static Point rounded(Point p) {
      return new Point(Math.rint(p.x() * 1e3) / 1e3 + 0.0, Math.rint(p.y() * 1e3) / 1e3 + 0.0);
    }

    private static String clock(double degrees) {
      double hours = ((90 - degrees) / 30 + 24) % 12;
      return Numbers.brief(hours == 0 ? 12 : hours, 2);
    }

    private void add(LoadWish.Case own) {
      List<HandForce> forces = new ArrayList<>();
      for (LoadWish.Force force : own.forces()) {
        place(force)
            .ifPresent(at -> forces.add(new HandForce(at, force.x(), force.y(), force.z())));
      }
      boolean wanted = only.isEmpty() || only.contains(own.name());
      if (wanted && forces.size() == own.forces().size()) {
        boolean clocks = own.forces().stream().allMatch(f -> f.clock().isPresent());
        double patch = own.patch().orElse(clocks ? book.breadth().value() : 0.0);
        LoadCase load =
            new LoadCase(own.name(), own.name(), forces, patch, "set in the shape file");
        cases.add(new Planned(load, factor, Optional.empty(), true));
      }
    }

    private Optional<Point> place(LoadWish.Force force) {
      Optional<Point> at =
          force
              .at()
              .or(
                  () ->
                      HandPlace.on(
                              region,
                              Math.toRadians(force.clock().orElseThrow()),
                              book.rim().value())
                          .map(Maker::rounded));
      String wanted = null;
      if (at.isEmpty() || !isOn(at.get())) {
        wanted = "is not on the plate";
      } else if (hold.holds(at.get())) {
        wanted = "is where the hub holds the plate, so that nothing bends";
      }
      if (wanted != null) {
        String value = at.map(Point::toString).orElseGet(() -> clock(force.clock().get()));
        problems.add(
            new Problem(force.place(), force.path(), value, wanted, "move it onto the rim"));
        return Optional.empty();
      }
      return at;
    }

    private boolean isOn(Point p) {
      return region.contains(p)
          || region.contours().stream().anyMatch(c -> c.distance(p) <= Tolerances.SAME_POINT);
    }
  }
}
