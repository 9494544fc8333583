package pairdown.gl;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Runs only where a window can be opened and driven by real keys and mouse: on a display of our
 * own, started for the tests; elsewhere it is skipped with what is missing.
 */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsDisplay.Condition.class)
public @interface NeedsDisplay {
    /** Tries once to start a display. */
    final class Condition implements ExecutionCondition {
        private static final ConditionEvaluationResult RESULT =
                VirtualDisplay.missing()
                        .map(ConditionEvaluationResult::disabled)
                        .orElseGet(() -> ConditionEvaluationResult.enabled("a display of our own"));

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            return RESULT;
        }
    }
}
