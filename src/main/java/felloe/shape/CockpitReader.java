package felloe.shape;

import felloe.plate.Cockpit;
import felloe.plate.Cockpit.Block;
import felloe.plate.Cockpit.Instrument;
import felloe.plate.Cockpit.Limb;
import felloe.plate.Cockpit.Room;
import felloe.plate.Cockpit.Seat;
import felloe.plate.Cockpit.Spot;
import felloe.plate.Cockpit.Thing;
import felloe.plate.Driver;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Reads where the wheel sits in the car. Whether things are in its way is asked by the cockpit. */
final class CockpitReader {

  private static final int MOST_THINGS = 24;
  private static final String NAME = "[a-z0-9][a-z0-9 -]{0,29}";

  /** Nothing of a car is farther off than this, mm. */
  private static final double FAR = 5_000;

  /** A column that rises more steeply is no car's, degrees. */
  private static final double STEEPEST = 80;

  /** No instrument is wider, mm. */
  private static final double WIDEST = 1_000;

  private static final int MOST_TURNS = 12;

  /** With a whole turn either way all is swept that can be, degrees. */
  private static final double MOST_LOCK = 360;

  /** Room that gloved fingers need behind a rim, mm: common practice. */
  private static final double CLEARANCE = 40;

  private CockpitReader() {}

  /** The cockpit; empty where the file has none, or something in it is wrong. */
  static Optional<Cockpit> read(Fields top) {
    if (!top.has("cockpit")) {
      top.allow("cockpit");
      return Optional.empty();
    }
    Fields f = top.group("cockpit");
    double column = f.angle("column").between(0, STEEPEST).required();
    double lock = f.angle("lock").between(1, MOST_LOCK).required();
    Optional<Seat> seat = f.has("seat") ? DriverReader.seat(f.group("seat")) : Optional.empty();
    double hub = hub(f, seat);
    double stack = f.length("stack").notNegative().atMost(500).or(0);
    double clearance = f.length("clearance").between(0, 300).or(CLEARANCE);
    List<Thing> things =
        f.has("things")
            ? f.list("things").atLeast(1).atMost(MOST_THINGS).each(CockpitReader::thing)
            : List.of();
    f.allow("things", "seat", "driver");
    Optional<Driver> driver =
        f.has("driver") ? DriverReader.driver(f.group("driver")) : Optional.empty();
    if (f.has("driver") && !f.has("seat")) {
      f.problem("driver", "wants a seat to sit on", "write seat with height, behind and back");
    }
    Set<String> names = new HashSet<>();
    for (Thing thing : things) {
      if (!names.add(thing.name())) {
        f.problem("things", "has two things named '" + thing.name() + "'", "rename one of them");
      }
    }
    Optional<Spot> eye = f.has("eye") ? spot(f, "eye") : Optional.empty();
    f.allow("eye", "instrument");
    Optional<Instrument> instrument =
        f.has("instrument") ? instrument(f.group("instrument"), lock) : Optional.empty();
    if (f.has("instrument") && !f.has("eye") && !f.has("driver")) {
      f.problem("instrument", "wants an eye to see it", "write eye, or seat and driver");
    }
    return f.build(
        () ->
            new Cockpit(
                Math.toRadians(column),
                Math.toRadians(lock),
                hub,
                stack,
                clearance,
                things,
                seat,
                driver,
                eye,
                instrument,
                f.place()));
  }

  private static Optional<Instrument> instrument(Fields f, double lock) {
    String name = name(f);
    Optional<Spot> at = spot(f, "at");
    Optional<String> form = f.exactlyOneOf("diameter", "width");
    boolean round = form.filter("diameter"::equals).isPresent();
    double width =
        form.map(key -> f.length(key).positive().atMost(WIDEST).required()).orElse(Double.NaN);
    double height = width;
    if (round) {
      f.allow("height");
      if (f.has("height")) {
        f.problem("height", "cannot stand beside diameter", "take it out, or write width");
      }
    } else {
      height = f.length("height").positive().atMost(WIDEST).required();
    }
    double high = height;
    double lean = f.angle("lean").between(-STEEPEST, STEEPEST).or(0);
    List<Double> turns = new ArrayList<>();
    if (f.has("turns")) {
      for (Entry entry : f.list("turns").atLeast(1).atMost(MOST_TURNS).entries()) {
        double most = Double.isNaN(lock) ? MOST_LOCK : lock;
        turns.add(Math.toRadians(entry.angle().between(-most, most).required()));
      }
    } else {
      f.allow("turns");
      turns.add(0.0);
    }
    return f.build(
        () ->
            new Instrument(
                name,
                at.orElseThrow(),
                width,
                high,
                round,
                Math.toRadians(lean),
                turns,
                f.place()));
  }

