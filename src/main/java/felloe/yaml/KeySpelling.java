package felloe.yaml;

import felloe.yaml.YamlValue.Mapping;

/**
 * How keys are spelt: words joined by underscores. Files of before have hyphens in their place,
 * which are read all the same.
 */
public final class KeySpelling {

  private KeySpelling() {}

  /**
   * The key as a group has it: as asked for, or spelt the other way; as asked where it has none.
   */
  public static String in(Mapping group, String key) {
    if (group.entries().containsKey(key)) {
      return key;
    }
    String other = other(key);
    return group.entries().containsKey(other) ? other : key;
  }

  /** The key spelt the other way. */
  static String other(String key) {
    return key.indexOf('_') >= 0 ? key.replace('_', '-') : key.replace('-', '_');
  }
}
