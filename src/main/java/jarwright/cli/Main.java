package jarwright.cli;

/** Starts the program and ends it with the command's exit status. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    System.err.println("jarwright: no command is built yet");
    System.exit(2);
  }
}
