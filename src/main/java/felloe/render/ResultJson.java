package felloe.render;

import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.plate.Plate;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The results of all use cases as JSON text; their shapes are told in {@code docs/}. */
public final class ResultJson {

  private ResultJson() {}

  /** A result, to stand within another. */
  public static Json of(Object result) {
    return records().of(result);
  }

  public static String text(Object result) {
    return JsonWriter.text(records().of(result));
  }

  /** A result with the files that were written for it, as text. */
  public static String text(Object result, List<Path> files) {
    RecordJson records = records();
    if (records.of(result) instanceof Json.Members members) {
      return JsonWriter.text(members.with("files", records.of(files)));
    }
    throw new IllegalArgumentException("no members: " + result.getClass());
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
    views.addAll(CutViews.all());
    views.addAll(DrillViews.all());
    views.addAll(HubViews.all());
    views.addAll(LoadViews.all());
    views.addAll(SearchViews.all());
    views.addAll(LayupViews.all());
    views.addAll(StackViews.all());
    views.addAll(StripsViews.all());
    return new RecordJson(views);
  }
}
