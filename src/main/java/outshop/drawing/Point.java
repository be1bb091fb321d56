package outshop.drawing;

/** A place in the drawing, in its own units: x to the right, y downwards. */
public record Point(int x, int y) {}
