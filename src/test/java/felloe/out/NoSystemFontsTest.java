package felloe.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import felloe.drawing.Picture;
import felloe.drawing.PictureDrawing;
import felloe.plate.DemoPlates;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A picture is drawn without a look at the fonts of the machine, which may have none. */
class NoSystemFontsTest {

  /** Draws one picture; run in a Java of its own. */
  public static void main(String[] args) {
    Picture picture = PictureDrawing.of(DemoPlates.heron(), List.of());
    About about = PlateDrawings.ABOUT;
    byte[] bytes = PngWriter.write(picture, 400, about);
    System.out.println("drawn: " + (bytes.length > 1000));
  }

  @Test
  void noClassThatListsFontsIsEverLoaded() throws Exception {
    Process java =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-Xlog:class+load",
                "-cp",
                System.getProperty("java.class.path"),
                NoSystemFontsTest.class.getName())
            .redirectErrorStream(true)
            .start();
    String said = new String(java.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertEquals(0, java.waitFor(), said);
    assertTrue(said.contains("drawn: true"));
    assertTrue(said.contains("sun.java2d.SunGraphics2D "), "the log lists classes");
    for (String lister :
        List.of(
            "sun.font.SunFontManager",
            "sun.awt.FontConfiguration",
            "sun.awt.FcFontConfiguration",
            "sun.font.TrueTypeFont",
            "org.apache.fontbox.util.autodetect.FontFileFinder")) {
      assertFalse(said.contains(lister + " "), lister + " was loaded");
    }
  }
}
