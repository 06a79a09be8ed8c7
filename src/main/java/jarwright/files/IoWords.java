package jarwright.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;

/** Says in plain words why a file could not be read or written. */
final class IoWords {
  private IoWords() {}

  static String of(IOException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return "not permitted";
    }
    if (trouble instanceof NoSuchFileException) {
      return "there is no such folder";
    }
    if (trouble instanceof NotDirectoryException || trouble instanceof FileAlreadyExistsException) {
      return "a file is in the way";
    }
    boolean told = trouble instanceof FileSystemException named && named.getReason() != null;
    String reason = told ? ((FileSystemException) trouble).getReason() : trouble.getMessage();
    return reason == null ? "the disk gave no reason" : reason;
  }
}
