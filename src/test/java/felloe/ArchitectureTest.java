package felloe;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.text.DecimalFormat;
import java.util.Arrays;
import java.util.Formatter;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
          Map.entry("bringin", List.of("geometry", "plate", "yaml", "shape", "measure")),
          Map.entry("grips", List.of("geometry", "plate", "yaml", "solid")),
          Map.entry("joints", List.of("geometry", "plate", "yaml", "hub", "grips")),
          Map.entry("drilling", List.of("geometry", "plate", "yaml", "hub")),
          Map.entry("laminate", List.of("geometry", "yaml")),
          Map.entry("review", List.of("geometry", "plate", "yaml", "hub", "joints", "grips")),
          Map.entry("solid", List.of("geometry")),
          Map.entry("cockpit", List.of("geometry", "plate", "yaml", "grips")),
          Map.entry("jig", List.of("geometry", "plate", "yaml", "shape", "hub", "solid")),
          Map.entry("drawing", List.of("geometry", "plate", "solid")),
          Map.entry("drafting", List.of("geometry", "plate", "drawing")),
          Map.entry("document", List.of("geometry", "drawing")),
          Map.entry("template", List.of("geometry", "plate", "drawing", "document")),
          Map.entry("cutting", List.of("geometry", "plate", "yaml")),
          Map.entry("layup", List.of("geometry", "plate", "yaml", "laminate", "cutting")),
          Map.entry("mesh", List.of("geometry")),
          Map.entry(
              "load",
              List.of("geometry", "plate", "yaml", "mesh", "joints", "laminate", "layup", "grips")),
          Map.entry(
              "job",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "hub",
                  "joints",
                  "drilling",
                  "cutting",
                  "layup",
                  "load",
                  "grips")),
          Map.entry(
              "cure", List.of("geometry", "plate", "yaml", "hub", "joints", "review", "load")),
          Map.entry(
              "out",
              List.of(
                  "geometry",
                  "bringin",
                  "plate",
                  "solid",
                  "drawing",
                  "template",
                  "cutting",
                  "drilling",
                  "yaml",
                  "layup",
                  "job")),
          Map.entry(
              "service",
              List.of(
                  "geometry",
                  "jig",
                  "cockpit",
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
                  "cure",
                  "job",
                  "grips",
                  "solid")),
          Map.entry(
              "report",
              List.of(
                  "geometry",
                  "bringin",
                  "solid",
                  "jig",
                  "cockpit",
                  "plate",
                  "yaml",
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
                  "cure",
                  "document",
                  "service",
                  "job",
                  "drafting",
                  "grips",
                  "solid")),
          Map.entry(
              "render",
              List.of(
                  "geometry",
                  "solid",
                  "jig",
                  "cockpit",
                  "plate",
                  "yaml",
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
                  "job",
                  "grips")),
          Map.entry(
              "kit",
              List.of(
                  "geometry",
                  "bringin",
                  "jig",
                  "plate",
                  "hub",
                  "drawing",
                  "template",
                  "cutting",
                  "layup",
                  "load",
                  "document",
                  "out",
                  "service",
                  "report",
                  "render",
                  "files",
                  "drilling",
                  "job",
                  "grips",
                  "solid")),
          Map.entry(
              "board",
              List.of(
                  "geometry",
                  "plate",
                  "yaml",
                  "shape",
                  "solid",
                  "drawing",
                  "template",
                  "document",
                  "cutting",
                  "service",
                  "report",
                  "render",
                  "kit",
                  "out",
                  "files")),
          Map.entry(
              "cli",
              List.of(
                  "board",
                  "geometry",
                  "bringin",
                  "jig",
                  "plate",
                  "yaml",
                  "drawing",
                  "template",
                  "document",
                  "cutting",
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

  /**
   * An arrow that nothing follows any more is taken off the map, so that it is not followed anew.
   */
  @Test
  void everyArrowOfTheMapIsFollowed() {
    Set<String> followed = new TreeSet<>();
    for (JavaClass type : MAIN) {
      type.getDirectDependenciesFromSelf()
          .forEach(use -> followed.add(room(type) + " -> " + room(use.getTargetClass())));
    }
    Set<String> allowed = new TreeSet<>();
    MAY_IMPORT.forEach((room, may) -> may.forEach(other -> allowed.add(room + " -> " + other)));
    allowed.removeAll(followed);
    assertEquals(Set.of(), allowed);
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
    onlyIn("boofcv", "felloe.bringin.MarksFound");
    onlyIn("georegression", "felloe.bringin.MarksFound");
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

  /**
   * Concatenation counts as well: it is compiled to {@code StringBuilder.append}, which {@link
   * #concatenationIsCompiledInline} holds.
   */
  @Test
  void numbersBecomeTextInOnePlace() {
    assertEquals("", String.join("\n", numbersWritten(MAIN)));
  }

  private static Set<String> numbersWritten(JavaClasses types) {
    Set<String> found = new TreeSet<>();
    for (JavaClass type : types) {
      if (type.getName().equals("felloe.geometry.Numbers")) {
        continue;
      }
      for (JavaAccess<?> access : type.getAccessesFromSelf()) {
        if (access.getTarget() instanceof CodeUnitAccessTarget target && writesNumbers(target)) {
          found.add(access.getDescription());
        }
      }
    }
    return found;
  }

  /** Ways of making text of a number that the rule must see, one a method. */
  private static final class Leaks {
    String concatenated(double x) {
      return "x" + x;
    }

    String appended(float x) {
      return new StringBuilder().append(x).toString();
    }

    String buffered(double x) {
      return new StringBuffer().append(x).toString();
    }

    String valued(double x) {
      return String.valueOf(x);
    }

    String told(double x) {
      return Double.toString(x);
    }

    String boxed(Double x) {
      return x.toString();
    }

    List<String> referred(List<Double> x) {
      return x.stream().map(Double::toHexString).toList();
    }

    String formatted(int x) {
      return String.format("%d", x) + "%f".formatted(2.5);
    }

    String decimal(BigDecimal x) {
      return x.toPlainString();
    }

    String localised(double x) {
      return new DecimalFormat("0.0").format(x);
    }

    void printed(PrintStream out, double x) {
      out.print(x);
    }
  }

  @Test
  void everyWayOfMakingTextOfANumberIsSeen() {
    String found =
        String.join("\n", numbersWritten(new ClassFileImporter().importClasses(Leaks.class)));
    for (Method way : Leaks.class.getDeclaredMethods()) {
      assertTrue(way.isSynthetic() || found.contains("." + way.getName() + "("), way.getName());
    }
  }

  /** Whether it makes text of a number with a fraction, in its own way or the machine's. */
  private static boolean writesNumbers(CodeUnitAccessTarget target) {
    Class<?> owner = WRITERS.get(target.getOwner().getName());
    if (owner == null) {
      return target.getOwner().getName().matches("java\\.text\\..*Format");
    }
    boolean fraction =
        target.getRawParameterTypes().stream().anyMatch(type -> FRACTIONS.contains(type.getName()));
    return switch (target.getName()) {
      case "append", "insert", "print", "println", "valueOf" ->
          fraction && owner != Double.class && owner != Float.class;
      case "format", "formatted", "printf" -> true;
      case "toString", "toHexString" ->
          Number.class.isAssignableFrom(owner)
                  && (fraction || Modifier.isFinal(owner.getModifiers()))
              || owner == BigDecimal.class;
      case "toPlainString", "toEngineeringString" -> true;
      default -> false;
    };
  }

  private static final Set<String> FRACTIONS =
      Set.of("double", "float", "java.lang.Double", "java.lang.Float");

  private static final Map<String, Class<?>> WRITERS =
      Stream.of(
              StringBuilder.class,
              StringBuffer.class,
              String.class,
              Double.class,
              Float.class,
              BigDecimal.class,
              PrintStream.class,
              PrintWriter.class,
              Formatter.class)
          .collect(Collectors.toMap(Class::getName, type -> type));

  @Test
  void concatenationIsCompiledInline() throws IOException {
    Set<String> found = new TreeSet<>();
    for (JavaClass type : MAIN) {
      try (InputStream in = type.getSource().orElseThrow().getUri().toURL().openStream()) {
        String bytes = new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
        if (bytes.contains("makeConcat")) {
          found.add(type.getName());
        }
      }
    }
    assertEquals(Set.of(), found);
  }
}
