/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.profile.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.ferrule.profile.CurveCrossing;
import org.ferrule.profile.DeviceReading;
import org.ferrule.profile.LumenPassage;
import org.ferrule.profile.ProfileComparison;
import org.ferrule.profile.curve.Curve;
import org.ferrule.profile.words.FindingWords;
import org.ferrule.profile.words.ProfileWords;
import org.ferrule.quantity.Length;
import org.ferrule.ui.fit.clip.CopyTable;

/** The tables below a plot: what differs, what is read at the cursor, what meets and crosses where. */
public final class CompareTables {

    private final CTabFolder folder;
    private final CopyTable differences;
    private final CopyTable readings;
    private final CopyTable findings;
    private ProfileComparison comparison;
    private OptionalDouble cursor = OptionalDouble.empty();
    private List<Optional<Length>> stations = List.of();

    /** Creates the tables; the listener hears a station that is chosen, in millimetres from the landmark. */
    CompareTables(Composite parent, Consumer<Double> chosen) {
        folder = new CTabFolder(parent, SWT.BOTTOM | SWT.FLAT);
        differences = tab("Differences");
        readings = tab("At the cursor");
        findings = tab("Contacts and crossings");
        findings.control().addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            int index = findings.control().getSelectionIndex();
            if (index >= 0 && index < stations.size()) {
                stations.get(index).map(Length::mm).ifPresent(chosen);
            }
        }));
        folder.setSelection(0);
    }

    private CopyTable tab(String title) {
        CopyTable table = new CopyTable(folder);
        CTabItem item = new CTabItem(folder, SWT.NONE);
        item.setText(title);
        item.setControl(table.control());
        return table;
    }

    /** Shows a comparison; null shows none. */
    void show(ProfileComparison next) {
        comparison = next;
        if (next == null) {
            List.of(differences, readings, findings).forEach(table -> table.show(List.of(), List.of()));
            return;
        }
        ProfileWords words = ComparePlot.words();
        showDifferences(words);
        showFindings(new FindingWords(next, words));
        showReadings(words);
    }

    private void showDifferences(ProfileWords words) {
        List<String> heads = new ArrayList<>(List.of(words.phrases().get("value.quantity")));
        comparison.devices().forEach(device -> heads.add(ProfileWords.letter(heads.size() - 1) + " " + device.name()));
        heads.add(words.phrases().get("value.spread"));
        List<List<String>> rows = new ArrayList<>();
        comparison.differences().rows().forEach(row -> {
            List<String> texts = new ArrayList<>(List.of(words.quantity(row.quantity())));
            row.values().forEach(value -> texts.add(words.value(value)));
            texts.add(words.spread(row));
            rows.add(texts);
        });
        differences.show(heads, rows);
    }

    private void showFindings(FindingWords words) {
        List<Optional<Length>> places = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (LumenPassage passage : comparison.passages()) {
            rows.add(List.of(words.passage(passage)));
            places.add(passage.stopsAt().or(passage::worstAt));
        }
        for (CurveCrossing crossing : comparison.crossings()) {
            rows.add(List.of(words.crossing(crossing)));
            places.add(Optional.of(crossing.crossing().station()));
        }
        if (comparison.crossings().isEmpty()) {
            rows.add(words.crossings());
        }
        stations = places;
        findings.show(List.of("What happens, from the tip"), rows);
        findings.control().getColumn(0).pack();
    }

    /** Shows what is read at a station; nothing when there is no cursor. */
    void read(OptionalDouble station) {
        cursor = station;
        if (comparison != null) {
            showReadings(ComparePlot.words());
        }
    }

    private void showReadings(ProfileWords words) {
        List<List<String>> rows = cursor.isEmpty() ? List.of()
                : comparison.valuesAt(Length.ofMm(cursor.getAsDouble())).stream().map(r -> row(r, words)).toList();
        readings.show(List.of("Device", "From its tip", "Shaft", "Shaft and own wire", "Lumens", "Here"), rows);
    }

    private List<String> row(DeviceReading reading, ProfileWords words) {
        String none = words.phrases().get("value.none");
        String lumens = reading.inner().stream()
                .map(lumen -> (lumen.lumen().isEmpty() ? "" : lumen.lumen() + " ")
                        + words.reading(lumen.reading(), Curve.Kind.INNER))
                .collect(Collectors.joining("; "));
        String marks = reading.marks().stream().map(words::mark).collect(Collectors.joining("; "));
        return List.of(ProfileWords.letter(reading.device()) + " " + comparison.devices().get(reading.device()).name(),
                reading.fromTip().map(words::along).orElse(words.phrases().get("value.unknown")),
                words.reading(reading.outer(), Curve.Kind.OUTER),
                reading.withWire().map(outer -> words.reading(outer, Curve.Kind.WITH_WIRE)).orElse(none),
                lumens.isEmpty() ? none : lumens, marks.isEmpty() ? none : marks);
    }

    CTabFolder control() {
        return folder;
    }

    /** Returns the texts of a table, row by row: 0 differences, 1 at the cursor, 2 contacts and crossings. */
    public List<List<String>> texts(int number) {
        Table table = List.of(differences, readings, findings).get(number).control();
        return IntStream.range(0, table.getItemCount()).mapToObj(row -> IntStream.range(0, table.getColumnCount())
                .mapToObj(column -> table.getItem(row).getText(column)).toList()).toList();
    }
}
