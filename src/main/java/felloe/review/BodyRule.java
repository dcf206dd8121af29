package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.Numbers;
import felloe.geometry.Region;
import felloe.plate.Body;
import felloe.plate.Face;
import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.yaml.Entry;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Rules about what sits in windows and holes: its room, its seat, and whether it goes in. */
enum BodyRule implements Rule {
  /** To other bodies, grips, fingers, screws and the hub, on either face. */
  ROOM("body-room", "Two things cannot be in one place, and hands must not be hindered."),
  /** Bezel, washer and nut on the plate. */
  SEAT("body-seat", "A bezel or nut must cover its opening and lie on the plate."),
  /** Shank in its opening. */
  PASSES("body-passes", "A body must go into its opening."),
  /** Thread left for the nut. */
  THREAD("body-thread", "A nut that is not filled comes off.");

  /** What is farther away is not told, mm. */
  private static final double FAR = 30;

  private final String id;
  private final String why;

  BodyRule(String id, String why) {
    this.id = id;
    this.why = why;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String why() {
    return why;
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    if (of.plate().bodies().isEmpty()) {
      return List.of();
    }
    List<BodyParts> bodies = BodyParts.of(of.plate());
    return tightest(
        switch (this) {
          case ROOM -> room(of, bodies, limits);
          case SEAT -> bodies.stream().flatMap(b -> seat(of.plate(), b, limits)).toList();
          case PASSES -> bodies.stream().flatMap(b -> passes(b, limits)).toList();
          case THREAD -> bodies.stream().flatMap(b -> thread(of.plate(), b, limits)).toList();
        });
  }

  private LimitPair limit(Limits limits, String row) {
    return limits.of(this, row, Sense.AT_LEAST, 1);
  }

  private List<Finding> room(Reviewed of, List<BodyParts> bodies, Limits limits) {
    List<Finding> findings = new ArrayList<>();
    LimitPair apart = limit(limits, "bodies");
    for (int i = 0; i < bodies.size(); i++) {
      for (int k = 0; k < i; k++) {
        BodyParts other = bodies.get(k);
        List<Prism> parts = other.all();
        room(apart, bodies.get(i), parts, other.body().title()).ifPresent(findings::add);
      }
    }
    Map<String, List<Prism>> rows = BodyObstacles.of(of, limits.figure("finger"));
    rows.forEach(
        (row, obstacles) -> {
          LimitPair bounds = limit(limits, row);
          // Each body by itself, on all cores; told in the order of bodies and then of obstacles.
          bodies.parallelStream()
              .flatMap(
                  body ->
                      obstacles.stream()
                          .flatMap(
                              obstacle ->
                                  room(bounds, body, List.of(obstacle), "")
                                      .map(
                                          f ->
                                              row.equals(BodyObstacles.HUB_TAKEN)
                                                  ? taken(f, obstacle)
                                                  : f)
                                      .stream()))
              .forEachOrdered(findings::add);
        });
    return findings;
  }

  private static Finding taken(Finding finding, Prism hub) {
    double across = hub.regions().get(0).outer().box().width();
    return finding.verdict() == Verdict.PASS
        ? finding
        : finding.advised(
            finding.advice()
                + "; the hub's face is taken to be "
                + Numbers.brief(across, 1)
                + " mm across: measure yours and write load.face_diameter");
  }

  /** Two parts on one face, and the room between them. */
  private record Meeting(Prism part, Prism other, double room) {}

  /**
   * The tightest place between a body and something else.
   *
   * @param whose whose parts those are; empty where they have names of their own
   */
  private Optional<Finding> room(
      LimitPair bounds, BodyParts body, List<Prism> others, String whose) {
    return body.all().stream()
        .flatMap(
            part ->
                others.stream()
                    .filter(other -> part.nears(other, FAR))
                    .map(other -> new Meeting(part, other, part.room(other))))
        .min(Comparator.comparingDouble(Meeting::room))
        .filter(tightest -> tightest.room <= FAR)
        .map(
            tightest -> {
              String other =
                  whose.isEmpty() ? tightest.other.name() : tightest.other.name() + " of " + whose;
              return finding(
                  bounds,
                  body.body(),
                  tightest.part.name() + " of " + body.body().title() + " to " + other,
                  "room on the " + Entry.nameOf(tightest.part.face()),
                  tightest.room,
                  on(tightest.part.face(), tightest.room, bounds));
            });
  }

  private static String on(Face face, double room, LimitPair bounds) {
    return "on the "
        + Entry.nameOf(face)
        + (room < 0
            ? " one reaches " + mm(-room) + " into the other; "
            : " " + mm(room) + " are left; ")
        + bounds.lacks(room, 1);
  }

  private Stream<Finding> seat(Plate plate, BodyParts parts, Limits limits) {
    List<Finding> findings = new ArrayList<>();
    Body body = parts.body();
    LimitPair cover = limit(limits, "cover");
    LimitPair edge = limit(limits, "edge");
    Optional<Prism> rear = parts.bearing().stream().skip(1).findFirst();
    double bezel = Prism.inside(body.bezel(), parts.opening());
    findings.add(cover(cover, body, "bezel", body.face(), bezel));
    if (rear.isPresent()) {
      // A nut covers what its flats do.
      double past =
          body.washer().isPresent()
              ? Prism.inside(rear.get().regions().get(0).outer(), parts.opening())
              : Prism.inside(
                  Contour.circle(
                      parts.opening().box().centre(), body.nut().orElseThrow().flats() / 2),
                  parts.opening());
      findings.add(cover(cover, body, rear.get().name(), body.rear(), past));
    }
    for (Prism part : parts.bearing()) {
      for (NamedContour other : NamedContour.all(plate)) {
        if (!other.label().equals(body.opening())) {
          double room = room(part, other, plate);
          if (room <= FAR) {
            String reaches = other.contour() == plate.outline() ? " past it; " : " over it; ";
            findings.add(
                finding(
                    edge,
                    body,
                    part.name() + " of " + body.title() + " to " + other.label(),
                    "plate beside the " + part.name() + " on the " + Entry.nameOf(part.face()),
                    room,
                    (room < 0
                            ? "on the "
                                + Entry.nameOf(part.face())
                                + " it reaches "
                                + mm(-room)
                                + reaches
                            : "")
                        + edge.lacks(room, 1)));
          }
        }
      }
    }
    return findings.stream();
  }

  private static double room(Prism part, NamedContour edge, Plate plate) {
    Contour own = part.regions().get(0).outer();
    return edge.contour() == plate.outline()
        ? Prism.inside(edge.contour(), own)
        : Prism.between(part.regions().get(0), Region.of(edge.contour()));
  }

  private Finding cover(LimitPair bounds, Body body, String part, Face face, double past) {
    return finding(
        bounds,
        body,
        part + " of " + body.title() + " over its opening",
        "covered beside the opening on the " + Entry.nameOf(face),
        past,
        (past < 0 ? "the opening shows or bears nothing for " + mm(-past) + "; " : "")
            + bounds.lacks(past, 1));
  }

  private Stream<Finding> passes(BodyParts parts, Limits limits) {
    LimitPair bounds = limit(limits, "any");
    Body body = parts.body();
    return body.shank().stream()
        .map(
            shank -> {
              double play = Prism.inside(parts.opening(), shank);
              return finding(
                  bounds,
                  body,
                  body.title() + " in its opening",
                  "play all round",
                  play,
                  (play < 0 ? "it does not go in by " + mm(-play) + "; " : "")
                      + bounds.lacks(play, 1)
                      + " on each side");
            });
  }

  private Stream<Finding> thread(Plate plate, BodyParts parts, Limits limits) {
    LimitPair bounds = limit(limits, "any");
    Body body = parts.body();
    return body.nut().stream()
        .map(
            nut -> {
              double under =
                  plate.stock().asMade() + body.washer().map(Body.Washer::thickness).orElse(0.0);
              double left = body.depth() - under - nut.thickness();
              return finding(
                  bounds,
                  body,
                  body.title(),
                  "left behind the nut",
                  left,
                  mm(under)
                      + " of plate and washer and "
                      + mm(nut.thickness())
                      + " of nut on a shank of "
                      + mm(body.depth())
                      + "; "
                      + bounds.lacks(left, 1));
            });
  }

  private Finding finding(
      LimitPair bounds, Body body, String subject, String figure, double value, String advice) {
    return bounds.finding(
        this, subject, figure, value, Optional.of(body.centre()), body.place(), advice);
  }

  /** All that are open; where none is, the tightest still tells how much room there is. */
  private static List<Finding> tightest(List<Finding> findings) {
    List<Finding> open = findings.stream().filter(Finding::isOpen).toList();
    return open.isEmpty()
        ? findings.stream().min(Comparator.comparingDouble(f -> f.figure().value())).stream()
            .toList()
        : open;
  }

  private static String mm(double length) {
    return Numbers.brief(length, 2) + " mm";
  }
}
