package jarwright.day;

/** A warning, short, standing at the step where it bites. */
public record Caution(String text) {}
