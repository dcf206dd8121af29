package felloe.shape;

import felloe.geometry.Numbers;
import felloe.geometry.Tolerances;
import felloe.plate.Grip;
import felloe.plate.Grip.Faces;
import felloe.plate.Grip.Form;
import felloe.plate.Grip.GripMaterial;
import felloe.plate.Grip.Profile;
import felloe.plate.Grip.Stretch;
import felloe.plate.Grip.Swell;
import felloe.plate.Grip.Taper;
import felloe.plate.Grip.ThumbRest;
import felloe.plate.Hole;
import felloe.plate.HoleRole;
import felloe.plate.Material;
import felloe.plate.Place;
import felloe.yaml.Entry;
import felloe.yaml.Fields;
import felloe.yaml.Nearest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads the grips. Whether they fit on the rim is found where their geometry is known; here each
 * figure is held against the others of its grip.
 */
final class GripReader {

  private static final int MOST_ITEMS = 12;

  /** No grip is higher or reaches farther past the edge, mm: hands do not close about it. */
  private static final double MOST = 60;

  private static final double WIDEST = 200;
  private static final double LONGEST = 2_000;

  /** How far a grip goes on past its outermost holes when the file does not say, mm. */
  private static final double BEYOND = 15;

  /** Height of a grip above a face when the file does not say, mm: common practice. */
  private static final double HEIGHT = 10;

  /** Its rounding when the file does not say, mm: common practice for what hands close about. */
  private static final double ROUND = 5;

  private static final String[] FIGURES = {
    "past_edge",
    "over",
    "front",
    "back",
    "round",
    "inner_round",
    "wrap",
    "along",
    "between",
    "all_round",
    "swell",
    "thumb_rest",
    "taper",
    "faces",
    "bonded"
  };

  private final Labels labels;
  private final Map<String, Hole> holes = new LinkedHashMap<>();
  private final List<Grip> grips = new ArrayList<>();
  private Optional<GripMaterials> materials = Optional.empty();

  GripReader(Labels labels, List<Hole> holes) {
    this.labels = labels;
    holes.forEach(hole -> this.holes.put(hole.label(), hole));
  }

  /**
   * Reads the list {@code grips}.
   *
   * @param gripScale thickness of the flat scales that the file also has, mm; 0 for none
   */
  List<Grip> read(Fields top, double gripScale) {
    List<Fields> items = top.list("grips").atMost(MOST_ITEMS).mappings();
    if (!items.isEmpty() && gripScale > 0) {
      top.problem(
          "grips",
          "cannot stand beside making.grip_scale, which lays flat scales on both faces",
          "take making.grip_scale out, and say 'form: scale' here");
    }
    for (Fields f : items) {
      materials = materials.or(() -> Optional.of(GripMaterials.builtIn()));
      item(f, materials.get());
    }
    return List.copyOf(grips);
  }

  private void item(Fields f, GripMaterials known) {
    Map<String, Place> places = new HashMap<>();
    for (String key : FIGURES) {
      if (f.has(key)) {
        places.put(key, f.place(key));
      }
    }
    boolean mirror = f.bool("mirror").or(false);
    Optional<Stretch> along = stretch(f);
    Optional<Stretch> image = mirror ? along.flatMap(a -> image(f, a)) : Optional.empty();
    Form form = f.oneOf("form", Form.class).or(Form.SHELL);
    Faces faces = f.oneOf("faces", Faces.class).or(Faces.BOTH);
    Optional<Profile> profile = profile(f, faces);
    Optional<Swell> swell = swell(f, faces, places);
    Optional<ThumbRest> thumb = thumb(f, faces, profile);
    Optional<Taper> taper = taper(f, faces, profile);
    double wrap = f.length("wrap").notNegative().atMost(10).or(0);
    GripMaterial material = material(f, known);
    boolean bonded = f.bool("bonded").or(false);
    String label = Labels.read(f);
    if (form == Form.SCALE) {
      for (String key : List.of("swell", "thumb_rest", "taper")) {
        if (f.has(key)) {
          f.problem(key, "belongs to a shell: a scale is flat", "write 'form: shell', or leave it");
        }
      }
    }
    if (!f.done() || along.isEmpty() || profile.isEmpty()) {
      return;
    }
    wrapped(f, profile.get(), faces, wrap);
    if (!f.good()) {
      return;
    }
    String wish = labels.wish(f, label, mirror ? 2 : 1);
    grips.add(
        new Grip(
            labels.granted(wish, "GR"),
            f.path(),
            along.get(),
            form,
            faces,
            profile.get(),
            swell,
            thumb,
            taper,
            wrap,
            material,
            bonded,
            f.place(),
            places));
    if (image.isPresent()) {
      grips.add(
          new Grip(
              labels.granted(wish, "GR"),
              f.path(),
              image.get(),
              form,
              faces,
              profile.get(),
              swell.map(
                  s -> new Swell(mirrored(s.at()), s.length(), s.front(), s.back(), s.edge())),
              thumb.map(t -> new ThumbRest(mirrored(t.at()), t.length(), t.depth())),
              taper,
              wrap,
              material,
              bonded,
              f.place(),
              places));
    }
  }

