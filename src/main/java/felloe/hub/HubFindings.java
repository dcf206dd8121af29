package felloe.hub;

import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RigidTransform;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.Hole;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Place;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns a fit into findings, as a review has them. */
final class HubFindings {

  private static final String JIG =
      "Drill through the hub or a bush plate, or fit the plate to the very hub before it is"
          + " finished.";

  private final HubFit fit;
  private final HubSpec hub;
  private final double allowance;

  HubFindings(HubFit fit, HubSpec hub, double allowance) {
    this.fit = fit;
    this.hub = hub;
    this.allowance = allowance;
  }

  List<Finding> of(
      RingTrial trial,
      List<ScrewFit> screws,
      Optional<PilotFit> pilot,
      List<Mismatch> mismatches,
      List<Cure> cures,
      HubSurroundings around) {
    List<Finding> findings = new ArrayList<>();
    String off = (whatIsOff(mismatches) + words(cures)).strip();
    findings.add(count(trial, off));
    if (!screws.isEmpty()) {
      findings.add(drawn(screws, off));
      findings.addAll(series(screws));
    }
    if (!screws.isEmpty() && tightest(screws).clearance() >= -HubFit.ROUNDING) {
      findings.add(worst(screws, cures));
      RigidTransform placement = trial.fit().orElseThrow().placement();
      findings.add(turn(placement, trial.rings().get(0), screws));
      findings.add(centre(placement, screws));
    }
    pilot.ifPresent(p -> findings.add(pilot(p, cures, around)));
    return List.copyOf(findings);
  }

  private Finding count(RingTrial trial, String off) {
    int screws = trial.screws().size();
    int holes = trial.bolts().size();
    Place place = trial.bolts().isEmpty() ? hub.place() : trial.bolts().get(0).place();
    boolean enough = holes >= screws;
    return new Finding(
        "hub-count",
        "every screw of the hub needs a hole",
        enough ? Verdict.PASS : Verdict.FAIL,
        "bolt holes for " + hub.name(),
        new Figure("bolt holes", holes, ""),
        Optional.of(new Limit(Sense.AT_LEAST, screws, source("count"), false)),
        Optional.empty(),
        place,
        enough ? "" : off);
  }

  private Finding drawn(List<ScrewFit> screws, String off) {
    ScrewFit tight = tightest(screws);
    boolean enters = tight.clearance() >= -HubFit.ROUNDING;
    return new Finding(
        "hub-fit",
        "all screws must enter at one placement of the plate",
        enters ? Verdict.PASS : Verdict.FAIL,
        tight.screw() + " in " + tight.hole().label() + ", the tightest",
        new Figure("clearance all round as drawn", tidy(tight.clearance()), "mm"),
        Optional.of(
            new Limit(Sense.AT_LEAST, 0, "geometry: best rigid placement on the hub", false)),
        Optional.of(tight.hole().centre()),
        tight.hole().place(),
        enters ? "" : off);
  }

  private Finding worst(List<ScrewFit> screws, List<Cure> cures) {
    ScrewFit tight = tightest(screws);
    boolean enters = tight.worst() >= -HubFit.ROUNDING;
    String source =
        "fixed fasteners, ASME Y14.5 and ISO 1101: hub zone "
            + Numbers.brief(hub.positionTolerance(), 3)
            + " mm ("
            + hub.bases().get("position-tolerance").words()
            + "), plate zone "
            + Numbers.brief(fit.drilling().zone(), 3)
            + " mm ("
            + fit.drilling().title()
            + ": "
            + fit.drilling().basis().words()
            + ")";
    return new Finding(
        "hub-fit-worst",
        "hub and plate each have their tolerances",
        enters ? Verdict.PASS : Verdict.CAUTION,
        tight.screw() + " in " + tight.hole().label() + ", the tightest",
        new Figure("clearance all round at the worst", tidy(tight.clearance()) - allowance, "mm"),
        Optional.of(new Limit(Sense.AT_LEAST, 0, source, false)),
        Optional.of(tight.hole().centre()),
        tight.hole().place(),
        enters ? "" : surer(tight, cures));
  }

