/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.ferrule.ui.look.DropDown;

/** Chooses the revision to compare with, and filters the differences. */
final class RevisionBar {

    private static final String ANOTHER = "another file...";

    private static final int WIDTH = 260;

    private final DropDown choice;
    private final Text filter;
    private final Consumer<Revision> chosen;
    private final List<Revision> revisions = new ArrayList<>();
    private final List<Revision> others = new ArrayList<>();
    private IFile file;
    private String last = "";

    RevisionBar(Composite parent, Consumer<Revision> chosen, Runnable filtered) {
        this.chosen = chosen;
        Composite bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(4, 4).spacing(6, 0).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        new Label(bar, SWT.NONE).setText("Compare with");
        choice = new DropDown(bar, WIDTH).onChoice(this::choose);
        Button again = new Button(bar, SWT.PUSH);
        again.setText("Refresh");
        again.setToolTipText("Looks for newer revisions in local history and reads the other side again");
        again.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> refresh()));
        filter = new Text(bar, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Filter by device, value or text");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(filter);
        filter.addModifyListener(event -> filtered.run());
    }

    /** Lists the revisions of a file and chooses the first; of none if it is null. */
    void show(IFile shown) {
        file = shown;
        last = "";
        others.clear();
        refresh();
    }

    /** Looks for the revisions anew, and for what they say; the same one stays chosen. */
    void refresh() {
        revisions.clear();
        try {
            if (file != null) {
                revisions.addAll(Revision.of(file));
            }
        } catch (CoreException e) {
            ILog.of(RevisionBar.class).log(e.getStatus());
        }
        revisions.addAll(others);
        List<String> items = new ArrayList<>(revisions.stream().map(Revision::title).toList());
        items.add(ANOTHER);
        choice.show(items, Math.max(0, items.indexOf(last)));
        choice.control().setEnabled(file != null);
        if (!revisions.isEmpty()) {
            choose();
        }
    }

    private void selectLast() {
        choice.choose(Math.max(0, choice.words().indexOf(last)));
    }

    private void choose() {
        int index = choice.chosen();
        if (index < revisions.size()) {
            last = revisions.get(index).title();
            chosen.accept(revisions.get(index));
        } else {
            selectLast();
            FileChoice.ask(choice.control().getShell(), file).ifPresent(other -> {
                others.add(other);
                last = other.title();
                refresh();
            });
        }
    }

    /** The words that every shown difference has. */
    List<String> words() {
        return filter.getText().isBlank() ? List.of() : List.of(filter.getText().strip().toLowerCase().split("\\s+"));
    }

    void setFocus() {
        choice.control().setFocus();
    }
}
