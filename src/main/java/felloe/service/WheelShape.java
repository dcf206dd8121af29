package felloe.service;

import felloe.geometry.Numbers;
import felloe.hub.HubCatalogue;
import felloe.hub.HubRing;
import felloe.hub.HubSpec;
import felloe.service.WheelGave.Screws;
import felloe.yaml.TextEdit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The file to start from of a family, with its figures changed as a maker wishes. What is drawn is
 * only begun here: review and loads judge it.
 */
final class WheelShape {

  /** Between a hub hole's centre and an opening, in hole diameters: three and some room. */
  private static final double EDGE = 3.15;

  /** Of the flat bottom, as a part of the width: the file to start from. */
  private static final double FLAT = 0.4;

  private static final double LOWER = 14;

  /** The outline with an open top has no narrower top. */
  private static final double OPEN_TOP = 290;

  /** A row of fingers is shorter than the opening with its round corners. */
  private static final double CORNERS = 8;

  private static final Pattern PAIR = Pattern.compile("(-?[\\d.]+),(-?[\\d.]+)");

  private final WheelWish wish;
  private final Figures figures;
  private final double hole;
  private final double reach;
  private final double disc;
  private final double width;
  private final List<WheelGave> gave = new ArrayList<>();
  private TextEdit text;

  /**
   * What is looked for.
   *
   * @param rim width, mm
   * @param more by which spokes and the middle are wider, mm
   * @param thickness mm
   * @param plies how many, of a lay-up; 0 for as many as the thickness takes
   * @param grip thickness of the scale on each face, mm
   * @param screws how the hub's screws are: one of {@link #screws}
   */
  record Figures(double rim, double more, double thickness, int plies, double grip, int screws) {

    Figures wider(double by) {
      return new Figures(rim + by, more + 2 * by, thickness, plies, grip, screws);
    }

    Figures thick(double other, int of) {
      return new Figures(rim, more, other, of, grip, screws);
    }

    Figures gripped(double scale) {
      return new Figures(rim, more, thickness, plies, scale, screws);
    }

    Figures screwed(int other) {
      return new Figures(rim, more, thickness, plies, grip, other);
    }
  }

  /** The screws that are tried for a hub: the usual first, then stronger ones. */
  static List<Screws> screws(HubSpec hub) {
    List<Screws> all = new ArrayList<>(List.of(new Screws(Optional.empty(), false)));
    if (!hub.ring().thread().name().startsWith("M")) {
      all.add(new Screws(Optional.of("grade-8"), false));
      return all;
    }
    all.add(new Screws(Optional.empty(), true));
    for (String strength : List.of("10.9", "12.9")) {
      all.add(new Screws(Optional.of(strength), false));
      all.add(new Screws(Optional.of(strength), true));
    }
    return all;
  }

  /** A joint as a shape file has it. */
  private static String joint(Screws screws) {
    String screw =
        screws.strength().map(s -> ", screw: {class: " + TextEdit.quoted(s) + "}").orElse("");
    return "[{holes: hub" + screw + (screws.large() ? ", washer: large" : "") + "}]";
  }

  /**
   * A text that was made.
   *
   * @param gave what gave way
   */
  record Drawn(String text, List<WheelGave> gave) {
    Drawn {
      gave = List.copyOf(gave);
    }
  }

  private WheelShape(WheelWish wish, HubSpec hub, Figures figures) {
    this.wish = wish;
    this.figures = figures;
    this.hole = hole(hub, wish.holes());
    this.reach = hub.rings().stream().mapToDouble(WheelShape::reach).max().orElseThrow();
    double circle = hub.rings().stream().mapToDouble(HubRing::pitchDiameter).max().orElseThrow();
    this.disc = up(Math.max(110, circle + 2 * EDGE * hole) + figures.more());
    this.width = widened(circle);
  }

  static Drawn of(WheelWish wish, HubSpec hub, Figures figures) {
    WheelShape shape = new WheelShape(wish, hub, figures);
    String made = shape.draw(hub);
    return new Drawn(made, shape.gave);
  }

  /**
   * Clearance holes of ISO 273: the coarse series for holes that are marked by hand, the medium one
   * for a machine's; never less than the hub's own spec has.
   */
  private static double hole(HubSpec hub, WheelWish.Holes how) {
    HubRing ring = hub.ring();
    List<Double> series = HubCatalogue.here().clearances(ring.thread().name());
    double usual =
        series.isEmpty()
            ? ring.plateHole() + (how == WheelWish.Holes.BY_HAND ? 0.5 : 0)
            : series.get(how == WheelWish.Holes.BY_HAND ? 2 : 1);
    return Math.max(usual, ring.plateHole());
  }