  private static String name(Fields f) {
    String name = f.text("name").required();
    if (f.has("name") && !name.isEmpty() && !name.matches(NAME)) {
      f.problem(
          "name", "must be of small letters, digits, blanks and hyphens, at most 30", "rename it");
    }
    return name;
  }

  private static double hub(Fields f, Optional<Seat> seat) {
    Optional<String> key = f.exactlyOneOf("hub_height", "hub_above_seat");
    if (key.filter("hub_above_seat"::equals).isEmpty()) {
      return key.map(k -> f.length(k).between(0, FAR).required()).orElse(Double.NaN);
    }
    double above = f.length("hub_above_seat").between(-FAR, FAR).required();
    if (!f.has("seat")) {
      f.problem("hub_above_seat", "wants a seat to be measured from", "write seat, or hub_height");
    }
    double hub = seat.map(s -> s.height() + above).orElse(Double.NaN);
    if (hub < 0) {
      f.problem("hub_above_seat", "puts the hub below the floor", "measure from the seat up");
    }
    return hub;
  }

  private static Optional<Thing> thing(Fields f) {
    String name = name(f);
    Optional<String> way = f.exactlyOneOf("box", "from");
    Optional<Room> room = way.flatMap(key -> key.equals("box") ? box(f) : limb(f));
    return f.build(() -> new Thing(name, room.orElseThrow(), f.place()));
  }

  private static Optional<Room> box(Fields f) {
    f.allow("to", "radius");
    for (String key : List.of("to", "radius")) {
      if (f.has(key)) {
        f.problem(key, "cannot stand beside box", "take it out, or write from, to and radius");
      }
    }
    Fields box = f.group("box");
    double[] x = span(box, "x");
    double[] y = span(box, "y");
    double[] z = span(box, "z");
    return box.build(() -> new Block(new Spot(x[0], y[0], z[0]), new Spot(x[1], y[1], z[1])));
  }

  private static double[] span(Fields f, String key) {
    List<Entry> ends = f.list(key).exactly(2).entries();
    if (ends.size() != 2) {
      return new double[] {Double.NaN, Double.NaN};
    }
    double low = ends.get(0).length().between(-FAR, FAR).required();
    double high = ends.get(1).length().between(-FAR, FAR).moreThan(low).required();
    return new double[] {low, high};
  }

  private static Optional<Room> limb(Fields f) {
    Optional<Spot> from = spot(f, "from");
    Optional<Spot> to = f.has("to") ? spot(f, "to") : from;
    if (!f.has("to")) {
      f.allow("to");
    }
    OptionalDouble radius = OptionalDouble.of(f.length("radius").positive().atMost(500).required());
    boolean whole = from.isPresent() && to.isPresent() && !Double.isNaN(radius.getAsDouble());
    return whole
        ? Optional.of(new Limb(from.get(), to.get(), radius.getAsDouble()))
        : Optional.empty();
  }

  private static Optional<Spot> spot(Fields f, String key) {
    List<Entry> items = f.list(key).exactly(3).entries();
    double[] n = {Double.NaN, Double.NaN, Double.NaN};
    for (int i = 0; i < items.size() && i < 3; i++) {
      n[i] = items.get(i).length().between(-FAR, FAR).required();
    }
    return Double.isNaN(n[0] + n[1] + n[2])
        ? Optional.empty()
        : Optional.of(new Spot(n[0], n[1], n[2]));
  }
}
