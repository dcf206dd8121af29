package felloe.review;

import felloe.plate.Finding;
import felloe.plate.Limit.Sense;
import felloe.plate.Stock;
import java.util.List;
import java.util.Optional;

/** What the chamfers of both faces leave of an edge, over the thickness of the plate. */
record ChamferLand() implements Rule {

  @Override
  public String id() {
    return "chamfer-land";
  }

  @Override
  public String why() {
    return "Chamfers that all but meet leave a knife edge.";
  }

  @Override
  public String unit() {
    return "t";
  }

  @Override
  public List<Finding> check(Reviewed of, Limits limits) {
    double chamfer = of.plate().making().edges().chamfer();
    if (chamfer == 0) {
      return List.of();
    }
    Stock stock = of.plate().stock();
    return List.of(
        limits
            .of(this, "any", Sense.AT_LEAST, 1)
            .finding(
                this,
                "edges",
                "left between the chamfers",
                (stock.asMade() - 2 * chamfer) / stock.asMade(),
                Optional.empty(),
                stock.place(),
                "a smaller making.chamfer leaves more"));
  }
}
