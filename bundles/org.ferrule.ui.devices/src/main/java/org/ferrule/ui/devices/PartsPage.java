/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.Document;
import org.ferrule.ui.devices.part.EditContext;
import org.ferrule.ui.devices.part.PartLayout;
import org.ferrule.ui.devices.part.PartList;
import org.ferrule.ui.devices.part.Shown;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.look.Colours;
import org.ferrule.ui.look.ModelLabels;
import org.ferrule.ui.look.ThemeChange;

/** A page of one kind of parts of a document: the list, and beside it the form of the one that is selected. */
class PartsPage extends DocumentPage {

    private static final int LIST_SHARE = 54;
    private static final int HINT_WIDTH = 200;

    private final PartLayout layout;
    private PartList list;
    private ScrolledComposite scroller;
    private Label hint;

    PartsPage(DocumentEditor editor, String title, PartLayout layout) {
        super(editor, layout.feature().getName(), title);
        this.layout = layout;
    }

    @Override
    protected void fill(IManagedForm form) {
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 8).spacing(0, 8).applyTo(body);
        SashForm sash = new SashForm(body, SWT.HORIZONTAL);
        sash.setSashWidth(6);
        form.getToolkit().adapt(sash);
        GridDataFactory.fillDefaults().grab(true, true).hint(600, 240).applyTo(sash);
        Composite left = form.getToolkit().createComposite(sash);
        list = PartList.beside(context(form), left, details(form.getToolkit(), sash), layout);
        sash.setWeights(LIST_SHARE, 100 - LIST_SHARE);
        refresh();
    }

    private EditContext context(IManagedForm form) {
        return new EditContext(session(), form.getToolkit(), this::makeRoom,
                object -> ((DocumentEditor) getEditor()).reveal(object, null), getSite());
    }

    private Composite details(FormToolkit toolkit, Composite parent) {
        scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        toolkit.adapt(scroller);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.setShowFocusedControl(true);
        Composite details = toolkit.createComposite(scroller);
        GridLayoutFactory.fillDefaults().margins(8, 0).applyTo(details);
        hint = toolkit.createLabel(details, "", SWT.WRAP);
        ThemeChange.text(hint, Colours::muted);
        hint.setText(ModelLabels.description(layout.feature()) + " Nothing is listed yet: press Add.");
        GridDataFactory.fillDefaults().grab(true, false).hint(HINT_WIDTH, SWT.DEFAULT).applyTo(hint);
        scroller.setContent(details);
        scroller.addListener(SWT.Resize, event -> makeRoom());
        return details;
    }

    private void makeRoom() {
        Composite details = (Composite) scroller.getContent();
        details.layout(true, true);
        scroller.setMinHeight(details.computeSize(scroller.getClientArea().width, SWT.DEFAULT).y);
    }

    /** Shows the document as it is now. */
    void refresh() {
        list.show(Shown.of(document()));
        boolean none = ((List<?>) document().eGet(layout.feature())).isEmpty();
        hint.setVisible(none);
        ((GridData) hint.getLayoutData()).exclude = !none;
        makeRoom();
    }

    Document document() {
        return session().document().orElseThrow();
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        boolean listed = ((List<?>) document().eGet(layout.feature())).stream()
                .anyMatch(part -> EcoreUtil.isAncestor((EObject) part, object));
        return list != null && listed && list.reveal(object, feature);
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        if (!session().broken()) {
            refresh();
        }
    }

    @Override
    public void setFocus() {
        if (list != null) {
            list.focus();
        }
    }
}
