package shelfful.ui.look;

import java.util.List;
import java.util.Locale;
import javafx.beans.value.ObservableValue;
import javafx.scene.Parent;

/** Dresses a window's content: the palette of its theme and the size of its letters. */
public final class Look {
  /** The size of letters at 100 %, in pixels. */
  public static final double LETTERS = 12;

  private static final String STYLE = "look";

  private Look() {}

  /** Dresses content once. */
  public static void dress(Parent content, Settings settings) {
    if (!content.getStyleClass().contains(STYLE)) {
      content.getStyleClass().add(STYLE);
    }
    List<String> palettes =
        List.of(Theme.values()).stream().map(Look::palette).map(Look::sheet).toList();
    content.getStylesheets().removeAll(palettes);
    content.getStylesheets().add(0, sheet(palette(settings.theme())));
    String common = sheet("look.css");
    if (!content.getStylesheets().contains(common)) {
      content.getStylesheets().add(1, common);
    }
    content.setStyle(
        String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", LETTERS * settings.scale() / 100));
  }

  /** Dresses content like other content that is dressed already, as it is now. */
  public static void dressLike(Parent content, Parent other) {
    content.getStyleClass().add(STYLE);
    String own = Look.class.getResource("look.css").toExternalForm().replace("look.css", "");
    other.getStylesheets().stream()
        .filter(sheet -> sheet.startsWith(own))
        .forEach(content.getStylesheets()::add);
    content.setStyle(other.getStyle());
  }

  /** Dresses content now and with every change of the settings. */
  public static void follow(Parent content, ObservableValue<Settings> settings) {
    dress(content, settings.getValue());
    settings.addListener((property, was, is) -> dress(content, is));
  }

  /** Gives tabs the colours of the look; for windows that have some. */
  public static void dressTabs(Parent content) {
    content.getStylesheets().add(sheet("tabs.css"));
  }

  private static String palette(Theme theme) {
    return theme.name().toLowerCase(Locale.ROOT) + ".css";
  }

  private static String sheet(String name) {
    return Look.class.getResource(name).toExternalForm();
  }
}