  /** How to be sure of a screw that may not enter at the worst, by the way of drilling. */
  private String surer(ScrewFit tight, List<Cure> cures) {
    return switch (fit.drilling().name()) {
      case DrillingMethod.MEASURED ->
          "Try the plate on the very hub, each screw by hand; force none.";
      case "through-hub" ->
          "Holes drilled through a hub fit that very hub. " + larger(tight, cures);
      default -> JIG + " " + larger(tight, cures);
    };
  }

  private String larger(ScrewFit tight, List<Cure> cures) {
    for (Cure cure : cures) {
      if (cure instanceof Cure.OpenHoles) {
        return "Or: " + cure.words();
      }
    }
    double needed =
        FastenerFormula.fixedHole(
            tight.thread().diameter() + 2 * tight.distance(),
            hub.positionTolerance(),
            fit.drilling().zone());
    return "Or make the holes " + Numbers.fixed(needed, 2) + " mm.";
  }

  /** One finding for all holes of one size on one thread. */
  private List<Finding> series(List<ScrewFit> screws) {
    Map<String, List<ScrewFit>> alike = new LinkedHashMap<>();
    for (ScrewFit screw : screws) {
      String key = screw.thread().name() + " " + Numbers.fixed(screw.hole().diameter(), 3);
      List<ScrewFit> group = alike.get(key);
      if (group == null) {
        group = new ArrayList<>();
        alike.put(key, group);
      }
      group.add(screw);
    }
    List<Finding> findings = new ArrayList<>();
    for (List<ScrewFit> group : alike.values()) {
      findings.add(seriesOf(group));
    }
    return findings;
  }

  private Finding seriesOf(List<ScrewFit> alike) {
    ScrewFit first = alike.get(0);
    ScrewThread thread = first.thread();
    Hole hole = first.hole();
    ClearanceSeries series = first.series();
    List<String> names = new ArrayList<>();
    for (ScrewFit screw : alike) {
      names.add(screw.hole().label());
    }
    names.sort(LabelOrder::compare);
    String labels = String.join(", ", names);
    boolean large = series == ClearanceSeries.ABOVE_COARSE;
    Verdict verdict =
        switch (series) {
          case TOO_SMALL -> Verdict.FAIL;
          case BELOW_FINE, ABOVE_COARSE -> Verdict.CAUTION;
          default -> Verdict.PASS;
        };
    String size = Numbers.brief(hole.diameter(), 2) + " mm on " + thread.name();
    String fine = "the fine series is " + Numbers.brief(thread.fine(), 2) + " mm";
    String advice =
        switch (series) {
          case TOO_SMALL -> size + " is smaller than the screw; " + fine + ".";
          case BELOW_FINE ->
              size
                  + " is below the fine series ("
                  + Numbers.brief(thread.fine(), 2)
                  + " mm). It is done in practice; it leaves no room for error.";
          case ABOVE_COARSE ->
              size
                  + " is above the coarse series ("
                  + Numbers.brief(thread.coarse(), 2)
                  + " mm): use washers that cover the hole, or smaller holes.";
          default -> "";
        };
    return new Finding(
        "hub-hole-series",
        "a clearance hole of a standard series leaves room for the usual errors",
        verdict,
        labels + " for " + thread.name() + ": " + series.words(),
        new Figure("hole diameter", hole.diameter(), "mm"),
        Optional.of(
            new Limit(
                large ? Sense.AT_MOST : Sense.AT_LEAST,
                large ? thread.coarse() : thread.fine(),
                thread.basis().words(),
                false)),
        Optional.of(hole.centre()),
        hole.place(),
        advice);
  }

