package felloe.board;

import felloe.out.StlWriter;
import felloe.service.GripsOutcome;
import felloe.service.Study;
import felloe.solid.Part;
import felloe.solid.Solid;
import java.util.List;
import java.util.Optional;

/** The finished wheel as bodies to be turned about on the page: the plate first, then its grips. */
final class Solids {

  /** Those of the last plate that was looked at. */
  private Optional<Made> last = Optional.empty();

  private record Made(String text, List<Solid> bodies) {}

  /** One of them as an STL file; empty beyond the last. */
  synchronized Optional<byte[]> part(int number, String text, Study study) {
    if (last.isEmpty() || !last.get().text().equals(text)) {
      last = Optional.of(new Made(text, GripsOutcome.look(study)));
    }
    List<Solid> bodies = last.get().bodies();
    return number < 0 || number >= bodies.size()
        ? Optional.empty()
        : Optional.of(StlWriter.write(new Part("part", bodies.get(number))));
  }
}
