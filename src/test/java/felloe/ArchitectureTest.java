package felloe;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The walls of the house: who may import whom, and which room knows which library. */
class ArchitectureTest {

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("felloe");

  /** Each room with the rooms that it may import. */
  static final Map<String, List<String>> MAY_IMPORT =
      Map.ofEntries(
          Map.entry("geometry", List.of()),
          Map.entry("plate", List.of("geometry")),
          Map.entry("files", List.of("plate")),
          Map.entry("yaml", List.of("geometry", "plate")),
          Map.entry("shape", List.of("geometry", "plate", "yaml")),
          Map.entry("hub", List.of("geometry", "plate", "yaml")),
          Map.entry("measure", List.of("geometry", "plate", "yaml", "hub")),
          Map.entry("joints", List.of("geometry", "plate", "yaml", "hub")),
          Map.entry("drilling", List.of("geometry", "plate", "yaml", "hub")),
          Map.entry("laminate", List.of("geometry", "plate", "yaml")),
          Map.entry("review", List.of("geometry", "plate", "yaml", "hub", "joints")),
          Map.entry("drawing", List.of("geometry", "plate")),
          Map.entry("document", List.of("geometry", "drawing")),
          Map.entry("template", List.of("geometry", "plate", "drawing", "document")),
          Map.entry("cutting", List.of("geometry", "plate", "yaml")),
          Map.entry("layup", List.of("geometry", "plate", "yaml", "laminate", "cutting")),
          Map.entry("mesh", List.of("geometry", "plate")),
          Map.entry(
              "load",
              List.of("geometry", "plate", "yaml", "mesh", "hub", "joints", "laminate", "layup")),
          Map.entry(
              "out",
              List.of(
                  "geometry",
                  "plate",
                  "drawing",
                  "document",
                  "template",
                  "hub",
                  "cutting",
                  "measure",
                  "joints",
                  "drilling",
                  "laminate",
                  "layup",
                  "mesh",
                  "load")),
          Map.entry(
              "service",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "shape",
                  "hub",
                  "measure",
                  "joints",
                  "drilling",
                  "laminate",
                  "review",
                  "drawing",
                  "template",
                  "cutting",
                  "layup",
                  "mesh",
                  "load")),
          Map.entry(
              "report",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "shape",
                  "hub",
                  "measure",
                  "joints",
                  "drilling",
                  "laminate",
                  "review",
                  "drawing",
                  "template",
                  "cutting",
                  "layup",
                  "mesh",
                  "load",
                  "document",
                  "service")),
          Map.entry(
              "render",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "shape",
                  "hub",
                  "measure",
                  "joints",
                  "drilling",
                  "laminate",
                  "review",
                  "drawing",
                  "template",
                  "cutting",
                  "layup",
                  "mesh",
                  "load",
                  "document",
                  "out",
                  "service",
                  "report")),
          Map.entry(
              "kit",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "shape",
                  "hub",
                  "measure",
                  "joints",
                  "drilling",
                  "laminate",
                  "review",
                  "drawing",
                  "template",
                  "cutting",
                  "layup",
                  "mesh",
                  "load",
                  "document",
                  "out",
                  "service",
                  "report",
                  "render",
                  "files")),
          Map.entry(
              "cli",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "drawing",
                  "template",
                  "document",
                  "cutting",
                  "laminate",
                  "layup",
                  "load",
                  "service",
                  "report",
                  "render",
                  "kit",
                  "files")));

  private static String room(JavaClass type) {
    String[] parts = type.getPackageName().split("\\.");
    return parts.length > 1 && parts[0].equals("felloe") ? parts[1] : "";
  }

  @Test
  void everyRoomIsOnTheMap() {
    Set<String> rooms = MAIN.stream().map(ArchitectureTest::room).collect(Collectors.toSet());
    rooms.removeAll(MAY_IMPORT.keySet());
    assertEquals(Set.of(), rooms);
  }

  @Test
  void roomsImportOnlyWhatTheyMay() {
    for (Map.Entry<String, List<String>> room : MAY_IMPORT.entrySet()) {
      Set<String> others = new TreeSet<>(MAY_IMPORT.keySet());
      others.remove(room.getKey());
      others.removeAll(room.getValue());
      String[] forbidden = others.stream().map(r -> "felloe." + r + "..").toArray(String[]::new);
      noClasses()
          .that()
          .resideInAPackage("felloe." + room.getKey() + "..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage(forbidden)
          .allowEmptyShould(true)
          .check(MAIN);
    }
  }

  @Test
  void roomsFormNoCircles() {
    slices().matching("felloe.(*)..").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  void eachLibraryHasItsRoom() {
    onlyIn("org.locationtech.jts", "felloe.geometry.Topology");
    onlyIn("org.snakeyaml", "felloe.yaml");
    onlyIn("picocli", "felloe.cli");
    onlyIn("org.apache.batik", "felloe.out");
    onlyIn("org.w3c.dom", "felloe.out");
    onlyIn("org.apache.pdfbox", "felloe.out");
    onlyIn("org.apache.fontbox", "felloe.out");
    onlyIn("org.tinfour", "felloe.mesh.Delaunay");
    onlyIn("org.hipparchus", "felloe.measure", "felloe.laminate");
    onlyIn("de.siegmar.fastcsv", "felloe.measure.MeasuredCsv");
  }

  private static void onlyIn(String library, String... homes) {
    DescribedPredicate<JavaClass> elsewhere =
        DescribedPredicate.describe(
            "live outside " + String.join(", ", homes),
            type ->
                Arrays.stream(homes)
                    .noneMatch(
                        home ->
                            type.getName().equals(home)
                                || type.getName().startsWith(home + ".")
                                || type.getName().startsWith(home + "$")));
    noClasses()
        .that(elsewhere)
        .should()
        .dependOnClassesThat()
        .resideInAPackage(library + "..")
        .check(MAIN);
  }

  @Test
  void numbersBecomeTextInOnePlace() {
    noClasses()
        .that()
        .resideInAPackage("felloe..")
        .should()
        .callMethod(String.class, "format", String.class, Object[].class)
        .orShould()
        .callMethod(String.class, "formatted", Object[].class)
        .orShould()
        .callMethod(Double.class, "toString", double.class)
        .orShould()
        .callMethod(String.class, "valueOf", double.class)
        .check(MAIN);
  }
}
