/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.record;

import java.util.List;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.widgets.ExpandableComposite;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.Section;
import org.eclipse.ui.forms.widgets.TableWrapData;
import org.eclipse.ui.forms.widgets.TableWrapLayout;
import org.ferrule.engine.closed.RecordTable;
import org.ferrule.engine.closed.RecordTable.Row;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** A part of a record: rows below headings, whose words wrap where there is little room. */
final class RecordSection {

    private static final int COLUMN_GAP = 18;
    private static final int ROW_GAP = 4;
    private static final int LEAST_WIDTH = 200;

    private final FormToolkit toolkit;
    private final Section section;
    private final Composite client;
    private RecordTable shown;

    /** Creates an empty section in a grid of one column. */
    RecordSection(FormToolkit toolkit, Composite parent) {
        this.toolkit = toolkit;
        section = toolkit.createSection(parent, ExpandableComposite.TITLE_BAR);
        GridDataFactory.fillDefaults().grab(true, false).hint(LEAST_WIDTH, SWT.DEFAULT).applyTo(section);
        client = toolkit.createComposite(section);
        section.setClient(client);
    }

    /** Shows a part of a record; tells whether it is another than before. */
    boolean show(RecordTable table) {
        if (table.equals(shown)) {
            return false;
        }
        shown = table;
        section.setText(table.title());
        Stream.of(client.getChildren()).forEach(Control::dispose);
        client.setLayout(layout(Math.max(1, table.headings().size())));
        if (!table.note().isEmpty()) {
            ThemeChange.text(label(table.note()), Colours::muted);
            ((TableWrapData) client.getChildren()[0].getLayoutData()).colspan = table.headings().size();
        }
        if (!table.rows().isEmpty()) {
            table.headings().forEach(this::heading);
            table.rows().forEach(this::row);
        }
        return true;
    }

    private static TableWrapLayout layout(int columns) {
        TableWrapLayout layout = new TableWrapLayout();
        layout.numColumns = columns;
        layout.horizontalSpacing = COLUMN_GAP;
        layout.verticalSpacing = ROW_GAP;
        layout.leftMargin = 0;
        layout.rightMargin = 0;
        return layout;
    }

    private void heading(String words) {
        Label label = label(words);
        label.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
    }

    private void row(Row row) {
        List<String> cells = row.cells();
        for (String cell : cells) {
            Label label = label(cell);
            if (row.notable()) {
                ThemeChange.text(label, Colours::error);
            }
        }
    }

    private Label label(String words) {
        Label label = toolkit.createLabel(client, words.replace("&", "&&"), SWT.WRAP);
        label.setLayoutData(new TableWrapData(TableWrapData.FILL));
        return label;
    }
}
