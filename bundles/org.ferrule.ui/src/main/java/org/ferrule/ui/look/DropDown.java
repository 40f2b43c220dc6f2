/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;

/**
 * A list that drops down, of which one entry is chosen, in a grid layout. It works round what SWT 3.132 does on GTK:
 * <ul>
 * <li>A list whose chosen entry is wider than itself is laid out and painted some forty times a second. Therefore that
 * entry is cut to the width there is, and the tooltip says it whole.
 * <li>A list that is emptied, and be it to be filled anew, loses the focus. Therefore new entries come before old ones go.
 * <li>A form takes the longer to be laid out the longer its lists are. Therefore a list of many entries gets only the
 * chosen one until somebody goes there.
 * </ul>
 */
public final class DropDown {

    private static final int FEW = 50;

    private final Combo combo;
    /** The width of a list whose one entry has no letters, in points. */
    private final int edges;
    private List<String> words = List.of();
    private int chosen = -1;
    private String explained = "";

    /**
     * Creates a list without entries.
     *
     * @param parent has a grid layout
     * @param leastWidth in points; the list takes what room there is beyond it, whatever its entries are
     */
    public DropDown(Composite parent, int leastWidth) {
        combo = new Combo(parent, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.add("");
        edges = combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        combo.removeAll();
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).hint(leastWidth, SWT.DEFAULT)
                .applyTo(combo);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> selected()));
        combo.addListener(SWT.FocusIn, event -> refresh());
        combo.addListener(SWT.Resize, event -> refresh());
        // the wheel is for scrolling what is around, not for changing what is under the mouse
        combo.addListener(SWT.MouseVerticalWheel, event -> event.doit = false);
    }

    /** Returns the control, to lay it out otherwise, to enable it and to give it the focus. */
    public Combo control() {
        return combo;
    }

    /** Says what the list is for when the mouse rests on it. */
    public DropDown explained(String text) {
        explained = text;
        refresh();
        return this;
    }

    /** Runs something whenever the user chooses an entry, and not when the program does. */
    public DropDown onChoice(Runnable work) {
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (isFilled()) {
                work.run();
            }
        }));
        return this;
    }

    /** Offers entries and chooses one by its index; below zero chooses none. */
    public void show(List<String> newWords, int newChosen) {
        words = List.copyOf(newWords);
        chosen = newChosen < words.size() ? Math.max(-1, newChosen) : -1;
        refresh();
    }

    /** Chooses an entry by its index; below zero chooses none. */
    public void choose(int index) {
        show(words, index);
    }

    /** Returns the index of the chosen entry, or -1. */
    public int chosen() {
        return chosen;
    }

    /** Lays it out over so many columns of its grid. */
    public void spanning(int columns) {
        ((GridData) combo.getLayoutData()).horizontalSpan = columns;
    }

    /** Returns the whole chosen entry; empty if there is none. */
    public String text() {
        return chosen < 0 ? "" : words.get(chosen);
    }

    /** Returns all entries. */
    public List<String> words() {
        return words;
    }

    private void selected() {
        if (isFilled() && combo.getSelectionIndex() >= 0) {
            chosen = combo.getSelectionIndex();
            refresh();
        }
    }

    private boolean isFilled() {
        return combo.getItemCount() == words.size();
    }

    private void refresh() {
        if (words.size() <= FEW || chosen < 0 || combo.isFocusControl()) {
            List<String> shown = new ArrayList<>(words);
            if (chosen >= 0) {
                shown.set(chosen, fitting(text()));
            }
            list(shown, chosen);
        } else {
            list(List.of(fitting(text())), 0);
        }
        String whole = combo.getText().equals(text()) ? "" : text();
        combo.setToolTipText(whole.isEmpty() || explained.isEmpty() ? whole + explained : whole + "\n" + explained);
    }

    private void list(List<String> shown, int selected) {
        for (int i = 0; i < shown.size(); i++) {
            if (i >= combo.getItemCount()) {
                combo.add(shown.get(i));
            } else if (!combo.getItem(i).equals(shown.get(i))) {
                combo.add(shown.get(i), i);
                combo.remove(i + 1);
            }
        }
        if (combo.getItemCount() > shown.size()) {
            combo.remove(shown.size(), combo.getItemCount() - 1);
        }
        if (selected < 0) {
            combo.deselectAll();
        } else {
            combo.select(selected);
        }
    }

    /** Returns the words, or as many letters of them as there is room for; all of them while there is no room at all. */
    private String fitting(String whole) {
        int room = combo.getSize().x - edges;
        String cut = whole;
        GC gc = new GC(combo);
        try {
            for (int i = whole.length() - 1; room > 0 && i > 0 && gc.textExtent(cut).x > room; i--) {
                cut = whole.substring(0, i).stripTrailing() + "\u2026";
            }
        } finally {
            gc.dispose();
        }
        return cut;
    }
}
