/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.dialogs.ListSelectionDialog;
import org.ferrule.ui.devices.grid.GridColumns;
import org.ferrule.ui.devices.grid.SheetGrid;
import org.ferrule.ui.devices.sheet.Choice;
import org.ferrule.ui.devices.sheet.Listing;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.Trait;
import org.ferrule.ui.look.Pressed;
import org.ferrule.ui.look.WrapRow;

/** The buttons that choose rows by their traits, put them into groups, and show or hide columns. */
final class ChoiceBar {

    private static final int MOST_IN_MENU = 24;
    private static final List<Integer> YEARS = List.of(1, 2, 3, 5);

    private final WrapRow row;
    private final Composite bar;
    private final Listing listing;
    private final SheetGrid grid;
    private final Runnable changed;
    private final Map<Trait, MenuButton> traits = new EnumMap<>(Trait.class);
    private final Button problems;
    private final MenuButton age;
    private final MenuButton groups;

    /**
     * Creates the buttons.
     *
     * @param changed is run when other rows are to be listed
     * @param alone is told whether the table is to have the whole width
     */
    ChoiceBar(Composite parent, EReference list, SheetGrid grid, Runnable changed, Consumer<Boolean> alone) {
        this.grid = grid;
        this.listing = grid.listing();
        this.changed = changed;
        row = new WrapRow(parent, 4);
        bar = row.control();
        Stream.of(Trait.values()).filter(trait -> trait.applies(list)).forEach(trait -> traits.put(trait,
                new MenuButton(bar, trait.title(), "Shows only some", menu -> fill(menu, trait))));
        problems = new Button(bar, SWT.TOGGLE);
        Pressed.mark(problems);
        problems.setText("With problems");
        problems.setToolTipText("Shows only what something is wrong or doubtful with");
        problems.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            listing.choice().onlyProblems(problems.getSelection());
            changed.run();
        }));
        age = new MenuButton(bar, "Source", "Shows only what has an old source, or one without a date", this::fillAge);
        groups = new MenuButton(bar, "Group", "Puts together what has something in common", this::fillGroups);
        new MenuButton(bar, "Columns", "Shows and hides columns; they are moved by dragging their heads",
                this::fillColumns);
        Button only = new Button(bar, SWT.TOGGLE);
        Pressed.mark(only);
        only.setText("Table only");
        only.setToolTipText("Gives the table the whole width");
        only.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> alone.accept(only.getSelection())));
    }

    /** Shows on the buttons what is chosen. */
    void refresh() {
        traits.forEach((trait, button) -> button.say(title(trait)));
        problems.setSelection(listing.choice().isOnlyProblems());
        int years = listing.choice().years();
        age.say(years == 0 ? "Source" : "Source: " + ageWords(years));
        groups.say(listing.grouping().map(trait -> "Group: " + trait.title()).orElse("Group"));
        row.refresh();
    }

    private String title(Trait trait) {
        Set<String> wanted = listing.choice().wanted(trait);
        return switch (wanted.size()) {
            case 0 -> trait.title();
            case 1 -> trait.title() + ": " + Trait.words(wanted.iterator().next());
            default -> trait.title() + ": " + wanted.size() + " chosen";
        };
    }

    private void fill(MenuButton menu, Trait trait) {
        Choice choice = listing.choice();
        Map<String, Long> values = listing.values(trait);
        menu.check("Any", choice.wanted(trait).isEmpty(), () -> {
            choice.any(trait);
            changed.run();
        });
        menu.separator();
        if (values.size() > MOST_IN_MENU) {
            menu.push("Choose out of " + values.size() + "...", () -> ask(trait, List.copyOf(values.keySet())));
            return;
        }
        values.forEach((value, count) -> menu.check(Trait.words(value) + "  (" + count + ")",
                choice.wanted(trait).contains(value), () -> {
                    choice.toggle(trait, value);
                    changed.run();
                }));
    }

    private void ask(Trait trait, List<String> values) {
        ListSelectionDialog dialog = ListSelectionDialog.of(values)
                .contentProvider(ArrayContentProvider.getInstance())
                .labelProvider(LabelProvider.createTextProvider(value -> Trait.words((String) value)))
                .title(trait.title()).message("None means any.")
                .preselect(listing.choice().wanted(trait).toArray()).create(bar.getShell());
        if (dialog.open() == Window.OK) {
            listing.choice().any(trait);
            Arrays.stream(dialog.getResult()).forEach(value -> listing.choice().toggle(trait, (String) value));
            changed.run();
        }
    }

    private void fillAge(MenuButton menu) {
        Stream.concat(Stream.concat(Stream.of(0), YEARS.stream()), Stream.of(Choice.UNDATED))
                .forEach(years -> menu.radio(ageWords(years), listing.choice().years() == years, () -> {
                    listing.choice().olderThan(years);
                    changed.run();
                }));
    }

    private static String ageWords(int years) {
        return switch (years) {
            case 0 -> "of any age";
            case 1 -> "older than 1 year";
            case Choice.UNDATED -> "without a date";
            default -> "older than " + years + " years";
        };
    }

    private void fillGroups(MenuButton menu) {
        menu.radio("None", listing.grouping().isEmpty(), () -> group(null));
        traits.keySet().forEach(trait -> menu.radio(trait.title(), listing.grouping().filter(trait::equals).isPresent(),
                () -> group(trait)));
        if (listing.grouping().isPresent()) {
            menu.separator();
            menu.push("Fold all", () -> grid.moveLines(() -> listing.foldAll(true)));
            menu.push("Unfold all", () -> grid.moveLines(() -> listing.foldAll(false)));
        }
    }

    private void group(Trait trait) {
        grid.moveLines(() -> listing.groupBy(trait));
        refresh();
    }

    /** What the mouse does at the head of a column, for the keyboard. */
    private void fillColumn(MenuButton menu, SheetColumn column) {
        menu.push("Sort by " + column.title(), () -> grid.sortBy(column));
        menu.push("Move " + column.title() + " to the left", () -> grid.shownColumns().move(column, -1));
        menu.push("Move " + column.title() + " to the right", () -> grid.shownColumns().move(column, 1));
        menu.separator();
    }

    private void fillColumns(MenuButton menu) {
        GridColumns shown = grid.shownColumns();
        grid.selection().column().ifPresent(column -> fillColumn(menu, column));
        for (SheetColumn column : grid.columns()) {
            menu.check(column.title(), shown.isShown(column), () -> {
                grid.finishTyping();
                shown.show(column, !shown.isShown(column));
            });
        }
        menu.separator();
        menu.push("First order and widths, all shown", shown::reset);
    }
}
