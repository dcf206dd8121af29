package felloe.review;

import felloe.geometry.Contour;
import felloe.geometry.LargestCircle;
import felloe.geometry.NarrowestWeb;
import felloe.geometry.NarrowestWeb.Web;
import felloe.plate.Finding;
import felloe.plate.Limit;
import felloe.plate.Limit.Sense;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The narrowest web anywhere in the plate: between any two openings, an opening and the outline, or
 * two parts of one edge. The narrowest one is told in any case. Every other one that is beyond the
 * limit is told too, except that beside a screw hole only failures are: the edge distance is the
 * measure there.
 */
record NarrowWebs() implements Rule {

  @Override
  public String id() {
    return "narrowest-web";
  }

  @Override
  public String why() {
    return "A thin web bends, cracks or breaks off while it is sawn.";
  }

  @Override
  public String unit() {
    return "mm";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    Plate plate = of.plate();
    LimitPair bounds =
        limits.of(this, NamedContour.kind(plate), Sense.AT_LEAST, plate.stock().thickness());
    double good = bounds.good().map(Limit::value).orElse(0.0);
    NarrowestWeb search = new NarrowestWeb(plate.region());
    List<Web> webs = search.upTo(good);
    if (webs.isEmpty()) {
      webs = search.narrowest().stream().toList();
    }
    List<NamedContour> edges = NamedContour.all(plate);
    List<Finding> findings = new ArrayList<>();
    sliver(plate, bounds, good).ifPresent(findings::add);
    for (Web web : webs) {
      Verdict verdict = bounds.judge(web.width());
      boolean told =
          besideScrew(web, plate, limits) ? verdict == Verdict.FAIL : verdict != Verdict.PASS;
      if (findings.isEmpty() || told) {
        findings.add(finding(plate, web, edges, bounds));
      }
    }
    return findings;
  }

  /**
   * An outline that is too thin even where it is widest: it has no neck, since it only tapers to
   * its tips. The largest circle in a shape is at least as wide as twice its area over its length
   * (Bonnesen), so that most outlines need no search.
   */
  private Optional<Finding> sliver(Plate plate, LimitPair bounds, double good) {
    Contour outline = plate.outline();
    if (2 * Math.abs(outline.area()) / outline.length() >= good) {
      return Optional.empty();
    }
    LargestCircle widest = LargestCircle.inside(outline);
    if (bounds.judge(2 * widest.radius()) == Verdict.PASS) {
      return Optional.empty();
    }
    return Optional.of(
        bounds.finding(
            this,
            "outline at its widest",
            "width of the plate",
            2 * widest.radius(),
            Optional.of(widest.centre()),
            NamedContour.wholeFile(plate),
            bounds.lacks(2 * widest.radius(), 1)));
  }

  private static boolean besideScrew(Web web, Plate plate, Limits limits) {
    int holesFrom = 1 + plate.windows().size();
    return web.second() >= holesFrom
        && (NamedContour.takesFastener(plate.holes().get(web.second() - holesFrom), limits)
            || (web.first() >= holesFrom
                && NamedContour.takesFastener(plate.holes().get(web.first() - holesFrom), limits)));
  }

  private Finding finding(Plate plate, Web web, List<NamedContour> edges, LimitPair bounds) {
    String lacks = bounds.lacks(web.width(), 1);
    NamedContour first = edges.get(web.first());
    NamedContour second = edges.get(web.second());
    return bounds.finding(
        this,
        web.isNeck()
            ? "neck between two parts of " + first.label()
            : first.label() + " to " + second.label(),
        "width of the web",
        web.width(),
        Optional.of(web.middle()),
        second.place(),
        web.isNeck() ? lacks : NamedContour.apart(first, second, lacks));
  }
}
