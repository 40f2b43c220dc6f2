/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.field;

import java.math.BigDecimal;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.fieldassist.IContentProposalProvider;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.ferrule.model.Features;
import org.ferrule.model.check.Severity;

/** A field for a text or a number. */
public final class TextField extends TypedField {

    private static final int LINES = 3;

    TextField(FieldForm form, EAttribute feature, boolean severalLines) {
        super(form, feature, severalLines ? SWT.BORDER | SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.BORDER | SWT.SINGLE,
                2);
        if (severalLines) {
            GridDataFactory.fillDefaults().grab(true, false).span(2, 1)
                    .hint(SWT.DEFAULT, LINES * textControl().getLineHeight()).applyTo(textControl());
        }
        placeProblems();
    }

    /** Lets Control and Space propose texts; what is accepted becomes part of the document at once. */
    public TextField proposing(IContentProposalProvider provider) {
        Assist.replacing(textControl(), provider, this::commitDraft);
        return this;
    }

    @Override
    Reading read(String typed) {
        EAttribute attribute = (EAttribute) feature();
        try {
            return Reading.of(EcoreUtil.createFromString(attribute.getEAttributeType(), plain(typed)));
        } catch (IllegalArgumentException e) {
            return Reading.unreadable(new InputProblem(Severity.ERROR, "expected a number, with a decimal point",
                    typed, 0, typed.length()));
        }
    }

    /** A share between 0 and 1 may be typed in percent. */
    private String plain(String typed) {
        boolean share = Features.annotation(feature(), "most").filter("1"::equals).isPresent();
        String text = typed.strip();
        return share && text.endsWith("%")
                ? new BigDecimal(text.substring(0, text.length() - 1).strip()).movePointLeft(2).toPlainString()
                : typed;
    }

    @Override
    String text(Object value) {
        return EcoreUtil.convertToString(((EAttribute) feature()).getEAttributeType(), value);
    }

    @Override
    void showMeaning(Object value) {
        // a text means what it says
    }
}
