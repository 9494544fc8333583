package pairdown.demo.truth;

/** A flyer's hand on the lead at a slot, from the first load to release. */
public record TrueContact(String flyer, String slot, double start_s, double end_s) {}
