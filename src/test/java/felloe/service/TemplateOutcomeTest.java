package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Mark;
import felloe.drawing.Page;
import felloe.drawing.Paper;
import felloe.plate.Figure;
import felloe.template.BarReading;
import felloe.template.PageSaving;
import felloe.template.Template;
import felloe.template.TemplateOptions;
import felloe.template.UsualPrint;
import felloe.yaml.Sets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Templates, kits and key figures as the domain has them. */
class TemplateOutcomeTest {

  private static Study study(String shape, String... sets) {
    Path file = Path.of("shapes/" + shape + ".yaml");
    return new Studies(Path.of(""), Optional.empty()).one(ShapeSource.file(file, Sets.of(sets)));
  }

  /** Each way is laid out as it says, and its pages are counted. */
  @ParameterizedTest
  @ValueSource(strings = {"avocet", "bittern", "dunlin", "heron"})
  void whatIsSaidToSavePagesDoes(String shape) {
    TemplateOutcome outcome = TemplateOutcome.of(study(shape), UsualPrint.on(Paper.A4));
    int now = outcome.tiled().grid().count();
    assertFalse(outcome.savings().isEmpty(), shape);
    for (PageSaving saving : outcome.savings()) {
      int pages =
          Template.of(
                  outcome.study().plate(),
                  List.of(),
                  saving.options(),
                  TemplateOutcome.stamp(outcome.study()))
              .pages()
              .grid()
              .count();
      assertEquals(saving.pages(), pages, saving.toString());
      assertTrue(pages < now, saving.toString());
    }
  }

  @Test
  void nothingSavesPagesWhereThereIsOne() {
    assertEquals(List.of(), TemplateOutcome.of(study("heron"), UsualPrint.on(Paper.A2)).savings());
  }

  /** A dashed line that nobody explains would be cut along. */
  @Test
  void whatBezelsCoverIsSaidToBeNoEdgeOnEveryPageOfTheSheet() {
    for (String shape : List.of("bittern", "heron")) {
      TemplateOutcome outcome = TemplateOutcome.of(study(shape), UsualPrint.on(Paper.A4));
      for (Page page : outcome.tiled().tiles()) {
        String words =
            page.parts().stream()
                .flatMap(part -> part.drawing().marks().stream())
                .filter(mark -> mark instanceof Mark.Label)
                .map(mark -> ((Mark.Label) mark).text())
                .collect(Collectors.joining(" "));
        assertEquals(shape.equals("bittern"), words.contains("never cut it"), words);
      }
    }
  }

  @Test
  void aReadingOfThePrintersBarsDoesNotChangeThePlottersPage() {
    TemplateOptions plain = UsualPrint.on(Paper.A4);
    TemplateOptions read = plain.withBars(new BarReading(99.6, 100.2));
    Study heron = study("heron");
    TemplateOutcome corrected = TemplateOutcome.of(heron, read);
    TemplateOutcome usual = TemplateOutcome.of(heron, plain);
    assertEquals(usual.fullSize().pages(), corrected.fullSize().pages());
    assertFalse(usual.tiled().pages().equals(corrected.tiled().pages()));
  }

  @Test
  void aPlateThatFailsHasItsTemplatesAndNothingForMachines() {
    TemplateOptions options = UsualPrint.on(Paper.A4);
    KitOutcome well = KitOutcome.of(study("heron"), options);
    assertTrue(!well.held() && well.router().isPresent() && well.refused().isEmpty());
    KitOutcome fails = KitOutcome.of(study("heron", "windows[0].derived.hub-disc=76"), options);
    assertTrue(fails.held() && fails.router().isEmpty() && fails.refused().isEmpty());
    assertTrue(fails.templates().tiled().pages().size() > 1);
  }

  @Test
  void aPlateThatTheUsualFiguresDoNotSuitHasNoProgramAndSaysWhy() {
    Study avocet = study("avocet", "making.cutter=50", "bolt-circles[0].diameter=9");
    KitOutcome kit = KitOutcome.of(avocet, UsualPrint.on(Paper.A4));
    assertTrue(kit.router().isEmpty());
    assertTrue(kit.held() || kit.refused().isPresent());
  }

  /** The polar moment is the sum of the two others (perpendicular axes). */
  @Test
  void keyFiguresAgreeWithEachOther() {
    List<Figure> figures = ShowOutcome.of(study("bittern").plate(), List.of()).figures();
    double[] moments =
        figures.stream().filter(f -> f.unit().equals("mm4")).mapToDouble(Figure::value).toArray();
    assertEquals(moments[3], moments[0] + moments[1], 1e-9 * moments[3]);
  }
}
