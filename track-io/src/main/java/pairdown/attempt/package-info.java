/** An attempt as its folder describes it: who took part, which logs, plan and limits. */
@NullMarked
package pairdown.attempt;

import org.jspecify.annotations.NullMarked;
