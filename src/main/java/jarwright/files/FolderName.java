package jarwright.files;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The name of a folder that a plan's print-outs go into, on any system that a stick is put into.
 */
public final class FolderName {
  /** Windows keeps these for devices, whatever follows after a full stop. */
  private static final Pattern DEVICE =
      Pattern.compile(
          "(con|conin\\$|conout\\$|prn|aux|nul|com[0-9\u00B9\u00B2\u00B3]|lpt[0-9\u00B9\u00B2\u00B3])"
              + " *(\\..*)?");

  private static final Pattern UNSAFE = Pattern.compile("[<>:\"/\\\\|?*\\p{Cntrl}]");

  private FolderName() {}

  /**
   * The plan's name where it will do.
   *
   * @param plan the file's name without its ending; {@code ..} would lead out of the folder
   */
  public static String of(String plan) {
    String safe = UNSAFE.matcher(plan).replaceAll("-").replaceAll("[. ]+$", "");
    boolean isDevice = DEVICE.matcher(safe.toLowerCase(Locale.ROOT)).matches();
    if (safe.isEmpty()) {
      return "plan";
    }
    return isDevice ? "plan-" + safe : safe;
  }
}
