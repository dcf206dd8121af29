package felloe.solid;

import felloe.geometry.Point;
import java.util.Optional;

/** Says what stands where in the plan of a relief. */
@FunctionalInterface
public interface Plan {

  /**
   * What stands at a point.
   *
   * @param inner a point inside one piece between the lines of the plan, on none of them
   * @return empty where there is nothing
   */
  Optional<Storey> at(Point inner);
}
