package pairdown.theme;

/** Colours and sizes together: all that drawing needs to know about looks. */
public record Theme(Palette palette, Sizes sizes) {}
