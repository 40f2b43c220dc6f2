/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.beside;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.dialogs.DialogSettings;
import org.eclipse.jface.dialogs.IDialogSettings;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.ManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.eclipse.ui.forms.widgets.ScrolledForm;
import org.ferrule.ui.edit.section.PartSection;
import org.osgi.framework.FrameworkUtil;

/**
 * The part beside the matrix. It scrolls on its own, can be folded away, and is as it was left when another chart is
 * opened.
 */
public final class SidePart {

    private static final String SECTION = "beside";
    private static final String OPEN = "open";
    private static final int WIDTH = 400;
    /** Narrower, fields could not be read. */
    private static final int LEAST = 310;
    private static final int LEAST_MATRIX = 320;

    private final SashForm sash;
    private final ScrolledForm form;
    private final ManagedForm managed;
    private final Composite column;
    private final List<PartSection> sections = new ArrayList<>();
    private final Control matrix;
    private Optional<Runnable> filling = Optional.empty();
    private boolean open;
    private int laidOutFor;

    /**
     * Creates the part without content.
     *
     * @param sash shares the room between the matrix, which is created in it first, and this part
     */
    public SidePart(SashForm sash, FormToolkit toolkit) {
        this.sash = sash;
        matrix = sash.getChildren()[0];
        form = toolkit.createScrolledForm(sash);
        managed = new ManagedForm(toolkit, form);
        GridLayoutFactory.fillDefaults().margins(8, 2).applyTo(form.getBody());
        column = toolkit.createComposite(form.getBody());
        GridLayoutFactory.fillDefaults().spacing(0, 10).applyTo(column);
        GridDataFactory.fillDefaults().grab(true, true).hint(LEAST, SWT.DEFAULT).applyTo(column);
        form.addDisposeListener(event -> managed.dispose());
        sash.addListener(SWT.Resize, event -> share());
        show(settings().getBoolean(OPEN));
    }

    /**
     * Says what adds the sections. That is done when the part is seen for the first time: most charts are opened without
     * it, and its fields take as long as the matrix.
     */
    public void fillWith(Runnable sectionsAdded) {
        filling = Optional.of(sectionsAdded);
        fillWhenSeen();
    }

    private void fillWhenSeen() {
        if (open && filling.isPresent()) {
            Runnable fill = filling.get();
            filling = Optional.empty();
            fill.run();
            managed.reflow(true);
        }
    }

    /** Where sections are added. */
    public IManagedForm managed() {
        return managed;
    }

    /** Returns where sections are added. */
    public Composite body() {
        return column;
    }

    /** Adds a section that shows a part of the document. */
    public void add(PartSection section) {
        sections.add(section);
        NarrowFields.apply(section.client());
        section.refresh();
    }

    /** Tells whether it can be seen. */
    public boolean isOpen() {
        return open;
    }

    /** Opens the part, or folds it away. */
    public void show(boolean shown) {
        open = shown;
        sash.setMaximizedControl(shown ? null : matrix);
        share();
        fillWhenSeen();
        remember();
    }

    /** The part keeps its width when the window is made wider, unless the user has moved the sash since. */
    private void share() {
        int width = sash.getClientArea().width;
        if (open && width > 0 && width != laidOutFor) {
            int side = Math.min(WIDTH, Math.max(1, width - LEAST_MATRIX));
            sash.setWeights(Math.max(1, width - side), side);
            laidOutFor = width;
        }
    }

    private void remember() {
        settings().put(OPEN, open);
    }

    private static IDialogSettings settings() {
        return DialogSettings.getOrCreateSection(PlatformUI
                .getDialogSettingsProvider(FrameworkUtil.getBundle(SidePart.class)).getDialogSettings(), SECTION);
    }

    /** Puts the cursor into the first field. */
    public boolean setFocus() {
        return column.setFocus();
    }

    /** Shows what the document says now. */
    public void refresh() {
        sections.forEach(PartSection::refresh);
    }
}
