package shelfful;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Random;

/** The fences of the house: who may know whom. docs/architecture.md tells why in words. */
@AnalyzeClasses(packages = "shelfful", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {

  @ArchTest static final ArchRule measureKnowsNobody = only("measure");

  @ArchTest static final ArchRule geometryKnowsNobody = only("geometry");

  @ArchTest static final ArchRule wareKnowsMeasure = only("ware", "measure");

  @ArchTest static final ArchRule kilnKnowsMeasure = only("kiln", "measure");

  @ArchTest
  static final ArchRule studioKnowsWhatIsOwned = only("studio", "measure", "ware", "kiln");

  @ArchTest
  static final ArchRule loadKnowsTheDomain = only("load", "measure", "ware", "kiln", "studio");

  @ArchTest
  static final ArchRule packingKnowsGeometryAlone =
      only("packing", "geometry").because("a shelf question has no word of pottery in it");

  @ArchTest
  static final ArchRule choiceKnowsNobody =
      only("choice").because("which layers to take is arithmetic: no pottery, no geometry");

  @ArchTest
  static final ArchRule planningTranslates =
      only(
          "planning",
          "load",
          "studio",
          "kiln",
          "ware",
          "measure",
          "packing",
          "geometry",
          "choice",
          "org.optaplanner");

  @ArchTest
  static final ArchRule boundKnowsTheRequestAndNoPlan =
      only("bound", "load", "studio", "kiln", "ware", "measure", "packing", "geometry", "planning");

  @ArchTest
  static final ArchRule theJudgeIsIndependent =
      only("inspect", "load", "studio", "kiln", "ware", "measure")
          .because("a judge that shares code with the planner shares its faults");

  @ArchTest
  static final ArchRule editingAsksTheJudge =
      only("edit", "inspect", "load", "studio", "kiln", "ware", "measure")
          .because("what is told while a piece is moved must be what the judge says afterwards");

  @ArchTest
  static final ArchRule remediesAreTriedThroughTheUseCases =
      only("remedy", "app", "edit", "inspect", "load", "studio", "kiln", "ware", "measure")
          .because(
              "a remedy is a load like any other: planned by the planner, passed by the judge");

  @ArchTest
  static final ArchRule purchasesAreMeasuredThroughTheUseCases =
      only(
          "purchase",
          "app",
          "inspect",
          "load",
          "studio",
          "kiln",
          "measure",
          "org.apache.commons.math3");

  @ArchTest
  static final ArchRule recordsKnowTheLoad =
      only("record", "inspect", "load", "studio", "kiln", "ware", "measure");

  @ArchTest
  static final ArchRule learningKnowsTheRecords =
      only("learning", "record", "studio", "ware", "load", "org.apache.commons.math3");

  @ArchTest static final ArchRule figuresKnowTheRecords = only("figures", "record");

  @ArchTest
  static final ArchRule weekKnowsTheDomain =
      only("week", "load", "studio", "kiln", "ware", "measure");

  @ArchTest
  static final ArchRule scheduleTakesItsLoadsFromOutside =
      only(
              "schedule",
              "week",
              "inspect",
              "load",
              "studio",
              "kiln",
              "ware",
              "measure",
              "org.optaplanner",
              "org.apache.commons.math3")
          .because("a week asks for loads as anybody would, through one door");

  @ArchTest
  static final ArchRule theJudgeOfWeeksIsIndependent =
      only("review", "week", "inspect", "load", "studio", "kiln", "ware", "measure")
          .because("a judge that shares code with the planner shares its faults");

  @ArchTest static final ArchRule costKnowsWeeks = only("cost", "week", "load", "ware", "measure");

  @ArchTest
  static final ArchRule calendarSeesOnlyInspectedWeeks =
      only("calendar", "review", "week", "load", "studio", "kiln", "ware", "measure", "biweekly");

  @ArchTest
  static final ArchRule onlyCalendarSeesTheCalendarLibrary =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.calendar..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("biweekly..");

  @ArchTest
  static final ArchRule filesReadAndWrite =
      only(
          "files",
          "edit",
          "record",
          "week",
          "review",
          "measure",
          "ware",
          "kiln",
          "studio",
          "load",
          "inspect",
          "com.fasterxml.jackson",
          "org.apache.commons.csv");

  @ArchTest
  static final ArchRule drawingSeesOnlyInspectedLoads =
      only(
          "drawing",
          "inspect",
          "record",
          "figures",
          "load",
          "studio",
          "kiln",
          "ware",
          "measure",
          "org.apache.pdfbox",
          "org.apache.fontbox",
          "java.awt");

  @ArchTest
  static final ArchRule onlyPlannersSeeOptaPlanner =
      noClasses()
          .that()
          .resideOutsideOfPackages("shelfful.planning..", "shelfful.schedule..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("org.optaplanner..")
          .because("a change of engine must be a change of the planners alone");

  @ArchTest
  static final ArchRule onlyFilesSeesJacksonAndCsv =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.files..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("com.fasterxml.jackson..", "org.apache.commons.csv..");

  @ArchTest
  static final ArchRule onlyDrawingSeesPdf =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.drawing..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("org.apache.pdfbox..", "org.apache.fontbox..", "java.awt..");

  @ArchTest
  static final ArchRule onlyTheCommandLineSeesPicocli =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.cli..")
          .should()
          .dependOnClassesThat()
          .resideInAPackage("picocli..");

  @ArchTest
  static final ArchRule onlyTheCommandLineUsesTheStandardStreams =
      noClasses()
          .that()
          .resideOutsideOfPackage("shelfful.cli..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .because("data and talk leave through one door");

  @ArchTest
  static final ArchRule noScreenInTheSolver =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javafx..", "javax.swing..")
          .because("the solver runs headless");

  @ArchTest
  static final ArchRule noClockOutsideTheEdges =
      noClasses()
          .that(
              resideOutsideOfPackage("shelfful.cli..")
                  .and(resideOutsideOfPackage("shelfful.app..")))
          .should()
          .callMethod(System.class, "nanoTime")
          .orShould()
          .callMethod(System.class, "currentTimeMillis")
          .orShould()
          .callMethod(LocalDate.class, "now")
          .orShould()
          .callMethod(Clock.class, "systemDefaultZone")
          .orShould()
          .callMethod(Math.class, "random")
          .orShould()
          .callConstructor(Random.class)
          .because("the same request must give the same load; time and chance are passed in");

  @ArchTest
  static final ArchRule noNetworkNoProcessesNoSerialisation =
      noClasses()
          .should()
          .dependOnClassesThat(resideInAnyPackage("java.net..", "javax.net..", "java.rmi.."))
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.io.ObjectInputStream")
          .orShould()
          .dependOnClassesThat()
          .haveFullyQualifiedName("java.lang.ProcessBuilder")
          .because("the program works on files of its user and on nothing else");

  @ArchTest
  static final ArchRule textIsMadeInOneLanguage =
      noClasses()
          .should()
          .callMethod(String.class, "formatted", Object[].class)
          .orShould()
          .callMethod(String.class, "format", String.class, Object[].class)
          .orShould()
          .callMethod(String.class, "toLowerCase")
          .orShould()
          .callMethod(String.class, "toUpperCase")
          .because("the default locale changes digits and letters; name Locale.ROOT");

  @ArchTest
  static final ArchRule nothingIsSetOutsidePlanning =
      methods()
          .that()
          .haveNameMatching("set[A-Z].*")
          .and()
          .haveRawReturnType(void.class)
          .should()
          .beDeclaredInClassesThat()
          .resideInAPackage("shelfful.planning..")
          .allowEmptyShould(true)
          .because("state that can be set from outside cannot be trusted");

  @ArchTest
  static final ArchRule namesSayWhatThingsAre =
      noClasses()
          .should()
          .haveNameMatching(
              ".*(Manager|Helper|Util|Utils|Handler|Processor|Impl|Abstract|Base|Info|Data)$");

  @ArchTest
  static final ArchRule noCircles = slices().matching("shelfful.(*)..").should().beFreeOfCycles();

  /** A package may use itself, the JDK, and what is listed. */
  private static ArchRule only(String name, String... others) {
    String[] allowed = new String[others.length + 3];
    allowed[0] = "java..";
    allowed[1] = "javax.xml..";
    allowed[2] = "shelfful." + name + "..";
    for (int i = 0; i < others.length; i++) {
      boolean ours = !others[i].contains(".") && !others[i].equals("biweekly");
      allowed[i + 3] = (ours ? "shelfful." : "") + others[i] + "..";
    }
    return classes()
        .that()
        .resideInAPackage("shelfful." + name + "..")
        .should()
        .onlyDependOnClassesThat()
        .resideInAnyPackage(allowed)
        .as("shelfful." + name + " knows only " + String.join(", ", others));
  }
}
