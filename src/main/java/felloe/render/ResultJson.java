package felloe.render;

import felloe.out.JsonWriter;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;

/** The results of all use cases as JSON text; their shapes are told in {@code docs/}. */
public final class ResultJson {

  private ResultJson() {}

  /** A result as text. */
  public static String text(Object result) {
    return JsonWriter.text(records().of(result));
  }

  /** The policy with every view of the house. */
  static RecordJson records() {
    List<View<?>> views = new ArrayList<>();
    views.add(
        View.of(Plate.class)
            .with("name", Plate::name)
            .with("title", Plate::title)
            .with("revision", Plate::revision));
    views.addAll(CheckViews.all());
    views.addAll(HubViews.all());
    views.addAll(LoadViews.all());
    views.addAll(SearchViews.all());
    return new RecordJson(views);
  }
}
