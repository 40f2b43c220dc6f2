/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.record;

import java.util.stream.IntStream;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.ferrule.engine.closed.RecordTable;
import org.ferrule.engine.closed.RecordTable.Row;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** A part of a record: rows below headings, whose words wrap where there is little room. */
final class RecordSection {

    private static final int COLUMN_GAP = 18;
    private static final int ROW_GAP = 4;
    private static final int LEAST_WIDTH = 200;
    private static final int AROUND = 16;

    private final FormToolkit toolkit;
    private final Section section;
    private final Composite client;
    private RecordTable shown;
    private Label[] cells = {};
    private int[] natural = {};

    /** Creates an empty section in a grid of one column. */
    RecordSection(FormToolkit toolkit, Composite parent) {
        this.toolkit = toolkit;
        section = toolkit.createSection(parent, ExpandableComposite.TITLE_BAR);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(section);
        client = toolkit.createComposite(section);
        section.setClient(client);
    }

    /** Shows a part of a record. */
    void show(RecordTable table) {
        if (table.equals(shown)) {
            return;
        }
        shown = table;
        section.setText(table.title());
        Stream.of(client.getChildren()).forEach(Control::dispose);
        int columns = table.headings().size();
        GridLayoutFactory.fillDefaults().numColumns(columns).margins(0, 5).spacing(COLUMN_GAP, ROW_GAP)
                .applyTo(client);
        if (!table.note().isEmpty()) {
            note(table.note(), columns);
        }
        cells = table.rows().isEmpty() ? new Label[0]
                : Stream.concat(table.headings().stream().map(this::heading), table.rows().stream().flatMap(this::row))
                        .toArray(Label[]::new);
        natural = IntStream.range(0, columns).map(column -> natural(column, columns)).toArray();
    }

    private void note(String words, int columns) {
        Label note = label(words);
        GridDataFactory.fillDefaults().span(columns, 1).hint(LEAST_WIDTH, SWT.DEFAULT).grab(true, false).applyTo(note);
        ThemeChange.text(note, Colours::muted);
    }

    private Label heading(String words) {
        Label label = label(words);
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        return label;
    }

    private Stream<Label> row(Row row) {
        return row.cells().stream().map(words -> {
            Label label = label(words);
            if (row.notable()) {
                ThemeChange.text(label, Colours::error);
            }
            return label;
        });
    }

    private Label label(String words) {
        return toolkit.createLabel(client, words.replace("&", "&&"), SWT.WRAP);
    }

    private int natural(int column, int columns) {
        return IntStream.range(0, cells.length).filter(i -> i % columns == column)
                .map(i -> cells[i].computeSize(SWT.DEFAULT, SWT.DEFAULT).x).max().orElse(0);
    }

    /**
     * Gives the columns their widths.
     *
     * @param width of the page between its margins, in pixels
     */
    void fit(int width) {
        int[] widths = ColumnWidths.of(natural, width - AROUND - COLUMN_GAP * (natural.length - 1));
        for (int i = 0; i < cells.length; i++) {
            GridData data = new GridData(SWT.BEGINNING, SWT.BEGINNING, false, false);
            data.widthHint = widths[i % widths.length];
            cells[i].setLayoutData(data);
        }
    }
}
