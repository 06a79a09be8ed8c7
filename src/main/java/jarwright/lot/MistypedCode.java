package jarwright.lot;

/** A lot or jar code that cannot have been printed: it was mistyped or misread. */
public final class MistypedCode extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  MistypedCode(String message) {
    super(message);
  }
}
