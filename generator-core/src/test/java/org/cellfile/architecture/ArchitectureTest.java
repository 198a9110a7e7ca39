package org.cellfile.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.nio.charset.Charset;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Date;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.cellfile.FolderWorld;
import org.cellfile.finding.Finding;

/** What the packages promise each other. */
@AnalyzeClasses(packages = "org.cellfile", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

    /** Each package uses only those above it. The root has no {@code ..}, so that it does not stand for all. */
    private static final List<String> LAYERS = List.of(
            "org.cellfile.source..",
            "org.cellfile.finding..",
            "org.cellfile.quantity..",
            "org.cellfile.geometry..",
            "org.cellfile.trace..",
            "org.cellfile.dossier..",
            "org.cellfile.calculation..",
            "org.cellfile.standard..",
            "org.cellfile.claim..",
            "org.cellfile.read..",
            "org.cellfile.subject.identity..",
            "org.cellfile.subject.due..",
            "org.cellfile.subject.stopping..",
            "org.cellfile.subject.hazard..",
            "org.cellfile.subject.clearance..",
            "org.cellfile.subject.safeguard..",
            "org.cellfile.subject.complement..",
            "org.cellfile.subject.function..",
            "org.cellfile.subject.mode..",
            "org.cellfile.subject.register..",
            "org.cellfile.subject.verification..",
            "org.cellfile.subject.form..",
            "org.cellfile.subject.energy..",
            "org.cellfile.subject.plan..",
            "org.cellfile.subject.sheet..",
            "org.cellfile.subject.signoff..",
            "org.cellfile.subject.ledger..",
            "org.cellfile.cell..",
            "org.cellfile.check..",
            "org.cellfile.verdict..",
            "org.cellfile.compare..",
            "org.cellfile.render..",
            "org.cellfile.audit..",
            "org.cellfile.output..",
            "org.cellfile",
            "org.cellfile.cli..");

    private static final int FEWEST_CLASSES = 90;

    @ArchTest
    static void seesTheProgram(JavaClasses seen) {
        assertThat(seen).hasSizeGreaterThanOrEqualTo(FEWEST_CLASSES);
    }

    @ArchTest
    static final ArchRule everyClassLiesInALayer = classes().should().resideInAnyPackage(LAYERS.toArray(String[]::new));

    @ArchTest
    static void aPackageUsesOnlyThoseAboveIt(JavaClasses seen) {
        for (int i = 0; i < LAYERS.size() - 1; i++) {
            String[] below = LAYERS.subList(i + 1, LAYERS.size()).toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(LAYERS.get(i))
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(below)
                    .check(seen);
        }
    }

    @ArchTest
    static final ArchRule oneDoorForEachLibrary = CompositeArchRule.of(
                    only("org.cellfile.read..").dependOnClassesThat().resideInAPackage("org.yaml.."))
            .and(only("org.cellfile.render.template..").dependOnClassesThat().resideInAPackage("freemarker.."))
            .and(only("org.cellfile.render.pdf..", "org.cellfile.audit..")
                    .dependOnClassesThat()
                    .resideInAnyPackage(
                            "org.apache.pdfbox..",
                            "org.apache.fontbox..",
                            "org.apache.xmpbox..",
                            "com.openhtmltopdf.."))
            .and(only("org.cellfile.render.calendar..")
                    .dependOnClassesThat()
                    .resideInAnyPackage("biweekly..", "com.github.mangstadt.vinnie.."))
            .and(only("org.cellfile.geometry..").dependOnClassesThat().resideInAPackage("org.locationtech.."))
            .and(only("org.cellfile.render.code..").dependOnClassesThat().resideInAPackage("com.google.zxing.."))
            .and(only("org.cellfile").dependOnClassesThat().resideInAPackage("org.eclipse.jgit.."))
            .and(only("org.cellfile.cli..").dependOnClassesThat().resideInAPackage("picocli.."))
            .and(only("org.cellfile.dossier..", "org.cellfile.finding..", "org.cellfile.compare..")
                    .dependOnClassesThat()
                    .resideInAPackage("com.fasterxml.."));

    private static com.tngtech.archunit.lang.syntax.elements.ClassesShould only(String... packages) {
        return noClasses().that().resideOutsideOfPackages(packages).should();
    }

    @ArchTest
    static final ArchRule filesAreOpenedAtTheEdge = noClasses()
            .that()
            .resideOutsideOfPackages("org.cellfile", "org.cellfile.output..", "org.cellfile.cli..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("java.nio.file..")
            .orShould()
            .dependOnClassesThat()
            .belongToAnyOf(
                    java.io.FileInputStream.class,
                    java.io.FileOutputStream.class,
                    java.io.FileReader.class,
                    java.io.FileWriter.class);

    private static final Set<String> BINARY_FRACTIONS =
            Set.of("double", "float", "java.lang.Double", "java.lang.Float", "[D", "[F");

    /**
     * Safety numbers are decimals throughout. Of {@code Math} that leaves the methods for whole numbers, which lay out columns of
     * text.
     */
    @ArchTest
    static final ArchRule noBinaryFractionsWhereSafetyNumbersAreMade = classes()
            .that()
            .resideInAnyPackage(
                    "org.cellfile.quantity..",
                    "org.cellfile.trace..",
                    "org.cellfile.calculation..",
                    "org.cellfile.standard..",
                    "org.cellfile.claim..",
                    "org.cellfile.subject..",
                    "org.cellfile.cell..",
                    "org.cellfile.check..",
                    "org.cellfile.verdict..")
            .should(new ArchCondition<>("hold, take, give and call nothing in binary fractions") {
                @Override
                public void check(JavaClass type, ConditionEvents events) {
                    for (JavaField field : type.getFields()) {
                        judge(type, field.getFullName(), Stream.of(field.getRawType()), events);
                    }
                    for (JavaCodeUnit unit : type.getCodeUnits()) {
                        judge(
                                type,
                                unit.getFullName(),
                                Stream.concat(Stream.of(unit.getRawReturnType()), unit.getRawParameterTypes().stream()),
                                events);
                    }
                    type.getCodeUnitAccessesFromSelf()
                            .forEach(call -> judge(
                                    type,
                                    call.getDescription(),
                                    Stream.concat(
                                            Stream.of(
                                                    call.getTargetOwner(),
                                                    call.getTarget().getRawReturnType()),
                                            call.getTarget().getRawParameterTypes().stream()),
                                    events));
                }

                private void judge(JavaClass type, String where, Stream<JavaClass> met, ConditionEvents events) {
                    met.map(JavaClass::getName)
                            .filter(BINARY_FRACTIONS::contains)
                            .forEach(name -> events.add(SimpleConditionEvent.violated(type, where + " has " + name)));
                }
            });

    @ArchTest
    static final ArchRule onlyTheFolderLooksAtTheCalendar =
            noClasses().that().doNotBelongToAnyOf(FolderWorld.class).should().accessTargetWhere(clock());

    private static DescribedPredicate<JavaAccess<?>> clock() {
        return describe("the clock", access -> {
            String owner = access.getTargetOwner().getName();
            String name = access.getTarget().getName();
            return (owner.startsWith("java.time.") && name.equals("now"))
                    || owner.equals(Clock.class.getName())
                    || owner.equals(Date.class.getName())
                    || owner.equals("java.util.Calendar")
                    || (owner.equals("java.lang.System")
                            && (name.equals("currentTimeMillis") || name.equals("nanoTime")));
        });
    }

    /** Methods that ask the machine for its locale, character set or time zone when called without one. */
    @ArchTest
    static final ArchRule nothingAsksTheMachineForItsHabits = noClasses()
            .that()
            .doNotBelongToAnyOf(FolderWorld.class)
            .should()
            .accessTargetWhere(describe("the machine's locale, character set or time zone", access -> {
                String owner = access.getTargetOwner().getName();
                String name = access.getTarget().getName();
                Set<String> parameters = new HashSet<>();
                if (access.getTarget()
                        instanceof com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget target) {
                    target.getRawParameterTypes().forEach(type -> parameters.add(type.getName()));
                }
                boolean told =
                        parameters.contains(Charset.class.getName()) || parameters.contains(Locale.class.getName());
                return (owner.equals(Locale.class.getName()) && name.equals("getDefault"))
                        || (owner.equals(Charset.class.getName()) && name.equals("defaultCharset"))
                        || (owner.equals(TimeZone.class.getName()) && name.equals("getDefault"))
                        || (owner.equals(ZoneId.class.getName()) && name.equals("systemDefault"))
                        || (owner.equals("java.lang.String")
                                && !told
                                && (Set.of("format", "formatted", "toLowerCase", "toUpperCase", "getBytes")
                                                .contains(name)
                                        || (name.equals("<init>") && parameters.contains("[B"))))
                        || (owner.startsWith("java.io.")
                                && !told
                                && name.equals("<init>")
                                && Set.of(
                                                "java.io.InputStreamReader",
                                                "java.io.OutputStreamWriter",
                                                "java.io.FileReader")
                                        .contains(owner));
            }));

    @ArchTest
    static final ArchRule onlyTheVerdictTurnsSeverityIntoADecision = noClasses()
            .that()
            .resideOutsideOfPackages(
                    "org.cellfile.finding..", "org.cellfile.verdict..", "org.cellfile.render..", "org.cellfile.cli..")
            .should()
            .accessTargetWhere(describe(
                    "the severity of a finding",
                    access -> access.getTargetOwner().isEquivalentTo(Finding.class)
                            && access.getTarget().getName().equals("severity")));

    @ArchTest
    static final ArchRule namesComeFromTheTrade =
            noClasses().should().haveNameMatching(".*(Util|Utils|Helper|Manager|Impl)(\\$.*)?");

    @ArchTest
    static final ArchRule onlyTheCommandLinePrintsAndExits = noClasses()
            .that(DescribedPredicate.not(resideInAPackage("org.cellfile.cli..")))
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class);
}
