package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.cure.ShapeCures;
import felloe.plate.Finding;
import felloe.plate.Verdict;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Advice that names figures of the shape file is written into it and reviewed again. */
class ShapeCuresTest {

  private static final Pattern CURE =
      Pattern.compile(
          "([\\w.\\[\\]]+): (\\[[^]]*\\]|\\{.*\\}|[\\w.]+(?: mm)?) \\((?:now [^)]*|new)\\)");

  private static Studies studies() {
    return new Studies(Path.of(""), Optional.empty());
  }

  private static ShapeSource shape(String name, String... sets) {
    return ShapeSource.file(Path.of("shapes", name + ".yaml"), Sets.of(sets));
  }

  private static Finding open(Study study, String rule) {
    return study.review().of(rule).stream().filter(Finding::isOpen).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "bittern | bore=60 | narrowest-web | bore",
        "bittern | bore=60 | edge-distance | bore",
        "bittern | bore=60 | head-clearance | bore",
        "bittern | windows[1].rectangle.height=48 | edge-distance | windows[1].rectangle.height",
        "bittern | windows[1].rectangle.height=48 | narrowest-web | windows[1].rectangle.height",
        "bittern | windows[0].rectangle.height=80 | finger-length | windows[0].rectangle.height",
        "bittern | windows[0].rectangle.radius=2 | inside-corner | windows[0].rectangle.radius",
        "bittern | holes[0].diameter=7 | narrowest-web | holes[0].diameter",
        "bittern | stock.sheet.height=215 | sheet-fit | stock.sheet.width",
        "bittern | outline.points.corners[1]=[54, 100] | outer-corner | outline.points.corners[1]",
        "dunlin | making.grip_scale=2 | grip-girth-least | making.grip_scale",
        "dunlin | making.grip_scale=19 | grip-girth-most | making.grip_scale",
        "heron | outline.round.diameter=250 | finger-depth | outline.round.diameter",
        "heron | windows[0].derived.hub-disc=76 | narrowest-web | windows[0].derived.hub_disc",
        "heron | windows[0].derived.hub-disc=76 | edge-distance | windows[0].derived.hub_disc",
        "heron | windows[0].derived.hub-disc=76 | head-clearance | windows[0].derived.hub_disc",
        "heron | holes[0].edge.count=14 | hole-pitch | holes[0].edge.count",
        "heron | holes[0].edge.inset=8 | edge-distance | holes[0].edge.inset",
        "heron | holes[0].edge.inset=5 | head-clearance | holes[0].edge.inset",
        "heron | joints[1]={holes: hub, into: {tapped: aluminium, depth: 12}, screw: {length: 25}}"
            + " | screw-bottoms | joints[1].screw.length",
        "heron | holes[2]={at: [24, 41.57], diameter: 5} | edge-distance | holes[2].at",
        // Figures with a unit are tried too.
        "bittern | bore=60 mm | narrowest-web | bore",
        "bittern | windows[0].rectangle.height=3.15 in | finger-length"
            + " | windows[0].rectangle.height",
        "bittern | windows[0].rectangle.radius=0.2 cm | inside-corner |"
            + " windows[0].rectangle.radius",
        "bittern | stock.sheet.height=215 mm | sheet-fit | stock.sheet.width",
        "heron | holes[0].edge.inset=5 mm | head-clearance | holes[0].edge.inset",
        "heron | holes[2]={at: [24 mm, 41.57 mm], diameter: 5} | edge-distance | holes[2].at",
      })
  void eachAdvisedFigureMakesTheFindingGoAndNoOtherCome(
      String name, String set, String rule, String key) {
    // So near to the edge no scale has room for a head.
    String[] given =
        set.contains("inset=5")
            ? new String[] {set, "grips=[]", "making.grip_scale=10"}
            : new String[] {set};
    ShapeSource source = shape(name, given);
    Study before = studies().one(source);
    Finding finding = open(studies().advised(before), rule);
    List<String> sets = new ArrayList<>();
    Matcher cures = CURE.matcher(finding.advice());
    while (cures.find()) {
      sets.add(cures.group(1) + "=" + cures.group(2));
    }
    assertTrue(sets.stream().anyMatch(s -> s.startsWith(key + "=")), finding.advice());
    Study after = studies().one(source.with(sets));
    assertTrue(
        after.review().of(rule).stream()
            .filter(f -> f.subject().equals(finding.subject()))
            .allMatch(f -> f.verdict() == Verdict.PASS),
        finding.advice());
    for (Verdict verdict : List.of(Verdict.FAIL, Verdict.CAUTION)) {
      assertTrue(after.count(Verdict.FAIL) <= before.count(Verdict.FAIL), sets.toString());
      assertTrue(
          after.count(verdict) + after.count(Verdict.FAIL)
              <= before.count(verdict) + before.count(Verdict.FAIL),
          sets.toString());
    }
  }

  @Test
  void aCureOfAFigureWithAUnitIsWrittenInMillimetres() {
    Study study = studies().one(shape("bittern", "windows[0].rectangle.height=3.15 in"));
    String advice = open(studies().advised(study), "finger-length").advice();
    assertTrue(
        advice.matches(
            ".*windows\\[0]\\.rectangle\\.height: \\d+(\\.\\d)? mm \\(now 3.15 in\\) mends.*"),
        advice);
  }

  @Test
  void whatHarmsElsewhereIsNotOffered() {
    // A bore that leaves thick stock its webs is too small for the hub's spigot.
    Finding web =
        open(
            studies().advised(studies().one(shape("heron", "stock.thickness=9"))), "narrowest-web");
    assertFalse(web.advice().contains("mends it:"), web.advice());
    assertTrue(
        web.advice()
            .endsWith(
                "no one figure mends it without harm elsewhere (tried: bore): change several"
                    + " figures together, or draw it otherwise"),
        web.advice());
  }

  /** A switch is bought: an opening that it does not go into mends nothing. */
  @Test
  void anOpeningForASwitchIsNotMadeSmaller() {
    Study study = studies().one(shape("bittern", "windows[2].circle.diameter=30"));
    List<Finding> near =
        studies().advised(study).review().findings().stream()
            .filter(f -> f.isOpen() && (" " + f.subject()).contains(" S"))
            .toList();
    assertFalse(near.isEmpty());
    near.forEach(f -> assertFalse(f.advice().contains("circle.diameter"), f.advice()));
  }

  @Test
  void whereNoFigureMayMendItThatIsSaid() {
    Study avocet = studies().one(ShapeSource.file(Path.of("shapes", "avocet.yaml"), Sets.of()));
    assertEquals(
        "6.77 mm are missing; a bare hand wants 95 mm and has them, a gloved one 120 mm; no figure"
            + " of the shape file was found to try: decide what gives way, and draw it anew",
        open(studies().advised(avocet), "finger-length").advice());
  }

  @ParameterizedTest
  @ValueSource(strings = {"bore=60", "holes[0].edge.count=14", "windows[0].derived.rim_width=27"})
  void neverMoreThanADozenShapesAreTried(String set) {
    Study study = studies().one(shape("heron", set, "grips=[]", "making.grip_scale=10"));
    AtomicInteger trials = new AtomicInteger();
    ShapeCures.advised(
        study.plate(),
        study.joints(),
        study.review(),
        study.source()::tree,
        sets -> {
          trials.incrementAndGet();
          return Optional.empty();
        });
    assertTrue(trials.get() > 0 && trials.get() <= 12, "" + trials);
  }

  @Test
  void aPlateWithNothingToMendKeepsItsReviewAndIsNotReadAgain() {
    Study study = studies().one(ShapeSource.file(Path.of("shapes", "heron.yaml"), Sets.of()));
    assertEquals(study, studies().advised(study));
  }
}