  private Finding turn(RigidTransform placement, HubRing ring, List<ScrewFit> screws) {
    double degrees = tidy(Math.toDegrees(Math.abs(placement.turn())));
    Limit limit =
        new Limit(Sense.AT_MOST, fit.practice().turn(), fit.practice().basis().words(), false);
    boolean straight = limit.keeps(degrees);
    String way = placement.turn() > 0 ? "clockwise" : "counter-clockwise";
    return new Finding(
        "hub-turn",
        "with the screws in, the wheel should stand upright",
        straight ? Verdict.PASS : Verdict.CAUTION,
        "plate on " + hub.name(),
        new Figure("turn of the plate on the hub", degrees, "deg"),
        Optional.of(limit),
        Optional.empty(),
        screws.get(0).hole().place(),
        straight
            ? ""
            : "The plate sits turned "
                + Numbers.brief(degrees, 2)
                + " degrees "
                + way
                + " on a hub whose first screw stands at "
                + Numbers.brief(Math.toDegrees(ring.firstAngle()), 2)
                + " degrees. Turn the hub on its column, or give the bolt circle the first angle "
                + Numbers.brief(Math.toDegrees(ring.firstAngle()), 2)
                + ".");
  }

  private Finding centre(RigidTransform placement, List<ScrewFit> screws) {
    double off = tidy(placement.shift().norm());
    Limit limit =
        new Limit(Sense.AT_MOST, fit.practice().centre(), fit.practice().basis().words(), false);
    boolean good = limit.keeps(off);
    return new Finding(
        "hub-centre",
        "a wheel off the hub's axis wobbles as it turns",
        good ? Verdict.PASS : Verdict.CAUTION,
        "plate on " + hub.name(),
        new Figure("hub axis from the plate's origin", off, "mm"),
        Optional.of(limit),
        Optional.of(placement.shift()),
        screws.get(0).hole().place(),
        good
            ? ""
            : "The hub axis comes to lie at "
                + placement.shift()
                + " mm; move the bolt circle there, or to the origin.");
  }

  private Finding pilot(PilotFit pilot, List<Cure> cures, HubSurroundings around) {
    Optional<Hole> bore =
        around.holes().stream()
            .filter(h -> Optional.of(h.label()).equals(pilot.opening()))
            .findFirst();
    boolean enters = pilot.enters();
    double opening = pilot.clearance().map(c -> pilot.pilot() + 2 * c).orElse(0.0);
    return new Finding(
        "hub-bore",
        "the hub's spigot must enter the plate",
        enters ? Verdict.PASS : Verdict.FAIL,
        pilot.opening().orElse("no bore") + " for the spigot",
        new Figure("opening round the hub axis", opening, "mm"),
        Optional.of(new Limit(Sense.AT_LEAST, pilot.pilot(), source("pilot"), false)),
        Optional.of(bore.map(Hole::centre).orElse(Point.ORIGIN)),
        bore.map(Hole::place).orElse(hub.place()),
        enters
            ? ""
            : cures.stream()
                .filter(c -> c instanceof Cure.OpenBore)
                .map(Cure::words)
                .collect(Collectors.joining(" ")));
  }

  private String source(String key) {
    return "hub " + hub.name() + ": " + hub.bases().get(key).words();
  }

  private static String words(List<Cure> cures) {
    StringBuilder text = new StringBuilder();
    for (Cure cure : cures) {
      if (!(cure instanceof Cure.OpenBore)) {
        String before = text.isEmpty() ? "" : cure.works() ? " Or: " : " ";
        text.append(before).append(cure.words());
      }
    }
    return text.toString();
  }

  private static String whatIsOff(List<Mismatch> mismatches) {
    StringBuilder text = new StringBuilder();
    for (Mismatch mismatch : mismatches) {
      if (mismatch.kind() != Mismatch.Kind.PILOT) {
        text.append(mismatch.words()).append(' ');
      }
    }
    return text.toString();
  }

  /** The first of those that have the least room, but for rounding. */
  private static ScrewFit tightest(List<ScrewFit> screws) {
    ScrewFit tightest = screws.get(0);
    for (ScrewFit screw : screws) {
      if (screw.clearance() < tightest.clearance() - HubFit.ROUNDING) {
        tightest = screw;
      }
    }
    return tightest;
  }

  /** Rounding dust is no figure. */
  private static double tidy(double value) {
    return Math.abs(value) < HubFit.ROUNDING ? 0 : value;
  }
}
