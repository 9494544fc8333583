package pairdown.gl;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs only where a picture can be made without a display; elsewhere it is skipped with why. */
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(NeedsGl.Condition.class)
public @interface NeedsGl {
    /** Tries once to open a picture of one pixel. */
    final class Condition implements ExecutionCondition {
        private static final ConditionEvaluationResult RESULT = tried();

        private static ConditionEvaluationResult tried() {
            try (OffscreenContext context = OffscreenContext.open(1, 1)) {
                return ConditionEvaluationResult.enabled(context.renderer());
            } catch (NoGraphicsException e) {
                return ConditionEvaluationResult.disabled(e.getMessage());
            }
        }

        @Override
        public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
            return RESULT;
        }
    }
}
