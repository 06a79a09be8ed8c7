package jarwright.files;

import jarwright.problem.Place;
import jarwright.problem.Refused;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Goes through a ledger from its first byte to its last and checks the chain. Only the last line
 * may be damaged, as a write that was cut off leaves it; all else is refused by its line.
 */
final class LedgerScan {
  private static final String BOM = "\uFEFF";
  private static final int LONGEST_NUMBER = 18;
  private static final byte[] UNDONE = ",undone,".getBytes(StandardCharsets.US_ASCII);
  private static final String APART = "put the lines of each ledger back into a file of its own";
  private static final String RESTORE =
      "put back a copy of the file from before that; the program itself only ever adds lines";

  private final String file;
  private final LedgerChain chain = new LedgerChain();
  private final List<String> undoes = new ArrayList<>();
  private String mark = "";
  private String check = LedgerText.HEADER;
  private long last;
  private long goodEnd;
  private boolean ended = true;

  private LedgerScan(String file) {
    this.file = file;
  }

  /**
   * What was found.
   *
   * @param mark of the household; empty where no event is good
   * @param last number of the last good event; 0 where there is none
   * @param check of the last good line
   * @param goodEnd bytes up to the end of the last good line
   * @param ended whether the last good line has its line feed
   * @param undoes all lines that take an event back
   */
  record Found(
      String mark, long last, String check, long goodEnd, boolean ended, List<String> undoes) {}

  /**
   * Checks the whole stream.
   *
   * @param file its name, for messages
   * @throws Refused where it is no ledger, or was changed or mixed with another
   */
  static Found scan(InputStream in, String file) throws IOException, Refused {
    LedgerScan scan = new LedgerScan(file);
    scan.lines(new ByteLines(in));
    return new Found(
        scan.mark, scan.last, scan.check, scan.goodEnd, scan.ended, List.copyOf(scan.undoes));
  }

  private void lines(ByteLines lines) throws IOException, Refused {
    Optional<Refused> bad = Optional.empty();
    while (lines.advance()) {
      if (lines.length() == 0) {
        continue;
      }
      if (bad.isPresent()) {
        throw bad.get();
      }
      bad = lines.number() == 1 ? header(lines) : event(lines);
      if (bad.isEmpty()) {
        goodEnd = lines.end();
        ended = lines.isEnded();
      }
    }
  }

  private Optional<Refused> header(ByteLines line) throws Refused {
    String text = line.text();
    String columns = text.startsWith(BOM) ? text.substring(1) : text;
    if (columns.equals(LedgerText.HEADER)) {
      return Optional.empty();
    }
    Refused noLedger =
        refused(
            line,
            "this is no ledger: it does not begin with " + LedgerText.HEADER,
            "move it away, or name another folder with --pantry");
    boolean cutOff = !line.isEnded() && LedgerText.HEADER.startsWith(columns);
    if (cutOff) {
      return Optional.of(noLedger);
    }
    throw noLedger;
  }

  private Optional<Refused> event(ByteLines line) throws Refused {
    int textLength = line.length() - LedgerChain.LENGTH;
    String stated = textLength > 0 ? ascii(line, textLength, line.length()) : "";
    if (line.text().equals(LedgerText.HEADER)) {
      throw refused(line, "a second ledger begins here", APART);
    }
    if (!LedgerChain.looksLikeCheck(stated)) {
      return Optional.of(refused(line, "the line was torn or edited", RESTORE));
    }
    String ofHousehold = LedgerChain.mark(stated);
    if (mark.isEmpty()) {
      mark = ofHousehold;
    }
    long number = number(line);
    if (!ofHousehold.equals(mark)) {
      throw refused(
          line,
          "the line is from the ledger of another household ("
              + ofHousehold
              + ", here "
              + mark
              + ")",
          APART);
    }
    if (!stated.equals(chain.check(mark, check, line.bytes(), textLength))) {
      if (number > 0 && number <= last) {
        throw refused(
            line,
            "event " + number + " comes a second time: two copies of this ledger were joined",
            "keep one of the copies and record the other's later events again");
      }
      return Optional.of(refused(line, "the line was edited, or one before it is gone", RESTORE));
    }
    if (number != last + 1) {
      throw refused(line, "event " + number + " follows event " + last, RESTORE);
    }
    check = stated;
    last = number;
    if (has(line, UNDONE)) {
      undoes.add(line.text());
    }
    return Optional.empty();
  }

  /** The number that the line begins with; 0 where it begins with none. */
  private static long number(ByteLines line) {
    long number = 0;
    for (int i = 0; i < Math.min(line.length(), LONGEST_NUMBER); i++) {
      byte digit = line.bytes()[i];
      if (digit < '0' || digit > '9') {
        return digit == ',' ? number : 0;
      }
      number = number * 10 + digit - '0';
    }
    return 0;
  }

  private static String ascii(ByteLines line, int from, int to) {
    return new String(line.bytes(), from, to - from, StandardCharsets.ISO_8859_1);
  }

  private static boolean has(ByteLines line, byte[] wanted) {
    for (int i = 0; i + wanted.length <= line.length(); i++) {
      int same = 0;
      while (same < wanted.length && line.bytes()[i + same] == wanted[same]) {
        same++;
      }
      if (same == wanted.length) {
        return true;
      }
    }
    return false;
  }

  private Refused refused(ByteLines line, String what, String remedy) {
    String text = line.text();
    return new Refused(new Place(file, line.number(), 0, text), what, remedy);
  }
}
