package felloe.jig;

import felloe.solid.Part;
import felloe.solid.Solid;
import felloe.solid.Vertex;

/**
 * A piece to print, as it lies on the bed.
 *
 * @param name what it is, for names of files: {@code template-A1}, {@code drill}, {@code gauge}
 * @param label what stands on its face; empty where there is no room
 * @param joints dovetails on it
 * @param body as it is printed, with the printer's correction
 */
public record JigPiece(String name, String label, int joints, Solid body) {

  /** Sizes in x, y and z as printed, mm. */
  public Vertex size() {
    return body.extent().size();
  }

  /** With its name. */
  public Part part() {
    return new Part(name, body);
  }
}
