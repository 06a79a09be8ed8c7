package jarwright.files;

import jarwright.pantry.Entry;
import jarwright.pantry.JarNumbers;
import jarwright.pantry.LedgerEvent;
import jarwright.pantry.Opened;
import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Composes the lines that follow a ledger's end, and brings them onto the disk in one go. */
final class LedgerWriter {
  private static final int HOUSEHOLD_BYTES = 8;
  private static final int LONGEST_LINE = 1 << 16;

  private final LedgerScan.Found end;
  private final LedgerChain chain = new LedgerChain();
  private final StringBuilder lines = new StringBuilder();
  private final List<LedgerEvent> events = new ArrayList<>();
  private String mark;
  private String check;
  private long last;

  /**
   * @param end where the ledger's good part ends
   */
  LedgerWriter(LedgerScan.Found end) {
    this.end = end;
    this.mark = end.mark();
    this.check = end.check();
    this.last = end.last();
  }

  /**
   * Numbers the entries and adds their lines; nothing is written yet.
   *
   * @throws Refused where one is too long for a line
   */
  List<LedgerEvent> compose(List<Entry> entries) throws Refused {
    if (end.goodEnd() == 0) {
      lines.append(LedgerText.HEADER).append('\n');
    } else if (!end.ended()) {
      lines.append('\n');
    }
    if (mark.isEmpty()) {
      open(entries.get(0).when(), entries.get(0).by());
    }
    for (Entry entry : entries) {
      events.add(add(entry));
    }
    return events;
  }

  private void open(OffsetDateTime when, String by) throws Refused {
    byte[] lot = new byte[HOUSEHOLD_BYTES];
    new SecureRandom().nextBytes(lot);
    String household = HexFormat.of().formatHex(lot);
    mark = LedgerChain.mark(household);
    add(new Entry(when, Optional.empty(), JarNumbers.NONE, new Opened(household), by));
  }

  private LedgerEvent add(Entry entry) throws Refused {
    last++;
    LedgerEvent event = new LedgerEvent(last, entry);
    String text = LedgerText.write(event) + ",";
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > LONGEST_LINE) {
      throw new Refused(
          Place.wholeFile(LedgerFile.NAME),
          "what is to be noted is " + bytes.length + " bytes long",
          "an event takes up to " + LONGEST_LINE + "; shorten the note");
    }
    check = chain.check(mark, check, bytes, bytes.length);
    lines.append(text).append(check).append('\n');
    return event;
  }

  /** On any failure the ledger is cut back to what it was, so far as the disk allows. */
  void write(FileChannel ledger) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(lines.toString().getBytes(StandardCharsets.UTF_8));
    try {
      while (bytes.hasRemaining()) {
        ledger.write(bytes, end.goodEnd() + bytes.position());
      }
      ledger.force(true);
    } catch (IOException e) {
      try {
        ledger.truncate(end.goodEnd());
        ledger.force(true);
      } catch (IOException again) {
        e.addSuppressed(again);
      }
      throw e;
    }
  }
}
