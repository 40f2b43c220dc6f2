/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.form;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.forms.IManagedForm;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentEditor;
import org.ferrule.ui.edit.DocumentPage;
import org.ferrule.ui.edit.field.FieldForm;
import org.ferrule.ui.edit.section.PageColumns;
import org.ferrule.ui.edit.section.PartSection;
import org.ferrule.ui.escalation.live.LivePlan;
import org.ferrule.ui.escalation.live.PlanListener;

/** What is stated about a case: the system in place, where to, what holds, what to spare, what was done. */
public final class CasePage extends DocumentPage implements PlanListener {

    /** Id of the page. */
    public static final String ID = "case";

    private final List<PartSection> sections = new ArrayList<>();
    private final LivePlan live;
    private IManagedForm managed;

    /** Creates the page. */
    public CasePage(DocumentEditor editor, LivePlan live) {
        super(editor, ID, "Case");
        this.live = live;
    }

    @Override
    protected void fill(IManagedForm form) {
        managed = form;
        PageColumns columns = new PageColumns(form);
        Composite left = columns.add();
        Composite right = columns.add();
        CaseSections parts = new CaseSections(live, managed, getSite().getShell(), this::section);
        parts.addSystem(left);
        parts.addWay(left);
        parts.addFile(left);
        parts.addFacts(right);
        parts.addAim(right);
        parts.addFigures(right);
        parts.addLog(left);
        live.addListener(this);
        left.addDisposeListener(event -> live.removeListener(this));
        refresh();
    }

    private PartSection section(Composite column, String title, EReference part, Consumer<FieldForm> fields) {
        PartSection section = new PartSection(session(), managed, column, title, part, fields);
        sections.add(section);
        return section;
    }

    private void refresh() {
        sections.forEach(PartSection::refresh);
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        refresh();
    }

    /** The techniques, with the facts that they ask for, may have changed too. */
    @Override
    public void planChanged() {
        if (!live.stale()) {
            refresh();
        }
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return sections.stream().anyMatch(section -> section.reveal(object, feature));
    }
}