  private static double mirrored(double direction) {
    return Math.PI - direction;
  }

  private Optional<Stretch> stretch(Fields f) {
    Optional<String> way = f.exactlyOneOf("along", "between", "all_round");
    if (way.isEmpty()) {
      return Optional.empty();
    }
    switch (way.get()) {
      case "along":
        Fields clocks = f.group("along");
        double from = clocks.clock("from").required();
        double to = clocks.clock("to").required();
        if (clocks.good() && from == to) {
          clocks.problem("to", "must be another direction than 'from'", "or write all_round: true");
        }
        return clocks.build(() -> new Grip.BetweenClocks(Math.toRadians(from), Math.toRadians(to)));
      case "between":
        Fields named = f.group("between");
        Optional<String> first = hole(named, "from");
        Optional<String> last = hole(named, "to");
        double beyond = named.length("beyond").notNegative().atMost(WIDEST).or(BEYOND);
        if (named.good() && first.isPresent() && first.equals(last)) {
          named.problem("to", "must be another hole than 'from'", "");
        }
        named.done();
        return named.good() && first.isPresent() && last.isPresent()
            ? Optional.of(new Grip.BetweenHoles(first.get(), last.get(), beyond))
            : Optional.empty();
      default:
        if (!f.bool("all_round").required()) {
          f.problem("all_round", "must be true", "or write along: {from: 1, to: 5}");
        }
        return Optional.of(new Grip.AllRound());
    }
  }

  private Optional<String> hole(Fields f, String key) {
    String label = f.text(key).required();
    if (!label.isEmpty() && !holes.isEmpty() && !holes.containsKey(label)) {
      List<String> grips =
          holes.values().stream().filter(h -> h.role() == HoleRole.GRIP).map(Hole::label).toList();
      f.problem(
          key,
          "is the label of no hole",
          Nearest.to(label, List.copyOf(holes.keySet()))
                  .map(n -> "did you mean '" + n + "'? ")
                  .orElse("")
              + (grips.isEmpty()
                  ? "the plate has no grip holes; write along: {from: 1, to: 5}"
                  : "grip holes: " + String.join(", ", grips)));
      return Optional.empty();
    }
    return Optional.ofNullable(holes.get(label)).map(Hole::label);
  }

  /** The image of a stretch in the upright middle line, where it has one of its own. */
  private Optional<Stretch> image(Fields f, Stretch along) {
    if (along instanceof Grip.BetweenClocks c) {
      return Optional.of(new Grip.BetweenClocks(mirrored(c.to()), mirrored(c.from())));
    }
    if (along instanceof Grip.BetweenHoles b) {
      Optional<String> from = imageOf(f, b.to());
      Optional<String> to = imageOf(f, b.from());
      return from.isPresent() && to.isPresent()
          ? Optional.of(new Grip.BetweenHoles(from.get(), to.get(), b.beyond()))
          : Optional.empty();
    }
    f.problem("mirror", "makes the grip meet its own image", "leave 'mirror' out");
    return Optional.empty();
  }

  private Optional<String> imageOf(Fields f, String label) {
    Hole hole = holes.get(label);
    Optional<String> image =
        holes.values().stream()
            .filter(h -> h.centre().near(Placing.mirrored(hole.centre()), Tolerances.SAME_POINT))
            .map(Hole::label)
            .findFirst();
    if (image.isEmpty()) {
      f.problem(
          "mirror",
          "needs holes on the other side: " + label + " has no image",
          "mirror the holes too, or write each grip by itself");
    }
    return image;
  }

  private static Optional<Profile> profile(Fields f, Faces faces) {
    double past = f.length("past_edge").notNegative().atMost(MOST).or(0);
    double over = f.length("over").positive().atMost(WIDEST).required();
    double front = height(f, "front", faces != Faces.BACK);
    double back = height(f, "back", faces != Faces.FRONT);
    double round = f.length("round").notNegative().atMost(MOST).or(ROUND);
    double lowest =
        faces == Faces.FRONT ? front : faces == Faces.BACK ? back : Math.min(front, back);
    double inner = f.length("inner_round").notNegative().atMost(MOST).or(Math.min(round, lowest));
    return f.good()
        ? Optional.of(new Profile(past, over, front, back, round, inner))
        : Optional.empty();
  }

