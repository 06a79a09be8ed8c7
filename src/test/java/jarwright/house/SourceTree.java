package jarwright.house;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The files of the project, as they lie in its folders. */
final class SourceTree {
  private SourceTree() {}

  static Path root() {
    return Path.of(System.getProperty("basedir", "")).toAbsolutePath();
  }

  /**
   * All regular files below a folder, in the order of their names; none where there is no folder.
   */
  static List<Path> filesBelow(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Path> javaBelow(Path folder) {
    return filesBelow(folder).stream().filter(it -> it.toString().endsWith(".java")).toList();
  }

  static List<String> lines(Path file) {
    return lines(file, UTF_8);
  }

  static List<String> lines(Path file, Charset charset) {
    try {
      return Files.readAllLines(file, charset);
    } catch (IOException e) {
      throw new UncheckedIOException(file.toString(), e);
    }
  }
}
