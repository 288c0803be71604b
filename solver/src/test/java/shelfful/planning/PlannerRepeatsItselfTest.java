package shelfful.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shelfful.fixture.RandomRequest;
import shelfful.load.Load;
import shelfful.load.LoadRequest;

/** Same request, same steps, same loads, wherever the machine thinks it is. */
class PlannerRepeatsItselfTest {
  private static final long STEPS = 15;

  private final Locale home = Locale.getDefault();
  private final TimeZone zone = TimeZone.getDefault();

  @AfterEach
  void comeHome() {
    Locale.setDefault(home);
    TimeZone.setDefault(zone);
  }

  /** Every load told of on the way, and the last. */
  private static List<Load> loads(LoadRequest request) {
    List<Load> loads = new ArrayList<>();
    loads.add(new LoadPlanner(request).plan(SearchBudget.ofSteps(STEPS), loads::add));
    return loads;
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 15, 47})
  void twiceTheSame(long seed) {
    LoadRequest request = RandomRequest.of(seed);
    assertThat(loads(request)).isEqualTo(loads(RandomRequest.of(seed)));
  }

  /** Dotless i, other digits, another calendar's year; half a day away. */
  @ParameterizedTest
  @CsvSource({"tr-TR, Pacific/Auckland", "ar, Asia/Kolkata", "ja-JP-u-ca-japanese, Pacific/Apia"})
  void theSameElsewhere(String language, String place) {
    LoadRequest request = RandomRequest.of(47);
    Locale.setDefault(Locale.ENGLISH);
    TimeZone.setDefault(TimeZone.getTimeZone("UTC"));
    List<Load> here = loads(request);
    Locale.setDefault(Locale.forLanguageTag(language));
    TimeZone.setDefault(TimeZone.getTimeZone(place));
    assertThat(loads(request)).isEqualTo(here);
  }

  @ParameterizedTest
  @ValueSource(strings = {"ar", "hi-IN-u-nu-deva"})
  void figuresInReasonsAreWrittenInPlainDigits(String language) {
    Locale.setDefault(Locale.forLanguageTag(language));
    Load load =
        new Scene()
            .cup("a", 90, 60)
            .cup("huge", 90, 500)
            .batch("A", "a", 150)
            .batch("H", "huge", 1)
            .plan(0);
    assertThat(load.leftOut())
        .isNotEmpty()
        .allSatisfy(out -> assertThat(out.sentence()).matches("\\p{ASCII}*[0-9]\\p{ASCII}*"));
  }
}
