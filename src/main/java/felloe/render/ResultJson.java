package felloe.render;

import felloe.out.Json;
import felloe.out.JsonWriter;
import felloe.plate.Plate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

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

  /** A result with more members than it has itself, to stand within another. */
  public static Json with(Object result, Map<String, ?> more) {
    RecordJson records = records();
    if (records.of(result) instanceof Json.Members members) {
      for (Map.Entry<String, ?> one : more.entrySet()) {
        members = members.with(one.getKey(), records.of(one.getValue()));
      }
      return members;
    }
    throw new IllegalArgumentException("no members: " + result.getClass());
  }

  /** The same as text. */
  public static String text(Object result, Map<String, ?> more) {
    return JsonWriter.text(with(result, more));
  }

  /** The policy with every view of the house. */
  static RecordJson records() {
    List<View<?>> views = new ArrayList<>();
    views.add(
        View.of(
            Plate.class,
            (plate, to) ->
                to.add("name", plate.name())
                    .add("title", plate.title())
                    .add("revision", plate.revision())));
    views.addAll(CardViews.all());
    views.addAll(CheckViews.all());
    views.addAll(CutViews.all());
    views.addAll(DrillViews.all());
    views.addAll(HubViews.all());
    views.addAll(JigViews.all());
    views.addAll(CockpitViews.all());
    views.addAll(KitViews.all());
    views.addAll(LoadViews.all());
    views.addAll(GripViews.all());
    views.addAll(SearchViews.all());
    views.addAll(LayupViews.all());
    views.addAll(StackViews.all());
    views.addAll(StripsViews.all());
    return new RecordJson(views);
  }
}
