package outshop.drawing;

/**
 * A terminal at the edge of its box. A terminal that is met from both sides has two, joined by a
 * bar in the box.
 *
 * @param terminal in full, such as {@code fuse.a}
 * @param label as it stands in the box, such as {@code plus +}
 * @param east whether it is at the right edge; else at the left
 */
public record Port(String terminal, String label, boolean east, Point at) {}
