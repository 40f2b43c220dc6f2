/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.several;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IFormColors;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.ui.devices.grid.CellMeanings;
import org.ferrule.ui.devices.sheet.CellChange;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.ferrule.ui.devices.sheet.SheetEdits;
import org.ferrule.ui.devices.sheet.SheetRow;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** A field for one column of several devices: what they have in common, or that their values differ. */
final class SeveralField {

    private static final String SEVERAL = "several values";

    private final DocumentSession session;
    private final SheetColumn column;
    private final Text text;
    private final Label remark;
    private final Runnable reflow;
    private final CellMeanings meanings = new CellMeanings();
    private List<SheetRow> rows = List.of();
    private String stated = "";
    private boolean wrong;

    SeveralField(DocumentSession session, FormToolkit toolkit, Composite parent, SheetColumn column, Runnable reflow) {
        this.session = session;
        this.column = column;
        this.reflow = reflow;
        Label label = toolkit.createLabel(parent, column.title());
        label.setToolTipText(column.explanation());
        label.setForeground(toolkit.getColors().getColor(IFormColors.TITLE));
        Composite cell = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(cell);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(cell);
        text = toolkit.createText(cell, "", SWT.SINGLE | SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(120, SWT.DEFAULT).applyTo(text);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING)
                .indent(0,
                        (text.computeSize(SWT.DEFAULT, SWT.DEFAULT).y - label.computeSize(SWT.DEFAULT, SWT.DEFAULT).y)
                                / 2)
                .applyTo(label);
        remark = toolkit.createLabel(cell, "", SWT.WRAP);
        ThemeChange.text(remark, () -> wrong ? Colours.error() : Colours.muted());
        GridDataFactory.fillDefaults().grab(true, false).hint(200, SWT.DEFAULT).exclude(true).applyTo(remark);
        text.addModifyListener(event -> typed());
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> commit()));
        text.addFocusListener(FocusListener.focusLostAdapter(event -> commit()));
        text.addListener(SWT.KeyDown, this::escape);
        text.addListener(SWT.Dispose, event -> session.draft(this, false));
    }

    void show(List<SheetRow> selected) {
        boolean same = selected.equals(rows);
        if (!same) {
            commit();
        }
        rows = selected.stream().filter(row -> column.locked(row).isEmpty()).toList();
        Set<String> values = rows.stream().map(column::text).collect(Collectors.toSet());
        boolean inherited = rows.stream().allMatch(column::inherited);
        String common = values.size() == 1 ? values.iterator().next() : "";
        boolean untouched = text.getText().equals(stated);
        stated = inherited ? "" : common;
        text.setMessage(values.size() > 1 ? SEVERAL : inherited ? common : "");
        text.setEnabled(!rows.isEmpty());
        text.setEditable(session.editable());
        if (!same || untouched) {
            text.setText(stated);
        }
        say(left(selected), false);
    }

    private String left(List<SheetRow> selected) {
        Optional<String> reason = selected.stream().flatMap(row -> column.locked(row).stream()).findFirst();
        int locked = selected.size() - rows.size();
        return reason.isEmpty() || locked == 0 ? "" : locked == selected.size() ? ""
                : locked + " of them would be left as they are: no part that could state this";
    }

    private CellReading reading() {
        EAttribute feature = column.attribute().orElseThrow();
        return CellReading.of(feature, text.getText());
    }

    private boolean touched() {
        return !text.getText().equals(stated);
    }

    private void typed() {
        CellReading reading = reading();
        session.draft(this, touched() && reading.readable());
        say(touched() ? reading.error().orElseGet(() -> meanings.of(column.attribute().orElseThrow(), reading)) : "",
                reading.error().isPresent());
    }

    private void say(String words, boolean error) {
        boolean needed = !words.isEmpty();
        remark.setText(words.replace("&", "&&"));
        wrong = error;
        remark.setForeground(error ? Colours.error() : Colours.muted());
        remark.getParent().layout();
        if (needed == ((GridData) remark.getLayoutData()).exclude) {
            ((GridData) remark.getLayoutData()).exclude = !needed;
            remark.setVisible(needed);
            reflow.run();
        }
    }

    private void escape(Event event) {
        if (event.keyCode == SWT.ESC && touched()) {
            text.setText(stated);
            event.doit = false;
        }
    }

    /** Takes over what was typed, for all rows by one command; what cannot be read stays in the field. */
    void commit() {
        if (!touched() || !session.editable() || !reading().readable()) {
            return;
        }
        CellReading reading = reading();
        stated = text.getText();
        session.draft(this, false);
        new SheetEdits(session).apply(rows.stream().map(row -> new CellChange(row, column, reading.value())).toList());
    }
}
