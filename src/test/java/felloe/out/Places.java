package felloe.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.function.Supplier;

/** Runs a writer as if on machines in several countries. */
final class Places {

  private Places() {}

  /** Asserts that the bytes are the same everywhere. */
  static void everywhere(Supplier<byte[]> writer) {
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    byte[] here = writer.get();
    assertTrue(here.length > 0);
    try {
      for (String tag : List.of("de-DE", "ar-EG-u-nu-arab", "tr-TR", "hi-IN-u-nu-deva")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        assertArrayEquals(here, writer.get(), tag);
      }
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
  }
}
