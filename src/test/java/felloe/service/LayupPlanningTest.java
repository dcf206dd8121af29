package felloe.service;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.laminate.StackResult;
import felloe.layup.LayupPlan;
import felloe.plate.BadInput;
import felloe.plate.LayupWish;
import felloe.yaml.Sets;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans of lay-ups and stacks, as they are asked for. */
class LayupPlanningTest {

  @TempDir Path folder;

  private LayupPlan plan(String shape, LayupPlanning.Request request, String... sets) {
    return LayupPlanning.of(
            ShapeSource.file(Path.of("shapes", shape + ".yaml"), Sets.of(sets)),
            request,
            new Studies(folder, Optional.empty()),
            folder)
        .plan();
  }

  @Test
  void aLaminateIsLaidUpAndMetalOnlyWhereClothOrPliesAreAskedFor() {
    LayupPlanning.Request usual = LayupPlanning.Request.USUAL;
    assertTrue(plan("heron", usual).laidUp());
    assertFalse(plan("dunlin", usual).laidUp());
    assertTrue(plan("dunlin", usual, "stock.layup.plies=12").laidUp());
    assertTrue(plan("dunlin", usual, "stock.layup.cloth=glass-twill-300").laidUp());
    assertFalse(plan("dunlin", usual, "stock.layup.temperature=15").laidUp());
  }

  @Test
  void theMakersOwnMaterialsAreReadFromTheFolder() throws IOException {
    Files.writeString(
        folder.resolve("mine.yaml"),
        "felloe-materials: 1\ncurrency: SEK\nprices:\n  - {item: epoxy-slow, price: 300}\n");
    LayupPlan plan =
        plan("heron", new LayupPlanning.Request(LayupWish.NONE, Optional.of(Path.of("mine.yaml"))));
    assertEquals("SEK", plan.choice().prices().currency().orElseThrow());
    assertFalse(plan.ways().get(0).missingPrices().contains("epoxy-slow"));
  }

  @Test
  void whatIsWrongWithFileAndShapeComesOutTogether() {
    LayupPlanning.Request none =
        new LayupPlanning.Request(LayupWish.NONE, Optional.of(Path.of("none.yaml")));
    BadInput bad =
        assertThrows(BadInput.class, () -> plan("heron", none, "stock.layup.fraction=0.1"));
    assertEquals(2, bad.problems().size(), bad.getMessage());
  }

  @Test
  void aStackIsReadAndWorkedOutWithOtherValues() throws IOException {
    Path file = folder.resolve("stack.yaml");
    Files.writeString(
        file, "stack: [{E1: 1e4, E2: 1e4, nu12: 0.3, G12: 1e3, thickness: 1, angle: 0}]\n");
    StackResult one = StackStudy.of(file, Sets.of());
    assertEquals(1e-4, one.loaded().deformation().ex(), 1e-15);
    StackResult thick = StackStudy.of(file, Sets.of("stack[0].thickness=2"));
    assertEquals(0.5e-4, thick.loaded().deformation().ex(), 1e-15);
  }
}
