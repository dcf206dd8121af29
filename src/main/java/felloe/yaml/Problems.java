package felloe.yaml;

import felloe.plate.BadInput;
import felloe.plate.Place;
import felloe.plate.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Collects the problems of one run, so that the maker sees all of them at once. They come out in
 * the order of the files' lines; at most {@value #SHOWN} are shown and the rest is counted.
 */
public final class Problems {

  /** How many problems are shown. */
  public static final int SHOWN = 50;

  private static final int KEPT = 20_000;

  private final List<Problem> found = new ArrayList<>();
  private final Map<String, Place> oldKeys = new LinkedHashMap<>();
  private int beyond;

  /** Remembers a key that is written in the spelling of before; it is no problem. */
  void oldSpelling(Place place, String key) {
    oldKeys.putIfAbsent(key, place);
  }

  /** Keys with hyphens where underscores are written now, each with the place where it is first. */
  public Map<String, Place> oldSpellings() {
    return Collections.unmodifiableMap(oldKeys);
  }

  public void add(Problem problem) {
    if (found.size() < KEPT) {
      found.add(problem);
    } else {
      beyond++;
    }
  }

  /** Adds one unless it was told already: what several holes have alike is told once. */
  public void addOnce(Problem problem) {
    if (!found.contains(problem)) {
      add(problem);
    }
  }

  /** Adds all problems of a failure found elsewhere, such as in a second file. */
  public void add(BadInput failure) {
    failure.problems().forEach(this::add);
    beyond += failure.more();
  }

  /** True when none was found. */
  public boolean none() {
    return found.isEmpty();
  }

  /** How many were found. */
  public int count() {
    return found.size() + beyond;
  }

  /** Does nothing when all is well. */
  public void throwIfAny() {
    if (!none()) {
      throw asBadInput();
    }
  }

  /**
   * The problems as a failure to throw.
   *
   * @throws IllegalStateException if none was found
   */
  public BadInput asBadInput() {
    if (none()) {
      throw new IllegalStateException("no problem was found");
    }
    List<Problem> sorted = new ArrayList<>(found);
    sorted.sort(Comparator.comparing(Problem::place));
    int shown = Math.min(SHOWN, sorted.size());
    return new BadInput(sorted.subList(0, shown), count() - shown);
  }
}
