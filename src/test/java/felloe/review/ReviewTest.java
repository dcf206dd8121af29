package felloe.review;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.geometry.Contour;
import felloe.geometry.GeometryException;
import felloe.geometry.Numbers;
import felloe.geometry.Point;
import felloe.geometry.RandomShapes;
import felloe.geometry.RigidTransform;
import felloe.plate.BadInput;
import felloe.plate.DemoPlates;
import felloe.plate.Figure;
import felloe.plate.Finding;
import felloe.plate.HoleRole;
import felloe.plate.Limit;
import felloe.plate.LimitOverride;
import felloe.plate.MaterialKind;
import felloe.plate.Place;
import felloe.plate.Plate;
import felloe.plate.Verdict;
import felloe.plate.WindowUse;
import felloe.yaml.YamlTree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ReviewTest {

  private static List<String> ids() {
    return Review.rules().stream().map(Rule::id).toList();
  }

  @Test
  void everyRuleHasAnIdOfWordsWithHyphensAndSaysWhy() {
    for (Rule rule : Review.rules()) {
      assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule.id());
      assertTrue(rule.why().endsWith(".") && !rule.why().contains("\n"), rule.why());
    }
    assertEquals(ids().size(), new HashSet<>(ids()).size(), "no id twice");
  }

  @Test
  void everyRowOfTheLimitsBelongsToARule() {
    assertTrue(ids().containsAll(LimitTable.BUILT_IN.rules().keySet()));
  }

  @Test
  void whatStandsOnMemoryAloneNeverFailsAPlate() {
    LimitTable.BUILT_IN
        .rules()
        .forEach(
            (rule, rows) ->
                rows.forEach(
                    (row, steps) ->
                        assertFalse(
                            steps.fail().map(f -> f.source().contains("memory")).orElse(false),
                            rule + " " + row)));
  }

  @Test
  void theRulesPageNamesEveryRuleWithItsWhyAndEverySource() throws IOException {
    String page = Files.readString(Path.of("docs/rules.md")).replaceAll("\\s+", " ");
    for (Rule rule : Review.rules()) {
      assertTrue(page.contains("`" + rule.id() + "`"), rule.id());
      assertTrue(page.contains(rule.why()), rule.why());
    }
    LimitTable.BUILT_IN
        .rules()
        .forEach(
            (rule, rows) ->
                rows.forEach(
                    (row, steps) -> {
                      steps.caution().ifPresent(s -> told(page, rule, row, s));
                      steps.fail().ifPresent(s -> told(page, rule, row, s));
                    }));
  }

  private static void told(String page, String rule, String row, LimitTable.Step step) {
    assertTrue(page.contains(step.source()), rule + " " + row + ": " + step.source());
    String section = page.substring(page.indexOf("## `" + rule + "`"));
    section =
        section.substring(
            0, section.indexOf(" ## ", 3) < 0 ? section.length() : section.indexOf(" ## ", 3));
    assertTrue(section.contains(Numbers.brief(step.factor(), 3)), rule + " " + row + " factor");
    if (step.least() > 0) {
      assertTrue(section.contains(Numbers.brief(step.least(), 3) + " mm"), rule + " " + row);
    }
  }

  @Test
  void aGoodPlatePassesAndFindingsComeInTheOrderOfTheRules() {
    ReviewReport report =
        new Wheel()
            .outline(RandomShapes.roundedRectangle(310, 210, 30))
            .making(6, 2, 8.5)
            .grip(-98, 0, 50, 130, 12)
            .grip(98, 0, 50, 130, 12)
            .hole(HoleRole.BOLT, 40, 0, 5.3)
            .hole(HoleRole.BOLT, 28, 28, 5.3)
            .hole(HoleRole.BOLT, 0, 40, 5.3)
            .hole(HoleRole.BOLT, -28, 28, 5.3)
            .hole(HoleRole.BOLT, -40, 0, 5.3)
            .hole(HoleRole.BOLT, -28, -28, 5.3)
            .hole(HoleRole.BOLT, 0, -40, 5.3)
            .hole(HoleRole.BOLT, 28, -28, 5.3)
            .hole(HoleRole.BORE, 0, 0, 30)
            .sheet(400, 300)
            .review();
    // Nobody measured how deep the hub is tapped.
    assertEquals(
        List.of("thread-strip"),
        report.with(Verdict.CAUTION).stream().map(Finding::rule).distinct().toList());
    assertEquals(List.of(), report.with(Verdict.FAIL));
    List<Integer> order =
        report.findings().stream().map(finding -> ids().indexOf(finding.rule())).toList();
    assertEquals(order.stream().sorted().toList(), order);
    // Rules about nuts, countersinks and blind holes have nothing to say of the usual hub joint,
    // those about sizes nothing of a usual one, those about bodies nothing where there are none.
    Set<String> silent = new HashSet<>(ids());
    report.findings().forEach(finding -> silent.remove(finding.rule()));
    assertEquals(
        Set.of(
            "screw-suits",
            "engraving-depth",
            "chamfer-land",
            "body-room",
            "body-seat",
            "body-passes",
            "body-thread",
            "outline-width",
            "stock-thickness",
            "countersink-land",
            "screw-bottoms",
            "screw-end-least",
            "screw-end-most"),
        silent);
    report.with(Verdict.PASS).forEach(finding -> assertEquals("", finding.advice()));
  }

  @Test
  void theWorstFindingDecidesAndOthersAreMergedLast() {
    Finding hub =
        new Finding(
            "hub-fit",
            "All screws must enter.",
            Verdict.FAIL,
            "H1",
            new Figure("clearance", -0.2, "mm"),
            Optional.empty(),
            Optional.empty(),
            Place.BUILT_IN,
            "drill 5.5 mm");
    Plate plate = DemoPlates.bittern();
    assertEquals(Verdict.CAUTION, Review.of(plate).verdict());
    ReviewReport report = Review.of(plate, List.of(hub));
    assertEquals(Verdict.FAIL, report.verdict());
    assertEquals(hub, report.findings().get(report.findings().size() - 1));
    assertEquals(List.of(hub), report.with(Verdict.FAIL));
    assertEquals(Verdict.PASS, new ReviewReport(List.of(), List.of()).verdict());
  }

  @Test
  void everyReportSaysWhereItsWordEnds() {
    for (MaterialKind kind : MaterialKind.values()) {
      String text = String.join(" ", new Wheel().kind(kind).review().cautions());
      assertTrue(text.contains("closed-course use, at the builder's own judgement"));
      assertTrue(text.contains("not for public roads"));
      assertTrue(text.contains("Event rules, local codes and a qualified person"));
      assertTrue(text.contains("proves neither strength nor stiffness"));
    }
  }

  @Test
  void anOverrideTakesThePlaceOfTheLimitAndTheReportSaysSo() {
    Wheel wheel = new Wheel().hole(HoleRole.BOLT, 138, 0, 5).limit("edge-distance", 2.4);
    Finding finding = wheel.first("edge-distance");
    assertEquals(Verdict.PASS, finding.verdict());
    Limit limit = finding.limit().orElseThrow();
    assertTrue(limit.overridden());
    assertEquals(2.4, limit.value());
    assertEquals("set in the shape file", limit.source());
    assertEquals(List.of(finding), wheel.review().overridden());
    assertEquals(
        Verdict.CAUTION, wheel.limit("edge-distance", 2.5).first("edge-distance").verdict());
  }

  @Test
  void aLaxOverrideMovesTheFailingLimitAlongAndAStrictOneDoesNot() {
    Wheel near = new Wheel().hole(HoleRole.BOLT, 145, 0, 5);
    assertEquals(Verdict.FAIL, near.first("edge-distance").verdict());
    near.limit("edge-distance", 1);
    assertEquals(Verdict.PASS, near.first("edge-distance").verdict());
    Finding nearer =
        new Wheel()
            .hole(HoleRole.BOLT, 145.1, 0, 5)
            .limit("edge-distance", 1)
            .first("edge-distance");
    assertEquals(Verdict.FAIL, nearer.verdict());
    assertTrue(nearer.limit().orElseThrow().overridden());
    Finding strict =
        new Wheel().hole(HoleRole.BOLT, 145, 0, 5).limit("edge-distance", 5).first("edge-distance");
    assertEquals(Verdict.FAIL, strict.verdict());
    assertEquals(1.5, strict.limit().orElseThrow().value());
    assertFalse(strict.limit().orElseThrow().overridden());
  }

  @Test
  void aRuleWithoutALimitOfItsOwnTakesOneFromTheShapeFile() {
    Finding finding = new Wheel().limit("mass", 100).first("mass");
    assertEquals(Verdict.CAUTION, finding.verdict());
    assertEquals("take out more, or choose thinner or lighter stock", finding.advice());
    assertEquals(
        Verdict.PASS, new Wheel().limit("centroid-offset", 1).first("centroid-offset").verdict());
  }

  @Test
  void anOverrideOfTheSheetsMarginCountsBeforeTheRoughAllowance() {
    Wheel wheel = new Wheel().making(6, 3, 0).sheet(302, 202).limit("sheet-fit", 1);
    assertEquals(Verdict.PASS, wheel.first("sheet-fit").verdict());
  }

  @Test
  void everyRuleMayBeOverriddenAndOnlyTheLastOfTwoHolds() {
    for (String id : ids()) {
      assertEquals(
          List.of(), Limits.problems(List.of(new LimitOverride(id, 1, Wheel.line(9)))), id);
    }
    Wheel wheel =
        new Wheel()
            .hole(HoleRole.BOLT, 138, 0, 5)
            .limit("edge-distance", 1)
            .limit("edge-distance", 4);
    assertEquals(4, wheel.first("edge-distance").limit().orElseThrow().value());
  }

  @Test
  void unknownRulesAndLimitsBelowZeroAreToldAtTheirPlacesInOneRun() {
    Wheel wheel = new Wheel().limit("edge-distnace", 2).limit("mass", -5).limit("colour", 1);
    BadInput bad = assertThrows(BadInput.class, wheel::review);
    String all = "rules: " + String.join(", ", ids());
    assertEquals(
        List.of(
            "redshank.yaml:90:5 limits.edge-distnace: is not a rule of the review; did you mean"
                + " 'edge-distance'? "
                + all,
            "redshank.yaml:91:5 limits.mass: must not be below zero; write a limit of 0 or more",
            "redshank.yaml:92:5 limits.colour: is not a rule of the review; " + all),
        bad.lines());
  }

  private static Plate randomPlate(long seed) {
    Random random = new Random(seed);
    Wheel wheel =
        new Wheel()
            .outline(RandomShapes.contour(seed, 320))
            .kind(MaterialKind.values()[random.nextInt(4)])
            .thickness(1 + 14 * random.nextDouble())
            .making(6 * random.nextDouble(), 3 * random.nextDouble(), 15 * random.nextDouble());
    if (random.nextBoolean()) {
      wheel.sheet(200 + 200 * random.nextDouble(), 200 + 200 * random.nextDouble());
    }
    Plate good = wheel.plate();
    for (int k = 0; k < 8; k++) {
      double x = 240 * (random.nextDouble() - 0.5);
      double y = 240 * (random.nextDouble() - 0.5);
      Wheel next = copy(good);
      if (random.nextBoolean()) {
        next.hole(HoleRole.values()[random.nextInt(4)], x, y, 2 + 20 * random.nextDouble());
      } else {
        Contour window =
            RandomShapes.contour(random.nextLong(), 10 + 100 * random.nextDouble())
                .moved(RigidTransform.shift(x, y));
        next.window(WindowUse.values()[random.nextInt(4)], window);
      }
      try {
        good = next.plate();
      } catch (GeometryException taken) {
        continue;
      }
    }
    return good;
  }

  private static Wheel copy(Plate plate) {
    Wheel copy =
        new Wheel()
            .outline(plate.outline())
            .kind(plate.stock().material().kind())
            .thickness(plate.stock().thickness())
            .making(
                plate.making().cutterDiameter(),
                plate.making().roughAllowance(),
                plate.making().gripScale());
    plate.stock().sheet().ifPresent(sheet -> copy.sheet(sheet.width(), sheet.height()));
    plate.windows().forEach(w -> copy.window(w.use(), w.contour()));
    plate.holes().forEach(h -> copy.hole(h.role(), h.centre().x(), h.centre().y(), h.diameter()));
    return copy;
  }

  /** A thread of unknown depth warns though it would hold. */
  private static final Set<String> WARNS = Set.of("thread-strip");

  @Test
  void randomPlatesAreReviewedAlikeEachTimeAndEachVerdictFollowsFromItsLimit() {
    int findings = 0;
    for (long seed = 1; seed <= 200; seed++) {
      Plate plate = randomPlate(seed);
      ReviewReport report = Review.of(plate);
      assertEquals(report, Review.of(plate), "seed " + seed);
      for (Finding finding : report.findings()) {
        boolean kept = finding.limit().map(l -> l.keeps(finding.figure().value())).orElse(true);
        if (!WARNS.contains(finding.rule())) {
          assertEquals(finding.verdict() == Verdict.PASS, kept, "seed " + seed + " " + finding);
        }
        assertEquals(finding.verdict() == Verdict.PASS, finding.advice().isEmpty());
        finding.at().ifPresent(p -> assertTrue(plate.box().grown(1e-6).contains(p), "" + finding));
      }
      findings += report.findings().size();
    }
    assertTrue(findings > 2000, "findings " + findings);
  }

  @Test
  void theDemoPlatesAreReviewedWithoutAFailure() {
    for (Plate plate : List.of(DemoPlates.heron(), DemoPlates.bittern(), DemoPlates.dunlin())) {
      assertEquals(
          Verdict.CAUTION,
          Review.of(plate).verdict(),
          plate.name() + Review.of(plate).with(Verdict.FAIL));
    }
    // The knob's hole lies 8.5 mm from its edge: e/D 1.42.
    assertEquals(Verdict.FAIL, Review.of(DemoPlates.sanderling()).verdict());
    Finding web = Review.of(DemoPlates.heron()).of("narrowest-web").get(0);
    assertEquals("H1 to B1", web.subject());
    assertEquals(35 - 2.5 - 25, web.figure().value(), 1e-6);
    assertTrue(web.at().orElseThrow().near(new Point(0, 28.75), 1e-9));
  }

  /** A row that is not there would let every plate of that material pass without a word. */
  @Test
  void aMissingRowOfLimitsIsNoPass() {
    String text =
        "felloe-limits: 1\nrules:\n  edge-distance:\n"
            + "    metal: {caution: 2, source: one, basis: computed}\nfigures: {}\n";
    Limits limits = new Limits(new LimitTable(YamlTree.parse("limits.yaml", text)), Map.of());
    Rule rule = new EdgeDistance();
    assertTrue(limits.of(rule, "metal", Limit.Sense.AT_LEAST, 1).caution().isPresent());
    IllegalStateException fault =
        assertThrows(
            IllegalStateException.class,
            () -> limits.of(rule, "laminate", Limit.Sense.AT_LEAST, 1));
    assertTrue(fault.getMessage().contains("'laminate'"), fault.getMessage());
    assertThrows(IllegalStateException.class, () -> limits.figure("finger"));
  }
}
