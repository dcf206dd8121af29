package felloe.kit;

import felloe.drawing.Drawing;
import felloe.drawing.LineType;
import felloe.drawing.Mark;
import felloe.drawing.Picture;
import felloe.geometry.Box;
import felloe.geometry.Line;
import felloe.geometry.Point;
import felloe.out.About;
import felloe.out.PngWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * A second pair of hands that draws pictures while the first lays out pages. What draws takes some
 * time to be loaded, so it is loaded while the shape files are read. Drawing happens in one thread
 * only: the order of work, and so every byte, is the same each time.
 */
final class Easel implements AutoCloseable {

  private final ExecutorService hands =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "easel");
            // A wrong shape file must not wait for it.
            thread.setDaemon(true);
            return thread;
          });

  Easel() {
    hands.submit(Easel::warmUp);
  }

  /** A drawing of one short line has all that draws loaded. */
  private static byte[] warmUp() {
    Line line = new Line(Point.ORIGIN, new Point(1, 1));
    Drawing drawing = Drawing.of("line", List.of(Mark.Stroke.of(line, LineType.THIN)));
    Picture picture = new Picture(drawing, new Box(0, 0, 2, 2), 1);
    return PngWriter.write(picture, 2, new About("line", "", ""));
  }

  /** Has a file drawn meanwhile. */
  <T> Future<T> draw(Callable<T> work) {
    return hands.submit(work);
  }

  /** What was asked for, when it is done. */
  static <T> T done(Future<T> drawn) {
    try {
      return drawn.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      if (failed.getCause() instanceof Error cause) {
        throw cause;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while drawing", stopped);
    }
  }

  @Override
  public void close() {
    hands.shutdownNow();
  }
}
