package felloe.report;

import felloe.document.Block.Depth;
import felloe.document.Block.Figure;
import felloe.document.Block.Steps;
import felloe.document.Block.Tone;
import felloe.document.Phrase;
import felloe.document.Quantity;
import felloe.document.Report;
import felloe.document.Rows;
import felloe.document.Telling;
import felloe.drawing.Cautions;
import felloe.drawing.Picture;
import felloe.geometry.Numbers;
import felloe.grips.GripBody;
import felloe.grips.GripStation;
import felloe.grips.GripWrap;
import felloe.grips.PlacedGrip;
import felloe.grips.Pocket;
import felloe.plate.Dust;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Grip;
import felloe.plate.MaterialKind;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.service.GripsOutcome;
import felloe.service.GripsOutcome.Described;
import felloe.service.PlateCutting;
import felloe.solid.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The grips of a plate, told: what they weigh, how they feel, how they are made. */
public final class GripsReport {

  private static final String HOT =
      "A printer's nozzle and bed burn, and molten plastic fumes: keep hands away, air the room.";

  private static final String HOLD =
      "A grip that turns or comes off in a bend is as bad as a wheel that breaks. Pull and twist"
          + " each one by hand before every drive.";

  private GripsReport() {}

  /** The figures, told. */
  public static Report of(GripsOutcome outcome) {
    return Unfit.warned(outcome.study(), told(outcome).under(title(outcome)));
  }

  /** The same with the picture of the finished wheel, for pages. */
  public static Report of(GripsOutcome outcome, List<GripBody> bodies, Picture finished) {
    Telling told = new Telling();
    told.add(new Figure(finished));
    told.add(told(outcome));
    if (!bodies.isEmpty()) {
      told.head("Bodies").add(bodies(bodies));
    }
    return Unfit.warned(outcome.study(), told.under(title(outcome)));
  }

  private static String title(GripsOutcome outcome) {
    return Words.title(outcome.study().plate(), "grips");
  }

  private static Telling told(GripsOutcome outcome) {
    Telling told = new Telling();
    Plate plate = outcome.study().plate();
    if (outcome.grips().isEmpty()) {
      told.verdict(
          Tone.NOTE,
          "No grips are described: {}.",
          plate.making().gripScale() > 0
              ? Phrase.of(
                  "making.grip_scale lays a plain scale of {} on each face",
                  Quantity.mm(plate.making().gripScale()))
              : "the plate is held bare");
      if (!plate.bodies().isEmpty()) {
        balance(outcome, told);
      }
      told.say("Write a section grips to shape them, print them or saw them: see docs/grips.md.");
      return told;
    }
    verdict(outcome, told);
    told.add(grips(outcome));
    balance(outcome, told);
    told.head("How they are made").add(new Steps(steps(outcome), true));
    pockets(outcome, told);
    wraps(outcome, told);
    told.fold(Depth.ALL, girths(outcome));
    told.fold(Depth.SOURCES, sources(outcome));
    told.cautions(cautions(outcome));
    return told;
  }

  private static void verdict(GripsOutcome outcome, Telling told) {
    List<Finding> girths =
        outcome.study().findings().stream()
            .filter(f -> f.rule().startsWith("grip-girth") || f.rule().startsWith("finger-"))
            .toList();
    Verdict worst =
        girths.stream().map(Finding::verdict).max(Comparator.naturalOrder()).orElse(Verdict.PASS);
    double least = girth(outcome, Comparator.comparingDouble(s -> s.girth().orElseThrow()));
    double most = girth(outcome, Comparator.comparingDouble(s -> -s.girth().orElseThrow()));
    told.verdict(
        worst == Verdict.PASS ? Tone.WELL : worst == Verdict.FAIL ? Tone.FAIL : Tone.CAUTION,
        "{}, {} together. {}",
        Phrase.count(outcome.grips().size(), "grip"),
        Quantity.grams(outcome.mass()),
        Double.isNaN(least)
            ? "Fingers go round none of them: beside them is no window for a hand."
            : Phrase.of(
                "Once round, where hands hold: {} to {}{}.",
                Quantity.fixed(least, 1, "mm"),
                Quantity.fixed(most, 1, "mm"),
                worst == Verdict.PASS ? "" : "; felloe check tells what does not suit"));
  }

  private static double girth(GripsOutcome outcome, Comparator<GripStation> order) {
    return outcome.grips().stream()
        .flatMap(grip -> grip.held().stream())
        .min(order)
        .flatMap(GripStation::girth)
        .orElse(Double.NaN);
  }

