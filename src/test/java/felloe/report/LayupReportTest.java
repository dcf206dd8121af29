package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Block.Depth;
import felloe.document.Report;
import felloe.layup.LayupPlan;
import felloe.render.TextRenderer;
import felloe.service.LayupPlanning;
import felloe.service.ShapeSource;
import felloe.service.Studies;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LayupReportTest {

  private static final Set<Depth> SCREEN = EnumSet.of(Depth.SCREEN);

  private static LayupPlan plan(String shape, String... sets) {
    List<String> all = new ArrayList<>(List.of(sets));
    if (shape.equals("heron")) {
      all.add(0, "stock.thickness=5");
    }
    return LayupPlanning.of(
            ShapeSource.file(Path.of("shapes", shape + ".yaml"), Sets.of(all)),
            LayupPlanning.Request.USUAL,
            new Studies(Path.of(""), Optional.empty()),
            Path.of(""))
        .plan();
  }

  private static List<String> lines(LayupPlan plan) {
    return TextRenderer.lines(LayupReport.of(plan), 80, SCREEN);
  }

  /** All lines as one, so that it does not matter where they are broken. */
  private static String words(LayupPlan plan) {
    return String.join(" ", lines(plan)).replaceAll(" +", " ");
  }

  @Test
  void theAnswerStandsInTheFirstTenLines() {
    List<String> lines = lines(plan("heron"));
    assertTrue(lines.get(0).matches("Heron, hill-climb cart, revision [0-9a-f]{8}: lay-up"));
    String first = String.join(" ", lines.subList(0, 10)).replaceAll(" +", " ");
    for (String words :
        List.of(
            "16 plies of carbon twill 2/2, 200 g/m2",
            "a panel of 5.00 mm (4.00 to 5.14 mm is to be expected)",
            "the plate weighs 272 g",
            "Resin 406 g and hardener 122 g, 480 ml, in 2 pots",
            "each 203 g of resin and 61 g of hardener, 240 ml",
            "Cloth 2.9 m, 1000 mm wide",
            "What it costs is not known, for want of prices.",
            "takes some 4.6 hours")) {
      assertTrue(first.contains(words), words + " in " + first);
    }
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80));
  }

  @Test
  void dustIsThatOfTheClothAndACarbonClothInGlassIsTold() {
    String glass = words(plan("heron", "stock.material=glass-laminate"));
    assertTrue(glass.contains("Glass fibre dust irritates lungs"), glass);
    assertFalse(glass.contains("conducts") || glass.contains("shorts out"), glass);
    String mixed =
        words(
            plan(
                "heron", "stock.material=glass-laminate", "stock.layup={cloth: carbon-twill-200}"));
    assertTrue(mixed.contains("Carbon dust harms"), mixed);
    assertTrue(mixed.contains("calls the stock glass and epoxy laminate, this cloth is carbon"));
    String flax = words(plan("heron", "stock.layup={cloth: flax-twill-150}"));
    assertTrue(flax.contains("may short out"), flax);
  }

  @Test
  void cautionsOfTheResinStandWhereItIsMixedAndWhereClothIsWetted() {
    Report report = LayupReport.of(plan("heron"));
    String paper =
        String.join(" ", TextRenderer.lines(report, 80, EnumSet.of(Depth.PAPER)))
            .replaceAll(" +", " ");
    int pots = paper.indexOf("Pots; hours");
    int plies = paper.indexOf("Plies, tick them off");
    assertTrue(paper.indexOf("can smoke and burn", pots) < paper.indexOf("pot for", pots), paper);
    assertTrue(paper.indexOf("wet through", plies) < paper.indexOf("ply direction", plies), paper);
    String screen = words(plan("heron"));
    assertTrue(
        screen.matches(".*Weigh and mix each pot.*sensitise.*wet out.*wet through.*Pots;.*"));
  }

  @Test
  void whatCannotBeDoneIsTheFirstThingTold() {
    LayupPlan plan = plan("heron", "stock.layup={resin: epoxy-fast, temperature: 35}");
    List<String> lines = lines(plan);
    assertTrue(
        lines.get(1).startsWith("CANNOT BE DONE AS PLANNED: a pot is too thick"), lines.get(1));
    String first = String.join(" ", lines.subList(0, 10));
    assertTrue(first.contains("16 plies of carbon twill"), first);
  }

  /** Facts stand in one table each, and what is told twice is told alike. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Put on gloves|1",
        "2.9 m|2",
        "100 g of resin take 30 g of hardener|1",
        "Ways of getting the stock|1",
        "(the back face) up: 0/90 \u00b145 0/90|1",
        "warmed up slowly|1",
        "class IV|1"
      })
  void aFactIsToldAsOftenAsItIsWanted(String words, int times) {
    String all = words(plan("heron"));
    assertEquals(times, all.split(java.util.regex.Pattern.quote(words), -1).length - 1, all);
  }

  @Test
  void aSingleThingIsNotToldAsMany() {
    String all = words(plan("avocet", "stock.layup={plies: 1, strips: 0, cloth: glass-plain-200}"));
    assertTrue(all.contains("1 ply of E-glass plain weave, 200 g/m2: a panel of 0.20 mm"), all);
    assertTrue(all.contains(" ml, in one pot."), all);
    assertTrue(all.contains("Cut 1 piece of cloth"), all);
    assertTrue(all.contains("Measure the panel before you drill."), all);
    assertFalse(all.contains("1 plies") || all.contains("1 pieces") || all.contains("1 pots"), all);
  }

  @Test
  void anUnknownPriceHasItsSignBesideAKnownOneAndNoColumnAmongUnknownOnes() {
    assertFalse(words(plan("heron")).contains(" ? "));
    LayupPlan some =
        plan(
            "heron",
            "stock.layup={currency: EUR, prices: [{item: carbon-twill-200, price: 30, per: metre},"
                + " {item: epoxy-slow, price: 25}]}");
    double cost = 30 * some.cloth().toBuy() / 1000 + 25 * some.resin().mix() / 1000;
    assertEquals(cost, some.ways().get(0).materialCost().orElseThrow(), 1e-9);
    String all = words(some);
    assertTrue(all.contains("Material costs 100.20 EUR. Hands on"), all);
    assertTrue(all.contains("sheet mm material hours wait"), all);
    assertTrue(all.contains(" 300 x 300 ? 0.0 0"), all);
    assertTrue(all.contains("No price is known for sundries, carbon-sheet,"), all);
    LayupPlan work =
        plan(
            "heron",
            "stock.layup={currency: EUR, prices: [{item: carbon-twill-200, price: 30, per: metre},"
                + " {item: epoxy-slow, price: 25}, {item: work, price: 10}]}");
    String both = words(work);
    assertTrue(both.contains("Material costs 100.20 EUR, work 45.60 EUR. Hands on"), both);
  }

  @Test
  void stockThatIsBoughtIsToldWithItsSheetAndNoStepsOfALayUp() {
    List<String> lines = lines(plan("dunlin"));
    String first = String.join(" ", lines.subList(0, 6)).replaceAll(" +", " ");
    assertTrue(first.contains("The stock is aluminium 6082-T6, which is bought."), first);
    assertTrue(first.contains("it fits on the usual size of 300 x 300 mm"), first);
    String all = String.join("\n", lines);
    assertFalse(all.contains("Shopping list") || all.contains("Pots"), all);
    assertTrue(all.contains("Swarf and fresh edges cut"), all);
    assertTrue(words(plan("dunlin")).contains("aluminium 6082-T6 sheet, as in"), all);
    String glass = words(plan("dunlin", "stock.material=glass-epoxy-sheet"));
    assertTrue(glass.contains("The stock is glass and epoxy sheet, which is bought."), glass);
    assertTrue(glass.contains("Buy glass and epoxy sheet, "), glass);
  }

  @ParameterizedTest
  @ValueSource(strings = {"vacuum-bag", "infusion", "press"})
  void everyProcessHasWhatItTakes(String process) {
    LayupPlan plan = plan("heron", "stock.layup={process: " + process + "}");
    String list = LayupShopping.of(plan).toString();
    boolean bag = !process.equals("press");
    assertEquals(bag, list.contains("vacuum pump with gauge"), list);
    assertEquals(process.equals("infusion"), list.contains("flow mesh"), list);
    assertEquals(!bag, list.contains("never glass, for the press"), list);
    assertFalse(list.contains("weights"), list);
    double round = 2 * (plan.mould().width() + plan.mould().height()) / 1000;
    LayupShopping.of(plan).stream()
        .filter(item -> item.what().equals("sealant tape"))
        .map(item -> Double.parseDouble(item.amount().replace(" m", "")))
        .forEach(tape -> assertTrue(tape >= round - 1e-9 && tape < round + 0.1, "" + tape));
  }

  @Test
  void paperHasTicksAndLabelsThatTheScreenHasNot() {
    LayupPlan plan = plan("heron");
    Report report = LayupReport.of(plan);
    List<Block> paper = new ArrayList<>();
    open(report.blocks(), paper);
    assertTrue(paper.stream().anyMatch(b -> b instanceof Block.Steps s && s.ticked()));
    int labels =
        paper.stream()
            .filter(b -> b instanceof Block.Figure)
            .mapToInt(b -> ((Block.Figure) b).pictures().size())
            .max()
            .orElseThrow();
    assertEquals(plan.cloth().pieces().size(), labels);
    assertFalse(words(plan).contains("tick them off"));
  }

  private static void open(List<Block> blocks, List<Block> all) {
    for (Block block : blocks) {
      if (block instanceof Block.Folded folded) {
        open(folded.blocks(), all);
      } else {
        all.add(block);
      }
    }
  }

  @Test
  void minutesAreToldAsHoursAndMinutes() {
    assertEquals("0:00", LayupReport.clock(0));
    assertEquals("0:09", LayupReport.clock(9.4));
    assertEquals("1:00", LayupReport.clock(59.6));
    assertEquals("10:05", LayupReport.clock(605));
  }
}
