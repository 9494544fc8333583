package pairdown;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pairdown.clock.ClockDoubt;
import pairdown.clock.ClockResult;

/** Which package may know which, within debrief-metrics. */
class MetricsArrowsTest {
    /** Each may know those before it; nobody knows the demo. */
    private static final List<String> ORDER =
            List.of(
                    "pairdown.stats",
                    "pairdown.motion",
                    "pairdown.phase",
                    "pairdown.air",
                    "pairdown.pair",
                    "pairdown.safety",
                    "pairdown.tail",
                    "pairdown.debrief",
                    "pairdown.season",
                    "pairdown.demo..");

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .importPackages("pairdown")
                    .that(describe("are no tests", MetricsArrowsTest::isMain))
                    .that(resideInAnyPackage(ORDER.toArray(String[]::new)));

    static IntStream places() {
        return IntStream.range(0, ORDER.size() - 1);
    }

    @ParameterizedTest
    @MethodSource("places")
    void aPackageKnowsNoLaterOne(int place) {
        noClasses()
                .that()
                .resideInAPackage(ORDER.get(place))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(ORDER.subList(place + 1, ORDER.size()).toArray(String[]::new))
                .check(CLASSES);
    }

    /** What computes sees tracks on one clock, and of the clocks only how well they were put so. */
    @Test
    void onlyThePipelineSeesLogsAsReadAndRawClocks() {
        noClasses()
                .that()
                .resideOutsideOfPackages("pairdown.debrief", "pairdown.demo..")
                .should()
                .dependOnClassesThat(
                        resideInAnyPackage("pairdown.clock", "pairdown.format..")
                                .and(not(type(ClockResult.class).or(type(ClockDoubt.class)))))
                .check(CLASSES);
    }

    /** Test code lies in the same packages, and where it is compiled to differs. */
    private static boolean isMain(JavaClass one) {
        String source = one.getName().replaceFirst("\\$.*", "").replace('.', '/') + ".java";
        return Stream.of("track-io", "debrief-metrics", "viewer")
                .anyMatch(m -> Files.exists(Path.of("..", m, "src", "main", "java", source)));
    }
}