  private static Rows<Described> grips(GripsOutcome outcome) {
    return Rows.of(outcome.grips())
        .words("grip", g -> g.placed().grip().label())
        .words("form", g -> form(g.placed().grip()))
        .words("of", g -> g.placed().grip().material().title())
        .fixed("length", "mm", 1, g -> g.placed().run().length())
        .fixed("mass", "g", 1, g -> g.weight().mass())
        .words("screws", g -> String.valueOf(g.placed().holes().size()))
        .words("on the plate", g -> g.placed().grip().bonded() ? "bonded" : "screwed");
  }

  private static String form(Grip grip) {
    String faces =
        switch (grip.faces()) {
          case FRONT -> "front";
          case BACK -> "back";
          case BOTH -> "both faces";
        };
    return (grip.form() == Grip.Form.SCALE ? "scale, " : "shell, ") + faces;
  }

  private static void balance(GripsOutcome outcome, Telling told) {
    GripsOutcome.Wheel wheel = outcome.wheel();
    told.say(
        "The wheel with {}: {}, centre of mass at {} from the hub axis, {} about it;"
            + " the bare plate has {}. {}come on top.",
        outcome.study().plate().bodies().isEmpty()
            ? "its grips"
            : outcome.grips().isEmpty()
                ? "what sits in its openings"
                : "its grips and what sits in its openings",
        Quantity.grams(wheel.mass()),
        Phrase.at(wheel.centre()),
        Quantity.fixed(wheel.inertia() / 1e9, 5, "kg m2"),
        Quantity.fixed(wheel.plateInertia() / 1e9, 5, "kg m2"),
        outcome.study().plate().bodies().stream().anyMatch(body -> body.mass().isEmpty())
            ? "Screws, wrap, wires and bodies without a mass "
            : "Screws and wrap ");
  }

  /** Why a flat scale has no program, on one line; empty where it has one. */
  public static Optional<String> lacks(PlateCutting.Usual scale) {
    return scale
        .refused()
        .map(
            why ->
                Phrase.of(
                    "{} has no router program: {}.", scale.plate().name(), CutReport.lacks(why)));
  }

  private static List<String> steps(GripsOutcome outcome) {
    List<String> steps = new ArrayList<>();
    Set<Grip.Form> forms = new LinkedHashSet<>();
    boolean bonded = false;
    boolean wrapped = false;
    for (Described one : outcome.grips()) {
      forms.add(one.placed().grip().form());
      bonded |= one.placed().grip().bonded();
      wrapped |= one.placed().grip().wrap() > 0;
    }
    if (forms.contains(Grip.Form.SHELL)) {
      steps.add(
          "Print each shell with the side toward the plate down, as its file has it, walls and"
              + " floor solid where screws sit. Under a lip it wants supports.");
      steps.add(
          "Try it on the plate: a lip goes over the edge with play, tongues go into their"
              + " sockets.");
    }
    if (forms.contains(Grip.Form.SCALE)) {
      steps.add(
          "Saw each scale along its template, or have it milled from its program, which it has"
              + " where a router can cut it as usual; the two of a pair clamped together, faces as"
              + " they lie on the plate.");
      steps.add("Round its edges when it sits on the plate: outer " + rounds(outcome) + ".");
    }
    steps.add("Drill grip holes through the plate first; scales and shells take theirs from it.");
    if (bonded) {
      steps.add(
          "To bond: roughen both faces, wipe them clean, glue over the whole face with a structural"
              + " epoxy, clamp by the screws, let it cure as its sheet says.");
    }
    steps.add("Put the screws in to their torque; felloe drill tells length and torque.");
    if (wrapped) {
      steps.add(
          "Wrap it last: cut leather by the pattern, turn the seams under on the fold lines, stitch"
              + " stitch by stitch from the middle to both ends.");
    }
    return steps;
  }

  private static String rounds(GripsOutcome outcome) {
    return String.join(
        ", ",
        outcome.grips().stream()
            .map(g -> g.placed().grip())
            .filter(g -> g.form() == Grip.Form.SCALE)
            .map(
                g ->
                    Phrase.of(
                        "{} and inner {} ({})",
                        Quantity.mm(g.profile().round()),
                        Quantity.mm(g.profile().innerRound()),
                        g.label()))
            .toList());
  }

