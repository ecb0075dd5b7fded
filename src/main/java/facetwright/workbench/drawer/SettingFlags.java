package facetwright.workbench.drawer;

import facetwright.script.DialSetting;
import facetwright.script.design.Design;
import facetwright.script.design.Dial;
import facetwright.script.design.DialText;
import facetwright.workbench.desk.Desk;
import facetwright.workbench.key.Key;
import facetwright.workbench.look.Tip;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** The named settings kept in the script, as flags above the dials. */
public final class SettingFlags extends FlowPane {
  private final Desk desk;
  private final Button keep = new Button("Keep these dials as …");
  private final TextField name = new TextField();
  private final MenuButton delete = new MenuButton("Delete a setting");
  private List<DialSetting> settings = List.of();
  private boolean shown;

  public SettingFlags(Desk desk) {
    this.desk = desk;
    getStyleClass().add("flags");
    getStylesheets().add(SettingFlags.class.getResource("flags.css").toExternalForm());
    setAlignment(Pos.CENTER_LEFT);
    keep.getStyleClass().add("plain");
    keep.setTooltip(
        new Tip("Write the dials as they stand into the script, under a name of yours"));
    keep.setOnAction(_ -> naming(true));
    delete.setTooltip(new Tip("Take a setting out of the script"));
    name.setPromptText("Name, then " + Key.PRESS.one());
    name.setAccessibleText("Name of the setting");
    name.setTooltip(
        new Tip(
            Key.PRESS.tipOne("What these dials are to be called")
                + "; "
                + Key.AWAY.text()
                + " leaves it"));
    name.setPrefColumnCount(12);
    name.setOnAction(_ -> add());
    name.setOnKeyPressed(
        e -> {
          if (Key.AWAY.is(e)) {
            naming(false);
            keep.requestFocus();
            e.consume();
          }
        });
    desk.design().addListener((_, _, _) -> show());
    desk.settings().addListener((_, _, _) -> show());
    desk.text().addListener((_, _, _) -> show());
    show();
  }

  private void show() {
    Design design = desk.design().get();
    boolean dials = design != null && !design.dials().isEmpty();
    setVisible(dials);
    setManaged(dials);
    List<DialSetting> next = DialSetting.read(desk.text().get());
    if (!next.equals(settings) || !shown) {
      shown = true;
      settings = next;
      build();
    }
    for (int i = 0; i < settings.size(); i++) {
      ToggleButton flag = (ToggleButton) getChildren().get(i);
      Map<String, String> turned = known(desk.settings().get());
      flag.setSelected(!turned.isEmpty() && known(settings.get(i).values()).equals(turned));
    }
  }

  private void build() {
    List<javafx.scene.Node> row = new ArrayList<>();
    delete.getItems().clear();
    for (DialSetting setting : settings) {
      ToggleButton flag = new ToggleButton(setting.name());
      flag.getStyleClass().add("flag");
      flag.setTooltip(
          new Tip(
              setting.values().entrySet().stream()
                  .map(e -> e.getKey() + " " + e.getValue())
                  .collect(Collectors.joining(", "))));
      flag.setOnAction(
          _ -> {
            desk.turnAll(known(setting.values()));
            show();
          });
      row.add(flag);
      MenuItem item = new MenuItem("Delete “" + setting.name() + "”");
      item.setMnemonicParsing(false);
      item.setOnAction(
          _ -> desk.text().set(DialSetting.removedFrom(desk.text().get(), setting.name())));
      delete.getItems().add(item);
    }
    row.add(keep);
    if (!settings.isEmpty()) {
      row.add(delete);
    }
    getChildren().setAll(row);
  }

  /** Those of some values that dials of the design take. */
  private Map<String, String> known(Map<String, String> all) {
    Map<String, String> values = new LinkedHashMap<>(all);
    Design design = desk.design().get();
    if (design != null) {
      List<String> dials = design.dials().stream().map(Dial::name).toList();
      values.keySet().retainAll(dials);
    }
    return values;
  }

  private void naming(boolean on) {
    getChildren().set(settings.size(), on ? name : keep);
    if (on) {
      name.clear();
      name.requestFocus();
    }
  }

  private void add() {
    String called = DialSetting.cleanName(name.getText());
    Design design = desk.design().get();
    if (called.isEmpty() || design == null) {
      return;
    }
    Map<String, String> values = new LinkedHashMap<>();
    design.dials().forEach(d -> values.put(d.name(), DialText.text(d, d.value(), design.unit())));
    naming(false);
    desk.text().set(new DialSetting(called, values).addedTo(desk.text().get()));
    keep.requestFocus();
  }
}