  /** How far its screws stand to the right and left. */
  private static double reach(HubRing ring) {
    return ring.centres().stream().mapToDouble(p -> Math.abs(p.x())).max().orElseThrow();
  }

  private static double up(double length) {
    return Math.ceil(length);
  }

  /** The width that is wished, or what hub, openings and rim take. */
  private double widened(double circle) {
    double least =
        wish.family().equals("round")
            ? disc + 2 * (wish.hand().depth() + figures.rim())
            : 2 * (reach + EDGE * hole + figures.more() / 2 + opening() + figures.rim() + 1);
    boolean open = wish.family().equals("points");
    double wanted = Math.max(wish.width(), Math.max(open ? OPEN_TOP : 0, up(least)));
    if (wanted > wish.width()) {
      gave.add(new WheelGave.Wider(wish.width(), wanted, circle, open && wanted == OPEN_TOP));
    }
    return wanted;
  }

  private double opening() {
    return wish.family().equals("path") ? wish.hand().depth() + 6 : wish.hand().depth() + 2;
  }

  private String draw(HubSpec hub) {
    text = TextEdit.of(wish.name(), NewShape.text(wish.family()));
    set("title", TextEdit.quoted(wish.name().replaceFirst("\\.ya?ml$", "")));
    switch (wish.family().replace('_', '-')) {
      case "round" -> round();
      case "four-sided" -> fourSided();
      case "points" -> points(hub);
      default -> path();
    }
    set("bolt_circles[0].hub", TextEdit.quoted(wish.hub()));
    set("bolt_circles[0].diameter", brief(hole));
    hub.bore().ifPresent(bore -> set("bore", brief(bore)));
    set("stock.material", wish.material());
    set("stock.thickness", brief(figures.thickness()));
    if (figures.plies() > 0) {
      set("stock.layup.plies", Integer.toString(figures.plies()));
    }
    text = text.remove("stock.sheet");
    set("making.grip_scale", brief(figures.grip()));
    if (wish.holes() == WheelWish.Holes.BY_MACHINE) {
      set("making.position", "machine");
    }
    Screws screws = screws(hub).get(figures.screws());
    if (!screws.usual()) {
      set("joints", joint(screws));
      gave.add(new WheelGave.Stronger(screws));
    }
    if (wish.use() == WheelWish.Use.HARD) {
      hard();
    }
    return text.text();
  }

  /** The forces of 14 CFR 25.397, read: 300 lbf with both hands, beside those that are usual. */
  private void hard() {
    set(
        "load.cases",
        "[{name: transport-haul, forces: [{clock: 3, force: [0, 0, 667.2]}, {clock: 9, force: [0,"
            + " 0, 667.2]}]}, {name: transport-brace, forces: [{clock: 3, force: [0, 0, -667.2]},"
            + " {clock: 9, force: [0, 0, -667.2]}]}]");
  }

  private void set(String path, String value) {
    text = text.set(path, value);
  }

  private static String brief(double figure) {
    return Numbers.brief(figure, 2);
  }

  private void round() {
    set("outline.round.diameter", brief(width));
    if (wish.legs() == WheelWish.Legs.PLENTY) {
      text = text.remove("outline.round.bottom");
    } else {
      // Fingers are not asked for there, but a saw is to get in.
      double flat = Math.max(FLAT * width, disc / 2 + figures.rim() + 32);
      set("outline.round.bottom.distance", brief(up(flat)));
    }
    set("windows[0].derived.rim_width", brief(figures.rim()));
    set("windows[0].derived.hub_disc", brief(disc));
    for (int i = 0; i < 3; i++) {
      String spoke = "windows[0].derived.spokes[" + i + "]";
      set(spoke + ".hub_width", brief(52 + figures.more()));
      set(spoke + ".rim_width", brief(40 + figures.more()));
    }
    set("holes[0].edge.inset", brief(figures.rim() / 2));
  }

  private boolean low() {
    return wish.legs() == WheelWish.Legs.PLENTY;
  }

