/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.internal.edit;

import org.eclipse.core.resources.IFile;
import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.editor.FormPage;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.io.json.DocumentProblem;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ThemeChange;

/** What an editor shows of a file that is no document: what is wrong and where, and the way to its text. */
public final class BrokenPage extends FormPage {

    private static final int MOST_SHOWN = 20;
    private static final int TEXT_WIDTH = 520;

    private final DocumentEditor editor;

    /** Creates the page. */
    public BrokenPage(DocumentEditor editor) {
        super(editor, "broken", "Problems");
        this.editor = editor;
    }

    @Override
    protected void createFormContent(IManagedForm form) {
        FormToolkit toolkit = form.getToolkit();
        toolkit.decorateFormHeading(form.getForm().getForm());
        form.getForm().setText(editor.session().file().getName());
        form.getForm().setMessage("This document cannot be opened", IMessageProvider.ERROR);
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().numColumns(2).margins(14, 14).spacing(14, 10).applyTo(body);
        paragraph(toolkit, body, "The file is left as it is. Put its text right and save it; it then opens here by"
                + " itself.");
        editor.session().problemsOfFile().stream().limit(MOST_SHOWN).forEach(p -> problem(toolkit, body, p));
        button(toolkit, body, editor.session().file());
    }

    private static void problem(FormToolkit toolkit, Composite body, DocumentProblem problem) {
        Label place = toolkit.createLabel(body, "Line " + problem.line() + ", column " + problem.column());
        ThemeChange.text(place, Colours::muted);
        GridDataFactory.swtDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(place);
        Label words = toolkit.createLabel(body, capital(problem.message()) + "."
                + (problem.expected().isEmpty() ? "" : "\nExpected: " + problem.expected() + "."), SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(words);
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private static void paragraph(FormToolkit toolkit, Composite body, String text) {
        Label label = toolkit.createLabel(body, text, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(TEXT_WIDTH, SWT.DEFAULT).applyTo(label);
    }

    private void button(FormToolkit toolkit, Composite body, IFile file) {
        Button open = toolkit.createButton(body, "Open as text", SWT.PUSH);
        GridDataFactory.swtDefaults().span(2, 1).applyTo(open);
        open.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> TextOpening.open(editor, file)));
        getManagedForm().getForm().getDisplay().asyncExec(() -> {
            if (!open.isDisposed()) {
                open.setFocus();
            }
        });
    }
}
