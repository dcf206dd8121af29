package felloe.start;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.PNGTranscoder;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The floor for a cold start: loads the libraries that {@code felloe make} needs, uses each once,
 * and writes one empty page of each kind. It knows nothing of plates.
 */
public final class BareProgram {

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='1600' height='1080' viewBox='0 0 400 270'>"
          + "<rect width='400' height='270' fill='#fff'/></svg>";

  private BareProgram() {}

  /** Reads the YAML file named first, and writes into the folder named second. */
  public static void main(String[] args) throws IOException, TranscoderException {
    System.setProperty("java.awt.headless", "true");
    CommandSpec spec = CommandSpec.create().name("bare");
    for (int i = 0; i < 2; i++) {
      spec.addPositional(
          PositionalParamSpec.builder().index("" + i).arity("1").type(String.class).build());
    }
    CommandLine.ParseResult call = new CommandLine(spec).parseArgs(args);
    String text = Files.readString(Path.of(call.matchedPositionalValue(0, "")));
    Object tree = new Load(LoadSettings.builder().build()).loadFromString(text);
    Coordinate[] square = {
      new Coordinate(0, 0), new Coordinate(1, 0), new Coordinate(1, 1), new Coordinate(0, 0)
    };
    GeometryFactory factory = new GeometryFactory();
    double area =
        factory.createPolygon(square).buffer(1).union(factory.createPolygon(square)).getArea();
    Path out = Path.of(call.matchedPositionalValue(1, ""));
    Files.createDirectories(out);
    Files.write(out.resolve("empty.pdf"), pdf());
    Files.write(out.resolve("empty-plot.pdf"), pdf());
    Files.writeString(out.resolve("empty.svg"), SVG);
    Files.write(out.resolve("empty.png"), png());
    Files.writeString(out.resolve("empty.csv"), "label,x\r\n");
    Files.writeString(out.resolve("empty.json"), "{\"area\": " + area + "}\n");
    System.out.println(tree.hashCode() == 0 ? "empty" : "written");
  }

  private static byte[] pdf() throws IOException {
    try (PDDocument document = new PDDocument();
        InputStream file =
            BareProgram.class.getResourceAsStream("/felloe/fonts/DejaVuSansCondensed.ttf")) {
      PDPage page = new PDPage(PDRectangle.A4);
      document.addPage(page);
      PDType0Font font = PDType0Font.load(document, file, true);
      try (PDPageContentStream content = new PDPageContentStream(document, page)) {
        content.beginText();
        content.setFont(font, 10);
        content.newLineAtOffset(50, 50);
        content.showText("1");
        content.endText();
      }
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      document.save(bytes);
      return bytes.toByteArray();
    }
  }

  private static byte[] png() throws TranscoderException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    new PNGTranscoder()
        .transcode(new TranscoderInput(new StringReader(SVG)), new TranscoderOutput(bytes));
    return bytes.toByteArray();
  }
}