  private static void pockets(GripsOutcome outcome, Telling told) {
    List<Pocket> all = outcome.grips().stream().flatMap(g -> g.pockets().stream()).toList();
    if (all.isEmpty()) {
      return;
    }
    told.head("Let into them")
        .add(
            Rows.of(all)
                .words("hole", Pocket::hole)
                .words("face", p -> p.face() == Face.FRONT ? "front" : "back")
                .words("for", Pocket::what)
                .words(
                    "form",
                    p ->
                        p.cone().isPresent()
                            ? "cone"
                            : p.form() == Pocket.Form.ROUND ? "round" : "hexagon, across flats")
                .fixed("size", "mm", 1, Pocket::size)
                .fixed("depth", "mm", 1, Pocket::depth)
                .words("from", p -> p.fromPlate() ? "the plate's side" : "outside"));
  }

  private static void wraps(GripsOutcome outcome, Telling told) {
    record Row(Described grip, GripWrap wrap) {}
    List<Row> rows =
        outcome.grips().stream().flatMap(g -> g.wraps().stream().map(w -> new Row(g, w))).toList();
    if (rows.isEmpty()) {
      return;
    }
    told.head("Wrap")
        .add(
            Rows.of(rows)
                .words(
                    "grip",
                    r ->
                        r.grip.placed().grip().label()
                            + (r.grip.wraps().size() == 1 ? "" : ", part " + r.wrap.number()))
                .fixed("length", "mm", 0, r -> r.wrap.length())
                .words(
                    "width between folds",
                    r ->
                        Numbers.fixed(r.wrap.least(), 0)
                            + " to "
                            + Numbers.fixed(r.wrap.most(), 0)
                            + " mm")
                .words("stitches a side", r -> String.valueOf(r.wrap.stitches().size() / 2))
                .fixed("or tape, 25 mm wide", "m", 1, r -> r.wrap.tape() / 1000))
        .say(
            "The pattern has {} to turn under all round. Tape is wound with each turn half over the"
                + " one before; buy a tenth more.",
            Quantity.mm(GripWrap.SEAM));
  }

  private static Telling girths(GripsOutcome outcome) {
    Telling told = new Telling();
    Set<String> written = new LinkedHashSet<>();
    for (Described one : outcome.grips()) {
      PlacedGrip placed = one.placed();
      // The image of a grip feels as the grip does.
      if (!written.add(placed.grip().path())) {
        continue;
      }
      told.head("Girth of {}, clockwise", placed.grip().label())
          .add(
              Rows.of(one.stations())
                  .fixed("at", "mm", 0, GripStation::s)
                  .words("on the rim", s -> Phrase.at(s.at()))
                  .words(
                      "girth, mm",
                      s ->
                          s.girth()
                              .map(girth -> Numbers.fixed(girth, 1))
                              .orElse("no fingers go round")));
    }
    return told;
  }

  private static Telling sources(GripsOutcome outcome) {
    Telling told = new Telling().head("What this rests on");
    told.say(
        "Girth: a taut tape round grip, plate and wrap, in closed form. Mass: the integral of the"
            + " section along the rim (Pappus), screw holes and pockets taken off.");
    outcome.grips().stream()
        .map(g -> g.placed().grip().material())
        .distinct()
        .forEach(
            m ->
                told.say(
                    "{}: {}. {}.",
                    Phrase.begin(m.title()),
                    Quantity.brief(m.density(), 2, "g/cm3"),
                    Phrase.begin(m.basis())));
    return told;
  }

  /** What goes with grips wherever they are made. */
  public static List<String> cautions(GripsOutcome outcome) {
    Set<String> all = new LinkedHashSet<>();
    for (Described one : outcome.grips()) {
      Grip grip = one.placed().grip();
      all.add(Dust.of(grip.material().sheet()));
      if (grip.material().kind() == MaterialKind.PLASTIC) {
        all.add(HOT);
      }
    }
    all.add(HOLD);
    all.add(Cautions.USE);
    return List.copyOf(all);
  }

  private static Rows<GripBody> bodies(List<GripBody> bodies) {
    return Rows.of(bodies)
        .words("body", GripBody::name)
        .words("size on the bed, mm", b -> size(b.onBed()))
        .fixed("volume", "cm3", 1, b -> b.solid().volume() / 1000)
        .words("triangles", b -> String.valueOf(b.solid().triangles().size()));
  }

  private static String size(Solid body) {
    return Numbers.fixed(body.extent().size().x(), 1)
        + " x "
        + Numbers.fixed(body.extent().size().y(), 1)
        + " x "
        + Numbers.fixed(body.extent().size().z(), 1);
  }
}
