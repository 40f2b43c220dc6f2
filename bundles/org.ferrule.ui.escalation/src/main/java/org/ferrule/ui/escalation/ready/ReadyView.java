/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ready;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import org.eclipse.ui.statushandlers.StatusManager;
import org.ferrule.model.DocumentKind;
import org.ferrule.ui.Services;
import org.ferrule.ui.document.DocumentFiles;
import org.ferrule.ui.document.DocumentRecords;
import org.ferrule.ui.edit.Reveal;
import org.ferrule.ui.escalation.CaseEditor;

/** For which cases which techniques are ready, with what is on the shelf. */
public final class ReadyView extends ViewPart {

    private static final String NONE = "There is no case in the projects that are open.";

    private final Consumer<IFile> follower = this::fileChanged;
    private Label legend;
    private ReadyTable table;
    private ReadyReading reading;
    private Display display;

    @Override
    public void createPartControl(Composite parent) {
        display = parent.getDisplay();
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(parent);
        table = new ReadyTable(parent, this::open);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(table.control());
        legend = new Label(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 0).hint(200, SWT.DEFAULT).applyTo(legend);
        legend.setText("The cases of the projects are being planned...");
        reading = new ReadyReading(display, this::show);
        Services.get(DocumentRecords.class).addListener(follower);
        reading.soon();
    }

    private void fileChanged(IFile file) {
        boolean other = DocumentFiles.kind(file.getName()).filter(kind -> kind != DocumentKind.CHART).isEmpty();
        if (!other) {
            reading.soon();
        }
    }

    private void show(List<ReadyCase> cases) {
        if (table.control().isDisposed()) {
            return;
        }
        table.show(cases);
        legend.setText(cases.isEmpty() ? NONE : Stream.of(ReadyMark.values()).map(ReadyMark::words)
                .collect(Collectors.joining("    "))
                + "    nothing: not among its techniques    Each case by itself: two may count on one box.");
        legend.setToolTipText(legend.getText());
        legend.getParent().layout();
    }

    private void open(ReadyCase shown, String move) {
        try {
            IEditorPart editor = Reveal.open(getSite().getPage(), shown.file(), "");
            if (editor instanceof CaseEditor edited && !move.isEmpty()) {
                edited.showStep(move);
            }
        } catch (PartInitException e) {
            StatusManager.getManager().handle(e.getStatus(), StatusManager.SHOW);
        }
    }

    /** Returns the table. */
    public Table table() {
        return table.control();
    }

    @Override
    public void setFocus() {
        table.control().setFocus();
    }

    @Override
    public void dispose() {
        Services.get(DocumentRecords.class).removeListener(follower);
        reading.cancel();
        super.dispose();
    }
}
