package felloe.out;

import felloe.drawing.Page;
import felloe.solid.Shaded;
import felloe.template.PageSet;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes pages as PDF 1.7 (ISO 32000), everything vector, text as text in an embedded font.
 *
 * <p>Accuracy: coordinates are written in millimetres with {@value PdfContent#DECIMALS} decimals
 * under one scale of 72/25.4; arcs are cubic pieces of at most 45 degrees, which err by at most
 * 4.3e-6 of the radius. The same pages give the same bytes: no clock, no random id.
 */
public final class PdfWriter {

  private static final double POINTS = 72 / 25.4;
  private static final COSName FONT = COSName.getPDFName("F1");

  private PdfWriter() {}

  /** A page set as a PDF file. */
  public static byte[] write(PageSet set) {
    return write(set.pages(), set.title());
  }

  /**
   * Pages as a PDF file.
   *
   * @param title the file's own title, shown by viewers
   */
  public static byte[] write(List<Page> pages, String title) {
    try (PDDocument document = new PDDocument();
        TrueTypeFont outlines = font()) {
      document.setVersion(1.7f);
      PDType0Font font = PDType0Font.load(document, outlines, true);
      PdfText text = new PdfText(font, outlines);
      CRC32 sum = new CRC32();
      sum.update(title.getBytes(StandardCharsets.UTF_8));
      for (Page page : pages) {
        PdfContent operators = new PdfContent(text);
        byte[] content = operators.page(page);
        sum.update(content);
        PDPage leaf = page(document, page, content, font);
        for (Shaded dots : operators.images()) {
          byte[] greys = greys(dots);
          sum.update(greys);
          leaf.getResources().add(image(document, dots, greys), "Im");
        }
        document.addPage(leaf);
      }
      // Fonts are cut down on saving only for pages that the library's own stream class wrote.
      font.subset();
      prefer(document);
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(title);
      information.setProducer("Felloe");
      document.setDocumentInformation(information);
      // The library takes the clock for the file's identifier unless it is given one.
      document.setDocumentId(sum.getValue());
      ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 16);
      document.save(out, CompressParameters.NO_COMPRESSION);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TrueTypeFont font() throws IOException {
    try (InputStream in = PdfWriter.class.getResourceAsStream(felloe.drawing.TextWidth.FONT)) {
      return new TTFParser().parse(new RandomAccessReadBuffer(in.readAllBytes()));
    }
  }

  private static PDPage page(PDDocument document, Page page, byte[] content, PDFont font)
      throws IOException {
    PDRectangle sheet =
        new PDRectangle((float) (page.width() * POINTS), (float) (page.height() * POINTS));
    PDPage leaf = new PDPage(sheet);
    leaf.setCropBox(sheet);
    leaf.setTrimBox(sheet);
    PDResources resources = new PDResources();
    resources.put(FONT, font);
    leaf.setResources(resources);
    leaf.setContents(
        new PDStream(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE));
    return leaf;
  }

  private static byte[] greys(Shaded dots) {
    byte[] greys = new byte[dots.width() * dots.height()];
    for (int i = 0; i < greys.length; i++) {
      greys[i] = (byte) dots.grey(i % dots.width(), i / dots.width());
    }
    return greys;
  }

  private static PDImageXObject image(PDDocument document, Shaded dots, byte[] greys)
      throws IOException {
    return new PDImageXObject(
        document,
        new ByteArrayInputStream(PngFile.deflate(greys)),
        COSName.FLATE_DECODE,
        dots.width(),
        dots.height(),
        8,
        PDDeviceGray.INSTANCE);
  }

  /** Asks the viewer not to scale, to show the title, and to print one-sided on the right tray. */
  private static void prefer(PDDocument document) {
    PDViewerPreferences wishes = new PDViewerPreferences(new org.apache.pdfbox.cos.COSDictionary());
    wishes.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
    wishes.setDuplex(PDViewerPreferences.DUPLEX.Simplex);
    wishes.setDisplayDocTitle(true);
    wishes.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
    COSArray enforced = new COSArray(new ArrayList<>(List.of(COSName.getPDFName("PrintScaling"))));
    wishes.getCOSObject().setItem(COSName.getPDFName("Enforce"), enforced);
    document.getDocumentCatalog().setViewerPreferences(wishes);
    document.getDocumentCatalog().setLanguage("en");
  }
}
