package pairdown;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which package may know which, within track-io, beside itself: an arrow more is a decision, made
 * here.
 */
class TrackIoArrowsTest {
    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .importPackages("pairdown")
                    .that(describe("are no tests", TrackIoArrowsTest::isMain));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "units|units",
                "time|time",
                "vector|vector",
                "atmosphere|atmosphere",
                "geodesy|vector",
                "track|geodesy time units vector",
                "format.source|geodesy time track",
                "format.csv|format.source time track units",
                "format.geojson|format.source time track",
                "format.gpx|format.source time track",
                "format.igc|format.source track",
                "format.kml|format.source geodesy time track",
                "format.nmea|format.source time track units",
                "format|format.csv format.geojson format.gpx format.igc format.kml format.nmea"
                        + " format.source track",
                "attempt|format format.source geodesy time track units vector",
                "clock|atmosphere attempt geodesy time track units vector",
                "height|attempt clock geodesy time track units vector"
            })
    void aPackageKnowsOnly(String from, String to) {
        String[] known =
                Stream.concat(Stream.of(from), Arrays.stream(to.split(" ", -1)))
                        .map(name -> "pairdown." + name)
                        .toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage("pairdown." + from)
                .should()
                .dependOnClassesThat(
                        resideInAPackage("pairdown..")
                                .and(DescribedPredicate.not(resideInAnyPackage(known))))
                .check(CLASSES);
    }

    /** Test code lies in the same packages, and where it is compiled to differs. */
    private static boolean isMain(JavaClass one) {
        String source = one.getName().replaceFirst("\\$.*", "").replace('.', '/') + ".java";
        return Stream.of("track-io", "debrief-metrics", "viewer")
                .anyMatch(m -> Files.exists(Path.of("..", m, "src", "main", "java", source)));
    }
}
