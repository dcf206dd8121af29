package felloe.out;

import felloe.drawing.TextWidth;
import felloe.solid.Part;
import felloe.solid.Solid;
import felloe.solid.Triangle;
import felloe.solid.Vertex;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * A body as a binary STL file: a header of 80 bytes, the number of triangles, then 50 bytes a
 * triangle, its normal and its corners counter-clockwise as seen from outside. The form has no
 * unit; the header says that it is millimetres. No header begins with {@code solid}, by which some
 * readers tell the other form of the file.
 *
 * <p>Accuracy: coordinates are rounded to 24 binary digits, 0.00001 mm within 100 mm of the origin.
 * The same body gives the same bytes on every machine.
 *
 * <p>Source: the binary form as it has been in common use since 1989; from memory, and read back in
 * tests by readers that are not ours.
 */
public final class StlWriter {

  private static final int HEADER = 80;
  private static final int TRIANGLE = 50;

  private StlWriter() {}

  /** The file's bytes. */
  public static byte[] write(Part part) {
    Solid body = part.body();
    int count = body.triangles().size();
    ByteBuffer file = ByteBuffer.allocate(HEADER + Integer.BYTES + TRIANGLE * count);
    file.order(ByteOrder.LITTLE_ENDIAN);
    String title = "Felloe, mm: " + TextWidth.shown(part.name());
    byte[] header = title.getBytes(StandardCharsets.US_ASCII);
    file.put(header, 0, Math.min(HEADER, header.length));
    file.position(HEADER);
    file.putInt(count);
    for (Triangle exact : body.triangles()) {
      // The normal of what is written: of a narrow triangle it is not that of the exact one.
      Triangle triangle = new Triangle(rounded(exact.a()), rounded(exact.b()), rounded(exact.c()));
      Vertex outward = triangle.outward();
      double length = Math.max(outward.norm(), Double.MIN_NORMAL);
      put(file, outward.x() / length, outward.y() / length, outward.z() / length);
      for (Vertex v : new Vertex[] {triangle.a(), triangle.b(), triangle.c()}) {
        put(file, v.x(), v.y(), v.z());
      }
      file.putShort((short) 0);
    }
    return file.array();
  }

  private static Vertex rounded(Vertex v) {
    return new Vertex((float) v.x(), (float) v.y(), (float) v.z());
  }

  private static void put(ByteBuffer file, double x, double y, double z) {
    file.putFloat((float) x).putFloat((float) y).putFloat((float) z);
  }
}
