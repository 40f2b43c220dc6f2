/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.stack;

import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.fit.device.Device;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.passage.PhaseAnswer;
import org.ferrule.model.DeviceKind;
import org.ferrule.ui.fit.answer.VerdictImages;
import org.ferrule.ui.fit.passage.ProjectDevices;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.Icons;

/** The devices of a stack from the outside to the inside, with what came out for each. */
final class StackTable {

    private static final int ROWS = 6;
    private static final int IN = 1;
    private static final int OUT = 2;

    private final Table table;
    private final VerdictImages images;

    /** What the keys of the table do. */
    interface Acts {
        /** Takes the selected device out. */
        void remove();

        /** Moves the selected device, a step further in or out. */
        void move(int by);
    }

    StackTable(Composite parent, IntConsumer selected, Acts acts) {
        Composite frame = new Composite(parent, SWT.NONE);
        TableColumnLayout columns = new TableColumnLayout();
        frame.setLayout(columns);
        table = new Table(frame, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL);
        GridDataFactory.fillDefaults().grab(true, true)
                .hint(240, ROWS * table.getItemHeight() + table.getHeaderHeight()).applyTo(frame);
        table.setHeaderVisible(true);
        column(columns, "From outside to inside", 58, 110);
        column(columns, "Going in", 21, 78);
        column(columns, "Coming out", 21, 92);
        images = new VerdictImages(table);
        table.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> selected.accept(table.getSelectionIndex())));
        table.addListener(SWT.KeyDown, event -> key(event, acts));
    }

    private void column(TableColumnLayout columns, String title, int weight, int least) {
        TableColumn column = new TableColumn(table, SWT.NONE);
        column.setText(title);
        columns.setColumnData(column, new ColumnWeightData(weight, least));
    }

    private static void key(Event event, Acts acts) {
        if (event.keyCode == SWT.DEL) {
            acts.remove();
        } else if ((event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT
                && (event.keyCode == SWT.ARROW_UP || event.keyCode == SWT.ARROW_DOWN)) {
            acts.move(event.keyCode == SWT.ARROW_UP ? -1 : 1);
            event.doit = false;
        }
    }

    Table control() {
        return table;
    }

    int selected() {
        return table.getSelectionIndex();
    }

    void select(int index) {
        table.setSelection(Math.min(index, table.getItemCount() - 1));
    }

    /** Shows devices; what came out for them follows. */
    void show(ProjectDevices project, List<StackEntry> entries) {
        int kept = table.getSelectionIndex();
        table.removeAll();
        for (StackEntry entry : entries) {
            TableItem item = new TableItem(table, SWT.NONE);
            String lead = entry.beside() ? "+ " : "";
            project.catalogue().devices().stream().filter(device -> device.isCalled(entry.device())).findFirst()
                    .ifPresentOrElse(found -> {
                        item.setText(lead + name(found.device()));
                        item.setImage(Icons.of(DeviceKind.get(found.device().kind().word())).image());
                    }, () -> {
                        item.setText(lead + entry.device() + " (not there)");
                        item.setForeground(Colours.muted());
                    });
        }
        select(kept);
    }

    private static String name(Device device) {
        return device.name().isEmpty() ? device.id() : device.name();
    }

    /** Shows what came out, or nothing: what is left, and on whose authority, is told beside the table. */
    void show(Optional<AnsweredStack> answered) {
        for (int i = 0; i < table.getItemCount(); i++) {
            for (Phase phase : Phase.values()) {
                int column = phase == Phase.IN ? IN : OUT;
                int row = i;
                Optional<PhaseAnswer> verdict = answered.flatMap(a -> a.verdict(row, phase));
                table.getItem(i).setImage(column, verdict.map(v -> images.of(VerdictLook.of(v))).orElse(null));
                table.getItem(i).setText(column, verdict.map(v -> v.verdict().word()).orElse(""));
            }
        }
    }
}
