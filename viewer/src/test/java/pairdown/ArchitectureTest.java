package pairdown;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** What holds of all three modules together; the viewer sees them all. */
class ArchitectureTest {
    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .importPackages("pairdown")
                    .that(describe("are no tests", ArchitectureTest::isMain));

    private static final String[] TRACK_IO =
            packages(
                    "units",
                    "time",
                    "vector",
                    "atmosphere",
                    "geodesy",
                    "track",
                    "format..",
                    "attempt",
                    "clock",
                    "height");
    private static final String[] METRICS =
            packages(
                    "stats", "motion", "air", "phase", "pair", "safety", "tail", "season",
                    "debrief", "demo..");
    private static final String[] VIEWER =
            packages(
                    "app",
                    "report",
                    "export",
                    "kept",
                    "words",
                    "replay",
                    "camera",
                    "scene",
                    "film",
                    "panel",
                    "input",
                    "theme",
                    "settings",
                    "gl");

    private static String[] packages(String... names) {
        return Stream.of(names).map(name -> "pairdown." + name).toArray(String[]::new);
    }

    private static void check(ArchRule rule) {
        rule.check(CLASSES);
    }

    @Test
    void thereIsAHouseToLookAt() {
        assertTrue(CLASSES.size() > 500, CLASSES.size() + " classes");
        for (String name : List.of("format.gpx", "pair", "gl")) {
            assertTrue(CLASSES.containPackage("pairdown." + name), name);
        }
    }

    @Test
    void everyPackageHasAPlaceInOneModule() {
        List<String> homeless =
                CLASSES.stream()
                        .filter(
                                resideInAnyPackage(TRACK_IO)
                                        .or(resideInAnyPackage(METRICS))
                                        .or(resideInAnyPackage(VIEWER))
                                        .negate())
                        .map(JavaClass::getName)
                        .toList();
        assertEquals(List.of(), homeless);
    }

    @Test
    void noArrowRunsBack() {
        check(
                noClasses()
                        .that()
                        .resideInAnyPackage(TRACK_IO)
                        .should()
                        .dependOnClassesThat(
                                resideInAnyPackage(METRICS).or(resideInAnyPackage(VIEWER))));
        check(
                noClasses()
                        .that()
                        .resideInAnyPackage(METRICS)
                        .should()
                        .dependOnClassesThat(resideInAnyPackage(VIEWER)));
    }

    @Test
    void packagesKnowEachOtherInNoCircle() {
        SlicesRuleDefinition.slices()
                .assignedFrom(
                        new SliceAssignment() {
                            @Override
                            public SliceIdentifier getIdentifierOf(JavaClass one) {
                                return SliceIdentifier.of(one.getPackageName());
                            }

                            @Override
                            public String getDescription() {
                                return "packages";
                            }
                        })
                .should()
                .beFreeOfCycles()
                .check(CLASSES);
    }

    @Test
    void onlyGlSpeaksToTheGraphicsLibrary() {
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("pairdown.gl")
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.lwjgl.."));
    }

    @Test
    void whatReadsAndComputesKnowsNoScreen() {
        check(
                noClasses()
                        .that()
                        .resideInAnyPackage(TRACK_IO)
                        .or()
                        .resideInAnyPackage(METRICS)
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(
                                "org.lwjgl..", "org.joml..", "java.awt..", "javax.swing.."));
    }

    @Test
    void onlyTheCommandLineWritesToTheStandardStreams() {
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("pairdown.app")
                        .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS));
    }

    @Test
    void onlyTheCommandLineEndsTheProgram() {
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("pairdown.app")
                        .should()
                        .callMethod(System.class, "exit", int.class));
    }

    @Test
    void everyPackageIsNullMarked() {
        List<String> unmarked =
                CLASSES.stream()
                        .map(JavaClass::getPackage)
                        .distinct()
                        .filter(p -> !p.isAnnotatedWith(NullMarked.class))
                        .map(JavaPackage::getName)
                        .toList();
        assertEquals(List.of(), unmarked);
    }

    @Test
    void noPackageIsNamedForHavingNoName() {
        check(
                classes()
                        .should()
                        .resideOutsideOfPackages(
                                "..util..",
                                "..utils..",
                                "..common..",
                                "..helper..",
                                "..helpers..",
                                "..impl..",
                                "..manager..",
                                "..misc.."));
    }

    /** Test code lies in the same packages, and where it is compiled to differs. */
    private static boolean isMain(JavaClass one) {
        String source = one.getName().replaceFirst("\\$.*", "").replace('.', '/') + ".java";
        return Stream.of("track-io", "debrief-metrics", "viewer")
                .anyMatch(m -> Files.exists(Path.of("..", m, "src", "main", "java", source)));
    }
}
