/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import org.eclipse.jface.bindings.keys.KeyStroke;
import org.eclipse.jface.fieldassist.ContentProposalAdapter;
import org.eclipse.jface.fieldassist.ControlDecoration;
import org.eclipse.jface.fieldassist.FieldDecoration;
import org.eclipse.jface.fieldassist.FieldDecorationRegistry;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.eclipse.jface.fieldassist.TextContentAdapter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Text;

/**
 * Lets Control and Space propose what may be typed into a text. A mark beside the text says so while the cursor is in
 * it; a click on the mark does the same.
 */
final class Assist extends ContentProposalAdapter {

    private static final int WIDTH = 380;
    private static final int HEIGHT = 220;

    private Assist(Text text, IContentProposalProvider provider, int style) {
        super(text, new TextContentAdapter(), provider, KeyStroke.getInstance(SWT.MOD1, ' '), null);
        setProposalAcceptanceStyle(style);
        setPopupSize(new Point(WIDTH, HEIGHT));
        mark(text);
    }

    /** Proposals are put in at the cursor. */
    static void inserting(Text text, IContentProposalProvider provider) {
        new Assist(text, provider, PROPOSAL_INSERT);
    }

    /** Proposals take the place of the text; then the action is run. */
    static void replacing(Text text, IContentProposalProvider provider, Runnable accepted) {
        new Assist(text, provider, PROPOSAL_REPLACE).addContentProposalListener(proposal -> accepted.run());
    }

    private void mark(Text text) {
        ControlDecoration mark = new ControlDecoration(text, SWT.TOP | SWT.LEFT);
        FieldDecoration cue = FieldDecorationRegistry.getDefault()
                .getFieldDecoration(FieldDecorationRegistry.DEC_CONTENT_PROPOSAL);
        mark.setImage(cue.getImage());
        mark.setDescriptionText("Ctrl+Space proposes what may be typed here");
        mark.setShowOnlyOnFocus(true);
        mark.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> openProposalPopup()));
    }
}
