/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.ferrule.engine.revision.Difference.Kind;
import org.ferrule.ui.edit.DocumentEditor;

/** What can be done with a difference: go to its field, take over what the other side says. */
final class RevisionActions {

    private final DifferenceTree tree;
    private final Supplier<Optional<DocumentEditor>> editor;
    private final Label status;
    private final Button jump;
    private final Button take;

    RevisionActions(Composite parent, DifferenceTree tree, Supplier<Optional<DocumentEditor>> editor) {
        this.tree = tree;
        this.editor = editor;
        Composite bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).margins(6, 4).spacing(6, 0).applyTo(bar);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(bar);
        status = new Label(bar, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(status);
        jump = button(bar, "Go to field", "Shows the value in the editor; Enter does the same", this::jump);
        take = button(bar, "Take over", "Makes the library say what the other side says; can be undone", this::take);
        tree.onSelect(this::update, this::jump);
    }

    private static Button button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    void say(String words) {
        status.setText(words);
    }

    void update() {
        boolean selected = tree.first().isPresent();
        jump.setEnabled(selected);
        take.setEnabled(selected && editor.get().filter(shown -> shown.session().editable()).isPresent());
    }

    private void jump() {
        tree.first().ifPresent(difference -> editor.get().ifPresent(shown -> {
            shown.getSite().getPage().activate(shown);
            if (difference.kind() == Kind.ADDED) {
                shown.reveal(difference.part().orElseThrow(), null);
            } else {
                shown.reveal(difference.after(), difference.feature());
            }
        }));
    }

    private void take() {
        if (tree.first().isPresent()) {
            editor.get().ifPresent(shown -> new TakeOver(shown.session()).take(tree.selection()));
        }
    }
}
