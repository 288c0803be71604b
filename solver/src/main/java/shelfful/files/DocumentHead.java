package shelfful.files;

import java.util.Optional;

/**
 * The two fields that every file of ours begins with: which format it is, and which version of it.
 */
enum DocumentHead {
  STUDIO("shelfful studio"),
  BATCH_LIST("shelfful batch list"),
  PLAN("shelfful plan"),
  WORK("shelfful work"),
  WEEK("shelfful week"),
  WEEK_PLAN("shelfful week plan");

  private static final int VERSION = 1;
  private static final int ANY_VERSION = 1_000_000;

  private final String format;

  DocumentHead(String format) {
    this.format = format;
  }

  FieldWriter writer() {
    return new FieldWriter().text("format", format).whole("version", VERSION);
  }

  /** Whether the file calls itself by this format's name, whatever else is in it. */
  boolean isNamedBy(FieldReader document) {
    return document.isText("format", format);
  }

  /** Whether the file says it is this; if not, nothing else in it is worth reading. */
  boolean isHeadOf(FieldReader document) {
    Optional<String> found = document.optional("format", FieldReader::text);
    if (!document.has("format")) {
      document.fault("format", "The field is missing.", "It must be " + Shown.quoted(format) + ".");
      return false;
    }
    if (!found.equals(Optional.of(format))) {
      found.ifPresent(
          other ->
              document.fault(
                  "format",
                  "The file is " + Shown.quoted(other) + ", not " + Shown.quoted(format) + ".",
                  "Choose the right file."));
      return false;
    }
    int faultsBefore = document.problems().faults();
    int version = document.whole("version", 1, ANY_VERSION);
    if (version > VERSION) {
      document.fault(
          "version",
          "The file is of version "
              + version
              + "; this program knows versions up to "
              + VERSION
              + ".",
          "Open it with a newer version of the program.");
    }
    return document.problems().faults() == faultsBefore;
  }
}