  private void fourSided() {
    double tall = wish.hand().length() + CORNERS;
    double middle = width / 2 - figures.rim() - opening() / 2;
    set("outline.four_sided.width", brief(width - 10));
    set(
        "outline.four_sided.height",
        brief(tall + 72 + (low() ? LOWER : 0) + 2 * (figures.more() / 2)));
    set(
        "windows[0].four_sided",
        "{width: " + brief(opening()) + ", height: " + brief(tall) + ", radius: 22}");
    set("windows[0].at", "[" + brief(middle) + ", 0]");
    double row = brief1(width / 2 - figures.rim() / 2 - 1);
    set(
        "holes[0].line",
        "{from: [" + brief(row) + ", 44], to: [" + brief(row) + ", -44], count: 3}");
  }

  private static double brief1(double figure) {
    return Math.round(figure * 2) / 2.0;
  }

  private void points(HubSpec hub) {
    double half = width / 2;
    double tall = wish.hand().length() + 4;
    double low = -12 - tall / 2 - 28 - (low() ? LOWER : 0);
    double middle = half - figures.rim() - opening() / 2;
    List<String> corners =
        List.of(
            "[0, 98]",
            "{at: [58, 98], radius: 12}",
            "{at: [74, 60], radius: 16}",
            "{at: [" + brief(half - 44) + ", 92], radius: 18}",
            "{at: [" + brief(half - 2) + ", 92], radius: 22, rise: 4}",
            "{at: [" + brief(half) + ", " + brief(low + 42) + "], radius: 40}",
            "{at: [" + brief(half - 36) + ", " + brief(low) + "], radius: 30}",
            "[0, " + brief(low) + "]");
    for (int i = 0; i < corners.size(); i++) {
      set("outline.points.corners[" + i + "]", corners.get(i));
    }
    set(
        "windows[0].rectangle",
        "{width: " + brief(opening()) + ", height: " + brief(tall) + ", radius: 20}");
    set("windows[0].at", "[" + brief(middle) + ", -12]");
    double row = brief1(half - figures.rim() / 2 + 1);
    set("holes[0].line.from", "[" + brief(row) + ", 40]");
    set("holes[0].line.to", "[" + brief(row) + ", -34]");
    openings(hub, middle - opening() / 2);
  }

  /** Display and switches stay where hub and openings leave room. */
  private void openings(HubSpec hub, double inner) {
    double high =
        hub.rings().stream()
            .flatMap(ring -> ring.centres().stream())
            .mapToDouble(p -> p.y())
            .max()
            .orElseThrow();
    boolean aside =
        inner - 46 - 6 < 12
            || hub.rings().stream()
                .flatMap(ring -> ring.centres().stream())
                .anyMatch(
                    p -> Math.hypot(Math.abs(p.x()) - 46, Math.abs(p.y()) - 44) < 10 + EDGE * hole);
    if (aside) {
      text = text.remove("windows[2]");
      gave.add(WheelGave.LeftOut.SWITCHES);
    }
    if (high + EDGE * hole > 56) {
      text = text.remove("windows[1]");
      gave.add(WheelGave.LeftOut.DISPLAY);
    }
  }

  private void path() {
    double wide = width / 280;
    double tall = Math.max(1, (wish.hand().length() + CORNERS) / 126);
    double drop = low() ? LOWER : 0;
    double inner = width / 2 - figures.rim() - opening();
    // The opening of the file to start from reaches from 50 to 110 and is 130 high.
    String window =
        moved(
            "M 64,-62 C 88,-62 110,-44 110,-10 C 110,26 92,60 76,68 C 64,74 54,66 54,50 C 54,20"
                + " 56,-20 52,-46 C 50,-59 54,-62 64,-62 Z",
            x -> inner + (x - 52) * opening() / 58,
            y -> y * tall);
    String outline =
        moved(
            "M 0,-104 C 74,-104 138,-74 140,-12 C 142,46 102,98 62,102 C 30,105 -30,105 -62,102"
                + " C -102,98 -142,46 -140,-12 C -138,-74 -74,-104 0,-104 Z",
            x -> x * wide,
            y -> (y + Math.signum(y) * figures.more() / 2) * tall + (y > 50 ? drop : 0));
    set("outline.path", TextEdit.quoted(outline));
    set("windows[0].path", TextEdit.quoted(window));
  }

  private static String moved(String path, UnaryOperator<Double> x, UnaryOperator<Double> y) {
    Matcher pair = PAIR.matcher(path);
    StringBuilder all = new StringBuilder();
    while (pair.find()) {
      pair.appendReplacement(
          all,
          Numbers.brief(x.apply(Double.valueOf(pair.group(1))), 2)
              + ","
              + Numbers.brief(y.apply(Double.valueOf(pair.group(2))), 2));
    }
    pair.appendTail(all);
    return all.toString();
  }
}
