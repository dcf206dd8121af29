package felloe.shape;

import felloe.yaml.YamlValue;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A date-free revision: eight hexadecimal digits of the SHA-256 digest over all keys and values,
 * overrides included. Comments and layout do not change it.
 */
final class Revision {

  private static final int BYTES = 4;

  private Revision() {}

  static String of(YamlValue root) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      add(root, digest);
      return HexFormat.of().formatHex(digest.digest(), 0, BYTES);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  private static void add(YamlValue value, MessageDigest digest) {
    if (value instanceof YamlValue.Mapping mapping) {
      digest.update((byte) '{');
      mapping
          .entries()
          .forEach(
              (key, keyed) -> {
                // The old spelling of a key is no other value.
                add(key.replace('_', '-'), digest);
                add(keyed.value(), digest);
              });
      digest.update((byte) '}');
    } else if (value instanceof YamlValue.Sequence sequence) {
      digest.update((byte) '[');
      sequence.items().forEach(item -> add(item, digest));
      digest.update((byte) ']');
    } else if (value instanceof YamlValue.Scalar scalar) {
      add(scalar.text(), digest);
    }
  }

  private static void add(String text, MessageDigest digest) {
    digest.update(text.getBytes(StandardCharsets.UTF_8));
    // A zero byte cannot stand in a shape file, so values cannot run into each other.
    digest.update((byte) 0);
  }
}
