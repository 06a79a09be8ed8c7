package jarwright.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A folder that gets a set of files, each replaced whole or not at all. Nothing is replaced before
 * all of the set is safely on the disk beside what it replaces.
 */
public final class OutputFolder {
  /** Tells apart what one run writes beside its files. */
  private static final AtomicLong NUMBER = new AtomicLong();

  /** Short, whatever the file is called, and with the number of the process that writes it. */
  private static final Pattern BESIDE = Pattern.compile("\\.jarwright-(\\d{1,18})-\\d+\\.part");

  private final Path folder;
  private final LedgerFile.Opener opener;

  public OutputFolder(Path folder) {
    this(folder, FileChannel::open);
  }

  /**
   * @param opener opens the files to write; tests give one whose disk fails
   */
  OutputFolder(Path folder, LedgerFile.Opener opener) {
    this.folder = folder;
    this.opener = opener;
  }

  /**
   * Writes the files and puts them in place.
   *
   * @param files content by name; a name may have folders, as {@code records/index.html}
   * @throws IOException naming the file and why it could not be written; the folder's files are
   *     then as they were
   */
  public void write(Map<String, byte[]> files) throws IOException {
    try (Staged staged = stage(files)) {
      staged.putInPlace();
    }
  }

  /**
   * Writes the files beside what they are to replace, so that whatever can go wrong has gone wrong
   * before anything else is done.
   *
   * @throws IOException naming the file and why it could not be written; nothing is left of the set
   */
  public Staged stage(Map<String, byte[]> files) throws IOException {
    Staged staged = new Staged();
    Set<Path> seen = new HashSet<>();
    boolean done = false;
    try {
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        Path target = folder.resolve(file.getKey());
        try {
          makeFolders(target.getParent(), staged.made);
          if (seen.add(target.getParent())) {
            removeLeftOver(target.getParent());
          }
          checkTarget(target);
          Path beside = beside(target);
          staged.targets.put(beside, target);
          write(beside, file.getValue());
        } catch (IOException e) {
          throw new IOException(target + " could not be written: " + IoWords.of(e), e);
        }
      }
      done = true;
      return staged;
    } finally {
      if (!done) {
        staged.close();
      }
    }
  }

  /** Files that are written but not yet in their places. Closing takes away what still waits. */
  public static final class Staged implements AutoCloseable {
    private final Map<Path, Path> targets = new LinkedHashMap<>();
    private final List<Path> made = new ArrayList<>();

    private Staged() {}

    /**
     * Puts each file in its place, which replaces what was there.
     *
     * @throws IOException naming the file that could not be replaced; each file is still whole
     */
    public void putInPlace() throws IOException {
      for (Map.Entry<Path, Path> file : targets.entrySet()) {
        move(file.getKey(), file.getValue());
      }
    }

    /**
     * Takes the files out of their places again.
     *
     * @param before what was in those places, staged before these files were put there
     * @throws IOException naming the file that could not be put back
     */
    public void takeBack(Staged before) throws IOException {
      before.putInPlace();
      for (Path target : targets.values()) {
        if (!before.targets.containsValue(target)) {
          Files.deleteIfExists(target);
        }
      }
    }

    @Override
    public void close() {
      targets.keySet().forEach(OutputFolder::removeQuietly);
      // A folder that holds something by now stays.
      for (int i = made.size() - 1; i >= 0; i--) {
        removeQuietly(made.get(i));
      }
    }
  }

  private static Path beside(Path target) {
    String run = ProcessHandle.current().pid() + "-" + NUMBER.incrementAndGet();
    return target.resolveSibling(".jarwright-" + run + ".part");
  }

  /** Takes away what a run that was killed has left beside its files. */
  private static void removeLeftOver(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      files.filter(OutputFolder::isLeftOver).forEach(OutputFolder::removeQuietly);
    } catch (IOException | UncheckedIOException e) {
      return;
    }
  }

  private static boolean isLeftOver(Path file) {
    Matcher named = BESIDE.matcher(String.valueOf(file.getFileName()));
    return named.matches() && ProcessHandle.of(Long.parseLong(named.group(1))).isEmpty();
  }

  private static void makeFolders(Path wanted, List<Path> made) throws IOException {
    List<Path> missing = new ArrayList<>();
    Path one = wanted.toAbsolutePath();
    while (one != null && !Files.exists(one)) {
      missing.add(0, one);
      one = one.getParent();
    }
    if (one != null && !Files.isDirectory(one)) {
      throw new FileAlreadyExistsException(one.toString());
    }
    Files.createDirectories(wanted);
    made.addAll(missing);
  }

  /**
   * A folder or a link by a file's name is somebody's own: neither is replaced. A name that no file
   * can have is told here too, while nothing is in its place yet.
   */
  private static void checkTarget(Path target) throws IOException {
    BasicFileAttributes there;
    try {
      there = Files.readAttributes(target, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    } catch (NoSuchFileException e) {
      return;
    }
    if (there.isSymbolicLink()) {
      throw new IOException("a link is in the way");
    }
    if (!there.isRegularFile()) {
      throw new IOException("a folder is in the way");
    }
  }

  private void write(Path file, byte[] content) throws IOException {
    Files.deleteIfExists(file);
    try (FileChannel channel =
        opener.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(content);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException e) {
      throw new IOException(to + " could not be replaced: " + IoWords.of(e), e);
    }
  }

  /** What cannot be removed stays: the reason why the writing failed is told instead. */
  private static void removeQuietly(Path path) {
    try {
      Files.deleteIfExists(path);
    } catch (IOException e) {
      return;
    }
  }
}
