/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.ferrule.model.Balloon;
import org.ferrule.model.ComplianceRow;
import org.ferrule.ui.devices.compliance.ComplianceCurve;

/** The compliance table of a balloon with its rows' fields, and the curve of it to the right. */
final class ComplianceView implements PartView {

    private static final int CURVE_WIDTH = 190;
    private static final int CURVE_HEIGHT = 250;
    private static final int TABLE_WIDTH = 320;

    private final PartList rows;
    private final ComplianceCurve curve;
    private Shown shown;

    ComplianceView(EditContext context, Composite parent, PartLayout layout) {
        Composite root = context.toolkit().createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(10, 0).applyTo(root);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(root);
        Composite left = context.toolkit().createComposite(root);
        GridLayoutFactory.fillDefaults().spacing(0, 6).applyTo(left);
        GridDataFactory.fillDefaults().hint(TABLE_WIDTH, SWT.DEFAULT).applyTo(left);
        rows = PartList.below(context, left, layout);
        Composite frame = context.toolkit().createComposite(root, SWT.BORDER);
        frame.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.BEGINNING).hint(CURVE_WIDTH, CURVE_HEIGHT)
                .applyTo(frame);
        curve = new ComplianceCurve(frame);
        rows.onSelect(this::drawCurve);
        curve.onRow(rows::select);
    }

    private void drawCurve() {
        curve.show(shown == null ? null : (Balloon) shown.complete(),
                rows.selected().map(row -> (ComplianceRow) row.complete()).orElse(null));
    }

    @Override
    public void show(Shown balloon) {
        shown = balloon;
        rows.show(balloon);
        drawCurve();
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        return rows.reveal(object, feature);
    }
}
