/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.compliance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.swt.widgets.Composite;
import org.ferrule.balloon.ComplianceTable;
import org.ferrule.balloon.ComplianceTable.Row;
import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.quantity.Pressure;
import org.ferrule.ui.Services;
import org.ferrule.ui.picture.PictureCanvas;
import org.ferrule.ui.preferences.UnitPreferences;

/** Shows the curve of a balloon's compliance table as it stands; a click at a point tells its row. */
public final class ComplianceCurve {

    private static final String ROW = "row:";

    private final PictureCanvas canvas;
    private final UnitPreferences units = Services.get(UnitPreferences.class);
    private Balloon balloon;
    private ComplianceRow selected;

    /** Creates a curve of nothing. */
    public ComplianceCurve(Composite parent) {
        canvas = new PictureCanvas(parent);
        Runnable unitsChanged = () -> canvas.getDisplay().asyncExec(this::redraw);
        units.addListener(unitsChanged);
        canvas.addDisposeListener(event -> units.removeListener(unitsChanged));
    }

    /** Returns the canvas to lay out. */
    public PictureCanvas control() {
        return canvas;
    }

    /** Sets what is done when the user clicks at a point: it gets the number of the row in the table. */
    public void onRow(IntConsumer action) {
        canvas.onClick(names -> names.stream().filter(name -> name.startsWith(ROW)).findFirst()
                .map(name -> drawn().get(Integer.parseInt(name.substring(ROW.length()))))
                .ifPresent(row -> action.accept(balloon.getCompliance().indexOf(row))));
    }

    /**
     * Shows the curve of a balloon.
     *
     * @param shown the balloon with all that it inherits, or null
     * @param row the row of it that is emphasized, or null
     */
    public void show(Balloon shown, ComplianceRow row) {
        balloon = shown;
        selected = row;
        redraw();
    }

    private void redraw() {
        if (canvas.isDisposed()) {
            return;
        }
        List<ComplianceRow> rows = drawn();
        if (rows.isEmpty()) {
            canvas.clear("Rows with pressure and diameter are drawn here");
            return;
        }
        try {
            ComplianceTable table = new ComplianceTable(
                    rows.stream().map(row -> new Row(row.getPressure(), row.getDiameter())).toList(),
                    readable(balloon.getRatedBurstPressure()));
            draw(table, readable(balloon.getNominalPressure()), rows.indexOf(selected));
        } catch (IllegalArgumentException e) {
            canvas.clear("Not drawn: " + e.getMessage());
        }
    }

    private void draw(ComplianceTable table, Optional<Pressure> nominal, int row) {
        canvas.draw((width, height) -> new CurvePicture(table, nominal, row, units.units().get(0), width, height)
                .draw(width, height));
    }

    /** The rows of which both figures can be read. */
    private List<ComplianceRow> drawn() {
        return balloon == null ? List.of() : new ArrayList<>(balloon.getCompliance()).stream()
                .filter(row -> readable(row.getPressure()).isPresent() && row.getDiameter() != null
                        && row.getDiameter().readable())
                .toList();
    }

    private static Optional<Pressure> readable(Pressure pressure) {
        return Optional.ofNullable(pressure).filter(Pressure::readable);
    }
}
