package felloe.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every bad file of the corpus gets exactly the answers that stand in it, all in one run. */
class BadShapesTest {

  private final ShapeSchema schema = new ShapeSchema();

  @TestFactory
  Stream<DynamicTest> aFaultOfFormIsRefusedByReaderAndSchema() {
    return each(
        "bad-form",
        text -> assertFalse(schema.complaints(text).isEmpty(), "the schema accepts it"));
  }

  @TestFactory
  Stream<DynamicTest> aFaultThatOnlyTheReaderCanSeeIsRefusedByIt() {
    return each("bad-geometry", text -> assertEquals(List.of(), schema.complaints(text)));
  }

  @TestFactory
  Stream<DynamicTest> aTextThatIsNoYamlIsRefusedBeforeAnySchema() {
    return each("bad-text", text -> {});
  }

  @Test
  void thereAreManyBadFiles() {
    int count =
        Stream.of("bad-form", "bad-geometry", "bad-text")
            .mapToInt(folder -> Corpus.files(folder).size())
            .sum();
    assertTrue(count >= 60, count + " bad files");
  }

  private interface Check {
    void of(String text);
  }

  private static Stream<DynamicTest> each(String folder, Check more) {
    return Corpus.files(folder).stream()
        .map(file -> DynamicTest.dynamicTest(name(file), () -> check(file, more)));
  }

  private static void check(Path file, Check more) {
    String text = Corpus.shape(Corpus.text(file));
    List<String> complaints = Corpus.complaints(text);
    Corpus.rewrite(file, text, complaints);
    assertFalse(complaints.isEmpty(), "the reader accepts it");
    assertEquals(
        String.join("\n", Corpus.expected(Corpus.text(file))), String.join("\n", complaints));
    more.of(text);
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }
}
