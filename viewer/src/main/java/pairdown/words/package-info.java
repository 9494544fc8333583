/**
 * How figures and sentences read for a person: units chosen by the reader, numbers in the reader's
 * locale, and every text of the surface from one bundle, so that a translation is a file. Window
 * and report share it. What a figure is and how sure it is, is the metrics' business.
 */
@NullMarked
package pairdown.words;

import org.jspecify.annotations.NullMarked;
