package felloe.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.document.Block;
import felloe.document.Report;
import felloe.drawing.Paper;
import felloe.plate.Plate;
import felloe.render.TextRenderer;
import felloe.service.KitOutcome;
import felloe.service.ShapeSource;
import felloe.service.ShowOutcome;
import felloe.service.Studies;
import felloe.service.Study;
import felloe.service.TemplateOutcome;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Kits, templates and key figures, told. */
class KitReportTest {

  private static final TemplateOptions A4 = UsualPrint.on(Paper.A4);
  private static final String FAILING = "windows[0].derived.hub-disc=76";

  private static Study study(String shape, String... sets) {
    Path file = Path.of("shapes/" + shape + ".yaml");
    return new Studies(Path.of(""), Optional.empty()).one(ShapeSource.file(file, Sets.of(sets)));
  }

  private static List<String> lines(Report report) {
    Set<Block.Depth> open = EnumSet.of(Block.Depth.SCREEN);
    List<String> lines = TextRenderer.lines(report, 80, open);
    assertTrue(lines.stream().allMatch(line -> line.length() <= 80));
    return lines;
  }

  @Test
  void aKitTellsItsVerdictItsPagesAndWhatSavesSomeInTenLines() {
    List<String> lines = lines(KitReport.of(List.of(KitOutcome.of(study("dunlin"), A4))));
    assertTrue(lines.get(0).matches("Dunlin, kart wheel, revision [0-9a-f]{8}: kit"), lines.get(0));
    assertTrue(lines.get(1).startsWith("! Passes with cautions: "), lines.get(1));
    String first = String.join(" ", lines.subList(0, 10));
    assertTrue(first.contains("Fewer pages to join: 2 with a margin of 5 mm and 2 on A3."), first);
    assertTrue(first.contains("For machines: the finish lines, and a router's program"), first);
  }

  @Test
  void aKitThatFailsTellsWhatFailsWhatToChangeAndWhatIsHeldBack() {
    KitOutcome kit = KitOutcome.of(study("heron", "stock.thickness=5", FAILING), A4);
    List<String> lines = lines(KitReport.of(List.of(kit)));
    assertTrue(lines.get(1).startsWith("FAILS 14 checks of its review: "), lines.get(1));
    String all = String.join(" ", lines);
    assertTrue(
        all.contains(
            "4.5 mm are missing, 9.5 mm to be clear of cautions too; hub holes stay where"),
        all);
    assertTrue(all.contains("No files for machines: they are held back"), all);
  }

  @Test
  void severalKitsStandUnderAHeadingEach() {
    List<String> lines =
        lines(
            KitReport.of(
                List.of(KitOutcome.of(study("dunlin"), A4), KitOutcome.of(study("heron"), A4))));
    assertEquals("Kits of 2 plates", lines.get(0));
    assertTrue(
        lines.stream().anyMatch(l -> l.matches("Heron, hill-climb cart, revision [0-9a-f]{8}")),
        lines.toString());
  }

  @Test
  void templatesTellTheirPagesAndAFailFirst() {
    List<String> well = lines(TemplateReport.of(List.of(TemplateOutcome.of(study("heron"), A4))));
    assertTrue(well.get(1).startsWith("Template: 3 pages A4, 2 of them to join in 1 row of 2"));
    List<String> fails =
        lines(TemplateReport.of(List.of(TemplateOutcome.of(study("heron", FAILING), A4))));
    assertTrue(fails.get(1).contains("do not cut by its"), fails.get(1));
  }

  @Test
  void aPrintCheckByItselfSaysWhatToDoWithIt() {
    List<String> lines = lines(TemplateReport.of(List.of()));
    assertEquals("Print check", lines.get(0));
    assertFalse(String.join(" ", lines).contains("Join the pages"));
  }

  @Test
  void keyFiguresHaveTheirUnitsAndAPictureForThoseWhoSeeIt() {
    Report report = ShowReport.of(ShowOutcome.of(study("heron").plate(), List.of()));
    assertTrue(
        lines(report).stream().anyMatch(line -> line.matches("width over all +290\\.00 mm")));
    assertEquals(
        1, report.blocks().stream().filter(block -> block instanceof Block.Figure).count());
  }

  /** 20 plies make 5.51 mm: a mass of 6 mm would be another. */
  @Test
  void theMassOfALayUpSaysHowThickItIs() {
    Plate plate =
        study(
                "heron",
                "stock.thickness=6",
                "stock.layup={cloth: carbon-twill-245, process: vacuum-bag}")
            .plate();
    List<String> lines = lines(ShowReport.of(ShowOutcome.of(plate, List.of())));
    assertTrue(
        lines.contains("The mass is that of the lay-up, which comes to 5.51 mm."),
        String.join("\n", lines));
  }
}
