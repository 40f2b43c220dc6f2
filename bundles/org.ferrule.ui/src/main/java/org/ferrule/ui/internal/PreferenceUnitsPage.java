/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal;

import java.util.LinkedHashMap;
import java.util.Map;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.ferrule.quantity.LengthUnit;
import org.ferrule.ui.Services;
import org.ferrule.ui.preferences.UnitPreferences;
import org.osgi.service.prefs.BackingStoreException;

/** The units in which figures are shown, and their decimals. */
public class PreferenceUnitsPage extends PreferencePage implements IWorkbenchPreferencePage {

    private record Row(Button shown, Spinner decimals) {
    }

    private final Map<LengthUnit, Row> rows = new LinkedHashMap<>();

    @Override
    public void init(IWorkbench workbench) {
        setDescription("Figures are kept as they were typed. Beside them they are shown in these units. The choice"
                + " changes no verdict.");
    }

    @Override
    protected Control createContents(Composite parent) {
        Composite body = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).spacing(16, 8).margins(0, 8).applyTo(body);
        UnitPreferences.CHOICES.forEach(unit -> rows.put(unit, row(body, unit)));
        show(Services.get(UnitPreferences.class));
        return body;
    }

    private Row row(Composite body, LengthUnit unit) {
        Button shown = new Button(body, SWT.CHECK);
        shown.setText(name(unit));
        shown.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> validate()));
        Label label = new Label(body, SWT.NONE);
        label.setText("Decimals:");
        GridDataFactory.swtDefaults().align(SWT.END, SWT.CENTER).indent(16, 0).applyTo(label);
        Spinner decimals = new Spinner(body, SWT.BORDER);
        decimals.setMaximum(UnitPreferences.MOST_DECIMALS);
        return new Row(shown, decimals);
    }

    private static String name(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> "&Millimetres (mm)";
            case INCH -> "&Inches (in)";
            case FRENCH -> "&French (Fr)";
            default -> unit.symbol();
        };
    }

    private void show(UnitPreferences preferences) {
        rows.forEach((unit, row) -> {
            row.shown.setSelection(preferences.units().contains(unit));
            row.decimals.setSelection(preferences.decimals(unit));
        });
    }

    private void validate() {
        boolean valid = rows.values().stream().anyMatch(row -> row.shown.getSelection());
        setErrorMessage(valid ? null : "At least one unit must be shown");
        setValid(valid);
    }

    @Override
    protected void performDefaults() {
        IEclipsePreferences defaults = DefaultScope.INSTANCE.getNode(UnitPreferences.NODE);
        rows.forEach((unit, row) -> {
            row.shown.setSelection(defaults.getBoolean(UnitPreferences.shownKey(unit), false));
            row.decimals.setSelection(defaults.getInt(UnitPreferences.decimalsKey(unit), 3));
        });
        validate();
        super.performDefaults();
    }

    @Override
    public boolean performOk() {
        IEclipsePreferences chosen = InstanceScope.INSTANCE.getNode(UnitPreferences.NODE);
        rows.forEach((unit, row) -> {
            chosen.putBoolean(UnitPreferences.shownKey(unit), row.shown.getSelection());
            chosen.putInt(UnitPreferences.decimalsKey(unit), row.decimals.getSelection());
        });
        try {
            chosen.flush();
            return true;
        } catch (BackingStoreException e) {
            ILog.of(PreferenceUnitsPage.class).error("The preferences cannot be kept", e);
            setErrorMessage("The preferences cannot be kept: " + e.getMessage());
            return false;
        }
    }
}