  private static double height(Fields f, String key, boolean there) {
    if (!there && f.has(key)) {
      f.problem(key, "is a height on a face that the grip does not lie on", "see 'faces'");
    }
    double height = f.length(key).positive().atMost(MOST).or(HEIGHT);
    return there ? height : 0;
  }

  private static Optional<Swell> swell(Fields f, Faces faces, Map<String, Place> places) {
    if (!f.has("swell")) {
      f.allow("swell");
      return Optional.empty();
    }
    Fields g = f.group("swell");
    double at = g.clock("at").required();
    double length = g.length("length").atLeast(5).atMost(LONGEST).required();
    double front = g.length("front").notNegative().atMost(MOST).or(0);
    double back = g.length("back").notNegative().atMost(MOST).or(0);
    double edge = g.length("edge").notNegative().atMost(MOST).or(0);
    if (g.good() && front + back + edge == 0) {
      f.problem("swell", "adds nothing", "give it front, back or edge");
    }
    if (g.good() && (front > 0 && faces == Faces.BACK || back > 0 && faces == Faces.FRONT)) {
      g.problem(
          front > 0 ? "front" : "back",
          "is on a face that the grip does not lie on",
          "see 'faces'");
    }
    return g.build(() -> new Swell(Math.toRadians(at), length, front, back, edge));
  }

  private static Optional<ThumbRest> thumb(Fields f, Faces faces, Optional<Profile> profile) {
    if (!f.has("thumb_rest")) {
      f.allow("thumb_rest");
      return Optional.empty();
    }
    Fields g = f.group("thumb_rest");
    double at = g.clock("at").required();
    double length = g.length("length").atLeast(5).atMost(LONGEST).required();
    double depth = g.length("depth").positive().atMost(MOST).required();
    if (faces == Faces.BACK) {
      f.problem(
          "thumb_rest", "is a flat in the front, where the grip does not lie", "leave it out");
    }
    profile
        .filter(p -> g.good() && faces != Faces.BACK && depth >= p.front())
        .ifPresent(
            p ->
                g.problem(
                    "depth",
                    "must be less than "
                        + Numbers.brief(p.front(), 3)
                        + " mm here (the height in front)",
                    "lower it"));
    return g.build(() -> new ThumbRest(Math.toRadians(at), length, depth));
  }

  private static Optional<Taper> taper(Fields f, Faces faces, Optional<Profile> profile) {
    if (!f.has("taper")) {
      f.allow("taper");
      return Optional.empty();
    }
    Fields g = f.group("taper");
    double length = g.length("length").positive().atMost(LONGEST).required();
    double to = g.length("to").positive().atMost(MOST).required();
    profile.ifPresent(
        p -> {
          double low =
              faces == Faces.FRONT
                  ? p.front()
                  : faces == Faces.BACK ? p.back() : Math.min(p.front(), p.back());
          if (g.good() && to > low) {
            g.problem(
                "to",
                "must be at most " + Numbers.brief(low, 3) + " mm here (the grip's height)",
                "lower it");
          }
        });
    return g.build(() -> new Taper(length, to));
  }

  private static GripMaterial material(Fields f, GripMaterials known) {
    String[] names = known.names().toArray(String[]::new);
    Entry entry = f.entry("material");
    String name = entry.oneOf(names).required();
    GripMaterial material = known.find(name).orElseThrow();
    if (f.has("density")) {
      double own = f.number("density").positive().atMost(25).required();
      if (f.good()) {
        return new GripMaterial(
            material.name(),
            material.title(),
            material.kind(),
            own,
            material.modulus(),
            Material.OWN);
      }
    }
    f.allow("density");
    return material;
  }

  /** What the wrap takes off must leave something. */
  private static void wrapped(Fields f, Profile p, Faces faces, double wrap) {
    double low =
        faces == Faces.FRONT
            ? p.front()
            : faces == Faces.BACK ? p.back() : Math.min(p.front(), p.back());
    if (wrap > 0 && (wrap >= low || 2 * wrap >= p.over() + p.pastEdge())) {
      f.problem(
          "wrap",
          "leaves nothing of the grip: its figures are those over the wrap",
          "make the grip higher and wider, or the wrap thinner");
    }
  }
}
